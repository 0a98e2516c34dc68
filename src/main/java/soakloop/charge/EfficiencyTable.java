package soakloop.charge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.hipparchus.analysis.interpolation.BicubicInterpolatingFunction;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.PublishedRange;
import soakloop.quantity.Require;

/**
 * Adiabatic efficiency over pressure ratio and blower speed, bicubic between the points.
 *
 * <p>Outside the table the value at its nearest edge is taken and said to be so: a table is never
 * extended. The surface passes through the points with continuous slopes (Hipparchus), and is exact
 * for a plane. The slope at a point is that of the parabola through it and its neighbours, at an
 * edge that of the straight line to the next point: Hipparchus' own interpolator makes edges level.
 */
public final class EfficiencyTable {
  private static final String NAME = "blower efficiency table";
  private static final int CHECKS_PER_CELL = 4;

  private final BicubicInterpolatingFunction surface;
  private final PublishedRange ratios;
  private final PublishedRange speeds;
  private final double[][] points;

  private EfficiencyTable(double[] ratios, double[] speeds, double[][] efficiency) {
    double[][] alongRatio = transposed(slopes(ratios, transposed(efficiency)));
    double[][] alongSpeed = slopes(speeds, efficiency);
    double[][] twist = transposed(slopes(ratios, transposed(alongSpeed)));
    surface =
        new BicubicInterpolatingFunction(ratios, speeds, efficiency, alongRatio, alongSpeed, twist);
    this.ratios = range("pressure ratio", ratios);
    this.speeds = range("blower speed in rev/s", speeds);
    this.points =
        Stream.concat(Stream.of(ratios, speeds), Stream.of(efficiency))
            .map(double[]::clone)
            .toArray(double[][]::new);
  }

  /** Slope of each row at each place. */
  private static double[][] slopes(double[] places, double[][] rows) {
    int last = places.length - 1;
    double[][] slopes = new double[rows.length][places.length];
    for (int r = 0; r < rows.length; r++) {
      double[] row = rows[r];
      double before = slope(places, row, 0);
      slopes[r][0] = before;
      for (int i = 1; i < last; i++) {
        double after = slope(places, row, i);
        double width = places[i + 1] - places[i - 1];
        slopes[r][i] =
            (before * (places[i + 1] - places[i]) + after * (places[i] - places[i - 1])) / width;
        before = after;
      }
      slopes[r][last] = before;
    }
    return slopes;
  }

  private static double slope(double[] places, double[] row, int i) {
    return (row[i + 1] - row[i]) / (places[i + 1] - places[i]);
  }

  private static double[][] transposed(double[][] rows) {
    double[][] columns = new double[rows[0].length][rows.length];
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < columns.length; j++) {
        columns[j][i] = rows[i][j];
      }
    }
    return columns;
  }

  private static PublishedRange range(String what, double[] places) {
    return new PublishedRange(NAME, what, places[0], places[places.length - 1]);
  }

  /**
   * A value of the table.
   *
   * @param efficiency adiabatic efficiency [-]
   * @param outside what lay outside the table; empty if nothing
   */
  public record Reading(double efficiency, List<OutsideRange> outside) {
    /** Copies the list. */
    public Reading {
      outside = List.copyOf(outside);
    }
  }

  /**
   * Makes a table.
   *
   * @param ratios pressure ratios, rising, 1 or more, at least two
   * @param speeds blower speeds, rev/s, rising, at least two
   * @param efficiency [ratio][speed], above 0 to 1
   * @throws IllegalArgumentException if the sizes do not match, places do not rise, a value is
   *     outside, or points are so uneven that the surface between them leaves 0 to 1
   */
  public static EfficiencyTable of(double[] ratios, double[] speeds, double[][] efficiency) {
    rising("pressure ratios", ratios, 1);
    rising("speeds", speeds, 0);
    if (efficiency.length != ratios.length) {
      throw new IllegalArgumentException(
          "an efficiency table needs " + ratios.length + " rows, not " + efficiency.length);
    }
    for (double[] row : efficiency) {
      if (row.length != speeds.length) {
        throw new IllegalArgumentException(
            "an efficiency table needs " + speeds.length + " columns, not " + row.length);
      }
      for (double value : row) {
        Require.positive("adiabatic efficiency", value);
        Require.within("adiabatic efficiency", value, 0, 1);
      }
    }
    EfficiencyTable table = new EfficiencyTable(ratios, speeds, efficiency);
    table.checkSurface(ratios, speeds);
    return table;
  }

  /**
   * Reads the table.
   *
   * @param pressureRatio any finite number
   * @param speed blower speed, rev/s
   * @return the value, at the nearest edge if outside, and what was outside
   */
  public Reading at(double pressureRatio, double speed) {
    List<OutsideRange> outside = new ArrayList<>();
    check(pressureRatio, speed, outside::add);
    return new Reading(value(pressureRatio, speed), outside);
  }

  /**
   * Reads the table without saying what lay outside, which {@link #check} tells.
   *
   * @param pressureRatio any finite number
   * @param speed blower speed, rev/s
   * @return efficiency [-], at the nearest edge if outside
   */
  public double value(double pressureRatio, double speed) {
    Require.finite("pressure ratio", pressureRatio);
    Require.finite("blower speed", speed);
    return surface.value(held(ratios, pressureRatio), held(speeds, speed));
  }

  /**
   * Tells what lies outside the table.
   *
   * @param pressureRatio any number
   * @param speed blower speed, rev/s
   * @param listener told once for each of the two
   */
  public void check(double pressureRatio, double speed, Consumer<? super OutsideRange> listener) {
    ratios.check(pressureRatio, listener);
    speeds.check(speed, listener);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof EfficiencyTable t && Arrays.deepEquals(points, t.points);
  }

  @Override
  public int hashCode() {
    return Arrays.deepHashCode(points);
  }

  private static double held(PublishedRange range, double value) {
    return Math.max(range.low(), Math.min(range.high(), value));
  }

  private void checkSurface(double[] ratioPlaces, double[] speedPlaces) {
    for (int i = 0; i < CHECKS_PER_CELL * (ratioPlaces.length - 1); i++) {
      for (int j = 0; j < CHECKS_PER_CELL * (speedPlaces.length - 1); j++) {
        double value = surface.value(between(ratioPlaces, i), between(speedPlaces, j));
        if (!(value > 0 && value <= 1)) {
          throw new IllegalArgumentException(
              "an efficiency table too uneven to interpolate: it gives " + value + " in between");
        }
      }
    }
  }

  private static double between(double[] places, int step) {
    int i = step / CHECKS_PER_CELL;
    double share = (double) (step % CHECKS_PER_CELL) / CHECKS_PER_CELL;
    return places[i] + share * (places[i + 1] - places[i]);
  }

  private static void rising(String what, double[] places, double least) {
    if (places.length < 2) {
      throw new IllegalArgumentException("an efficiency table needs two " + what + " or more");
    }
    for (int i = 0; i < places.length; i++) {
      Require.within(what, places[i], least, 1e6);
      if (i > 0 && !(places[i] > places[i - 1])) {
        throw new IllegalArgumentException(
            what + " must rise: " + places[i - 1] + ", " + places[i]);
      }
    }
  }
}
