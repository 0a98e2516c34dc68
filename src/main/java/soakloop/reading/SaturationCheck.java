package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;

/**
 * Finds pressures and speeds that are cut off at the top: they rise, then show one and the same
 * highest value without a flicker while the engine goes on climbing.
 *
 * <p>A byte of kPa ends at 255 kPa absolute, a byte of km/h at 255 km/h (SAE J1979, parameters 0B
 * and 0D; from memory). Another value is told as possible if the rise into it breaks off sharply: a
 * boost that levels out by itself bends, and flickers by its steps.
 */
final class SaturationCheck {
  private static final double BYTE_PRESSURE = 255e3;
  private static final double BYTE_SPEED = 255 / 3.6;

  /** Half a step of either byte. */
  private static final double BYTE_PRESSURE_WITHIN = 600;

  private static final double BYTE_SPEED_WITHIN = 0.2;

  /** Updates at the highest value, where it is a known end of scale, and where it is not. */
  private static final int UPDATES_AT_KNOWN = 3;

  private static final int UPDATES_AT_OTHER = 8;

  /** Engine speed gained meanwhile where the end of scale is not known, rev/s. */
  private static final double CLIMB = 600.0 / 60;

  /** Updates over which the rise before the break is measured, twice [-]. */
  private static final int BEND = 5;

  /** The later rise, of the earlier one, at the least [-]: what levels out by itself bends. */
  private static final double UNBENT = 0.6;

  /** Steps that it would have gone on rising through, at the least [-]. */
  private static final double MISSED = 10;

  private final Log log;
  private final Updates speed;

  private SaturationCheck(Channels channels) {
    this.log = channels.log();
    this.speed = channels.updates(Signal.ENGINE_SPEED);
  }

  static List<Finding> check(Channels channels) {
    SaturationCheck check = new SaturationCheck(channels);
    List<Finding> findings = new ArrayList<>();
    for (Channel channel : channels.all().values()) {
      check.longest(channel).ifPresent(findings::add);
    }
    return findings;
  }

  private Optional<Finding> longest(Channel channel) {
    boolean known = endOfScale(channel);
    boolean other =
        switch (channel.signal().dimension()) {
          case ABSOLUTE_PRESSURE, GAUGE_PRESSURE -> channel.signal() != Signal.BAROMETER;
          default -> false;
        };
    if (!known && !other) {
      return Optional.empty();
    }
    Updates updates = channel.updates();
    double top = updates.highest();
    List<int[]> plateaus = new ArrayList<>();
    int first = -1;
    for (int i = 0; i <= updates.size(); i++) {
      boolean at = i < updates.size() && updates.value(i) == top;
      if (at && first < 0) {
        first = i;
      } else if (!at && first >= 0) {
        if (known ? i - first >= UPDATES_AT_KNOWN : sharp(channel, first, i)) {
          plateaus.add(new int[] {first, i - 1});
        }
        first = -1;
      }
    }
    return plateaus.isEmpty() ? Optional.empty() : Optional.of(finding(channel, plateaus, known));
  }

  private static boolean endOfScale(Channel channel) {
    double top = channel.updates().highest();
    return switch (channel.signal().dimension()) {
      case ABSOLUTE_PRESSURE -> Math.abs(top - BYTE_PRESSURE) < BYTE_PRESSURE_WITHIN;
      case SPEED -> Math.abs(top - BYTE_SPEED) < BYTE_SPEED_WITHIN;
      default -> false;
    };
  }

  private boolean sharp(Channel channel, int first, int after) {
    Updates u = channel.updates();
    if (after - first < UPDATES_AT_OTHER || first < 1 + 2 * BEND || speed.isEmpty()) {
      return false;
    }
    double before = (u.value(first - 1) - u.value(first - 1 - BEND)) / BEND;
    double earlier = (u.value(first - 1 - BEND) - u.value(first - 1 - 2 * BEND)) / BEND;
    double missed = before * (after - first);
    double climb = speed.near(u.time(after - 1), 1) - speed.near(u.time(first), 1);
    return before > UNBENT * earlier
        && missed > MISSED * Math.max(channel.quantum(), channel.noise())
        && climb > CLIMB;
  }

  private Finding finding(Channel channel, List<int[]> plateaus, boolean known) {
    Updates u = channel.updates();
    int[] first = plateaus.get(0);
    int[] last = plateaus.get(plateaus.size() - 1);
    Dimension dimension = channel.signal().dimension();
    String unit = dimension == Dimension.SPEED ? "km/h" : "kPa";
    String top = dimension.require(unit).format(u.highest(), 0) + " " + unit;
    String times = plateaus.size() == 1 ? "once" : plateaus.size() + " times";
    String end = known ? ", the end of its one-byte scale" : "";
    return Finding.of(
        Finding.Kind.SATURATION,
        channel.signal(),
        Span.of(log, u.time(first[0]), u.time(last[1])),
        known ? Sureness.SURE : Sureness.POSSIBLE,
        ChannelWords.name(channel.signal()) + " stands at " + top + end + ", " + times + ".",
        known
            ? "The true value is at least that; its peaks are lower bounds."
            : "If the sensor ends there, its peaks are lower bounds; a relief valve does the same.");
  }
}
