package soakloop.reading;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Finds the rows on which a channel was really measured, from where its value changes.
 *
 * <p>If one row in P is a measurement, the distances between changes are multiples of P, whatever
 * the signal does and however long it stands still. Rows that have no value do not count. The other
 * way round, that n distances are multiples of P by chance has the probability P^-n.
 */
final class RefreshFinder {
  /** Changes on neighbouring rows that a held channel may show, as a logger drops a row [-]. */
  private static final double SLIPS = 0.05;

  /** Powers of ten by which chance must be ruled out: a log has some tens of channels. */
  private static final double DECADES = 6;

  /** The same where other channels of the log are held over just as many rows. */
  private static final double DECADES_BESIDE_OTHERS = 2;

  /** Changes that a rhythm of unequal distances takes to be believed [-]. */
  private static final int UNEQUAL_CHANGES = 20;

  private final Updates rows;
  private final int[] changes;
  private final int[] gaps;

  RefreshFinder(Updates rows) {
    this.rows = rows;
    this.changes =
        IntStream.range(1, rows.size()).filter(i -> rows.value(i) != rows.value(i - 1)).toArray();
    this.gaps = IntStream.range(1, changes.length).map(i -> changes[i] - changes[i - 1]).toArray();
  }

  /**
   * Finds the refresh.
   *
   * @param beside rows per measurement of other channels of the log
   * @param quantum smallest step of the signal, SI
   */
  Refresh find(OptionalInt beside, double quantum) {
    if (gaps.length < 3) {
      return refresh(Refresh.Kind.UNKNOWN, 1);
    }
    if (share(gap -> gap == 1) > 2 * SLIPS) {
      return refresh(Refresh.Kind.EVERY_ROW, 1);
    }
    int turn = switches() ? 1 : inTurn();
    if (turn == 1 && beside.isPresent() && shares(beside.getAsInt())) {
      turn = beside.getAsInt();
    }
    if (turn > 1) {
      return refresh(Refresh.Kind.IN_TURN, turn);
    }
    double unequal = unequal(quantum);
    return unequal > 1 ? refresh(Refresh.Kind.HELD, unequal) : refresh(Refresh.Kind.EVERY_ROW, 1);
  }

  /**
   * Whether it has two values only, as a pedal floored and let go, or a fan on and off: then it
   * changes when something happens, and what people do falls on round seconds. Its changes tell no
   * rhythm of their own.
   */
  private boolean switches() {
    return rows.size() > 0 && Arrays.stream(rows.values()).distinct().limit(3).count() <= 2;
  }

  private Refresh refresh(Refresh.Kind kind, double count) {
    return new Refresh(kind, count, count * rows.spacing());
  }

  private double share(java.util.function.IntPredicate which) {
    return Arrays.stream(gaps).filter(which).count() / (double) gaps.length;
  }

  /** The longest turn that all distances but slips are multiples of; 1 if chance explains it. */
  private int inTurn() {
    int best = 1;
    int longest = Arrays.stream(gaps).max().orElse(1);
    for (int turn = 2; turn <= longest; turn++) {
      int tried = turn;
      boolean surprising = gaps.length * Math.log10(turn / (double) best) >= DECADES;
      if (surprising && share(gap -> gap % tried == 0) >= 1 - SLIPS) {
        best = turn;
      }
    }
    return best;
  }

  private boolean shares(int turn) {
    return turn > 1
        && share(gap -> gap % turn == 0) == 1
        && gaps.length * Math.log10(turn) >= DECADES_BESIDE_OTHERS;
  }

  /**
   * Rows that values are held where the distances are unequal: where the value leaps by more than
   * its smallest step it would have changed earlier, had it been measured. A quick channel that is
   * measured on every row leaps too, but then on neighbouring rows.
   */
  private double unequal(double quantum) {
    if (gaps.length < UNEQUAL_CHANGES) {
      return 1;
    }
    double[] leaps =
        IntStream.range(0, gaps.length)
            .filter(i -> leaps(changes[i], quantum) && leaps(changes[i + 1], quantum))
            .mapToDouble(i -> gaps[i])
            .toArray();
    boolean many = leaps.length >= Math.max(UNEQUAL_CHANGES / 2, 0.3 * gaps.length);
    boolean alike = Numbers.quantile(0.9, leaps) <= 1.6 * Numbers.quantile(0.1, leaps) + 1;
    double shortest = Numbers.quantile(0.05, Arrays.stream(gaps).asDoubleStream().toArray());
    return many && alike && shortest >= 2 ? Arrays.stream(leaps).average().orElse(1) : 1;
  }

  private boolean leaps(int row, double quantum) {
    return Math.abs(rows.value(row) - rows.value(row - 1)) > 1.5 * quantum;
  }

  /** The measurements: rows that change and those a whole number of turns after one. */
  Updates updates(Refresh refresh) {
    if (!refresh.held()) {
      return rows;
    }
    boolean[] measured = new boolean[rows.size()];
    double turn = refresh.rows();
    for (int i = 0; i < changes.length; i++) {
      measured[changes[i]] = true;
      int next = i + 1 < changes.length ? changes[i + 1] : rows.size();
      for (int k = 1; changes[i] + k * turn <= next - 0.75 * turn; k++) {
        measured[(int) Math.round(changes[i] + k * turn)] = true;
      }
    }
    for (double row = changes[0] - turn; row >= 0; row -= turn) {
      measured[(int) Math.round(row)] = true;
    }
    return rows.where(i -> measured[i]);
  }
}
