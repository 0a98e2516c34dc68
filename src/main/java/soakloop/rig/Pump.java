package soakloop.rig;

import soakloop.quantity.Require;

/**
 * The coolant pump.
 *
 * @param name as the scenario calls it
 * @param delivery what it gives when on
 * @param power what it draws when on, W; all of it ends as heat in the coolant
 * @param coolantVolume m3
 */
public record Pump(String name, PumpDelivery delivery, double power, double coolantVolume)
    implements LoopElement {
  /** Checks the parts. */
  public Pump {
    Require.notNegative("pump power", power);
    Require.positive("pump coolant volume", coolantVolume);
  }
}
