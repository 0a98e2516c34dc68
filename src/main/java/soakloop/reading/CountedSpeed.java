package soakloop.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;

/** The engine speed at which all pulls are read, and when each passes it. */
final class CountedSpeed {
  private static final double RPM = 1.0 / 60;

  /** What makes a speed round. */
  private static final double ROUND = 250 * RPM;

  /** How far it stays under the lowest top: an end is not known better. */
  private static final double BELOW = 50 * RPM;

  private CountedSpeed() {}

  /**
   * The highest round speed that every whole pull passes; empty if there is none, as where pulls
   * have no speed in common.
   */
  static OptionalDouble common(List<Pull> pulls) {
    List<Pull.Sweep> whole =
        pulls.stream().filter(p -> !p.aborted()).flatMap(p -> p.sweep().stream()).toList();
    double lowestTop =
        whole.stream().mapToDouble(Pull.Sweep::to).min().orElse(Double.NEGATIVE_INFINITY);
    double highestFoot = whole.stream().mapToDouble(Pull.Sweep::from).max().orElse(0);
    double round = Math.floor((lowestTop - BELOW) / ROUND) * ROUND;
    return round > highestFoot ? OptionalDouble.of(round) : OptionalDouble.empty();
  }

  /**
   * When a pull passes a speed, by a line or parabola through its updates within a second, s; empty
   * if it does not.
   */
  static Optional<Double> passed(Channels channels, Pull pull, double counted) {
    Updates speed = channels.updates(Signal.ENGINE_SPEED);
    Optional<Pull.Sweep> sweep = pull.sweep();
    if (sweep.isEmpty() || counted < sweep.get().from() || counted > sweep.get().to()) {
      return Optional.empty();
    }
    double first = crossing(speed.between(pull.start(), pull.end()), pull, sweep.get(), counted);
    double reach = Math.max(1, 3 * speed.spacing());
    Updates near =
        speed.between(Math.max(pull.start(), first - reach), Math.min(pull.end(), first + reach));
    int degree = near.size() >= 8 ? 2 : 1;
    double passed =
        LeastSquares.fit(near, LeastSquares.powers(first, degree))
            .map(fit -> first + (counted - fit.factor(0)) / fit.factor(1))
            .filter(t -> Math.abs(t - first) <= reach)
            .orElse(first);
    return Optional.of(Math.max(pull.start(), Math.min(pull.end(), passed)));
  }

  private static double crossing(Updates inside, Pull pull, Pull.Sweep sweep, double counted) {
    for (int i = 1; i < inside.size(); i++) {
      if (inside.value(i) >= counted && inside.value(i - 1) < counted) {
        double share = (counted - inside.value(i - 1)) / (inside.value(i) - inside.value(i - 1));
        return inside.time(i - 1) + share * (inside.time(i) - inside.time(i - 1));
      }
    }
    return pull.start() + (counted - sweep.from()) / sweep.rate();
  }
}
