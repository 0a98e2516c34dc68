package soakloop.rig;

/**
 * The charge cooler core.
 *
 * @param name as the scenario calls it
 * @param exchanger its cells' make-up
 */
public record Core(String name, Exchanger exchanger) implements LoopElement {
  @Override
  public double coolantVolume() {
    return exchanger.coolantVolume();
  }
}
