package soakloop.study;

import soakloop.charge.BoostMatch;
import soakloop.charge.ChargePath;
import soakloop.charge.Compression;
import soakloop.charge.Swallowing;
import soakloop.fluid.MoistAir;
import soakloop.rig.AirDelivery;
import soakloop.rig.Blower;
import soakloop.rig.Day;
import soakloop.rig.Engine;
import soakloop.scenario.Scenario;
import soakloop.session.Drive;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** The blower at one instant of a run, with its bypass shut, and what it would do otherwise. */
final class BlowerAt {
  private final Blower blower;
  private final Engine engine;
  private final double day;
  private final boolean boostHeld;
  private final BoostMatch.Inlet inlet;
  private final double engineSpeed;
  private final double boost;
  private final double loss;
  private final double charge;
  private final double airFlow;
  private final double outlet;
  private final double ductDrop;

  /**
   * What a blower does.
   *
   * @param power at its drive, W
   * @param airFlow kg/s
   * @param charge K
   * @param boost gauge pressure in the manifold, Pa
   */
  record Point(double power, double airFlow, double charge, double boost) {}

  BlowerAt(Scenario scenario, Trace trace, double time) {
    this.blower = scenario.rig().blower();
    this.engine = scenario.rig().engine();
    Day air = scenario.day();
    this.day = air.pressure();
    this.boostHeld = scenario.rig().boost().isPresent() || isLogged(trace, time);
    this.engineSpeed = trace.at(Channel.ENGINE_SPEED, time);
    this.boost = trace.at(Channel.BOOST, time);
    this.loss = trace.at(Channel.CORE_LOSS, time);
    this.charge = trace.at(Channel.CHARGE, time);
    this.airFlow = trace.at(Channel.AIR_MASS_FLOW, time);
    this.outlet = trace.at(Channel.BLOWER_OUTLET, time);
    double atCore = trace.at(Channel.CORE_AIR_IN, time);
    this.ductDrop = outlet - atCore + trace.at(Channel.CORE_AIR_OUT, time) - charge;
    this.inlet =
        new BoostMatch.Inlet(
            (day + boost + loss) / trace.at(Channel.PRESSURE_RATIO, time),
            trace.at(Channel.INLET_AIR, time),
            MoistAir.of(air.temperature(), air.pressure(), air.humidity()).gasConstant());
  }

  private static boolean isLogged(Trace trace, double time) {
    return trace.spans().stream()
        .filter(span -> span.start() <= time && time <= span.end())
        .anyMatch(
            span ->
                span.phase().drive() instanceof Drive.Replay replay && replay.boost().isPresent());
  }

  boolean boostHeld() {
    return boostHeld;
  }

  double loss() {
    return loss;
  }

  Point asRun() {
    return point(ChargePath.Cooling.heldAt(charge), loss);
  }

  /** The same charge temperature behind a core that takes no pressure. */
  Point withoutLoss() {
    return point(ChargePath.Cooling.heldAt(charge), 0);
  }

  /** No core: what leaves the blower, less what case and plenum take. */
  Point withoutCore() {
    return point((t, flow) -> t - ductDrop, 0);
  }

  private Point point(ChargePath.Cooling cooling, double coreLoss) {
    if (boostHeld || !(blower.delivery() instanceof AirDelivery.PositiveDisplacement p)) {
      return held(cooling, coreLoss);
    }
    double density = (day + boost + loss) / (inlet.gasConstant() * 0.5 * (outlet + charge));
    BoostMatch.Boost found =
        new BoostMatch(
                p.size(),
                new Swallowing(
                    engine.displacement(), engine.volumetricEfficiency().at(engineSpeed)),
                new ChargePath(cooling, coreLoss, airFlow, density),
                ratio -> blower.efficiency(ratio, engineSpeed),
                blower.mechanicalEfficiency())
            .shut(inlet, engineSpeed);
    return new Point(
        found.blowerPower(), found.massFlow(), found.charge(), found.afterCore() - day);
  }

  private Point held(ChargePath.Cooling cooling, double coreLoss) {
    double ratio = Math.max(1, (day + boost + coreLoss) / inlet.pressure());
    double density = inlet.pressure() / (inlet.gasConstant() * inlet.temperature());
    double flow = blower.delivery().massFlow(engineSpeed, density, ratio);
    double efficiency = blower.efficiency(ratio, engineSpeed);
    double work = Compression.specificWork(inlet.temperature(), ratio, efficiency);
    double leaving = Compression.outletOfRealAir(inlet.temperature(), ratio, efficiency);
    return new Point(
        flow * work / blower.mechanicalEfficiency(), flow, cooling.charge(leaving, flow), boost);
  }
}
