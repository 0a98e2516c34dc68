package soakloop.scenario;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.reading.LogReading;
import soakloop.reading.Pull;
import soakloop.reading.Updates;

/** Writes one pull, or several alike as one, as the key {@code pull} takes it. */
final class StarterPulls {
  private static final double RPM = 1.0 / 60;

  /** What a pull sweeps where the log has no engine speed, rev/s. */
  private static final double FROM = 2500 * RPM;

  private static final double TO = 6500 * RPM;

  /** Bend of engine speed over time from which a curve is written, of the sweep [-]. */
  private static final double BENT = 0.03;

  private static final double[] BETWEEN = {0.25, 0.5, 0.75};

  /** Half of the share of a pull over which its speed is averaged [-]. */
  private static final double AROUND = 0.06;

  /** Slowest road speed that is one, m/s. */
  private static final double ROLLS = 3;

  private final LogReading reading;
  private final StarterFigures figures;

  StarterPulls(LogReading reading, StarterFigures figures) {
    this.reading = reading;
    this.figures = figures;
  }

  /** Engine speed at the start of pulls, the mean, rev/s. */
  static double from(List<Pull> pulls) {
    double mean =
        pulls.stream()
            .flatMap(p -> p.sweep().stream())
            .mapToDouble(s -> s.from())
            .average()
            .orElse(FROM);
    return tens(StarterFigures.within("session.pull.from", mean));
  }

  /** Engine speed at their end, the mean, rev/s. */
  static double to(List<Pull> pulls) {
    double mean =
        pulls.stream()
            .flatMap(p -> p.sweep().stream())
            .mapToDouble(s -> s.to())
            .average()
            .orElse(TO);
    return Math.max(tens(StarterFigures.within("session.pull.to", mean)), from(pulls) + 100 * RPM);
  }

  private static double tens(double speed) {
    return StarterFigures.rpm(speed) * RPM;
  }

  /** Their length, the mean, s, to a tenth. */
  static double duration(List<Pull> pulls) {
    double mean = pulls.stream().mapToDouble(Pull::duration).average().orElse(10);
    return Math.round(10 * StarterFigures.within("session.pull.in", mean)) / 10.0;
  }

  /** Returns the section for pulls that are alike. */
  String section(List<Pull> pulls) {
    double from = from(pulls);
    double to = to(pulls);
    double duration = duration(pulls);
    OptionalDouble counted = reading.countedSpeed();
    String end =
        counted.isPresent() && counted.getAsDouble() > from && counted.getAsDouble() <= to
            ? ", counted-to: " + figures.speed(counted.getAsDouble())
            : "";
    return "{" + sweep(pulls, from, to, duration) + end + road(pulls) + "}";
  }

  private String sweep(List<Pull> pulls, double from, double to, double duration) {
    double[] between = new double[BETWEEN.length];
    boolean bent = false;
    for (int i = 0; i < between.length; i++) {
      double straight = from + BETWEEN[i] * (to - from);
      double share = BETWEEN[i];
      double mean = pulls.stream().mapToDouble(p -> at(p, share)).average().orElse(straight);
      between[i] = Double.isNaN(mean) ? straight : Math.max(from, Math.min(to, mean));
      bent |= Math.abs(between[i] - straight) > BENT * (to - from);
    }
    if (!bent) {
      return "from: "
          + figures.speed(from)
          + ", to: "
          + figures.speed(to)
          + ", in: "
          + StarterFigures.seconds(duration);
    }
    StringBuilder curve = new StringBuilder("curve: [[0 s, " + figures.speed(from) + "]");
    for (int i = 0; i < between.length; i++) {
      curve.append(
          String.format(
              java.util.Locale.ROOT,
              ", [%.2f s, %s]",
              BETWEEN[i] * duration,
              figures.speed(between[i])));
    }
    return curve
        .append(", [" + StarterFigures.seconds(duration) + ", " + figures.speed(to) + "]]")
        .toString();
  }

  private double at(Pull pull, double share) {
    double middle = pull.start() + share * pull.duration();
    double around = AROUND * pull.duration();
    Updates speed = reading.updates(Signal.ENGINE_SPEED);
    Updates near = speed.between(middle - around, middle + around);
    return near.isEmpty() ? speed.at(middle) : near.mean();
  }

  private String road(List<Pull> pulls) {
    List<Updates> rolling =
        pulls.stream()
            .map(p -> reading.updates(Signal.ROAD_SPEED).between(p.start(), p.end()))
            .filter(u -> u.size() >= 2 && u.mean() > ROLLS)
            .collect(Collectors.toList());
    if (rolling.size() < pulls.size()) {
      return "";
    }
    double from = rolling.stream().mapToDouble(u -> u.value(0)).average().orElse(0);
    double to = rolling.stream().mapToDouble(u -> u.value(u.size() - 1)).average().orElse(0);
    return ", road-speed: {from: "
        + figures.show(StarterFigures.within("session.pull.road-speed.from", from), Dimension.SPEED)
        + ", to: "
        + figures.show(StarterFigures.within("session.pull.road-speed.to", to), Dimension.SPEED)
        + "}";
  }
}
