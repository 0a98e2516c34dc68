package soakloop.report;

import java.util.ArrayList;
import java.util.List;

/** Readings over engine speed as a pull runs through them, gear by gear. */
final class Sweep {
  /**
   * How fast an engine may slow down within a gear before it counts as a shift or a lift, rpm/s.
   */
  private static final double SHIFT = 800;

  private final List<double[]> readings = new ArrayList<>();

  /**
   * Adds a reading.
   *
   * @param time s, never falling
   * @param speed engine speed, rpm
   * @param value what is read there
   */
  void add(double time, double speed, double value) {
    readings.add(new double[] {time, speed, value});
  }

  /**
   * Returns speed and value of the readings; the value is NaN, a gap, where the speed falls as it
   * does in a shift or after the lift, and at a jump between two readings of one instant.
   */
  double[][] rising() {
    double[][] curve = new double[2][readings.size()];
    for (int i = 0; i < readings.size(); i++) {
      curve[0][i] = readings.get(i)[1];
      curve[1][i] = leads(i) ? readings.get(i)[2] : Double.NaN;
    }
    return curve;
  }

  /** Returns whether the engine comes to a reading, or goes on from it, without falling. */
  private boolean leads(int i) {
    return (i > 0 && steady(readings.get(i - 1), readings.get(i)))
        || (i + 1 < readings.size() && steady(readings.get(i), readings.get(i + 1)));
  }

  private static boolean steady(double[] a, double[] b) {
    double step = b[0] - a[0];
    return step > 0 && (b[1] - a[1]) / step > -SHIFT;
  }
}
