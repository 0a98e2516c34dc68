package soakloop.rig;

import soakloop.quantity.Require;

/**
 * A tank, fully mixed.
 *
 * @param name as the scenario calls it
 * @param coolantVolume m3
 * @param surroundings conductance to the underhood air, W/K
 */
public record Reservoir(String name, double coolantVolume, double surroundings)
    implements LoopElement {
  /** Checks the parts. */
  public Reservoir {
    Require.positive("reservoir volume", coolantVolume);
    Require.notNegative("reservoir conductance to its surroundings", surroundings);
  }
}
