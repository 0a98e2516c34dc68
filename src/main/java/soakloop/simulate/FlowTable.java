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

  // The square of the grid that was asked for last: four rows of a cubic's factors.
  private final double[] cubics = new double[16];
  private int cellFlow = -1;
  private int cellTemperature = -1;

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
    if (i != cellFlow || j != cellTemperature) {
      enter(i, j);
    }
    double x = u - i;
    double value = between(row(0, x), row(1, x), row(2, x), row(3, x), v - j);
    // Beside a fall to next to nothing a cubic dips below it.
    return value > 0 ? value : law.at(flow, temperature);
  }

  /** Takes up the square of the grid that is asked for: its four cubics over flow. */
  private void enter(int i, int j) {
    for (int row = 0; row < 4; row++) {
      int at = j - 1 + row;
      double before = place(i - 1, at);
      double from = place(i, at);
      double to = place(i + 1, at);
      double after = place(i + 2, at);
      cubics[4 * row] = from;
      cubics[4 * row + 1] = 0.5 * (to - before);
      cubics[4 * row + 2] = 0.5 * (2 * before - 5 * from + 4 * to - after);
      cubics[4 * row + 3] = 0.5 * (3 * (from - to) + after - before);
    }
    cellFlow = i;
    cellTemperature = j;
  }

  private double row(int row, double x) {
    int k = 4 * row;
    return cubics[k] + x * (cubics[k + 1] + x * (cubics[k + 2] + x * cubics[k + 3]));
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
