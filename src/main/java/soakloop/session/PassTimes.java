package soakloop.session;

import soakloop.quantity.Require;

/**
 * What a strip's clocks would show of a pass.
 *
 * @param sixtyFoot time over the first 60 ft, s
 * @param elapsed time from start line to finish line, s
 * @param trapSpeed mean speed over the last 66 ft, m/s
 */
public record PassTimes(double sixtyFoot, double elapsed, double trapSpeed) {
  /** Way over which the first time is taken, m. */
  public static final double SIXTY_FEET = 18.288;

  /** Way before the finish line over which speed is taken, 66 ft (common practice), m. */
  public static final double TRAP = 20.1168;

  /** Checks the parts. */
  public PassTimes {
    Require.positive("60 ft time", sixtyFoot);
    Require.positive("elapsed time", elapsed);
    Require.positive("trap speed", trapSpeed);
  }
}
