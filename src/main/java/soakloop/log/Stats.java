package soakloop.log;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Where most values of a column lie, by a few thousand of them taken evenly.
 *
 * @param count values looked at
 * @param low 2 % lie below
 * @param middle half lie below
 * @param high 98 % lie below
 * @param top 99.5 % lie below: what a single pull of a long drive reaches
 */
record Stats(int count, double low, double middle, double high, double top) {
  /** Of no values. */
  static final Stats NONE = new Stats(0, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

  private static final int SAMPLED = 1024;
  private static final int ENOUGH = 200;

  /** Looks at a column. */
  static Stats of(Series values) {
    return of(values, row -> true);
  }

  /** Looks at a column's rows of some kind. */
  static Stats of(Series values, IntPredicate rows) {
    double[] seen = sample(values, rows, stride(values.size() / SAMPLED));
    if (seen.length < ENOUGH && values.size() > SAMPLED) {
      seen = sample(values, rows, 1);
    }
    int n = seen.length;
    if (n == 0) {
      return NONE;
    }
    Arrays.sort(seen);
    return new Stats(
        n,
        seen[(int) (0.02 * (n - 1))],
        seen[(n - 1) / 2],
        seen[(int) Math.ceil(0.98 * (n - 1))],
        seen[(int) Math.ceil(0.995 * (n - 1))]);
  }

  /** A step that no channels polled in turn keep time with: no multiple of 2, 3, 5 or 7. */
  private static int stride(int atLeast) {
    int stride = Math.max(1, atLeast);
    while (stride > 1
        && (stride % 2 == 0 || stride % 3 == 0 || stride % 5 == 0 || stride % 7 == 0)) {
      stride++;
    }
    return stride;
  }

  private static double[] sample(Series values, IntPredicate rows, int stride) {
    double[] seen = new double[2 * SAMPLED];
    int n = 0;
    for (long i = 0; i < values.size() && n < seen.length; i += stride) {
      if (rows.test((int) i)) {
        double value = values.at((int) i);
        if (!Double.isNaN(value)) {
          seen[n++] = value;
        }
      }
    }
    return Arrays.copyOf(seen, n);
  }

  /** The same in SI. */
  Stats in(soakloop.quantity.Unit unit) {
    return new Stats(count, unit.toSi(low), unit.toSi(middle), unit.toSi(high), unit.toSi(top));
  }
}
