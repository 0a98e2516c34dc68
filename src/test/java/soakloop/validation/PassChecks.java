package soakloop.validation;

import java.util.List;
import soakloop.session.DragCar;
import soakloop.session.Pass;
import soakloop.session.PassCourse;
import soakloop.session.Vehicle;

/** The drag pass: exact solutions, and the strip's own relations between power, weight and time. */
final class PassChecks implements CheckSuite {
  private static final double G = 9.80665;
  private static final double GRIP = 1.1;
  private static final double POWER = 400e3;

  /** Engine speed at launch so low that power is constant from the first millimetres on, rev/s. */
  private static final double CREEP = 0.01;

  private final CheckList list = new CheckList("Drag pass");

  @Override
  public List<Check> checks() {
    constantPower();
    traction();
    topSpeed();
    hale();
    return list.checks();
  }

  private static PassCourse run(Vehicle car, double distance) {
    return new Pass(car, DragCar.AIR, distance, 0, CREEP).run();
  }

  private void constantPower() {
    list.from(Kind.ANALYTIC, "constant power, no resistance: x = (8 P / 9 m)^(1/2) t^(3/2)");
    Tolerance near = Tolerance.relative(1e-6);
    for (double x : new double[] {100.584, 201.168, DragCar.QUARTER}) {
      PassCourse course = run(DragCar.ideal(POWER, 1e7), x);
      String what = ", 400 kW on 1700 kg, after " + Digits.of(x, 6) + " m";
      list.add(
              "time" + what,
              Math.cbrt(9 * DragCar.MASS * x * x / (8 * POWER)),
              course.duration(),
              near,
              "s")
          .add(
              "speed" + what,
              Math.cbrt(3 * POWER * x / DragCar.MASS),
              course.endSpeed(),
              near,
              "m/s");
    }
  }

  private void traction() {
    Tolerance near = Tolerance.relative(1e-6);
    list.from(Kind.ANALYTIC, "driven by grip alone: x = mu g t^2 / 2");
    for (double x : new double[] {100.584, DragCar.QUARTER}) {
      list.add(
          "time at a grip of 1.1, after " + Digits.of(x, 6) + " m",
          Math.sqrt(2 * x / (GRIP * G)),
          run(DragCar.ideal(1e12, GRIP), x).duration(),
          near,
          "s");
    }
    list.from(
        Kind.ANALYTIC, "grip up to v = P / (mu m g), then constant power: both laws end to end");
    double m = DragCar.MASS;
    double v = POWER / (GRIP * m * G);
    double way = v * v / (2 * GRIP * G);
    double end = Math.cbrt(v * v * v + 3 * POWER * (DragCar.QUARTER - way) / m);
    PassCourse course = run(DragCar.ideal(POWER, GRIP), DragCar.QUARTER);
    list.add(
            "time, grip 1.1 then 400 kW, after 402.336 m",
            v / (GRIP * G) + m * (end * end - v * v) / (2 * POWER),
            course.duration(),
            near,
            "s")
        .add("speed there", end, course.endSpeed(), near, "m/s");
  }

  private void topSpeed() {
    list.from(Kind.ANALYTIC, "P / v = rolling + drag, the real root of the cubic after Cardano");
    double a = 0.5 * DragCar.AIR * 0.75;
    double p = 0.014 * DragCar.MASS * G / a;
    double q = -120e3 / a;
    double root = Math.sqrt(q * q / 4 + p * p * p / 27);
    list.add(
        "speed after 25 km, 120 kW, drag area 0.75 m2, rolling resistance 1.4 %",
        Math.cbrt(-q / 2 + root) + Math.cbrt(-q / 2 - root),
        run(DragCar.dragged(120e3, 1, 0.75, 0.014), 25_000).endSpeed(),
        Tolerance.relative(1e-6),
        "m/s");
  }

  /**
   * The stated car is invented: 1700 kg, four gears, drag area 0.75 m2, 15 % lost behind the crank,
   * both axles driven so that no launch is held by grip. Over the powers at which its gears fit;
   * with less than 300 hp so big a car loses more to the air than the relations have.
   */
  private void hale() {
    list.from(
        Kind.PUBLISHED,
        "P. Hale: ET = 5.825 (W/P)^(1/3) s, speed = 234 (P/W)^(1/3) mph, W in lb, P in hp; relations"
            + " and constants from memory");
    Tolerance near = Tolerance.relative(0.06);
    double pounds = DragCar.MASS / DragCar.POUND;
    for (double hp : new double[] {300, 400, 500, 600, 700, 800}) {
      PassCourse course = DragCar.quarter(DragCar.car(hp * DragCar.HORSEPOWER, 3));
      String what = ", invented car of 3748 lb and " + Digits.of(hp, 3) + " hp";
      list.add(
              "quarter mile time" + what,
              5.825 * Math.cbrt(pounds / hp),
              Rounded.to(3, course.times().elapsed()),
              near,
              "s")
          .add(
              "quarter mile speed" + what,
              234 * Math.cbrt(hp / pounds),
              Rounded.to(2, course.times().trapSpeed() / 0.44704),
              near,
              "mph");
    }
  }
}
