package soakloop.log;

import java.util.Locale;
import java.util.Optional;

/**
 * Tells by its values whether a manifold pressure counts from vacuum or from the barometer. With
 * the engine off it reads the barometer or nothing; at idle a throttled engine draws a vacuum,
 * which is well above zero on one scale and below it on the other (common practice, no source).
 *
 * @param absolute whether it counts from vacuum
 * @param reason in words
 */
record PressureKind(boolean absolute, String reason) {
  /** Engine speed under which an engine with a blower makes no boost, rev/s. */
  private static final double IDLING = 1200.0 / 60;

  /** Engine speed under which it does not run, rev/s. */
  private static final double STANDING = 1;

  /** Gauge pressure that no idling engine has but an absolute one shows, Pa. */
  private static final double ABSOLUTE_AT_IDLE = 15e3;

  private static final double GAUGE_AT_IDLE = -15e3;

  /** No absolute pressure is below this, Pa. */
  private static final double BELOW_VACUUM = -3e3;

  /**
   * Looks at a pressure.
   *
   * @param pressure Pa on its own scale
   * @param speed engine speed, rev/s
   */
  static Optional<PressureKind> of(Series pressure, Optional<Series> speed) {
    Stats all = Stats.of(pressure);
    if (all.low() < BELOW_VACUUM) {
      return Optional.of(
          new PressureKind(false, said("goes down to %.0f kPa", all.low()) + ", so gauge"));
    }
    if (speed.isEmpty()) {
      return Optional.empty();
    }
    Series v = speed.get();
    Stats standing =
        v.lowest() < STANDING ? Stats.of(pressure, i -> v.at(i) < STANDING) : Stats.NONE;
    if (standing.count() > 0) {
      if (standing.middle() > 60e3 && standing.middle() < 108e3) {
        return Optional.of(
            new PressureKind(
                true, said("reads %.0f kPa with the engine off, so absolute", standing.middle())));
      }
      if (Math.abs(standing.middle()) < 6e3) {
        return Optional.of(
            new PressureKind(
                false, said("reads %.0f kPa with the engine off, so gauge", standing.middle())));
      }
    }
    Stats idling = Stats.of(pressure, i -> v.at(i) >= STANDING && v.at(i) < IDLING);
    if (idling.count() > 0 && idling.middle() > ABSOLUTE_AT_IDLE && idling.middle() < 95e3) {
      return Optional.of(
          new PressureKind(true, said("reads %.0f kPa at idle, so absolute", idling.middle())));
    }
    if (idling.count() > 0 && idling.middle() < GAUGE_AT_IDLE) {
      return Optional.of(
          new PressureKind(false, said("reads %.0f kPa at idle, so gauge", idling.middle())));
    }
    return Optional.empty();
  }

  private static String said(String format, double pascal) {
    return String.format(Locale.ROOT, format, pascal / 1e3);
  }
}
