package soakloop.log;

import java.util.Arrays;

/**
 * Where most values of a column lie, by a few thousand of them taken evenly.
 *
 * @param count values looked at
 * @param low 2 % lie below
 * @param middle half lie below
 * @param high 98 % lie below
 */
record Stats(int count, double low, double middle, double high) {
  private static final int SAMPLED = 4096;

  /** Looks at a column. */
  static Stats of(Series values) {
    return of(values, row -> true);
  }

  /** Looks at a column's rows of some kind. */
  static Stats of(Series values, java.util.function.IntPredicate rows) {
    int every = Math.max(1, values.size() / (4 * SAMPLED));
    double[] seen = new double[Math.min(values.size(), 8 * SAMPLED)];
    int n = 0;
    for (int i = 0; i < values.size() && n < seen.length; i += every) {
      double value = values.at(i);
      if (!Double.isNaN(value) && rows.test(i)) {
        seen[n++] = value;
      }
    }
    if (n == 0) {
      return new Stats(0, Double.NaN, Double.NaN, Double.NaN);
    }
    double[] sorted = Arrays.copyOf(seen, n);
    Arrays.sort(sorted);
    return new Stats(
        n,
        sorted[(int) (0.02 * (n - 1))],
        sorted[(n - 1) / 2],
        sorted[(int) Math.ceil(0.98 * (n - 1))]);
  }

  /** The same in SI. */
  Stats in(soakloop.quantity.Unit unit) {
    return new Stats(count, unit.toSi(low), unit.toSi(middle), unit.toSi(high));
  }
}
