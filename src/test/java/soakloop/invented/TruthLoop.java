package soakloop.invented;

import java.util.ArrayList;
import java.util.List;

/** The true car running through a session, stepped at a fixed interval. */
final class TruthLoop {

  /**
   * Temperatures the session starts from [degC].
   *
   * @param loop coolant, exchangers, hoses and reservoir
   * @param sensor what the charge sensor shows; the lid is at the temperature that makes it so
   * @param runner intake runners
   * @param blowerCase blower case
   */
  record Start(double loop, double sensor, double runner, double blowerCase) {}

  /**
   * What is true at one time. Temperatures in degC.
   *
   * @param time [s]
   * @param moment what the car is doing
   * @param boost manifold pressure above the barometer [Pa]
   * @param sensor bead of the charge sensor, before noise
   * @param charge air at the charge sensor
   * @param coreIn coolant at the sensor before the core
   * @param coreOut coolant at the sensor after the core
   * @param inlet inlet air at its sensor
   * @param airFlow [kg/s]
   * @param discharge air leaving the blower's rotors
   * @param coolantFlow [m3/s]
   * @param lid metal around the charge sensor
   * @param core what happens in the core
   */
  record Truth(
      double time,
      Duty.Moment moment,
      double boost,
      double sensor,
      double charge,
      double coreIn,
      double coreOut,
      double inlet,
      double airFlow,
      double discharge,
      double coolantFlow,
      double lid,
      InCore core) {

    /** The same with sensors that read high by so much, K. */
    Truth reading(double chargeHigh, double inHigh, double outHigh) {
      return new Truth(
          time,
          moment,
          boost,
          sensor + chargeHigh,
          charge,
          coreIn + inHigh,
          coreOut + outHigh,
          inlet,
          airFlow,
          discharge,
          coolantFlow,
          lid,
          core);
    }
  }

  /**
   * What is true in the core, no sensor between.
   *
   * @param heat from air to metal [W]
   * @param airIn [degC]
   * @param airOut [degC]
   * @param coolantIn [degC]
   * @param coolantOut [degC]
   */
  record InCore(double heat, double airIn, double airOut, double coolantIn, double coolantOut) {}

  private static final double THROTTLE_LAG = 0.25;
  private static final double WATER_SENSOR_LAG = 2.0;
  private static final double INLET_SENSOR_LAG = 6.0;
  private static final int FLOW_EVERY = 20;

  private final TruthCar car;
  private final Duty duty;
  private final double dt;
  private final double airCp;
  private final double perVolume;
  private final MeshExchanger core;
  private final MeshExchanger front;
  private final PlugHose supply;
  private final PlugHose back;
  private final TwoZoneReservoir reservoir;
  private final TrueBlower blower;
  private final Plenum plenum;
  private final ChargeSensor sensor;
  private final Ledger ledger;
  private final List<Truth> truths = new ArrayList<>();

  private double manifold;
  private double flow;
  private double thinness = 1;
  private double coreInSensor;
  private double coreOutSensor;
  private double inletSensor;

  private TruthLoop(TruthCar car, Duty duty, Start start, double dt) {
    this.car = car;
    this.duty = duty;
    this.dt = dt;
    airCp = duty.day().airHeatCapacity();
    perVolume = car.coolant().perVolume();
    core = new MeshExchanger(car.core(), perVolume, start.loop);
    front = new MeshExchanger(car.front(), perVolume, start.loop);
    supply = new PlugHose(car.supply(), perVolume, start.loop);
    back = new PlugHose(car.back(), perVolume, start.loop);
    reservoir = new TwoZoneReservoir(car.reservoirVolume(), perVolume, start.loop);
    blower = new TrueBlower(car.blower(), start.blowerCase);
    Duty.Moment first = duty.at(0);
    manifold = first.manifoldPressure();
    plenum = new Plenum(car.plenum(), lidFor(start, engineAirFlow(first)), start.runner);
    sensor = new ChargeSensor(car.sensor(), start.sensor);
    coreInSensor = start.loop;
    coreOutSensor = start.loop;
    inletSensor = first.inletAir();
    ledger = new Ledger(stored());
  }

  /**
   * Runs a session.
   *
   * @param car the car
   * @param duty what it does
   * @param start where it starts
   * @param dt step [s]
   * @param until end [s], at most the session's duration
   * @param every interval of the result [s], a multiple of the step
   */
  static TruthRun run(TruthCar car, Duty duty, Start start, double dt, double until, double every) {
    TruthLoop loop = new TruthLoop(car, duty, start, dt);
    long steps = Math.round(until / dt);
    long keep = Math.round(every / dt);
    for (long n = 0; n <= steps; n++) {
      loop.step(n, n % keep == 0);
    }
    return new TruthRun(
        List.copyOf(loop.truths),
        loop.ledger.residual(loop.stored()),
        loop.ledger.fromAir(),
        -loop.ledger.fromFront());
  }

  private double lidFor(Start start, double airFlow) {
    double pull = car.plenum().lidPull(new Stream(airFlow, airCp, start.loop));
    double share = car.sensor().bossShare(airFlow);
    return start.loop + (start.sensor - start.loop) / ((1 - share) * pull + share);
  }

  private double engineAirFlow(Duty.Moment now) {
    double swallowed = car.filling() * car.displacement() * now.engineSpeed() / 120;
    return swallowed * Day.density(manifold, 45);
  }

  private void step(long n, boolean keep) {
    double time = n * dt;
    Duty.Moment now = duty.at(time);
    if (n % FLOW_EVERY == 0) {
      double viscosity = car.coolant().viscosity(reservoir.out());
      thinness = car.coolant().viscosity(car.referenceTemperature()) / viscosity;
      flow = car.pump().flow(1 / thinness);
    }
    manifold += dt * (now.manifoldPressure() - manifold) / THROTTLE_LAG;
    Stream drawn = breathe(now);
    double pumpHeat = car.pump().heat(flow);
    double outside = blower.passCase(dt, drawn, now.engineCoolant(), now.underHood());

    double warmed = reservoir.out() + pumpHeat / (flow * perVolume);
    outside += supply.step(dt, flow, warmed, now.underHood());
    double taken = core.step(dt, drawn.flow(), airCp, blower.out(), flow, supply.out(), thinness);
    outside += back.step(dt, flow, core.coolantOut(), now.underHood());
    double draught =
        now.coolerVelocity()
            * car.frontFace()
            * Day.density(duty.day().pressure(), now.coolerAir());
    double fromFront = front.step(dt, draught, airCp, now.coolerAir(), flow, back.out(), thinness);
    outside += reservoir.step(dt, flow, front.coolantOut(), now.underHood());

    Stream cooled = drawn.at(core.airOut());
    outside += plenum.step(dt, cooled, now.engineCoolant(), now.underHood());
    sensor.step(dt, drawn.flow(), plenum.charge(), plenum.lid());
    coreInSensor += dt * (supply.out() - coreInSensor) / WATER_SENSOR_LAG;
    coreOutSensor += dt * (core.coolantOut() - coreOutSensor) / WATER_SENSOR_LAG;
    inletSensor += dt * (now.inletAir() - inletSensor) / INLET_SENSOR_LAG;

    double fromAir = drawn.capacityRate() * (blower.discharge() - plenum.out());
    ledger.add(dt, fromAir, outside, pumpHeat, fromFront);
    if (keep) {
      keep(time, now, drawn.flow(), taken);
    }
  }

  private Stream breathe(Duty.Moment now) {
    double barometer = duty.day().pressure();
    double speed = now.engineSpeed() / 60;
    if (manifold > barometer + 1000) {
      double density = Day.density(barometer, now.inletAir());
      double guess = blower.airFlow(speed, density, manifold / barometer);
      double loss = car.coreLoss() * (guess / 0.45) * (guess / 0.45) * 190e3 / manifold;
      double ratio = (manifold + loss) / barometer;
      Stream drawn = new Stream(blower.airFlow(speed, density, ratio), airCp, now.inletAir());
      blower.compress(drawn, speed, ratio);
      return drawn;
    }
    Stream drawn = new Stream(engineAirFlow(now), airCp, now.inletAir());
    blower.stir(drawn, speed);
    return drawn;
  }

  private void keep(double time, Duty.Moment now, double airFlow, double taken) {
    truths.add(
        new Truth(
            time,
            now,
            manifold - duty.day().pressure(),
            sensor.reading(),
            plenum.charge(),
            coreInSensor,
            coreOutSensor,
            inletSensor,
            airFlow,
            blower.discharge(),
            flow,
            plenum.lid(),
            new InCore(taken, blower.out(), core.airOut(), supply.out(), core.coolantOut())));
  }

  private double stored() {
    return core.stored()
        + front.stored()
        + supply.stored()
        + back.stored()
        + reservoir.stored()
        + blower.stored()
        + plenum.stored();
  }
}
