package soakloop.simulate;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Solves {@code (shift - J) x = b} for a Jacobian of fixed pattern.
 *
 * <p>Where numbers will stand is worked out once. Diagonals are taken in the order that makes least
 * new numbers at each turn (H. M. Markowitz, Management Science 3 (1957) 255; from memory), which
 * for coolant going once around is nearly the order it flows in. Factoring is then one walk through
 * prepared lists. There is no pivoting for size: heat flows from warm to cold, so that the diagonal
 * of such a matrix is the largest of its row or nearly so.
 */
final class SparseLu {
  private final int n;

  /** The state eliminated at each turn. */
  private final int[] stateAt;

  private final int[] turnOf;

  /** For each turn, where its part of {@link #right} begins; one more at the end. */
  private final int[] rightFrom;

  /** Turns of the numbers right of each diagonal. */
  private final int[] right;

  /** For each turn, where its part of {@link #below} begins; one more at the end. */
  private final int[] belowFrom;

  /** Turns of the numbers below each diagonal. */
  private final int[] below;

  /**
   * Diagonals, then all that is right of them, then all below; once factored inverted, over their
   * row's diagonal, and over their column's.
   */
  private final double[] numbers;

  /** Turn of the row of each number right of a diagonal, and of the column of each below. */
  private final int[] rowOfRight;

  private final int[] columnOfBelow;

  /** Where the product of each number below and each right of a diagonal is taken off. */
  private final int[] target;

  /** Where each value of the Jacobian goes, and which one. */
  private final int[] valueTo;

  private final int[] valueOf;
  private final double[] x;

  SparseLu(SparseJacobian jacobian) {
    n = jacobian.dynamicStates();
    List<int[]> places = jacobian.places();
    BitSet[] rows = sets();
    BitSet[] columns = sets();
    for (int[] place : places) {
      if (place[0] < n && place[0] != place[1]) {
        rows[place[0]].set(place[1]);
        columns[place[1]].set(place[0]);
      }
    }
    stateAt = new int[n];
    turnOf = new int[n];
    eliminate(rows, columns);
    rightFrom = starts(rows);
    belowFrom = starts(columns);
    right = turns(rows, rightFrom);
    below = turns(columns, belowFrom);
    rowOfRight = owners(rightFrom);
    columnOfBelow = owners(belowFrom);
    numbers = new double[n + right.length + below.length];
    target = targets();
    valueOf = new int[(int) places.stream().filter(p -> p[0] < n).count()];
    valueTo = new int[valueOf.length];
    int v = 0;
    for (int i = 0; i < places.size(); i++) {
      int[] place = places.get(i);
      if (place[0] < n) {
        valueOf[v] = i;
        valueTo[v++] = at(turnOf[place[0]], turnOf[place[1]]);
      }
    }
    x = new double[n];
  }

  private BitSet[] sets() {
    BitSet[] sets = new BitSet[n];
    Arrays.setAll(sets, i -> new BitSet(n));
    return sets;
  }

  /**
   * Chooses the order. Afterwards each state's row and column hold what is right of and below its
   * diagonal.
   */
  private void eliminate(BitSet[] rows, BitSet[] columns) {
    BitSet left = new BitSet(n);
    left.set(0, n);
    long[] cost = new long[n];
    Arrays.setAll(cost, i -> cost(rows[i], columns[i]));
    for (int turn = 0; turn < n; turn++) {
      int chosen = left.nextSetBit(0);
      for (int i = chosen; i >= 0; i = left.nextSetBit(i + 1)) {
        chosen = cost[i] < cost[chosen] ? i : chosen;
      }
      left.clear(chosen);
      stateAt[turn] = chosen;
      turnOf[chosen] = turn;
      BitSet row = rows[chosen];
      BitSet column = columns[chosen];
      for (int i = column.nextSetBit(0); i >= 0; i = column.nextSetBit(i + 1)) {
        boolean diagonal = row.get(i);
        rows[i].or(row);
        rows[i].clear(chosen);
        if (diagonal) {
          rows[i].clear(i);
        }
      }
      for (int j = row.nextSetBit(0); j >= 0; j = row.nextSetBit(j + 1)) {
        boolean diagonal = column.get(j);
        columns[j].or(column);
        columns[j].clear(chosen);
        if (diagonal) {
          columns[j].clear(j);
        }
      }
      for (int i = column.nextSetBit(0); i >= 0; i = column.nextSetBit(i + 1)) {
        cost[i] = cost(rows[i], columns[i]);
      }
      for (int j = row.nextSetBit(0); j >= 0; j = row.nextSetBit(j + 1)) {
        cost[j] = cost(rows[j], columns[j]);
      }
    }
  }

  private static long cost(BitSet row, BitSet column) {
    return (long) row.cardinality() * column.cardinality();
  }

  private int[] starts(BitSet[] sets) {
    int[] starts = new int[n + 1];
    for (int turn = 0; turn < n; turn++) {
      starts[turn + 1] = starts[turn] + sets[stateAt[turn]].cardinality();
    }
    return starts;
  }

  private int[] turns(BitSet[] sets, int[] starts) {
    int[] turns = new int[starts[n]];
    for (int turn = 0; turn < n; turn++) {
      BitSet set = sets[stateAt[turn]];
      int at = starts[turn];
      for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1)) {
        turns[at++] = turnOf[i];
      }
      Arrays.sort(turns, starts[turn], starts[turn + 1]);
    }
    return turns;
  }

  private int[] owners(int[] starts) {
    int[] owners = new int[starts[n]];
    for (int turn = 0; turn < n; turn++) {
      Arrays.fill(owners, starts[turn], starts[turn + 1], turn);
    }
    return owners;
  }

  private int[] targets() {
    int count = 0;
    for (int k = 0; k < n; k++) {
      int product =
          Math.multiplyExact(rightFrom[k + 1] - rightFrom[k], belowFrom[k + 1] - belowFrom[k]);
      count = Math.addExact(count, product);
    }
    int[] all = new int[count];
    int t = 0;
    for (int k = 0; k < n; k++) {
      for (int i = belowFrom[k]; i < belowFrom[k + 1]; i++) {
        for (int j = rightFrom[k]; j < rightFrom[k + 1]; j++) {
          all[t++] = at(below[i], right[j]);
        }
      }
    }
    return all;
  }

  /** Returns where the number of a row and a column stands, both by turn. */
  private int at(int row, int column) {
    if (row == column) {
      return row;
    }
    if (row < column) {
      return n + Arrays.binarySearch(right, rightFrom[row], rightFrom[row + 1], column);
    }
    int index = Arrays.binarySearch(below, belowFrom[column], belowFrom[column + 1], row);
    return n + right.length + index;
  }

  /**
   * Factors {@code shift - J}.
   *
   * @param shift 1/s
   * @param jacobian the Jacobian whose pattern this was made for
   */
  void factor(double shift, SparseJacobian jacobian) {
    Arrays.fill(numbers, n, numbers.length, 0);
    Arrays.fill(numbers, 0, n, shift);
    for (int v = 0; v < valueTo.length; v++) {
      numbers[valueTo[v]] -= jacobian.value(valueOf[v]);
    }
    int lower = n + right.length;
    int t = 0;
    for (int k = 0; k < n; k++) {
      double inverse = 1 / numbers[k];
      numbers[k] = inverse;
      int first = rightFrom[k];
      int end = rightFrom[k + 1];
      for (int i = belowFrom[k]; i < belowFrom[k + 1]; i++) {
        double factor = numbers[lower + i] * inverse;
        numbers[lower + i] = factor;
        for (int j = first; j < end; j++) {
          numbers[target[t++]] -= factor * numbers[n + j];
        }
      }
    }
    for (int j = 0; j < right.length; j++) {
      numbers[n + j] *= numbers[rowOfRight[j]];
    }
  }

  /**
   * Solves for one right side.
   *
   * @param b right side and place for the result
   */
  void solve(double[] b) {
    int lower = n + right.length;
    for (int k = 0; k < n; k++) {
      x[k] = b[stateAt[k]];
    }
    for (int i = 0; i < below.length; i++) {
      x[below[i]] -= numbers[lower + i] * x[columnOfBelow[i]];
    }
    for (int k = 0; k < n; k++) {
      x[k] *= numbers[k];
    }
    for (int j = right.length - 1; j >= 0; j--) {
      x[rowOfRight[j]] -= numbers[n + j] * x[right[j]];
    }
    for (int k = 0; k < n; k++) {
      b[stateAt[k]] = x[k];
    }
  }
}
