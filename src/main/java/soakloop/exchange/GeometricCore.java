package soakloop.exchange;

import java.util.ArrayList;
import java.util.List;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.Require;

/**
 * What follows from a core's geometry: surfaces, mass, volume, conductance and pressure loss at any
 * flow.
 *
 * <p>Equations: conductance of a side eta_o h A ({@link CorePassage}); wall t / (k A); overall 1 /
 * UA = 1 / air + wall + 1 / coolant; air pressure loss {@link PassageLoss}; coolant pressure loss
 * friction over all passes plus {@link #TURN} velocity heads a pass. Headers, tanks and nozzles are
 * not part of it. Accuracy: that of the fin correlation, 15 to 25 %, and less where flow is uneven.
 *
 * @param geometry the core
 */
public record GeometricCore(CoreGeometry geometry) {
  /** Velocity heads lost a pass: sharp entry 0.5 and exit 1.0 (textbook values, from memory). */
  public static final double TURN = 1.5;

  /**
   * Conductance of the air side.
   *
   * @param massFlow kg/s, 0 or more
   * @param air at its mean temperature
   * @return W/K; 0 without flow
   */
  public double airSide(double massFlow, FluidState air) {
    Require.notNegative("air flow", massFlow);
    FinnedPassage passage = geometry.air();
    return massFlow == 0 ? 0 : passage.conductance(massFlow / passage.freeArea(), air);
  }

  /**
   * Conductance of the coolant side.
   *
   * <p>Without flow, ports and plain fins keep their developed laminar value. Fins that follow a
   * power law have none of their own: they fall no lower than a plain channel of the same cell
   * would, {@link FinnedPassage#still}; both are joined as the fourth root of the sum of their
   * fourth powers, which adds less than 1 % from 2.3 times that value on.
   *
   * @param massFlow kg/s, 0 or more
   * @param coolant at its mean temperature
   * @return W/K
   */
  public double coolantSide(double massFlow, FluidState coolant) {
    double massVelocity = coolantMassVelocity(massFlow);
    CorePassage passage = geometry.coolant();
    if (!(passage instanceof FinnedPassage finned)) {
      return passage.conductance(massVelocity, coolant);
    }
    double still = finned.still(coolant);
    if (massVelocity == 0) {
      return still;
    }
    double moving = finned.conductance(massVelocity, coolant);
    return finned.fin() instanceof PlainFin
        ? moving
        : Math.sqrt(Math.sqrt(fourth(moving) + fourth(still)));
  }

  /** Thermal resistance of the wall, K/W. */
  public double wallResistance() {
    return geometry.wall() / (geometry.metal().conductivity() * geometry.wallArea());
  }

  /**
   * Overall conductance.
   *
   * @param airFlow kg/s, 0 or more
   * @param air at its mean temperature
   * @param coolantFlow kg/s, 0 or more
   * @param coolant at its mean temperature
   * @return W/K; 0 if either side has none
   */
  public double overall(double airFlow, FluidState air, double coolantFlow, FluidState coolant) {
    double airSide = airSide(airFlow, air);
    double coolantSide = coolantSide(coolantFlow, coolant);
    return airSide == 0 || coolantSide == 0
        ? 0
        : 1 / (1 / airSide + wallResistance() + 1 / coolantSide);
  }

  /**
   * Pressure loss of the air, from face to back.
   *
   * @param massFlow kg/s, 0 or more
   * @param viscosity at the mean temperature, Pa s
   * @param inlet density at the inlet, kg/m3
   * @param mean mean density, kg/m3
   * @param outlet density at the outlet, kg/m3
   * @return Pa; 0 without flow
   */
  public double airLoss(
      double massFlow, double viscosity, double inlet, double mean, double outlet) {
    if (Require.notNegative("air flow", massFlow) == 0) {
      return 0;
    }
    FinnedPassage passage = geometry.air();
    double massVelocity = massFlow / passage.freeArea();
    return new PassageLoss(
            massVelocity, freeShare(), geometry.depth() / passage.hydraulicDiameter())
        .total(passage.friction(massVelocity, viscosity), inlet, mean, outlet);
  }

  /**
   * Friction of the coolant along all passes.
   *
   * @param massFlow kg/s, 0 or more
   * @param viscosity Pa s
   * @param density kg/m3
   * @return Pa; 0 without flow
   */
  public double coolantFriction(double massFlow, double viscosity, double density) {
    double massVelocity = coolantMassVelocity(massFlow);
    if (massVelocity == 0) {
      return 0;
    }
    CorePassage passage = geometry.coolant();
    return geometry.passes()
        * 4
        * passage.friction(massVelocity, viscosity)
        * passage.length()
        / passage.hydraulicDiameter()
        * velocityHead(massVelocity, density);
  }

  /**
   * Pressure loss of the coolant: friction, and entry and exit of each pass.
   *
   * @param massFlow kg/s, 0 or more
   * @param viscosity Pa s
   * @param density kg/m3
   * @return Pa; 0 without flow
   */
  public double coolantLoss(double massFlow, double viscosity, double density) {
    return coolantFriction(massFlow, viscosity, density)
        + geometry.passes() * TURN * velocityHead(coolantMassVelocity(massFlow), density);
  }

  /** Free over frontal area on the air side [-]. */
  public double freeShare() {
    return geometry.air().freeArea() / geometry.frontalArea();
  }

  /** Metal of the core without headers and tanks, kg. */
  public double mass() {
    double volume =
        geometry.air().metalVolume() + geometry.coolant().metalVolume() + geometry.plateVolume();
    return volume * geometry.metal().density();
  }

  /** Heat capacity of that metal, J/K. */
  public double metalHeatCapacity() {
    return mass() * geometry.metal().heatCapacity();
  }

  /** Coolant in the core without headers and tanks, m3. */
  public double coolantVolume() {
    return geometry.coolant().fluidVolume();
  }

  /**
   * What lies outside the range that the equations were made for.
   *
   * @param airFlow kg/s, above 0
   * @param air at its mean temperature
   * @param coolantFlow kg/s, above 0
   * @param coolant at its mean temperature
   * @return one entry for each argument; empty if all lie inside
   */
  public List<OutsideRange> outsideRange(
      double airFlow, FluidState air, double coolantFlow, FluidState coolant) {
    List<OutsideRange> found = new ArrayList<>();
    geometry.air().checkRange(airFlow / geometry.air().freeArea(), air, found::add);
    geometry.coolant().checkRange(coolantMassVelocity(coolantFlow), coolant, found::add);
    return List.copyOf(found);
  }

  private static double fourth(double value) {
    return value * value * value * value;
  }

  private double coolantMassVelocity(double massFlow) {
    Require.notNegative("coolant flow", massFlow);
    return massFlow * geometry.passes() / geometry.coolant().freeArea();
  }

  private static double velocityHead(double massVelocity, double density) {
    return massVelocity * massVelocity / (2 * Require.positive("density", density));
  }
}
