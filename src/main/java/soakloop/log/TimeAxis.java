package soakloop.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Makes strictly rising times of a file's. Rows without a time or with one that goes back are left
 * out; rows that share a rounded stamp are spread evenly up to the next; where time begins again
 * the second run is put behind the first.
 *
 * @param time s, strictly rising
 * @param rows the file's row (index from 0) of each, empty if all rows are there in order
 * @param remarks what was wrong and what was done
 */
record TimeAxis(Series time, Optional<Series> rows, List<Remark> remarks) {
  /** Share of rows with their predecessor's time above which stamps are rounded ones. */
  private static final double ROUNDED = 0.2;

  /** Pause put between two runs of one file, s; the true one is not known. */
  static final double PAUSE = 60;

  /** A gap is so many usual steps, and at least as long as the next. */
  private static final double GAP_STEPS = 5;

  /** Shortest gap worth a word, s. */
  private static final double GAP = 1;

  private static final int MOST_REMARKS = 20;
  private static final int SAMPLED = 4096;

  /**
   * Makes the axis.
   *
   * @param raw times as the file has them, s; NaN where a row has none
   * @param lines the file's line of each row
   */
  static TimeAxis of(Series raw, Series lines) {
    return new Maker(raw, lines).make();
  }

  /**
   * Makes even times.
   *
   * @param rate rows a second
   */
  static TimeAxis even(int rows, double rate) {
    PackedColumn.Builder time = new PackedColumn.Builder();
    for (int i = 0; i < rows; i++) {
      time.add(i / rate);
    }
    return new TimeAxis(time.build(), Optional.empty(), List.of());
  }

  private static final class Maker {
    private final Series raw;
    private final Series lines;
    private final int n;
    private final List<Remark> remarks = new ArrayList<>();
    private int missing;
    private int firstMissing = -1;
    private int lastMissing;
    private long rising;
    private long equal;
    private long falling;
    private double step;
    private boolean reversed;
    private final PackedColumn.Builder time = new PackedColumn.Builder();
    private final PackedColumn.Builder kept = new PackedColumn.Builder();
    private double offset;
    private double lastRaw = Double.NaN;
    private double lastOut = Double.NEGATIVE_INFINITY;
    private long repeats;
    private long firstRepeat;
    private long lastRepeat;
    private long backs;
    private long firstBack;
    private long lastBack;

    Maker(Series raw, Series lines) {
      this.raw = raw;
      this.lines = lines;
      this.n = raw.size();
    }

    TimeAxis make() {
      survey();
      TimeAxis axis;
      if (missing == 0 && equal == 0 && falling == 0) {
        axis = new TimeAxis(raw, Optional.empty(), remarks);
      } else {
        noteMissing();
        reversed = falling > rising;
        if (reversed) {
          remarks.add(
              new Remark(
                  Remark.Kind.TIME_FALLS,
                  line(0),
                  line(n - 1),
                  "time falls from row to row: the file is read from its end"));
        }
        boolean rounded = equal > ROUNDED * (rising + falling + equal);
        if (rounded) {
          spread();
        } else {
          keepRising();
        }
        axis = new TimeAxis(time.build(), Optional.of(kept.build()), remarks);
      }
      gaps(axis);
      return axis;
    }

    private void survey() {
      double[] steps = new double[SAMPLED];
      int count = 0;
      int every = Math.max(1, n / SAMPLED);
      double before = Double.NaN;
      for (int i = 0; i < n; i++) {
        double t = raw.at(i);
        if (Double.isNaN(t)) {
          firstMissing = missing++ == 0 ? i : firstMissing;
          lastMissing = i;
          continue;
        }
        double d = t - before;
        before = t;
        if (d > 0) {
          rising++;
        } else if (d < 0) {
          falling++;
        } else if (d == 0) {
          equal++;
        }
        if (d != 0 && !Double.isNaN(d) && i % every == 0 && count < SAMPLED) {
          steps[count++] = Math.abs(d);
        }
      }
      double[] sorted = Arrays.copyOf(steps, count);
      Arrays.sort(sorted);
      step = count == 0 ? 0 : sorted[count / 2];
    }

    private void noteMissing() {
      if (missing == 0) {
        return;
      }
      remarks.add(
          new Remark(
              Remark.Kind.ROWS,
              line(firstMissing),
              line(lastMissing),
              missing == 1
                  ? "row " + line(firstMissing) + " has no time; left out"
                  : missing
                      + " rows, the first row "
                      + line(firstMissing)
                      + ", have no time; left out"));
    }

    private double at(int i) {
      return raw.at(reversed ? n - 1 - i : i);
    }

    private int row(int i) {
      return reversed ? n - 1 - i : i;
    }

    private long line(int row) {
      return (long) lines.at(row);
    }

    private void keepRising() {
      for (int i = 0; i < n; i++) {
        double t = at(i);
        if (Double.isNaN(t)) {
          continue;
        }
        if (t < lastRaw && restarts(i)) {
          restart(i, t);
        }
        if (t > lastRaw || Double.isNaN(lastRaw)) {
          put(i, t + offset);
          lastRaw = t;
        } else if (t == lastRaw) {
          firstRepeat = repeats++ == 0 ? line(row(i)) : firstRepeat;
          lastRepeat = line(row(i));
        } else {
          firstBack = backs++ == 0 ? line(row(i)) : firstBack;
          lastBack = line(row(i));
        }
      }
      noteDropped();
    }

    private void noteDropped() {
      if (repeats > 0) {
        remarks.add(
            new Remark(
                Remark.Kind.TIME_REPEATS,
                firstRepeat,
                lastRepeat,
                rows(repeats, firstRepeat, "has", "have")
                    + " the time of the row before; left out"));
      }
      if (backs > 0) {
        remarks.add(
            new Remark(
                Remark.Kind.TIME_FALLS,
                firstBack,
                lastBack,
                rows(backs, firstBack, "goes", "go") + " back in time; left out"));
      }
    }

    private static String rows(long count, long first, String one, String many) {
      return count == 1
          ? "row " + first + " " + one
          : count + " rows, the first row " + first + ", " + many;
    }

    /** Whether the rows that follow stay below the last time too. */
    private boolean restarts(int i) {
      int below = 0;
      int seen = 0;
      for (int k = i + 1; k < n && seen < 3; k++) {
        double t = at(k);
        if (!Double.isNaN(t)) {
          seen++;
          below += t < lastRaw && t >= at(i) ? 1 : 0;
        }
      }
      return seen > 0 && below == seen;
    }

    private void restart(int i, double t) {
      offset = lastOut + PAUSE - t;
      lastRaw = Double.NaN;
      if (remarks.size() < MOST_REMARKS) {
        remarks.add(
            new Remark(
                Remark.Kind.TIME_RESTARTS,
                line(row(i)),
                line(row(i)),
                String.format(
                    Locale.ROOT,
                    "row %d: time begins again; what follows is put %.0f s behind what was, the"
                        + " true pause is not known",
                    line(row(i)),
                    PAUSE)));
      }
    }

    private void put(int i, double t) {
      if (t > lastOut) {
        time.add(t);
        kept.add(row(i), 0);
        lastOut = t;
      }
    }

    /** Spreads rows of one rounded stamp evenly up to the next stamp. */
    private void spread() {
      double usual = step * (rising + falling + 1) / (1.0 + rising + falling + equal);
      long spread = 0;
      int i = 0;
      boolean first = true;
      while (i < n) {
        if (Double.isNaN(at(i))) {
          i++;
          continue;
        }
        double t = at(i);
        int end = i + 1;
        int rows = 1;
        while (end < n && !(at(end) != t && !Double.isNaN(at(end)))) {
          rows += Double.isNaN(at(end)) ? 0 : 1;
          end++;
        }
        if (t < lastRaw && end < n && at(end) < lastRaw) {
          restart(i, t);
          first = true;
        }
        double width = end < n ? at(end) - t : Double.NaN;
        boolean whole = width > 0 && width < GAP_STEPS * step;
        double each = whole ? width / rows : usual;
        if ((first || !whole) && rows < 0.75 * step / usual) {
          each = Math.min(each, usual);
        }
        double start = first && whole ? t + width - rows * each : t;
        int k = 0;
        for (int j = i; j < end; j++) {
          if (!Double.isNaN(at(j))) {
            put(j, start + offset + k++ * each);
          }
        }
        spread += rows > 1 ? rows : 0;
        lastRaw = t;
        first = false;
        i = end;
      }
      remarks.add(
          new Remark(
              Remark.Kind.TIME_REPEATS,
              line(0),
              line(n - 1),
              String.format(
                  Locale.ROOT,
                  "times are rounded to %s s: %d rows share theirs with a neighbour and are spread"
                      + " evenly, %s s apart",
                  shortest(step),
                  spread,
                  shortest(usual))));
    }

    private static String shortest(double seconds) {
      return String.format(Locale.ROOT, "%.3g", seconds)
          .replaceFirst("(\\.\\d*?)0+$", "$1")
          .replaceFirst("\\.$", "");
    }

    private boolean isRestart(long line) {
      return remarks.stream()
          .anyMatch(r -> r.kind() == Remark.Kind.TIME_RESTARTS && r.firstRow() == line);
    }

    private void gaps(TimeAxis axis) {
      int found = 0;
      Series t = axis.time();
      double usual = step;
      for (int i = 1; i < t.size(); i++) {
        double d = t.at(i) - t.at(i - 1);
        if (d > GAP && d > GAP_STEPS * usual && !isRestart(line(axis.row(i)))) {
          if (found++ < MOST_REMARKS) {
            long before = line(axis.row(i - 1));
            long after = line(axis.row(i));
            remarks.add(
                new Remark(
                    Remark.Kind.TIME_GAP,
                    before,
                    after,
                    String.format(
                        Locale.ROOT,
                        "%.1f s without rows between rows %d and %d",
                        d,
                        before,
                        after)));
          }
        }
      }
    }
  }

  /** Returns the file's row (index from 0) of a row of the axis. */
  int row(int i) {
    return rows.isPresent() ? (int) rows.get().at(i) : i;
  }
}
