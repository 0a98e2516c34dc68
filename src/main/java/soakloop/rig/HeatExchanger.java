package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The exchanger that gives the loop's heat to the outside air.
 *
 * @param name as the scenario calls it
 * @param exchanger its cells' make-up
 * @param faceArea area that the air meets, m2
 */
public record HeatExchanger(String name, Exchanger exchanger, double faceArea)
    implements LoopElement {
  /** Checks the parts. */
  public HeatExchanger {
    Require.positive("heat exchanger face area", faceArea);
  }

  @Override
  public double coolantVolume() {
    return exchanger.coolantVolume();
  }
}
