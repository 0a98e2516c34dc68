package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;

/** What is worth saying of a channel's refresh and steps. */
final class ChannelWords {
  private ChannelWords() {}

  static List<Finding> describe(Log log, Channel channel) {
    List<Finding> findings = new ArrayList<>();
    Refresh refresh = channel.refresh();
    if (refresh.held()) {
      findings.add(
          Finding.of(
              Finding.Kind.REFRESH,
              channel.signal(),
              Span.all(log),
              refresh.kind() == Refresh.Kind.IN_TURN ? Sureness.SURE : Sureness.LIKELY,
              String.format(
                  Locale.ROOT,
                  "%s is measured every %s s only (one row in %s) and held between.",
                  name(channel.signal()),
                  number(refresh.period()),
                  number(refresh.rows())),
              "Held rows are left out; what was measured counts at the time it was measured."));
    }
    if (channel.quantum() >= coarse(channel.signal())) {
      String step = step(channel);
      findings.add(
          Finding.of(
              Finding.Kind.RESOLUTION,
              channel.signal(),
              Span.all(log),
              Sureness.SURE,
              name(channel.signal()) + " goes in steps of " + step + ".",
              "Half a step is counted as uncertainty of each value."));
    }
    return findings;
  }

  /** A signal's name as a sentence begins with it. */
  static String name(Signal signal) {
    String plain = signal.label();
    return plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
  }

  /** A number to three figures. */
  static String number(double value) {
    int decimals = value >= 100 ? 0 : value >= 10 ? 1 : 2;
    return String.format(Locale.ROOT, "%." + decimals + "f", value).replaceAll("\\.0+$", "");
  }

  /**
   * The least step that is coarse, SI: from there on half a step is a couple of per cent of what a
   * pull does to the channel, by which pulls differ.
   */
  private static double coarse(Signal signal) {
    return switch (signal.dimension()) {
      case TEMPERATURE -> 0.4;
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> 2e3;
      case ROTATION -> 20.0 / 60;
      case MASS_FLOW -> 0.01;
      case POWER -> 5e3;
      default -> Double.POSITIVE_INFINITY;
    };
  }

  /** A step in the common units that make it a round number, degC or degF, kPa or psi. */
  private static String step(Channel channel) {
    return switch (channel.signal().dimension()) {
      case TEMPERATURE -> round(channel.quantum(), Dimension.TEMPERATURE_DIFFERENCE, "K", "degF");
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE ->
          round(channel.quantum(), Dimension.PRESSURE_DIFFERENCE, "kPa", "psi");
      case ROTATION -> round(channel.quantum(), Dimension.ROTATION, "rpm", "rpm");
      default -> number(channel.quantum()) + " " + channel.signal().dimension().si().symbol();
    };
  }

  private static String round(double quantum, Dimension dimension, String one, String other) {
    double first = dimension.require(one).fromSi(quantum);
    double second = dimension.require(other).fromSi(quantum);
    boolean firstIsRounder = Math.abs(first * 20 - Math.rint(first * 20)) < 1e-4;
    return firstIsRounder ? number(first) + " " + one : number(second) + " " + other;
  }
}
