package soakloop.simulate;

import soakloop.rig.Day;
import soakloop.rig.DuctMetal;
import soakloop.rig.Rig;

/**
 * Charge air from the inlet to the sensor, quasi-steady: it crosses the whole path in milliseconds.
 */
final class AirPath {
  private final Rig rig;
  private final ChargeSupply supply;
  private final int casing;
  private final int plenum;
  private final int sensor;

  AirPath(Rig rig, Day day, CoreCells core, StateLayout layout) {
    this.rig = rig;
    this.casing = layout.reserve(1);
    this.plenum = layout.reserve(1);
    this.sensor = layout.reserve(1);
    this.supply = new ChargeSupply(rig, day, core, casing, plenum);
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
    supply.blow(y, m);
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
    return metal.share(m.airMassFlow, m.airCapacityRate);
  }
}
