package soakloop.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.reading.LogReading;
import soakloop.reading.Pull;
import soakloop.reading.Updates;

/**
 * A channel of a log over engine speed at full load: medians of what all whole pulls show around a
 * few speeds, so that neither noise nor one odd pull bends it.
 */
final class StarterBoost {
  private static final double RPM = 1.0 / 60;

  /** Distance of the points, rev/s, and how far around each values count. */
  private static final double STEP = 1000 * RPM;

  private static final double AROUND = 350 * RPM;

  /** How long after its start a pull still fills the manifold, s, and its share at the most [-]. */
  private static final double FILLING = 1.2;

  private static final double FILLING_SHARE = 0.3;

  private final LogReading reading;
  private final List<Pull> pulls;

  StarterBoost(LogReading reading) {
    this.reading = reading;
    List<Pull> swept = reading.pulls().stream().filter(p -> p.sweep().isPresent()).toList();
    List<Pull> whole = swept.stream().filter(p -> !p.aborted()).toList();
    this.pulls = whole.isEmpty() ? swept : whole;
  }

  /** The pulls that are read. */
  List<Pull> pulls() {
    return pulls;
  }

  /**
   * Reads a channel.
   *
   * @return its values over engine speed in rev/s, the places whole tens of rpm; none if the log
   *     does not tell
   */
  List<double[]> over(Signal signal) {
    Updates values = reading.usable(signal);
    List<double[]> points = new ArrayList<>();
    OptionalDouble low = pulls.stream().mapToDouble(p -> speeds().at(filled(p))).min();
    double high = pulls.stream().mapToDouble(p -> p.sweep().orElseThrow().to()).max().orElse(0);
    if (values.isEmpty() || low.isEmpty()) {
      return points;
    }
    int spans = Math.max(1, (int) Math.round((high - low.getAsDouble()) / STEP));
    double step = (high - low.getAsDouble()) / spans;
    for (int i = 0; i <= spans; i++) {
      point(values, low.getAsDouble() + i * step).ifPresent(p -> add(points, p));
    }
    return points;
  }

  private Curve speeds() {
    return reading.curve(Signal.ENGINE_SPEED).orElse(Curve.constant(0));
  }

  /** When a pull's manifold is filled, s. */
  private static double filled(Pull pull) {
    return pull.start() + Math.min(FILLING, FILLING_SHARE * pull.duration());
  }

  private static void add(List<double[]> points, double[] point) {
    if (points.isEmpty() || point[0] > points.get(points.size() - 1)[0] + 100 * RPM) {
      points.add(point);
    }
  }

  private Optional<double[]> point(Updates values, double speed) {
    Curve speeds = speeds();
    List<double[]> near = new ArrayList<>();
    for (Pull pull : pulls) {
      Updates inside = values.between(filled(pull), pull.end());
      for (int k = 0; k < inside.size(); k++) {
        double at = speeds.at(inside.time(k));
        if (Math.abs(at - speed) <= AROUND) {
          near.add(new double[] {at, inside.value(k)});
        }
      }
    }
    if (near.isEmpty()) {
      return Optional.empty();
    }
    double place = StarterFigures.rpm(median(near, 0)) * RPM;
    return Optional.of(new double[] {place, median(near, 1)});
  }

  private static double median(List<double[]> rows, int column) {
    return median(rows.stream().mapToDouble(r -> r[column]).toArray());
  }

  /** The middle one of some numbers; NaN of none. */
  static double median(double... values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }
}
