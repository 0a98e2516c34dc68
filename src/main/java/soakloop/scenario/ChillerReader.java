package soakloop.scenario;

import java.util.Locale;
import soakloop.flow.Resistance;
import soakloop.fluid.Coolant;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.quantity.UnitSystem;
import soakloop.rig.Chiller;

/** Reads a chiller. */
final class ChillerReader {
  /** Flow that its pressure loss is told at, m3/s. */
  private static final double LOSS_FLOW = 20e-3 / 60;

  /** Power of flow that the loss goes with: between laminar channels and turbulent ports. */
  private static final double LOSS_EXPONENT = 1.75;

  private final In in;
  private final Hydraulics hydraulics;
  private final Coolant coolant;

  ChillerReader(In in, Hydraulics hydraulics, Coolant coolant) {
    this.in = in;
    this.hydraulics = hydraulics;
    this.coolant = coolant;
  }

  Chiller read(String name) {
    Chiller chiller =
        new Chiller(
            name,
            in.number("coolant"),
            in.curve("capacity").orElse(Curve.constant(0)),
            in.number("fading-flow"),
            coldest(),
            in.number("performance"),
            Chiller.Drive.valueOf(in.choice("driven-by").toUpperCase(Locale.ROOT)),
            hydraulics.counts(in, "pressure-loss")
                ? new Resistance.KnownPoint(in.number("pressure-loss"), LOSS_FLOW, LOSS_EXPONENT)
                : Resistance.NONE);
    in.done();
    return chiller;
  }

  /** Returns the guard against freezing, which must lie where the coolant is liquid. */
  private double coldest() {
    double coldest = in.number("coldest");
    double freezing = coolant.freezingTemperature();
    if (coldest < freezing) {
      in.problem(
          "coldest",
          "lies below the coolant's freezing point of "
              + UnitSystem.METRIC.show(freezing, Dimension.TEMPERATURE, 1)
              + " ("
              + UnitSystem.US.show(freezing, Dimension.TEMPERATURE, 1)
              + ")");
    }
    return coldest;
  }
}
