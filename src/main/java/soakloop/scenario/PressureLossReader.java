package soakloop.scenario;

import java.util.Optional;
import soakloop.flow.Liquid;
import soakloop.flow.Resistance;
import soakloop.fluid.Coolant;

/** Reads what an exchanger costs the coolant in pressure: a known point, or else by size. */
final class PressureLossReader {
  /** Length along the tubes and area across them of the exchanger that the default is for. */
  private static final double USUAL_LENGTH = 0.3;

  private static final double USUAL_AREA = 0.01;

  /** Share of the usual loss that is lost in tubes; a guess within the default's spread. */
  private static final double IN_TUBES = 0.5;

  /** How far a size may carry the default. */
  private static final double FARTHEST = 20;

  private final Hydraulics hydraulics;
  private final Coolant coolant;

  PressureLossReader(Hydraulics hydraulics, Coolant coolant) {
    this.hydraulics = hydraulics;
    this.coolant = coolant;
  }

  /**
   * Way of the coolant through an exchanger.
   *
   * @param length along the tubes, m; 0 if not known
   * @param area across all tubes, m2; 0 if not known
   * @param passes number of passes
   * @param usualPasses those of the exchanger that the default is for
   */
  record Way(double length, double area, int passes, int usualPasses) {
    /**
     * Over the usual exchanger's loss at the same flow: longer by length, faster by area, both by
     * passes. Only what is lost in tubes goes so; ports and tanks keep their part.
     */
    double overUsual(double exponent) {
      double sizes =
          length > 0 && area > 0
              ? length / USUAL_LENGTH * Math.pow(USUAL_AREA / area, exponent)
              : 1;
      double times = sizes * Math.pow((double) passes / usualPasses, 1 + exponent);
      return Math.min(FARTHEST, 1 - IN_TUBES + IN_TUBES * times);
    }
  }

  /**
   * Reads the section.
   *
   * @param exchanger the section it stands in
   * @param way of the coolant, for the default
   * @return the loss; empty if none counts here
   */
  Optional<Resistance> read(In exchanger, Way way) {
    if (hydraulics == Hydraulics.PLUMBING) {
      exchanger.refuse("pressure-loss", "has no use beside plumbing; give one or the other");
      return Optional.empty();
    }
    In in = exchanger.section("pressure-loss");
    if (hydraulics == Hydraulics.NONE) {
      hydraulics.counts(in, "loss", "usual-loss", "flow", "exponent", "temperature");
      in.done();
      return Optional.empty();
    }
    double exponent = in.number("exponent");
    double loss = loss(in, way, exponent);
    Resistance.KnownPoint point = new Resistance.KnownPoint(loss, in.number("flow"), exponent);
    Liquid liquid = Liquid.held(coolant, in.number("temperature"));
    in.done();
    return Optional.of(new Resistance.KnownLiquid(point, liquid));
  }

  /**
   * Reads the section of an exchanger that is described by its geometry, which says the loss where
   * the section does not.
   *
   * @param exchanger the section it stands in
   * @param way of the coolant
   * @param worked what follows from geometry
   * @return the loss; empty if none counts here
   */
  Optional<Resistance> read(In exchanger, Way way, Optional<Resistance> worked) {
    boolean said = exchanger.has("pressure-loss");
    return worked.isPresent() && !said && hydraulics != Hydraulics.PLUMBING
        ? worked
        : read(exchanger, way);
  }

  private static double loss(In in, Way way, double exponent) {
    if (in.has("loss")) {
      in.refuse("usual-loss", "has no use beside loss; give one or the other");
      return in.number("loss");
    }
    if (in.has("flow") && !in.has("usual-loss")) {
      in.problem("flow", "says at which flow a loss holds; give the loss too");
    }
    return in.number("usual-loss") * way.overUsual(exponent);
  }
}
