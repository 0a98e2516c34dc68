package soakloop.validation;

import java.util.List;
import java.util.stream.Stream;

/** Every suite of the project, in the order of the table. */
final class Suites {
  private static final List<Check> CHECKS =
      Stream.of(
              new CoolantChecks(),
              new WaterChecks(),
              new AirChecks(),
              new EffectivenessChecks(),
              new ExchangerExampleChecks(),
              new ExchangerGridChecks(),
              new SteadyLoopChecks(),
              new CellChecks(),
              new SmallRigChecks(),
              new PipeFrontChecks(),
              new HoseWallChecks(),
              new LedgerChecks(),
              new FinChecks(),
              new CoreGeometryChecks(),
              new CoupledFlowChecks(),
              new FlowChecks(),
              new LoopFlowChecks(),
              new ChargeChecks(),
              new BoostChecks(),
              new WaterAndIceChecks(),
              new IceInTankChecks(),
              new IceTankChecks(),
              new StrdChecks(),
              new PassChecks(),
              new TradeChecks())
          .flatMap(suite -> suite.checks().stream())
          .toList();

  private Suites() {}

  static List<Check> checks() {
    return CHECKS;
  }
}
