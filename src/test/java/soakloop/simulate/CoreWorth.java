package soakloop.simulate;

import soakloop.exchange.FlowArrangement;
import soakloop.rig.Core;
import soakloop.rig.Exchanger;
import soakloop.rig.HeatExchanger;
import soakloop.rig.LoopElement;
import soakloop.rig.PowerLawConductance;
import soakloop.rig.Rig;

/**
 * What more core conductance is worth to the charge at given flows, by hand.
 *
 * <p>Seen as one mass C at the coolant's temperature, the loop takes {@code eps Ca D} from the air,
 * D being the distance from coolant to blower outlet, and after a time t the charge has gained
 * {@code (1 - eps Ca t / C) d(eps) D} from a little more conductance. But the core's metal stands
 * above its coolant by about {@code eps Ca D / Gc}, with Gc the coolant side of the conductance.
 * More conductance lowers that, and the heat goes into the coolant: {@code (Cm / (C - Cm)) (Ca /
 * Gc) (eps - UA d(eps)/d(UA))} per relative change of UA, Cm being the core's metal. Where the core
 * already takes nearly all there is (many transfer units), the second outweighs the first.
 */
final class CoreWorth {
  private static final double STEP = 1e-3;

  private final double air;
  private final double coolant;
  private final double overall;
  private final double coolantSide;
  private final double effectiveness;
  private final double capacity;
  private final double coreMetal;

  /**
   * Looks at a core.
   *
   * @param airFlow kg/s
   * @param coolantFlow m3/s
   */
  CoreWorth(Rig rig, double airFlow, double coolantFlow) {
    Exchanger core = rig.loop().core().exchanger();
    air = airFlow * 1010;
    coolant = References.coolantRate(rig.coolant(), coolantFlow);
    PowerLawConductance conductance = (PowerLawConductance) core.conductance();
    overall = conductance.overall(airFlow, coolantFlow);
    coolantSide = conductance.coolantSide(coolantFlow);
    effectiveness = effectiveness(overall);
    coreMetal = core.metalHeatCapacity();
    capacity = capacity(rig);
  }

  /** Returns the transfer units on the air's side. */
  double airUnits() {
    return overall / air;
  }

  /** Returns total capacity over effectiveness and air capacity rate, s. */
  double timeScale() {
    return capacity / (effectiveness * air);
  }

  /** Returns what a relative change of conductance wins at a time over what it loses. */
  double winsOverLosses(double time) {
    double slope = (effectiveness(overall * (1 + STEP)) - effectiveness) / STEP;
    double wins = (1 - time / timeScale()) * slope;
    double loses = (effectiveness - slope) * air / coolantSide * coreMetal / (capacity - coreMetal);
    return wins / loses;
  }

  /** Air temperature effectiveness. */
  private double effectiveness(double conductance) {
    double least = Math.min(air, coolant);
    double most = Math.max(air, coolant);
    return least
        / air
        * FlowArrangement.CROSS_UNMIXED.effectiveness(conductance / least, least / most);
  }

  /** Capacity of coolant, core and heat exchangers, J/K. */
  private static double capacity(Rig rig) {
    double reference = References.COOLANT;
    double sum =
        rig.loop().coolantVolume()
            * rig.coolant().density(reference)
            * rig.coolant().heatCapacity(reference);
    for (LoopElement element : rig.loop().elements()) {
      if (element instanceof Core core) {
        sum += core.exchanger().metalHeatCapacity();
      } else if (element instanceof HeatExchanger x) {
        sum += x.exchanger().metalHeatCapacity();
      }
    }
    return sum;
  }
}
