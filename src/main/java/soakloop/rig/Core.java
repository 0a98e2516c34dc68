package soakloop.rig;

import soakloop.flow.Resistance;

/**
 * The charge cooler core.
 *
 * @param name as the scenario calls it
 * @param exchanger its cells' make-up
 */
public record Core(String name, Exchanger exchanger) implements LoopElement {
  @Override
  public Resistance resistance() {
    return exchanger.coolantResistance().orElse(Resistance.NONE);
  }

  @Override
  public double coolantVolume() {
    return exchanger.coolantVolume();
  }
}
