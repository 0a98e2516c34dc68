package soakloop.rig;

import soakloop.fluid.Ice;
import soakloop.quantity.Require;

/**
 * What the ice of a tank is like: pieces that float and shrink evenly.
 *
 * @param mass put in as the session begins, kg; 0 for none
 * @param temperature that ice goes in with, K, up to 273.15
 * @param conductance between coolant and ice per mass of ice as it goes in, W/(K kg)
 * @param room what the tank holds to the brim, m3
 */
public record TankIce(double mass, double temperature, double conductance, double room) {
  /** Checks the parts. */
  public TankIce {
    Require.notNegative("ice mass", mass);
    Require.within("ice temperature", temperature, 150, Ice.MELTING);
    Require.positive("conductance to the ice", conductance);
    Require.positive("room in the tank", room);
  }

  /**
   * Returns the conductance per mass of cubes or balls: their surface over their mass is 6 / (d
   * density).
   *
   * @param size edge or diameter, m
   * @param coefficient between coolant and ice, W/(m2 K)
   * @return W/(K kg)
   */
  public static double ofPieces(double size, double coefficient) {
    return 6 * coefficient / (Ice.DENSITY * size);
  }
}
