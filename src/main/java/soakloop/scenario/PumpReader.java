package soakloop.scenario;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.flow.Mover;
import soakloop.quantity.Curve;
import soakloop.rig.Pump;
import soakloop.rig.PumpDelivery;
import soakloop.rig.PumpPower;

/** Reads the pump: by the flow it makes, by its curve, or by its label. */
final class PumpReader {
  private final In in;

  PumpReader(In in) {
    this.in = in;
  }

  /** Returns whether its flow follows from what it pushes against. */
  static boolean pushes(In pump) {
    return pump.has("curve") || pump.has("label");
  }

  Pump read() {
    double speed = 1;
    int count = 1;
    PumpDelivery delivery;
    if (pushes(in)) {
      in.refuse("flow", "has no use beside " + how() + "; give one or the other");
      speed = speed();
      count = in.count("in-series");
      Mover one = new Mover.AtSpeed(mover(), speed);
      Mover all = count == 1 ? one : new Mover.InSeries(Collections.nCopies(count, one));
      delivery = new PumpDelivery.Pushing(all, label());
    } else {
      for (String key : new String[] {"label-share", "shut-off"}) {
        in.refuse(key, "belongs to a label; give that too, or take this out");
      }
      for (String key : new String[] {"speed", "voltage", "rated-voltage", "in-series"}) {
        in.refuse(key, "needs the pump's curve or label; its flow is what it makes as it runs");
      }
      delivery = new PumpDelivery.StatedFlow(in.number("flow"));
    }
    Pump pump = new Pump("pump", delivery, power(count * speed * speed * speed), volume(count));
    in.done();
    return pump;
  }

  private String how() {
    return in.has("curve") ? "curve" : "label";
  }

  private OptionalDouble label() {
    return in.has("curve") ? OptionalDouble.empty() : in.optional("label");
  }

  private Mover mover() {
    Optional<Curve> curve = in.curve("curve");
    if (curve.isEmpty()) {
      return new Mover.Parabola(
          in.number("shut-off"), in.number("label") * in.number("label-share"));
    }
    in.refuse("label", "has no use beside curve; give one or the other");
    for (String key : new String[] {"label-share", "shut-off"}) {
      in.refuse(key, "belongs to a label; the curve says it better");
    }
    if (!in.context().hasProblems(in.path("curve"))) {
      try {
        return PumpDelivery.curve(curve.get());
      } catch (IllegalArgumentException e) {
        in.problem("curve", "is not a pump's: " + e.getMessage());
      }
    }
    return new Mover.Off();
  }

  /** Speed over that of curve or label: stated, or as the voltage. */
  private double speed() {
    if (in.has("voltage")) {
      in.refuse("speed", "has no use beside voltage; give one or the other");
      return in.number("voltage") / in.number("rated-voltage");
    }
    if (in.has("rated-voltage")) {
      in.problem("rated-voltage", "needs the voltage that the pump runs on");
      in.idle("rated-voltage");
    }
    return in.has("speed") ? in.number("speed") : 1;
  }

  private PumpPower power(double factor) {
    if (in.has("efficiency")) {
      in.refuse("power", "has no use beside efficiency; give one or the other");
      if (!pushes(in)) {
        in.problem("efficiency", "needs the pump's curve or label, which give the pressure");
      }
      return new PumpPower.FromFlow(in.number("efficiency"));
    }
    return new PumpPower.Stated(factor * in.number("power"));
  }

  private double volume(int count) {
    return count * in.number("coolant");
  }
}
