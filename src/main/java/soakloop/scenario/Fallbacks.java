package soakloop.scenario;

import java.util.List;
import java.util.Optional;
import soakloop.rig.Core;
import soakloop.rig.Exchanger;
import soakloop.rig.Loop;
import soakloop.rig.Passes;
import soakloop.rig.PowerLawConductance;
import soakloop.rig.Pump;
import soakloop.rig.PumpDelivery;
import soakloop.rig.PumpPower;

/** Stand-ins that let reading go on after a problem; a scenario with a problem is never used. */
final class Fallbacks {
  static final PowerLawConductance CONDUCTANCE =
      new PowerLawConductance(500, 0.4, 4e-4, 0.7, 0.01, 0.5, 0.3, 0.2);
  private static final Exchanger EXCHANGER =
      new Exchanger(CONDUCTANCE, 1000, 1e-3, Passes.ONE, new Exchanger.Grid(1, 1));
  private static final Loop LOOP =
      new Loop(
          List.of(
              new Core("core", EXCHANGER),
              new Pump("pump", new PumpDelivery.StatedFlow(1e-3), new PumpPower.Stated(0), 1e-3)),
          Optional.empty());

  private Fallbacks() {}

  static Exchanger exchanger() {
    return EXCHANGER;
  }

  static Loop loop() {
    return LOOP;
  }
}
