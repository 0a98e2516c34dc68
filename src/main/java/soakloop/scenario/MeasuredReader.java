package soakloop.scenario;

import java.util.Locale;
import java.util.OptionalDouble;
import soakloop.exchange.PassedCrossflow;
import soakloop.fluid.Air;
import soakloop.fluid.Coolant;

/**
 * Reads one measured point of an exchanger: its effectiveness, or temperatures that give it, at
 * known flows, and the size of the block it was measured on.
 */
final class MeasuredReader {
  /** Where no temperature is given, K. */
  private static final double USUAL_AIR = 350;

  private static final double USUAL_COOLANT = 318.15;

  /** Inlets closer than this say nothing, K. */
  private static final double LEAST_DIFFERENCE = 1;

  /** Share of the most effectiveness that a conductance can still be told from. */
  private static final double TELLING = 0.995;

  private final In in;
  private final Coolant coolant;
  private final PassedCrossflow passes;
  private final double airDensity;

  /**
   * Reads a section.
   *
   * @param in the section
   * @param coolant what fills the loop, and filled the exchanger then
   * @param passes how the coolant crosses the air
   * @param airDensity of the day, by which a face speed becomes a flow, kg/m3; 0 if air may only be
   *     given as a flow
   */
  MeasuredReader(In in, Coolant coolant, PassedCrossflow passes, double airDensity) {
    this.in = in;
    this.coolant = coolant;
    this.passes = passes;
    this.airDensity = airDensity;
  }

  /**
   * A conductance, the flows it holds at, and the block it was measured on.
   *
   * @param conductance W/K
   * @param airFlow kg/s
   * @param coolantFlow m3/s
   * @param block its size
   */
  record Point(double conductance, double airFlow, double coolantFlow, Block block) {}

  /** Returns the point; something allowed after a problem. */
  Point read() {
    Block block = block();
    double airFlow = airFlow(block.face());
    double coolantFlow = in.number("coolant-flow");
    OptionalDouble airIn = in.optional("air-in");
    OptionalDouble coolantIn = in.optional("coolant-in");
    double airRate = airFlow * Air.heatCapacity(airIn.orElse(USUAL_AIR));
    double at = coolantIn.orElse(USUAL_COOLANT);
    double coolantRate = coolantFlow * coolant.density(at) * coolant.heatCapacity(at);
    double effectiveness = effectiveness(airIn, coolantIn, coolantRate / airRate);
    double most = TELLING * passes.mostEffectiveness(airRate, coolantRate);
    if (!(effectiveness > 0 && effectiveness < most)) {
      in.problem(
          in.has("effectiveness") ? "effectiveness" : "",
          String.format(
              Locale.ROOT,
              "means that the air goes %.1f %% of the way to the coolant's inlet temperature;"
                  + " possible at these flows: above 0 to %.1f %%",
              100 * effectiveness,
              100 * most));
      effectiveness = most / 2;
    }
    in.done();
    return new Point(
        passes.conductance(effectiveness, airRate, coolantRate), airFlow, coolantFlow, block);
  }

  private Block block() {
    In size = in.section("size");
    boolean core = airDensity == 0;
    Block block =
        new Block(
            size.number(core ? "length" : "width"),
            size.number(core ? "width" : "height"),
            size.number("thickness"));
    size.done();
    return block;
  }

  private double airFlow(double face) {
    if (airDensity == 0) {
      return in.number("air-flow");
    }
    if (in.has("air-flow")) {
      in.refuse("air-speed", "has no use beside air-flow; give one or the other");
      return in.number("air-flow");
    }
    if (!in.has("air-speed")) {
      in.problem("", "holds at one air flow only; say which, with air-flow or air-speed");
    }
    return in.optional("air-speed").orElse(1) * face * airDensity;
  }

  private double effectiveness(OptionalDouble airIn, OptionalDouble coolantIn, double rateRatio) {
    if (in.has("effectiveness")) {
      in.refuse("air-out", "has no use beside effectiveness; give one or the other");
      in.refuse("coolant-out", "has no use beside effectiveness; give one or the other");
      return in.number("effectiveness");
    }
    OptionalDouble airOut = in.optional("air-out");
    OptionalDouble coolantOut = in.optional("coolant-out");
    if (airIn.isEmpty() || coolantIn.isEmpty() || airOut.isPresent() == coolantOut.isPresent()) {
      in.problem(
          "",
          "needs effectiveness; or else air-in and coolant-in, and one of air-out and coolant-out");
      return 0.01;
    }
    double difference = airIn.getAsDouble() - coolantIn.getAsDouble();
    if (!(Math.abs(difference) >= LEAST_DIFFERENCE)) {
      in.problem("air-in", "and coolant-in must differ by 1 K at the least");
      return 0.01;
    }
    return airOut.isPresent()
        ? (airIn.getAsDouble() - airOut.getAsDouble()) / difference
        : rateRatio * (coolantOut.orElseThrow() - coolantIn.getAsDouble()) / difference;
  }
}
