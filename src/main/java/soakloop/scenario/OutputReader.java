package soakloop.scenario;

import java.util.Optional;
import soakloop.charge.EnginePower;
import soakloop.charge.SparkLoss;
import soakloop.charge.SparkTable;
import soakloop.quantity.Curve;

/** Reads what the charge does to the engine: power and spark. */
final class OutputReader {
  private OutputReader() {}

  static Scenario.Output read(In root) {
    return new Scenario.Output(power(root.section("power")), spark(root.section("spark")));
  }

  private static Optional<EnginePower> power(In in) {
    if (!in.present()) {
      return Optional.empty();
    }
    EnginePower power =
        new EnginePower(
            in.number("fuel-consumption"),
            in.number("air-fuel-ratio"),
            in.number("drivetrain-loss"));
    in.done();
    return Optional.of(power);
  }

  private static Optional<SparkTable> spark(In in) {
    if (!in.present()) {
      return Optional.empty();
    }
    SparkTable spark =
        new SparkTable(
            in.curve("taken-out").orElse(Curve.constant(0)),
            in.number("later-than-best"),
            new SparkLoss(in.number("loss")));
    in.done();
    return Optional.of(spark);
  }
}
