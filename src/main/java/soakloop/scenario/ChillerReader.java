package soakloop.scenario;

import java.util.Locale;
import soakloop.flow.Resistance;
import soakloop.quantity.Curve;
import soakloop.rig.Chiller;

/** Reads a chiller. */
final class ChillerReader {
  /** Flow that its pressure loss is told at, m3/s. */
  private static final double LOSS_FLOW = 20e-3 / 60;

  /** Power of flow that the loss goes with: between laminar channels and turbulent ports. */
  private static final double LOSS_EXPONENT = 1.75;

  private final In in;
  private final Hydraulics hydraulics;

  ChillerReader(In in, Hydraulics hydraulics) {
    this.in = in;
    this.hydraulics = hydraulics;
  }

  Chiller read(String name) {
    Chiller chiller =
        new Chiller(
            name,
            in.number("coolant"),
            in.curve("capacity").orElse(Curve.constant(0)),
            in.number("fading-flow"),
            in.number("coldest"),
            in.number("performance"),
            Chiller.Drive.valueOf(in.choice("driven-by").toUpperCase(Locale.ROOT)),
            hydraulics.counts(in, "pressure-loss")
                ? new Resistance.KnownPoint(in.number("pressure-loss"), LOSS_FLOW, LOSS_EXPONENT)
                : Resistance.NONE);
    in.done();
    return chiller;
  }
}
