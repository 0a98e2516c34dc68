package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The air around hoses, reservoir and blower: warmer than the day by a share of what the engine
 * coolant is warmer, less so on the road and with the hood open.
 *
 * @param share share at standstill, 0 to 1
 * @param roadSpeed road speed that halves it, m/s
 * @param openHood how much of it is left with the hood open, 0 to 1
 */
public record Underhood(double share, double roadSpeed, double openHood) {
  /** Checks the parts. */
  public Underhood {
    Require.within("underhood share", share, 0, 1);
    Require.positive("underhood road speed", roadSpeed);
    Require.within("underhood share with the hood open", openHood, 0, 1);
  }

  /**
   * Returns the air temperature.
   *
   * @param day K
   * @param engineCoolant K
   * @param road road speed, m/s
   * @param open whether the hood stands open
   * @return K
   */
  public double temperature(double day, double engineCoolant, double road, boolean open) {
    double left = open ? openHood : 1;
    return day + left * share / (1 + road / roadSpeed) * (engineCoolant - day);
  }
}
