package soakloop.scenario;

import java.util.function.Function;
import soakloop.rig.PowerLawConductance;

/**
 * Reads a conductance with the flows it holds at: a stated value, one measured point, or so much
 * per volume of block.
 *
 * <p>The air it holds at is a flow, or is said by the face: per area for the core, as a speed for
 * the heat exchanger.
 */
final class ConductanceReader {
  private final In in;
  private final String byFace;
  private final double flowPerUnit;
  private final Function<In, MeasuredReader> measured;

  /** What a conductance is and what it holds at, SI. */
  private record Known(double value, double airFlow, double coolantFlow) {}

  /**
   * Reads a section.
   *
   * @param in the section
   * @param byFace the key that says the air by the face
   * @param flowPerUnit air mass flow per unit of that key, SI; 0 if the face is not known
   * @param measured reads a measured point from its section
   */
  ConductanceReader(
      In in, String byFace, double flowPerUnit, Function<In, MeasuredReader> measured) {
    this.in = in;
    this.byFace = byFace;
    this.flowPerUnit = flowPerUnit;
    this.measured = measured;
  }

  /**
   * Returns the conductance.
   *
   * @param block what it is the conductance of; not used if the section has a value
   */
  PowerLawConductance read(Block block) {
    PowerLawConductance conductance;
    if (in.has("measured")) {
      conductance = scaled(block);
    } else {
      double value = value(block.volume());
      conductance = split(new Known(value, airFlow(), in.number("coolant-flow")));
    }
    in.done();
    return conductance;
  }

  private PowerLawConductance scaled(Block block) {
    for (String other : new String[] {"value", "per-volume", "air-flow", byFace, "coolant-flow"}) {
      in.refuse(other, "has no use beside measured; flows belong there");
    }
    MeasuredReader.Point point = measured.apply(in.section("measured")).read();
    PowerLawConductance there =
        split(new Known(point.conductance(), point.airFlow(), point.coolantFlow()));
    Block then = point.block();
    return block.known() && then.known()
        ? there.scaled(
            block.along() / then.along(),
            block.across() / then.across(),
            block.depth() / then.depth())
        : there;
  }

  private PowerLawConductance split(Known known) {
    double airShare = in.number("air-side-share");
    double wallShare = in.number("wall-share");
    if (airShare + wallShare > 0.99) {
      in.problem("wall-share", "and air-side-share leave less than 1 % for the coolant side");
      wallShare = 0;
    }
    return new PowerLawConductance(
        known.value(),
        known.airFlow(),
        known.coolantFlow(),
        airShare,
        wallShare,
        in.number("air-exponent"),
        in.number("coolant-exponent"),
        in.number("still-share"));
  }

  private double value(double volume) {
    if (in.has("value")) {
      in.refuse("per-volume", "has no use beside value; give one or the other");
      return in.number("value");
    }
    if (!in.has("per-volume")) {
      // The assumed conductance holds at the assumed flows, so these cannot be moved alone.
      for (String flow : new String[] {"air-flow", byFace, "coolant-flow"}) {
        if (in.has(flow)) {
          in.problem(
              flow, "says at which flow a conductance holds; give the value or per-volume too");
        }
      }
    }
    double value = in.number("per-volume") * volume;
    return value > 0 ? value : Fallbacks.CONDUCTANCE.value();
  }

  private double airFlow() {
    if (in.has("air-flow")) {
      in.refuse(byFace, "has no use beside air-flow; give one or the other");
      return in.number("air-flow");
    }
    if (in.has("value") && !in.has(byFace)) {
      in.problem("value", "holds at one air flow only; say which, with air-flow or " + byFace);
    }
    if (in.has(byFace) && !(flowPerUnit > 0)) {
      in.problem(byFace, "needs the size of the face; give that, or air-flow");
    }
    double flow = in.number(byFace) * flowPerUnit;
    return flow > 0 ? flow : Fallbacks.CONDUCTANCE.airFlow();
  }
}
