package soakloop.scenario;

import soakloop.rig.Conductance;

/**
 * Reads a conductance with the flows it holds at: a stated value, or so much per volume of block.
 *
 * <p>The air it holds at is a flow, or is said by the face: per area for the core, as a speed for
 * the heat exchanger.
 */
final class ConductanceReader {
  private final In in;
  private final String byFace;
  private final double flowPerUnit;

  /**
   * Reads a section.
   *
   * @param in the section
   * @param byFace the key that says the air by the face
   * @param flowPerUnit air mass flow per unit of that key, SI; 0 if the face is not known
   */
  ConductanceReader(In in, String byFace, double flowPerUnit) {
    this.in = in;
    this.byFace = byFace;
    this.flowPerUnit = flowPerUnit;
  }

  /**
   * Returns the conductance.
   *
   * @param volume the block's volume, m3; not used if the section has a value
   */
  Conductance read(double volume) {
    double value = value(volume);
    double airFlow = airFlow();
    double coolantFlow = in.number("coolant-flow");
    double airShare = in.number("air-side-share");
    double wallShare = in.number("wall-share");
    if (airShare + wallShare > 0.99) {
      in.problem("wall-share", "and air-side-share leave less than 1 % for the coolant side");
      wallShare = 0;
    }
    Conductance conductance =
        new Conductance(
            value,
            airFlow,
            coolantFlow,
            airShare,
            wallShare,
            in.number("air-exponent"),
            in.number("coolant-exponent"),
            in.number("still-share"));
    in.done();
    return conductance;
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
    return value > 0 ? value : Fallbacks.exchanger().conductance().value();
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
    return flow > 0 ? flow : Fallbacks.exchanger().conductance().airFlow();
  }
}
