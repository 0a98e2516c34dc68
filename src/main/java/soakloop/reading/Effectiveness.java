package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;
import soakloop.quantity.Estimate;

/**
 * The core's effectiveness as a log shows it, against the coolant entering it.
 *
 * <p>Equation: (Tin - Tout) / (Tin - Tc,in) at the counted engine speed, each temperature corrected
 * for its sensor's lag. It is an effectiveness of the moment: a cold heavy core takes more heat
 * than it passes on.
 *
 * <p>Its interval adds, each nine times in ten and independent, an error of each sensor that stays,
 * what is not known of its lag, and noise. Over pulls only the noise averages out.
 *
 * @param pulls one for each pull that allows it
 * @param mean over the pulls that were not aborted; empty if none allows it
 * @param missing channels that it would take
 * @param why why there is none, one sentence; empty if there is one
 */
public record Effectiveness(
    List<OfPull> pulls, Optional<Estimate> mean, List<Signal> missing, String why) {
  private static final List<Signal> NEEDED =
      List.of(Signal.CORE_AIR_IN, Signal.CHARGE_TEMPERATURE, Signal.CORE_COOLANT_IN);

  /** Least difference of air and coolant that a ratio is made of, K: five times a sensor's bias. */
  private static final double LEAST_DIFFERENCE = 10;

  /** How long after a pull's start air sensors are still catching up with its step, s. */
  private static final double SETTLING = 1;

  /** Keeps the lists as they are. */
  public Effectiveness {
    pulls = List.copyOf(pulls);
    missing = List.copyOf(missing);
  }

  /**
   * Effectiveness in one pull.
   *
   * @param pull its number
   * @param value with its 90 % interval [-]
   * @param bias half width from errors of the sensors that stay [-]
   * @param lag half width from what is not known of their lag [-]
   * @param noise half width from noise and steps [-]
   * @param airIn air entering the core, corrected, K
   * @param airOut air leaving it, corrected, K
   * @param coolantIn coolant entering it, corrected, K
   */
  public record OfPull(
      int pull,
      Estimate value,
      double bias,
      double lag,
      double noise,
      double airIn,
      double airOut,
      double coolantIn) {}

  /** Reads it from the channels at the moments at which pulls are counted. */
  static Effectiveness of(
      Channels channels, List<Pull> pulls, OptionalDouble counted, LogOptions options) {
    List<Signal> missing = NEEDED.stream().filter(s -> channels.updates(s).isEmpty()).toList();
    if (!missing.isEmpty()) {
      List<String> names = missing.stream().map(Signal::label).toList();
      return none(missing, "The log lacks " + String.join(", ", names) + ".");
    }
    if (counted.isEmpty()) {
      return none(List.of(), "The pulls have no engine speed in common to be read at.");
    }
    List<OfPull> found = new ArrayList<>();
    List<OfPull> whole = new ArrayList<>();
    for (Pull pull : pulls) {
      Optional<OfPull> one =
          CountedSpeed.passed(channels, pull, counted.getAsDouble())
              .flatMap(when -> ofPull(channels, pull, when, options));
      one.ifPresent(found::add);
      one.filter(o -> !pull.aborted()).ifPresent(whole::add);
    }
    return found.isEmpty()
        ? none(List.of(), "No pull has its three temperatures 10 K apart at the counted speed.")
        : new Effectiveness(found, mean(whole), List.of(), "");
  }

  private static Effectiveness none(List<Signal> missing, String why) {
    return new Effectiveness(List.of(), Optional.empty(), missing, why);
  }

  private static Optional<OfPull> ofPull(
      Channels channels, Pull pull, double when, LogOptions options) {
    double from = pull.start() + SETTLING;
    List<Unlagged> read =
        NEEDED.stream()
            .flatMap(
                signal ->
                    channels
                        .find(signal)
                        .flatMap(c -> Unlagged.of(c, when, from, pull.end(), lag(signal, options)))
                        .stream())
            .toList();
    if (read.size() < NEEDED.size()) {
      return Optional.empty();
    }
    double airIn = read.get(0).value();
    double airOut = read.get(1).value();
    double coolantIn = read.get(2).value();
    double difference = airIn - coolantIn;
    if (!(difference >= LEAST_DIFFERENCE)) {
      return Optional.empty();
    }
    double value = (airIn - airOut) / difference;
    double[] slopes = {(1 - value) / difference, 1 / difference, value / difference};
    double bias = 0;
    double lag = 0;
    double noise = 0;
    for (int i = 0; i < slopes.length; i++) {
      bias = Math.hypot(bias, slopes[i] * options.sensorBias());
      lag = Math.hypot(lag, slopes[i] * read.get(i).lag());
      noise = Math.hypot(noise, slopes[i] * read.get(i).noise());
    }
    Estimate estimate = new Estimate(value, Math.hypot(bias, Math.hypot(lag, noise)));
    return Optional.of(
        new OfPull(pull.number(), estimate, bias, lag, noise, airIn, airOut, coolantIn));
  }

  private static Estimate lag(Signal signal, LogOptions options) {
    return signal == Signal.CORE_COOLANT_IN ? options.coolantLag() : options.airLag();
  }

  private static Optional<Estimate> mean(List<OfPull> pulls) {
    int n = pulls.size();
    if (n == 0) {
      return Optional.empty();
    }
    double value = pulls.stream().mapToDouble(p -> p.value().value()).sum() / n;
    double bias = pulls.stream().mapToDouble(OfPull::bias).sum() / n;
    double lag = pulls.stream().mapToDouble(OfPull::lag).sum() / n;
    double noise = Math.sqrt(pulls.stream().mapToDouble(p -> p.noise() * p.noise()).sum()) / n;
    return Optional.of(new Estimate(value, Math.hypot(bias, Math.hypot(lag, noise))));
  }
}
