package soakloop.rig;

import java.util.Optional;
import soakloop.flow.Resistance;
import soakloop.quantity.Require;

/**
 * A tank, mixed or in layers, perhaps with ice in it.
 *
 * @param name as the scenario calls it
 * @param coolantVolume coolant that it is filled with, m3
 * @param surroundings conductance to the underhood air, W/K
 * @param resistance what its ports cost in pressure
 * @param layers how it is layered
 * @param ice what its ice is like, if ice ever goes into it
 */
public record Reservoir(
    String name,
    double coolantVolume,
    double surroundings,
    Resistance resistance,
    Layers layers,
    Optional<TankIce> ice)
    implements LoopElement {
  /** Makes a mixed tank without ice whose ports cost nothing. */
  public Reservoir(String name, double coolantVolume, double surroundings) {
    this(name, coolantVolume, surroundings, Resistance.NONE, Layers.MIXED, Optional.empty());
  }

  /** Checks the parts. */
  public Reservoir {
    Require.positive("reservoir volume", coolantVolume);
    Require.notNegative("reservoir conductance to its surroundings", surroundings);
  }

  /**
   * Layers of equal volume, each mixed, one above another.
   *
   * @param count 1 for a tank that is mixed
   * @param entry where the coolant enters; it leaves at the other end
   */
  public record Layers(int count, Entry entry) {
    /** A tank that is mixed. */
    public static final Layers MIXED = new Layers(1, Entry.TOP);

    /** An end of a tank. */
    public enum Entry {
      /** Enters the top layer and leaves from the bottom one. */
      TOP,
      /** Enters the bottom layer and leaves from the top one. */
      BOTTOM
    }

    /** Checks the count. */
    public Layers {
      Require.positive("number of layers", count);
    }
  }
}
