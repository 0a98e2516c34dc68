package soakloop.session;

import soakloop.quantity.Require;

/**
 * A drag pass to be worked out.
 *
 * <p>Equation: m (1 + rotating) dv/dt = P / v - rolling - drag, never more than the tyres push; P
 * the power at the wheels at full load in the gear that is in. Until first gear reaches the launch
 * speed the clutch slips: the engine turns at launch speed and its torque goes through. While
 * shifting nothing drives. Wind, slope, lift, tyre growth and a converter's gain of torque are left
 * out, and power does not follow the charge temperature.
 *
 * @param vehicle the car
 * @param airDensity of the day, kg/m3
 * @param distance from start line to finish line, m
 * @param rollout way from where the car stands to where the clock starts, m
 * @param launchSpeed engine speed as the clutch is let in, rev/s
 */
public record Pass(
    Vehicle vehicle, double airDensity, double distance, double rollout, double launchSpeed) {
  /** Shortest distance: the first 60 ft and the traps must lie in it, m. */
  public static final double SHORTEST = 40;

  /** Checks the parts. */
  public Pass {
    Require.notNegative("air density", airDensity);
    Require.within("pass distance", distance, SHORTEST, 1e5);
    Require.notNegative("rollout", rollout);
    Require.positive("launch speed", launchSpeed);
    if (!(launchSpeed < vehicle.gearing().shiftAt())) {
      throw new IllegalArgumentException("the launch speed must be below the shift speed");
    }
  }

  /**
   * Works the pass out, to some 1e-8 of its times.
   *
   * @throws IllegalArgumentException if the car does not move or is not there within ten minutes
   */
  public PassCourse run() {
    return new PassRun(this).course();
  }
}
