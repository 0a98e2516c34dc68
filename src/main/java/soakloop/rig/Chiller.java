package soakloop.rig;

import soakloop.flow.Resistance;
import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/**
 * A refrigerant chiller in the loop: it takes heat out of the coolant at a rate that follows the
 * coolant's temperature, and gives it off elsewhere.
 *
 * @param name as the scenario calls it
 * @param coolantVolume m3
 * @param capacity heat it takes, W, over the temperature of the coolant leaving it, K
 * @param fadingFlow coolant flow at which 63 % of that is left, m3/s; none is at no flow
 * @param coldest coolant leaving it at which it gives nothing any more, K
 * @param performance heat taken over the power that drives it
 * @param drive what drives it
 * @param resistance what it costs the coolant in pressure
 */
public record Chiller(
    String name,
    double coolantVolume,
    Curve capacity,
    double fadingFlow,
    double coldest,
    double performance,
    Drive drive,
    Resistance resistance)
    implements LoopElement {
  /** Above the coldest coolant, capacity fades over so much, K. */
  private static final double FADING = 3;

  /** What drives a chiller. */
  public enum Drive {
    /** The engine's belt: it stands while the engine is off. */
    ENGINE,
    /** A motor of its own. */
    ELECTRIC
  }

  /** Checks the parts. */
  public Chiller {
    Require.positive("chiller coolant volume", coolantVolume);
    Require.positive("chiller fading flow", fadingFlow);
    Require.within("coldest coolant of a chiller", coldest, 200, 400);
    Require.positive("chiller performance", performance);
    for (int i = 0; i < capacity.size(); i++) {
      Require.notNegative("chiller capacity", capacity.value(i));
    }
  }

  /**
   * Returns the heat it takes while it runs, W.
   *
   * @param leaving temperature of the coolant leaving it, K
   * @param flow coolant flow, m3/s
   */
  public double heat(double leaving, double flow) {
    double over = Math.max(0, Math.min(1, (leaving - coldest) / FADING));
    double warmEnough = over * over * (3 - 2 * over);
    return capacity.at(leaving) * warmEnough * -Math.expm1(-flow / fadingFlow);
  }
}
