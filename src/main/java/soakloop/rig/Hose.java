package soakloop.rig;

import soakloop.flow.Resistance;
import soakloop.quantity.Require;

/**
 * A hose or pipe: coolant moving through it as a front, a wall with depth, air around it.
 *
 * @param name as the scenario calls it
 * @param length m
 * @param bore inner diameter, m
 * @param inside what the coolant's pressure meets
 * @param wall wall thickness and material
 * @param outside heat transfer coefficient from the wall to the underhood air, W/(m2 K)
 * @param cells cells along the coolant, 1 to 400
 * @param layers layers through the wall, 1 to 50; 0 leaves the wall's heat capacity out. A wall
 *     that heat crosses in less than a second, as through thin metal, is one layer whatever is
 *     asked for, and none is made so thin that heat crosses it in less than 10 ms
 */
public record Hose(
    String name,
    double length,
    double bore,
    Inside inside,
    Wall wall,
    double outside,
    int cells,
    int layers)
    implements LoopElement {
  /**
   * What the coolant's pressure meets besides length and bore.
   *
   * @param roughness m
   * @param fittings sum of the loss factors of its bends and ends [-]
   */
  public record Inside(double roughness, double fittings) {
    /** Smooth and straight. */
    public static final Inside SMOOTH = new Inside(0, 0);

    /** Checks the parts. */
    public Inside {
      Require.notNegative("hose roughness", roughness);
      Require.notNegative("hose fittings", fittings);
    }
  }

  /**
   * A wall.
   *
   * @param thickness m
   * @param conductivity W/(m K)
   * @param heatCapacity per volume, J/(m3 K)
   */
  public record Wall(double thickness, double conductivity, double heatCapacity) {
    /** Checks the parts. */
    public Wall {
      Require.positive("wall thickness", thickness);
      Require.positive("wall conductivity", conductivity);
      Require.positive("wall heat capacity", heatCapacity);
    }
  }

  /** Checks the parts. */
  public Hose {
    Require.positive("hose length", length);
    Require.positive("hose bore", bore);
    Require.within("hose roughness over bore", inside.roughness() / bore, 0, 0.1);
    Require.notNegative("hose outside coefficient", outside);
    Require.within("hose cells", cells, 1, 400);
    Require.within("hose wall layers", layers, 0, 50);
  }

  /** Makes a smooth, straight hose. */
  public Hose(
      String name, double length, double bore, Wall wall, double outside, int cells, int layers) {
    this(name, length, bore, Inside.SMOOTH, wall, outside, cells, layers);
  }

  @Override
  public Resistance resistance() {
    return new Resistance.Pipe(length, bore, inside.roughness(), inside.fittings());
  }

  @Override
  public double coolantVolume() {
    return Math.PI / 4 * bore * bore * length;
  }
}
