package soakloop.charge;

import java.util.function.DoubleUnaryOperator;
import soakloop.quantity.Bracket;
import soakloop.quantity.Require;

/**
 * Boost from hardware: the manifold fills until the engine swallows what the blower delivers.
 *
 * <p>Equations, full load and steady: m = blower volume flow x p1 / (R T1); T2 by {@link
 * Compression}; charge temperature and pressure loss by {@link ChargePath}, the loss at the mean of
 * both temperatures and the pressure before the core; m = engine volume flow x pm / (R Tc). One
 * unknown, the blower's pressure ratio. Leakage apart, the air mass is the blower's alone: a cooler
 * charge lowers both pressures at the same air mass.
 *
 * <p>Accuracy: that of the two volumetric efficiencies, some 3 to 8 % of absolute pressure (common
 * practice, no source).
 *
 * @param blower blower and pulleys
 * @param engine engine
 * @param path what lies between
 * @param adiabaticEfficiency over pressure ratio, above 0 to 1
 * @param mechanicalEfficiency of blower and drive, above 0 to 1
 */
public record BoostMatch(
    BlowerSize blower,
    Swallowing engine,
    ChargePath path,
    DoubleUnaryOperator adiabaticEfficiency,
    double mechanicalEfficiency) {
  private static final double GREATEST_RATIO = 20;

  /** Checks the parts. */
  public BoostMatch {
    Require.positive("mechanical efficiency", mechanicalEfficiency);
    Require.within("mechanical efficiency", mechanicalEfficiency, 0, 1);
  }

  /**
   * Air at the blower's inlet.
   *
   * @param pressure Pa, absolute
   * @param temperature K
   * @param gasConstant J/(kg K)
   */
  public record Inlet(double pressure, double temperature, double gasConstant) {
    /** Checks the parts. */
    public Inlet {
      Require.positive("inlet pressure", pressure);
      Require.positive("inlet temperature", temperature);
      Require.positive("gas constant", gasConstant);
    }

    double density() {
      return density(pressure, temperature);
    }

    double density(double p, double t) {
      return p / (gasConstant * t);
    }
  }

  /** How blower and engine stand to each other. */
  public enum Regime {
    /** The blower delivers more than the engine takes at inlet pressure. */
    BOOSTED,
    /** The bypass is open: no pressure rise, no work. */
    BYPASS_OPEN,
    /** The engine takes more than the blower delivers: no work, less than inlet pressure behind. */
    UNDERFED
  }

  /**
   * The balance.
   *
   * @param regime how blower and engine stand
   * @param massFlow air, kg/s
   * @param beforeCore absolute pressure before the core, Pa
   * @param afterCore absolute pressure in the manifold, Pa
   * @param blowerOutlet K
   * @param charge K
   * @param blowerPower shaft power, W
   */
  public record Boost(
      Regime regime,
      double massFlow,
      double beforeCore,
      double afterCore,
      double blowerOutlet,
      double charge,
      double blowerPower) {}

  /**
   * Bypass shut.
   *
   * @param inlet air at the blower
   * @param engineSpeed rev/s
   * @return the balance
   * @throws IllegalArgumentException if the pressure ratio would exceed 20
   */
  public Boost shut(Inlet inlet, double engineSpeed) {
    double swallowed = engine.volumeFlow(engineSpeed);
    if (surplus(inlet, engineSpeed, swallowed, 1) <= 0) {
      return underfed(inlet, engineSpeed, swallowed);
    }
    if (surplus(inlet, engineSpeed, swallowed, GREATEST_RATIO) > 0) {
      throw new IllegalArgumentException(
          "the blower would reach a pressure ratio above " + GREATEST_RATIO);
    }
    double ratio = Bracket.root(1, GREATEST_RATIO, r -> surplus(inlet, engineSpeed, swallowed, r));
    double massFlow = blower.volumeFlow(engineSpeed, ratio) * inlet.density();
    double efficiency = adiabaticEfficiency.applyAsDouble(ratio);
    double outlet = Compression.outletOfRealAir(inlet.temperature(), ratio, efficiency);
    double power =
        massFlow
            * Compression.specificWork(inlet.temperature(), ratio, efficiency)
            / mechanicalEfficiency;
    return boost(Regime.BOOSTED, inlet, massFlow, ratio * inlet.pressure(), outlet, power);
  }

  /**
   * Bypass open: the engine breathes through the core at the inlet's pressure and temperature.
   *
   * @param inlet air at the blower
   * @param engineSpeed rev/s
   * @return the balance
   */
  public Boost open(Inlet inlet, double engineSpeed) {
    double swallowed = engine.volumeFlow(engineSpeed);
    double t = inlet.temperature();
    DoubleUnaryOperator surplus = m -> m - swallowed * density(inlet, inlet.pressure(), t, m);
    double most = swallowed * inlet.density(inlet.pressure(), path.cooling().charge(t, 0));
    // Cooling that depends on flow may let in more than it does without flow.
    double massFlow = Bracket.root(0, 2 * most, surplus);
    return boost(Regime.BYPASS_OPEN, inlet, massFlow, inlet.pressure(), t, 0);
  }

  private Boost underfed(Inlet inlet, double engineSpeed, double swallowed) {
    double massFlow = blower.volumeFlow(engineSpeed, 1) * inlet.density();
    double t = inlet.temperature();
    double charge = path.cooling().charge(t, massFlow);
    double manifold = massFlow * inlet.gasConstant() * charge / swallowed;
    double loss = path.lossAt(massFlow, inlet.density(inlet.pressure(), (t + charge) / 2));
    return new Boost(Regime.UNDERFED, massFlow, manifold + loss, manifold, t, charge, 0);
  }

  /** Air delivered less air swallowed at a pressure ratio, kg/s. */
  private double surplus(Inlet inlet, double engineSpeed, double swallowed, double ratio) {
    double massFlow = blower.volumeFlow(engineSpeed, ratio) * inlet.density();
    double outlet =
        Compression.outletOfRealAir(
            inlet.temperature(), ratio, adiabaticEfficiency.applyAsDouble(ratio));
    return massFlow - swallowed * density(inlet, ratio * inlet.pressure(), outlet, massFlow);
  }

  /** Density in the manifold, kg/m3; below zero if the core would take all pressure. */
  private double density(Inlet inlet, double before, double outlet, double massFlow) {
    double charge = path.cooling().charge(outlet, massFlow);
    double loss = path.lossAt(massFlow, inlet.density(before, (outlet + charge) / 2));
    return inlet.density(before - loss, charge);
  }

  private Boost boost(
      Regime regime, Inlet inlet, double massFlow, double before, double outlet, double power) {
    double charge = path.cooling().charge(outlet, massFlow);
    double loss = path.lossAt(massFlow, inlet.density(before, (outlet + charge) / 2));
    return new Boost(regime, massFlow, before, before - loss, outlet, charge, power);
  }
}
