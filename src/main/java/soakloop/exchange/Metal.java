package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * A metal of fins, tubes and plates.
 *
 * @param conductivity W/(m K)
 * @param density kg/m3
 * @param heatCapacity J/(kg K)
 */
public record Metal(double conductivity, double density, double heatCapacity) {
  /**
   * Brazed aluminium alloy: conductivity 180 W/(m K), 2700 kg/m3, 903 J/(kg K); from memory, the
   * conductivity of brazed sheet lies between about 150 and 200.
   */
  public static final Metal ALUMINIUM = new Metal(180, 2700, 903);

  /** Checks the parts. */
  public Metal {
    Require.positive("metal conductivity", conductivity);
    Require.positive("metal density", density);
    Require.positive("metal heat capacity", heatCapacity);
  }
}
