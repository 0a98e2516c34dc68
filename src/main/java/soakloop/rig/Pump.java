package soakloop.rig;

import soakloop.flow.Resistance;
import soakloop.quantity.Require;

/**
 * The coolant pump, or several in series.
 *
 * @param name as the scenario calls it
 * @param delivery what it gives when on
 * @param power what it draws when on; all of it ends as heat in the coolant
 * @param coolantVolume m3
 */
public record Pump(String name, PumpDelivery delivery, PumpPower power, double coolantVolume)
    implements LoopElement {
  /** Checks the parts. */
  public Pump {
    Require.positive("pump coolant volume", coolantVolume);
  }

  /** Returns none: what is lost inside is in its curve. */
  @Override
  public Resistance resistance() {
    return Resistance.NONE;
  }
}
