package soakloop.simulate;

import soakloop.fluid.Air;
import soakloop.fluid.MoistAir;
import soakloop.rig.Blower;
import soakloop.rig.Day;
import soakloop.rig.Rig;
import soakloop.session.Inputs;

/**
 * Charge air from the inlet to the blower's outlet, and the pressures behind it.
 *
 * <p>With the bypass shut the blower moves its displacement, less what leaks back, against the
 * pressure before the core: that in the manifold and what the core takes. The manifold pressure is
 * stated, or it is the one at which the engine swallows the blower's air at the charge temperature.
 * What hangs on each other here (air mass, outlet temperature, core, charge temperature, loss,
 * pressure) is closed in one unknown, the blower's pressure ratio.
 *
 * <p>With the bypass open the engine swallows what its manifold pressure lets in, at the inlet
 * temperature. The bypass shuts between no boost and {@link #SHUT}.
 */
final class ChargeSupply {
  /** Boost at which the bypass is fully shut, Pa. */
  private static final double SHUT = 5e3;

  /** Pressure ratio that a stated boost may lead to: no bound, only where the search ends. */
  private static final double NO_BOUND = 1000;

  /** Greatest pressure ratio that displacements and drive may lead to. */
  private static final double GREATEST = 20;

  private final Rig rig;
  private final Blower blower;
  private final Day day;
  private final CoreCells core;
  private final double gasConstant;
  private final double moistFactor;
  private final int casing;
  private final int plenum;
  private final PressureRatio ratio = new PressureRatio(this::wanting);

  // What the search for the ratio works on.
  private double[] state = new double[0];
  private Moment moment = new Moment();
  private double shut;
  private double inlet;
  private double open;
  private double swallowed;
  private boolean held;
  private double lastLoss;

  /**
   * Takes the rig.
   *
   * @param casing state of the blower's case
   * @param plenum state of the plenum's metal
   */
  ChargeSupply(Rig rig, Day day, CoreCells core, int casing, int plenum) {
    this.rig = rig;
    this.blower = rig.blower();
    this.day = day;
    this.core = core;
    this.casing = casing;
    this.plenum = plenum;
    MoistAir air = MoistAir.of(day.temperature(), day.pressure(), day.humidity());
    this.gasConstant = air.gasConstant();
    this.moistFactor =
        air.heatCapacity() / MoistAir.of(day.temperature(), day.pressure(), 0).heatCapacity();
  }

  /** Sets the moment's pressures, air flow, blower outlet and blower power. */
  void blow(double[] y, Moment m) {
    Inputs in = m.inputs;
    m.inletAir =
        Double.isNaN(in.inletTemperature) ? m.day + blower.inletPickUp() : in.inletTemperature;
    m.blowerOutlet = m.inletAir;
    m.blowerPower = 0;
    m.coreLoss = 0;
    m.pressureRatio = 1;
    state = y;
    moment = m;
    swallowed = rig.engine().swallowedVolume(in.engineSpeed);
    if (in.load == Inputs.Load.FULL && rig.boost().isEmpty()) {
      shutBypass();
    } else {
      hold(stated(in));
    }
  }

  private double stated(Inputs in) {
    return switch (in.load) {
      case OFF -> 0;
      case IDLE -> rig.engine().idleManifoldPressure() - day.pressure();
      case STATED -> Math.max(in.boost, 1e3 - day.pressure());
      case FULL -> rig.boost().orElseThrow().at(in.engineSpeed);
    };
  }

  private void hold(double boost) {
    Moment m = moment;
    m.boost = boost;
    m.corePressure = day.pressure() + boost;
    if (m.inputs.load == Inputs.Load.OFF) {
      m.airMassFlow = 0;
      m.airCapacityRate = 0;
      return;
    }
    held = true;
    shut = smooth(boost / SHUT);
    inlet = day.pressure() - blower.inletLoss() * shut;
    open = swallowed * Math.min(m.corePressure, day.pressure()) / (gasConstant * m.inletAir);
    if (core.knowsLoss() && shut > 0) {
      // The loss moves little from one instant to the next, the stated boost as it will.
      ratio.find(1 + shut * ((m.corePressure + lastLoss) / inlet - 1), NO_BOUND);
      lastLoss = m.coreLoss;
    } else {
      deliver(1 + shut * (m.corePressure / inlet - 1));
    }
  }

  private void shutBypass() {
    held = false;
    shut = 1;
    inlet = day.pressure() - blower.inletLoss();
    open = 0;
    ratio.find(GREATEST);
    moment.boost = moment.corePressure - day.pressure();
  }

  /** Returns the pressure ratio that is asked for when the blower makes a given one, less that. */
  private double wanting(double given) {
    Moment m = moment;
    deliver(given);
    double drop = blower.casing().share(m.airMassFlow, m.airCapacityRate);
    m.coreAirIn = m.blowerOutlet - drop * (m.blowerOutlet - state[casing]);
    core.coolAir(state, m);
    if (!held) {
      double share = rig.plenum().share(m.airMassFlow, m.airCapacityRate);
      double charge = m.coreAirOut - share * (m.coreAirOut - state[plenum]);
      m.corePressure = m.airMassFlow * gasConstant * charge / swallowed;
    }
    m.coreLoss = core.pressureLoss(m, gasConstant);
    return shut * ((m.corePressure + m.coreLoss) / inlet - 1) - (given - 1);
  }

  /** Sets what the blower gives at a pressure ratio. */
  private void deliver(double pressureRatio) {
    Moment m = moment;
    m.pressureRatio = pressureRatio;
    double work = 0;
    m.airMassFlow = open;
    if (shut > 0) {
      double density = inlet / (gasConstant * m.inletAir);
      double blown =
          blower.delivery().massFlow(m.inputs.engineSpeed, density, Math.max(1, pressureRatio));
      m.airMassFlow = open + shut * (blown - open);
      work = work(m.inletAir, pressureRatio);
      m.blowerOutlet =
          work == 0 ? m.inletAir : Air.temperatureAtEnthalpy(Air.enthalpy(m.inletAir) + work);
    }
    m.airCapacityRate =
        m.airMassFlow * moistFactor * Air.heatCapacity(0.5 * (m.blowerOutlet + m.inletAir));
    m.blowerPower = m.airMassFlow * moistFactor * work / blower.mechanicalEfficiency();
  }

  /** Work on a kilogram of dry air, J/kg. */
  private double work(double inletAir, double pressureRatio) {
    if (pressureRatio == 1) {
      return 0;
    }
    double ideal = Air.isentropicTemperature(inletAir, pressureRatio, gasConstant / moistFactor);
    double efficiency = blower.efficiency(pressureRatio, moment.inputs.engineSpeed);
    return (Air.enthalpy(ideal) - Air.enthalpy(inletAir)) / efficiency;
  }

  private static double smooth(double share) {
    double s = Math.max(0, Math.min(1, share));
    return s * s * (3 - 2 * s);
  }
}
