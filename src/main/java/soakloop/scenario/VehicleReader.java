package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;
import soakloop.session.Gearing;
import soakloop.session.Traction;
import soakloop.session.Vehicle;

/** Reads the car as the road feels it. */
final class VehicleReader {
  private static final double LOWEST_RATIO = 0.2;
  private static final double HIGHEST_RATIO = 20;
  private static final int MOST_GEARS = 12;

  private final In in;

  /**
   * A car, and its power at the wheels if that is stated.
   *
   * @param mass kg
   * @param wheelPower W over rev/s
   */
  record Read(
      double mass,
      Gearing gearing,
      Traction traction,
      double drag,
      double rollingResistance,
      Vehicle.Rotating rotating,
      Optional<Curve> wheelPower) {
    /** Returns the car with its power at the wheels. */
    Vehicle with(Curve power) {
      return new Vehicle(mass, gearing, traction, drag, rollingResistance, rotating, power);
    }
  }

  VehicleReader(In root) {
    this.in = root.section("vehicle");
  }

  /** Returns the car; empty if there is none, or not all of it can be used. */
  Optional<Read> read() {
    if (!in.present()) {
      return Optional.empty();
    }
    double mass = in.number("mass");
    double circumference = Math.PI * in.number("tyre-diameter");
    double finalDrive = in.number("final-drive");
    List<Double> ratios = ratios();
    double shiftAt = in.number("shift-at");
    double shiftTime = in.number("shift-time");
    Traction traction = traction();
    double drag = in.number("drag-area");
    double rolling = in.number("rolling-resistance");
    Vehicle.Rotating rotating =
        new Vehicle.Rotating(in.number("turning-wheels"), in.number("turning-engine"));
    Optional<Curve> power = power();
    in.done();
    if (ratios.isEmpty()) {
      return Optional.empty();
    }
    Gearing gearing = new Gearing(circumference, finalDrive, ratios, shiftAt, shiftTime);
    return Optional.of(new Read(mass, gearing, traction, drag, rolling, rotating, power));
  }

  private Traction traction() {
    double grip = in.number("tyre-grip");
    String driven = in.choice("driven");
    if (driven.equals("both")) {
      in.refuse("driven-weight", "has no use with both axles driven: they carry all of it");
      in.refuse("weight-transfer", "has no use with both axles driven");
      return new Traction(grip, Traction.Driven.BOTH, 1, 0);
    }
    return new Traction(
        grip,
        driven.equals("front") ? Traction.Driven.FRONT : Traction.Driven.REAR,
        in.number("driven-weight"),
        in.number("weight-transfer"));
  }

  private Optional<Curve> power() {
    Optional<Curve> wheels = in.curve("wheel-power");
    Optional<Curve> crank = in.curve("crank-power");
    if (crank.isEmpty()) {
      in.refuse("drivetrain-loss", "has no use without crank-power");
      return wheels;
    }
    if (wheels.isPresent()) {
      in.problem("crank-power", "has no use beside wheel-power; give one or the other");
    }
    double left = 1 - in.number("drivetrain-loss");
    Curve at = crank.get();
    double[] speeds = new double[at.size()];
    double[] watts = new double[at.size()];
    for (int i = 0; i < speeds.length; i++) {
      speeds[i] = at.place(i);
      watts[i] = left * at.value(i);
    }
    return Optional.of(Curve.of(speeds, watts));
  }

  /** Returns the ratios; none if they cannot be used. */
  private List<Double> ratios() {
    List<Node> items = in.items("gears");
    if (items.size() > MOST_GEARS) {
      in.problem("gears", "has " + items.size() + " gears; allowed: " + MOST_GEARS);
      return List.of();
    }
    List<Double> ratios = new ArrayList<>();
    for (Node item : items) {
      Optional<Double> ratio = ratio(item);
      if (ratio.isEmpty()) {
        return List.of();
      }
      if (!ratios.isEmpty() && !(ratio.get() < ratios.get(ratios.size() - 1))) {
        in.problem("gears", "must fall from gear to gear, first gear first");
        return List.of();
      }
      ratios.add(ratio.get());
    }
    return ratios;
  }

  private Optional<Double> ratio(Node item) {
    String allowed =
        "; it takes ratios as plain numbers from 0.2 to 20, like [2.97, 2.07, 1.43, 1]";
    if (!(item instanceof Node.Scalar scalar)) {
      in.problem("gears", "holds " + item.kind() + allowed);
      return Optional.empty();
    }
    try {
      Estimate read = in.context().quantity(scalar.text(), Dimension.NUMBER);
      if (read.spread() == 0 && read.value() >= LOWEST_RATIO && read.value() <= HIGHEST_RATIO) {
        return Optional.of(read.value());
      }
      in.problem("gears", "found `" + scalar.shown() + "`" + allowed);
    } catch (QuantityException e) {
      in.problem("gears", "found `" + scalar.shown() + "`, which " + e.getMessage() + allowed);
    }
    return Optional.empty();
  }
}
