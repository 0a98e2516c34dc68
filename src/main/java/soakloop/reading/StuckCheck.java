package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import soakloop.log.Log;
import soakloop.log.Signal;

/**
 * Finds channels that stand still through a pull although they move in the log's other pulls, or
 * that must move in any pull.
 *
 * <p>A constant stretch outside pulls is no fault: coolant at its thermostat and an engine at idle
 * stand still too.
 */
final class StuckCheck {
  /** Steps by which the channel moves in a usual pull, so that none is a fault [-]. */
  private static final double USUAL_STEPS = 5;

  private StuckCheck() {}

  static List<Finding> check(Channels channels, List<Pull> pulls) {
    List<Finding> findings = new ArrayList<>();
    for (Channel channel : channels.all().values()) {
      if (moves(channel.signal())) {
        check(channels.log(), channel, pulls, findings);
      }
    }
    return findings;
  }

  private static boolean moves(Signal signal) {
    return switch (signal) {
      case BOOST,
          MANIFOLD_PRESSURE,
          BOOST_BEFORE_CORE,
          PRESSURE_BEFORE_CORE,
          CORE_AIR_IN,
          CHARGE_TEMPERATURE,
          CORE_COOLANT_IN,
          CORE_COOLANT_OUT,
          AIR_MASS_FLOW ->
          true;
      default -> false;
    };
  }

  private static void check(Log log, Channel channel, List<Pull> pulls, List<Finding> findings) {
    double[] ranges =
        pulls.stream().mapToDouble(p -> range(channel, p)).filter(Double::isFinite).toArray();
    if (ranges.length == 0) {
      return;
    }
    if (channel.quantum() == 0) {
      findings.add(whole(log, channel));
      return;
    }
    double usual = Numbers.median(ranges);
    for (Pull pull : pulls) {
      if (range(channel, pull) == 0 && usual >= USUAL_STEPS * channel.quantum()) {
        findings.add(one(log, channel, pull));
      }
    }
  }

  /** How far it moves in a pull and the same time after it; NaN of fewer than three updates. */
  private static double range(Channel channel, Pull pull) {
    Updates inside = channel.updates().between(pull.start(), pull.end() + pull.duration());
    return inside.size() < 3 ? Double.NaN : inside.highest() - inside.lowest();
  }

  private static Finding whole(Log log, Channel channel) {
    return Finding.of(
        Finding.Kind.STUCK,
        channel.signal(),
        Span.all(log),
        Sureness.SURE,
        ChannelWords.name(channel.signal()) + " never changes, not even in a pull.",
        "Its values are shown but nothing should be read from them; check the sensor.");
  }

  private static Finding one(Log log, Channel channel, Pull pull) {
    return Finding.of(
        Finding.Kind.STUCK,
        channel.signal(),
        Span.of(log, pull.start(), pull.end()),
        Sureness.LIKELY,
        ChannelWords.name(channel.signal())
            + " stands still through pull "
            + pull.number()
            + " although it moves in the others.",
        "Its values in this pull are left out of the table.");
  }
}
