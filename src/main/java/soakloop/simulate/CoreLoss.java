package soakloop.simulate;

import java.util.Optional;
import soakloop.exchange.CoreGeometry;
import soakloop.exchange.FinnedPassage;
import soakloop.exchange.FluidState;
import soakloop.exchange.GeometricCore;
import soakloop.exchange.PassageLoss;

/**
 * Pressure that charge air loses in a core described by geometry; nothing in any other.
 *
 * <p>Densities are those half way between the pressures before and after. A core that would take
 * more than the pressure behind it is choked, which the equations do not know: the loss is then
 * held at that pressure.
 */
final class CoreLoss {
  private final Optional<GeometricCore> core;
  private final double freeArea;
  private final PassageLoss atUnitVelocity;
  private final FlowTable friction;

  CoreLoss(Optional<GeometricCore> core) {
    this.core = core;
    this.freeArea = core.map(c -> c.geometry().air().freeArea()).orElse(1.0);
    this.atUnitVelocity = core.map(CoreLoss::unitLoss).orElse(new PassageLoss(0, 1, 1));
    this.friction = new FlowTable(this::frictionAt);
  }

  private static PassageLoss unitLoss(GeometricCore core) {
    CoreGeometry geometry = core.geometry();
    return new PassageLoss(
        1, core.freeShare(), geometry.depth() / geometry.air().hydraulicDiameter());
  }

  private double frictionAt(double massVelocity, double temperature) {
    FinnedPassage air = core.orElseThrow().geometry().air();
    return air.friction(massVelocity, FluidState.ofAir(temperature).viscosity());
  }

  /** Returns whether there is anything to lose pressure in. */
  boolean isKnown() {
    return core.isPresent();
  }

  /**
   * Returns the loss.
   *
   * @param flow kg/s, 0 or more
   * @param in temperature of the air that enters, K
   * @param outlet temperature of the air that leaves, K
   * @param behind absolute pressure behind the core, Pa
   * @param gasConstant of the air, J/(kg K)
   * @return Pa
   */
  double at(double flow, double in, double outlet, double behind, double gasConstant) {
    if (flow == 0 || core.isEmpty()) {
      return 0;
    }
    double velocity = flow / freeArea;
    double out = References.possible(outlet);
    double mean = References.possible(0.5 * (in + out));
    double drag = friction.at(velocity, mean);
    double dense = behind / gasConstant;
    double first =
        velocity * velocity * atUnitVelocity.total(drag, dense / in, dense / mean, dense / out);
    double held = Math.max(0, Math.min(behind, first));
    return held * behind / (behind + 0.5 * held);
  }
}
