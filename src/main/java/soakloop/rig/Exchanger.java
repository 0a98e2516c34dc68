package soakloop.rig;

import java.util.Optional;
import soakloop.flow.Resistance;
import soakloop.quantity.Require;

/**
 * A crossflow exchanger between air and coolant with metal in between.
 *
 * @param conductance between the streams
 * @param metalHeatCapacity J/K
 * @param coolantVolume m3
 * @param passes coolant passes
 * @param grid cells of the whole exchanger
 */
public record Exchanger(
    Conductance conductance,
    double metalHeatCapacity,
    double coolantVolume,
    Passes passes,
    Grid grid) {
  /**
   * Cells that an exchanger is cut into.
   *
   * @param along cells along the coolant in each pass
   * @param depth cells through the air's depth in each pass
   */
  public record Grid(int along, int depth) {
    /** Checks the parts. */
    public Grid {
      if (along < 1 || along > 64 || depth < 1 || depth > 64) {
        throw new IllegalArgumentException(
            "a grid has 1 to 64 cells each way, not " + along + " x " + depth);
      }
    }
  }

  /** Checks the parts. */
  public Exchanger {
    Require.positive("exchanger metal heat capacity", metalHeatCapacity);
    Require.positive("exchanger coolant volume", coolantVolume);
  }

  /**
   * Returns what the coolant loses in pressure, where that follows from geometry: all passes with
   * entry and exit, tanks and nozzles left out.
   */
  public Optional<Resistance> coolantResistance() {
    return conductance
        .geometry()
        .map(
            core ->
                (flow, liquid) ->
                    core.coolantLoss(
                        flow * liquid.density(), liquid.viscosity(), liquid.density()));
  }

  /**
   * Returns the same exchanger on another grid.
   *
   * @param other the cells
   */
  public Exchanger on(Grid other) {
    return new Exchanger(conductance, metalHeatCapacity, coolantVolume, passes, other);
  }
}
