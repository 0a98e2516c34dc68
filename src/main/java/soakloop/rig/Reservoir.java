package soakloop.rig;

import soakloop.flow.Resistance;
import soakloop.quantity.Require;

/**
 * A tank, fully mixed.
 *
 * @param name as the scenario calls it
 * @param coolantVolume m3
 * @param surroundings conductance to the underhood air, W/K
 * @param resistance what its ports cost in pressure
 */
public record Reservoir(
    String name, double coolantVolume, double surroundings, Resistance resistance)
    implements LoopElement {
  /** Makes a tank whose ports cost nothing. */
  public Reservoir(String name, double coolantVolume, double surroundings) {
    this(name, coolantVolume, surroundings, Resistance.NONE);
  }

  /** Checks the parts. */
  public Reservoir {
    Require.positive("reservoir volume", coolantVolume);
    Require.notNegative("reservoir conductance to its surroundings", surroundings);
  }
}
