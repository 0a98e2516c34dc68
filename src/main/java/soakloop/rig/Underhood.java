package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The air around hoses, reservoir and blower: warmer than the day by a share of what the engine
 * coolant is warmer, less so on the road.
 *
 * @param share share at standstill, 0 to 1
 * @param roadSpeed road speed that halves it, m/s
 */
public record Underhood(double share, double roadSpeed) {
  /** Checks the parts. */
  public Underhood {
    Require.within("underhood share", share, 0, 1);
    Require.positive("underhood road speed", roadSpeed);
  }

  /**
   * Returns the air temperature.
   *
   * @param day K
   * @param engineCoolant K
   * @param road road speed, m/s
   * @return K
   */
  public double temperature(double day, double engineCoolant, double road) {
    return day + share / (1 + road / roadSpeed) * (engineCoolant - day);
  }
}
