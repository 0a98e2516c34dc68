package soakloop.simulate;

import soakloop.fluid.Air;
import soakloop.fluid.MoistAir;
import soakloop.rig.Day;
import soakloop.rig.DuctMetal;
import soakloop.rig.Rig;
import soakloop.session.Inputs;

/**
 * Charge air from the inlet to the sensor, quasi-steady: it crosses the whole path in milliseconds.
 *
 * <p>With the bypass shut the blower moves its displacement and heats the air by its pressure ratio
 * and adiabatic efficiency, heat capacity varying with temperature. With the bypass open the engine
 * swallows what its manifold pressure lets in, at the inlet temperature. The bypass shuts between
 * no boost and {@link #SHUT}.
 */
final class AirPath {
  /** Boost at which the bypass is fully shut, Pa. */
  private static final double SHUT = 5e3;

  /** 1 - 1/1.4, for air near room temperature. */
  private static final double USUAL_EXPONENT = 1 - 1 / 1.4;

  private final Rig rig;
  private final Day day;
  private final CoreCells core;
  private final double gasConstant;
  private final double moistFactor;
  private final int casing;
  private final int plenum;
  private final int sensor;

  AirPath(Rig rig, Day day, CoreCells core, StateLayout layout) {
    this.rig = rig;
    this.day = day;
    this.core = core;
    MoistAir air = MoistAir.of(day.temperature(), day.pressure(), day.humidity());
    this.gasConstant = air.gasConstant();
    this.moistFactor =
        air.heatCapacity() / MoistAir.of(day.temperature(), day.pressure(), 0).heatCapacity();
    this.casing = layout.reserve(1);
    this.plenum = layout.reserve(1);
    this.sensor = layout.reserve(1);
  }

  int casing() {
    return casing;
  }

  int plenum() {
    return plenum;
  }

  int sensor() {
    return sensor;
  }

  /** From the inlet to the core's face. */
  void beforeCore(double[] y, double[] dy, Moment m) {
    blow(y, m);
    double drop =
        m.airMassFlow > 0 ? share(rig.blower().casing(), m) * (m.blowerOutlet - y[casing]) : 0;
    m.coreAirIn = m.airMassFlow > 0 ? m.blowerOutlet - drop : y[casing];
    double fromAir = m.airCapacityRate * drop;
    double fromAround = rig.blower().casing().tie() * (m.underhood - y[casing]);
    m.heatDucts += fromAir;
    m.heatUnderhood += fromAround;
    dy[casing] = (fromAir + fromAround) / rig.blower().casing().heatCapacity();
  }

  /** From the core to the sensor. */
  void afterCore(double[] y, double[] dy, Moment m) {
    double drop = m.airMassFlow > 0 ? share(rig.plenum(), m) * (m.coreAirOut - y[plenum]) : 0;
    m.charge = m.airMassFlow > 0 ? m.coreAirOut - drop : y[plenum];
    double fromAir = m.airCapacityRate * drop;
    m.heatEngine = rig.plenum().tie() * (m.engineCoolant - y[plenum]);
    m.heatDucts += fromAir;
    dy[plenum] = (fromAir + m.heatEngine) / rig.plenum().heatCapacity();
    dy[sensor] =
        rig.sensor().airRate(m.airMassFlow) * (m.charge - y[sensor])
            + rig.sensor().bossRate() * (y[plenum] - y[sensor]);
  }

  /** Gives what depends on the charge air: case, core walls, plenum and sensor. */
  void jacobian(Moment m, ExchangerJacobian core, Ledger ledger, JacobianEntries entries) {
    boolean flows = m.airMassFlow > 0;
    DuctMetal metal = rig.blower().casing();
    double atCase = share(metal, m);
    double fromAir = m.airCapacityRate * atCase;
    entries.add(casing, casing, -(fromAir + metal.tie()) / metal.heatCapacity());
    entries.add(ledger.ducts(), casing, -fromAir);
    entries.add(ledger.underhood(), casing, -metal.tie());
    core.airInlet(m.airCapacityRate, casing, atCase, ledger.core(), entries);

    DuctMetal manifold = rig.plenum();
    double atPlenum = share(manifold, m);
    double toPlenum = m.airCapacityRate * atPlenum;
    double capacity = manifold.heatCapacity();
    entries.add(plenum, plenum, -(toPlenum + manifold.tie()) / capacity);
    entries.add(ledger.ducts(), plenum, -toPlenum);
    entries.add(ledger.engine(), plenum, -manifold.tie());
    core.airOutlet(plenum, toPlenum / capacity, casing, atCase, entries);
    core.airOutlet(ledger.ducts(), toPlenum, casing, atCase, entries);

    double toSensor = rig.sensor().airRate(m.airMassFlow);
    double ofPlenum = flows ? atPlenum : 1;
    entries.add(sensor, sensor, -toSensor - rig.sensor().bossRate());
    entries.add(sensor, plenum, toSensor * ofPlenum + rig.sensor().bossRate());
    core.airOutlet(sensor, toSensor * (1 - ofPlenum), casing, atCase, entries);
  }

  /** Returns where the case comes to rest at the moment's air, K. */
  double restingCase(Moment m) {
    DuctMetal metal = rig.blower().casing();
    return rest(m.airCapacityRate * share(metal, m), m.blowerOutlet, metal.tie(), m.underhood);
  }

  /** Returns where the plenum comes to rest at the moment's air, K. */
  double restingPlenum(Moment m) {
    DuctMetal metal = rig.plenum();
    return rest(m.airCapacityRate * share(metal, m), m.coreAirOut, metal.tie(), m.engineCoolant);
  }

  /** Returns where the sensor comes to rest with the charge air and a plenum temperature, K. */
  double restingSensor(Moment m, double plenumMetal) {
    double charge =
        m.airMassFlow > 0
            ? m.coreAirOut - share(rig.plenum(), m) * (m.coreAirOut - plenumMetal)
            : plenumMetal;
    return rest(rig.sensor().airRate(m.airMassFlow), charge, rig.sensor().bossRate(), plenumMetal);
  }

  private static double rest(double a, double at, double b, double bt) {
    return a + b > 0 ? (a * at + b * bt) / (a + b) : bt;
  }

  private static double share(DuctMetal metal, Moment m) {
    return m.airMassFlow > 0
        ? -Math.expm1(-metal.conductance(m.airMassFlow) / m.airCapacityRate)
        : 0;
  }

  private void blow(double[] y, Moment m) {
    Inputs in = m.inputs;
    m.inletAir =
        Double.isNaN(in.inletTemperature)
            ? m.day + rig.blower().inletPickUp()
            : in.inletTemperature;
    m.boost =
        switch (in.load) {
          case OFF -> 0;
          case IDLE -> rig.engine().idleManifoldPressure() - day.pressure();
          case STATED -> Math.max(in.boost, 1e3 - day.pressure());
          case FULL -> rig.boost().at(in.engineSpeed);
        };
    m.blowerOutlet = m.inletAir;
    m.coreLoss = 0;
    m.corePressure = day.pressure() + m.boost;
    if (in.load == Inputs.Load.OFF) {
      m.airMassFlow = 0;
      m.airCapacityRate = 0;
      return;
    }
    double shut = smooth(m.boost / SHUT);
    double manifold = m.corePressure;
    double open =
        rig.engine().swallowedVolume(in.engineSpeed)
            * Math.min(manifold, day.pressure())
            / (gasConstant * m.inletAir);
    m.airMassFlow = open;
    if (shut > 0) {
      double inlet = day.pressure() - rig.blower().inletLoss() * shut;
      double blown =
          rig.blower().delivery().massFlow(in.engineSpeed, inlet / (gasConstant * m.inletAir));
      m.airMassFlow = open + shut * (blown - open);
      m.coreLoss = coreLoss(y, m, 1 + shut * (manifold / inlet - 1));
      double before = manifold + m.coreLoss;
      m.blowerOutlet = compressed(m.inletAir, 1 + shut * (before / inlet - 1));
    }
    m.airCapacityRate =
        m.airMassFlow * moistFactor * Air.heatCapacity(0.5 * (m.blowerOutlet + m.inletAir));
  }

  /**
   * The blower works against the core's loss, which hangs on how hot its air is: nearly is enough.
   */
  private double coreLoss(double[] y, Moment m, double pressureRatio) {
    if (!core.knowsLoss()) {
      return 0;
    }
    double ideal = m.inletAir * (Math.pow(Math.max(1, pressureRatio), USUAL_EXPONENT) - 1);
    double outlet = m.inletAir + ideal / rig.blower().adiabaticEfficiency();
    return core.pressureLoss(y, m.airMassFlow, outlet, m.corePressure, gasConstant);
  }

  private double compressed(double inlet, double pressureRatio) {
    double ideal = Air.isentropicTemperature(inlet, pressureRatio, gasConstant / moistFactor);
    double h = Air.enthalpy(inlet);
    double work = (Air.enthalpy(ideal) - h) / rig.blower().adiabaticEfficiency();
    return Air.temperatureAtEnthalpy(h + work);
  }

  private static double smooth(double share) {
    double s = Math.max(0, Math.min(1, share));
    return s * s * (3 - 2 * s);
  }
}
