package soakloop.rig;

import java.util.Optional;
import soakloop.exchange.GeometricCore;
import soakloop.flow.Liquid;
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
 * @param coolantResistance what it costs the coolant in pressure, if that is known
 */
public record Exchanger(
    Conductance conductance,
    double metalHeatCapacity,
    double coolantVolume,
    Passes passes,
    Grid grid,
    Optional<Resistance> coolantResistance) {
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
   * Makes one whose coolant's pressure loss is known where it follows from geometry.
   *
   * @param conductance between the streams
   * @param metalHeatCapacity J/K
   * @param coolantVolume m3
   * @param passes coolant passes
   * @param grid cells of the whole exchanger
   */
  public Exchanger(
      Conductance conductance,
      double metalHeatCapacity,
      double coolantVolume,
      Passes passes,
      Grid grid) {
    this(
        conductance,
        metalHeatCapacity,
        coolantVolume,
        passes,
        grid,
        conductance.geometry().map(Exchanger::resistance));
  }

  /**
   * Returns what the coolant loses in a core in pressure: all passes with entry and exit, tanks and
   * nozzles left out.
   *
   * @param core worked out from geometry
   */
  public static Resistance resistance(GeometricCore core) {
    return new OfCore(core);
  }

  /** A value, so that exchangers read alike are equal. */
  private record OfCore(GeometricCore core) implements Resistance {
    @Override
    public double loss(double flow, Liquid liquid) {
      return core.coolantLoss(flow * liquid.density(), liquid.viscosity(), liquid.density());
    }
  }

  /**
   * Returns the same exchanger on another grid.
   *
   * @param other the cells
   */
  public Exchanger on(Grid other) {
    return new Exchanger(
        conductance, metalHeatCapacity, coolantVolume, passes, other, coolantResistance);
  }

  /**
   * Returns the same exchanger with air left in a share of its passages: that share holds no
   * coolant and gives no heat, and the rest carries all of the flow. The metal stays.
   *
   * <p>Source: an assumption of this project; trapped air collects in the highest passages.
   *
   * @param share of the coolant's volume that is air, 0 to 0.9
   */
  public Exchanger withAir(double share) {
    double open = 1 - Require.within("share of trapped air", share, 0, 0.9);
    return share == 0
        ? this
        : new Exchanger(
            conductance.narrowed(open),
            metalHeatCapacity,
            open * coolantVolume,
            passes,
            grid,
            coolantResistance.map(whole -> new Resistance.PartlyOpen(whole, open)));
  }
}
