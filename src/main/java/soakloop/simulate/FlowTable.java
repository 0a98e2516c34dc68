package soakloop.simulate;

import java.util.Arrays;

/**
 * A positive function of flow and temperature, worked out at places of a grid as they are needed
 * and taken from between them afterwards, so that a correlation costs a run little.
 *
 * <p>Cubic (Catmull-Rom) in the logarithm of flow and in temperature: value and slope are
 * continuous. Ten places to an octave of flow and one each 15 K keep air sides within 0.1 %, and
 * coolant sides within 2 % where they turn turbulent and gain tenfold ({@code FlowTableTest}). Off
 * the grid the function itself is taken. Not thread-safe.
 */
final class FlowTable {
  /** What is tabulated. */
  @FunctionalInterface
  interface Law {
    /**
     * Returns the value, above zero.
     *
     * @param flow in any unit, above zero
     * @param temperature K
     */
    double at(double flow, double temperature);
  }

  private static final double STEP = Math.log(2) / 10;
  private static final double LOWEST = Math.log(1e-6);
  private static final int FLOWS = 370;
  private static final double COLDEST = 200;
  private static final double DEGREES = 15;
  private static final int TEMPERATURES = 24;

  private final Law law;
  private final double[][] known = new double[TEMPERATURES][0];

  private double knownFlow = Double.NaN;
  private double knownPlace;

  FlowTable(Law law) {
    this.law = law;
  }

  /** Returns the value at a flow above zero and a temperature. */
  double at(double flow, double temperature) {
    if (flow != knownFlow) {
      knownFlow = flow;
      knownPlace = (Math.log(flow) - LOWEST) / STEP;
    }
    double u = knownPlace;
    double v = (temperature - COLDEST) / DEGREES;
    int i = (int) u;
    int j = (int) v;
    if (!(u >= 1 && i < FLOWS - 2 && v >= 1 && j < TEMPERATURES - 2)) {
      return law.at(flow, temperature);
    }
    double x = u - i;
    double y = v - j;
    double low = across(i, j - 1, x);
    double here = across(i, j, x);
    double next = across(i, j + 1, x);
    double high = across(i, j + 2, x);
    double value = between(low, here, next, high, y);
    // Beside a fall to next to nothing a cubic dips below it.
    return value > 0 ? value : law.at(flow, temperature);
  }

  private double across(int i, int j, double x) {
    return between(place(i - 1, j), place(i, j), place(i + 1, j), place(i + 2, j), x);
  }

  private double place(int i, int j) {
    if (known[j].length == 0) {
      known[j] = new double[FLOWS];
      Arrays.fill(known[j], Double.NaN);
    }
    double value = known[j][i];
    if (Double.isNaN(value)) {
      value = law.at(Math.exp(LOWEST + i * STEP), COLDEST + j * DEGREES);
      known[j][i] = value;
    }
    return value;
  }

  private static double between(double before, double from, double to, double after, double x) {
    double first = to - before;
    double second = 2 * before - 5 * from + 4 * to - after;
    double third = 3 * (from - to) + after - before;
    return from + 0.5 * x * (first + x * (second + x * third));
  }
}
