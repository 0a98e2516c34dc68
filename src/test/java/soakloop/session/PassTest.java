package soakloop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.quantity.Curve;

/**
 * The pass against exact solutions of its equation; the strip's own relations are in PassChecks.
 */
@Tag("analytic")
class PassTest {
  private static final double NEAR = 1e-6;
  private static final double G = 9.80665;
  private static final double GRIP = 1.1;
  private static final double POWER = 400e3;

  /** A launch so slow that power is constant from the first millimetres on. */
  private static final double CREEP = 0.01;

  private static PassCourse run(Vehicle car, double distance) {
    return new Pass(car, DragCar.AIR, distance, 0, CREEP).run();
  }

  private static void near(double expected, double actual) {
    assertEquals(expected, actual, NEAR * expected);
  }

  @Test
  void aGearIsLeftAtTheShiftSpeedAndNothingDrivesMeanwhile() {
    Gearing gearing = new Gearing(2, 4, List.of(2.0, 0.5), 100, 0.4);
    Vehicle ideal = DragCar.ideal(POWER, 1e7);
    Vehicle car =
        new Vehicle(
            DragCar.MASS,
            gearing,
            ideal.traction(),
            0,
            0,
            Vehicle.Rotating.NONE,
            ideal.wheelPower());
    double m = DragCar.MASS;
    double shift = 100 * 2 / 8.0;
    double before = m * shift * shift / (2 * POWER);
    double way = m * Math.pow(shift, 3) / (3 * POWER) + 0.4 * shift;
    double end = Math.cbrt(Math.pow(shift, 3) + 3 * POWER * (DragCar.QUARTER - way) / m);
    PassCourse course = run(car, DragCar.QUARTER);
    near(before + 0.4 + m * (end * end - shift * shift) / (2 * POWER), course.duration());
    near(end, course.endSpeed());
    assertEquals(100, course.engineSpeed().at(before), 0.01);
    assertEquals(62.5, course.engineSpeed().at(before + 0.2), 0.01);
    assertEquals(25, course.engineSpeed().at(before + 0.4), 0.01);
  }

  @Test
  void theClockStartsAfterTheRollout() {
    Vehicle car = DragCar.ideal(1e12, GRIP);
    PassTimes times = new Pass(car, DragCar.AIR, DragCar.QUARTER, 0.3, CREEP).run().times();
    double start = Math.sqrt(2 * 0.3 / (GRIP * G));
    near(Math.sqrt(2 * (DragCar.QUARTER + 0.3) / (GRIP * G)) - start, times.elapsed());
    near(Math.sqrt(2 * (18.288 + 0.3) / (GRIP * G)) - start, times.sixtyFoot());
  }

  @Test
  void trapSpeedIsTheMeanOverTheLast66Feet() {
    PassTimes times = run(DragCar.ideal(1e12, GRIP), DragCar.QUARTER).times();
    double last = Math.sqrt(2 * DragCar.QUARTER / (GRIP * G));
    double first = Math.sqrt(2 * (DragCar.QUARTER - 20.1168) / (GRIP * G));
    near(20.1168 / (last - first), times.trapSpeed());
  }

  /** The engine slips at launch speed and its torque pushes evenly until first gear has it. */
  @Test
  void theClutchSlipsUntilFirstGearHasCaughtUp() {
    Vehicle car = DragCar.ideal(POWER, 1e7);
    PassCourse course = new Pass(car, DragCar.AIR, DragCar.QUARTER, 0, 30).run();
    double caught = 30 * 2 / 4.0;
    double until = DragCar.MASS * caught * caught / POWER;
    assertEquals(30, course.engineSpeed().at(0.5 * until), 1e-9);
    assertEquals(caught / 2, course.roadSpeed().at(until / 2), 1e-3);
    assertTrue(course.engineSpeed().at(1.1 * until) > 30);
    double after = until + DragCar.MASS * (20 * 20 - caught * caught) / (2 * POWER);
    assertEquals(20, course.roadSpeed().at(after), 1e-3);
  }

  @Test
  void atItsLimiterItGoesOnAtOneSpeed() {
    Gearing gearing = new Gearing(2, 4, List.of(1.0), 60, 0.1);
    Vehicle ideal = DragCar.ideal(POWER, 1e7);
    Vehicle car =
        new Vehicle(
            DragCar.MASS,
            gearing,
            ideal.traction(),
            0,
            0,
            Vehicle.Rotating.NONE,
            ideal.wheelPower());
    PassCourse course = run(car, DragCar.QUARTER);
    assertTrue(course.limited());
    double top = 60 * 2 / 4.0;
    double way = DragCar.MASS * Math.pow(top, 3) / (3 * POWER);
    double time = DragCar.MASS * top * top / (2 * POWER);
    near(time + (DragCar.QUARTER - way) / top, course.duration());
    near(top, course.times().trapSpeed());
  }

  /** Statics of a rigid car, worked by hand. */
  @Test
  void weightMovesToTheRear() {
    double weight = 1000 * G;
    assertEquals(
        0.742105, new Traction(1.2, Traction.Driven.REAR, 0.47, 0.2).limit(1000) / weight, 1e-6);
    assertEquals(
        0.580645, new Traction(1.2, Traction.Driven.FRONT, 0.6, 0.2).limit(1000) / weight, 1e-6);
    assertEquals(1.2, new Traction(1.2, Traction.Driven.BOTH, 1, 0).limit(1000) / weight, 1e-12);
    // With the front wheels in the air the rear ones carry all of it.
    assertEquals(
        2.5, new Traction(2.5, Traction.Driven.REAR, 0.5, 0.3).limit(1000) / weight, 1e-12);
    assertEquals(5, new Traction(5, Traction.Driven.REAR, 0.5, 0.3).limit(1000) / weight, 1e-12);
  }

  @Test
  void whatTurnsSlowsPowerButNotGrip() {
    Vehicle light = DragCar.car(300e3, 3);
    Vehicle heavy =
        new Vehicle(
            light.mass(),
            light.gearing(),
            light.traction(),
            light.drag(),
            light.rollingResistance(),
            new Vehicle.Rotating(0.08, 0.005),
            light.wheelPower());
    assertTrue(
        DragCar.quarter(heavy).times().elapsed() > 1.01 * DragCar.quarter(light).times().elapsed());
    Vehicle gripping = DragCar.ideal(1e12, GRIP);
    Vehicle turning =
        new Vehicle(
            gripping.mass(),
            gripping.gearing(),
            gripping.traction(),
            0,
            0,
            new Vehicle.Rotating(0.1, 0.01),
            gripping.wheelPower());
    near(run(gripping, 100).duration(), run(turning, 100).duration());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.8, 1.2, 2})
  void moreGripOrPowerIsNeverSlower(double grip) {
    double before = Double.POSITIVE_INFINITY;
    for (double power = 150e3; power < 900e3; power += 50e3) {
      double elapsed = DragCar.quarter(DragCar.car(power, grip)).times().elapsed();
      assertTrue(elapsed < before, power + " W");
      assertTrue(
          DragCar.quarter(DragCar.car(power, grip * 1.1)).times().elapsed() <= elapsed + 1e-6);
      before = elapsed;
    }
  }

  @Test
  void curvesGoWithTheClocks() {
    PassCourse course = DragCar.quarter(DragCar.car(450e3, 1.2));
    double way = 0;
    double before = 0;
    for (int i = 1; i < course.roadSpeed().size(); i++) {
      double t = course.roadSpeed().place(i);
      way += 0.5 * (course.roadSpeed().value(i) + course.roadSpeed().value(i - 1)) * (t - before);
      before = t;
    }
    assertEquals(DragCar.QUARTER + 0.3, way, 0.05);
    assertEquals(course.duration(), before, 1e-9);
    assertFalse(course.limited());
    assertEquals(DragCar.rpm(6500), course.engineSpeed().at(launchEnd(course)), 0.2);
  }

  /** Returns when first gear is left. */
  private static double launchEnd(PassCourse course) {
    double v = DragCar.gearing().roadSpeed(0, DragCar.rpm(6500));
    for (int i = 0; i < course.roadSpeed().size(); i++) {
      if (course.roadSpeed().value(i) >= v - 1e-6) {
        return course.roadSpeed().place(i);
      }
    }
    throw new AssertionError("first gear is never left");
  }

  @Test
  void aMeasuredSpeedReplacesTheModel() {
    Curve road = Curve.of(new double[] {0, 3, 6, 11}, new double[] {0, 27, 40, 55});
    Curve engine = MeasuredPass.engineSpeed(DragCar.gearing(), road, DragCar.rpm(3000));
    PassCourse course = MeasuredPass.of(road, engine);
    assertSame(road, course.roadSpeed());
    assertTrue(course.measured());
    assertEquals(11, course.duration());
    assertEquals(11, course.times().elapsed());
    // 18.288 m of an even 9 m/s2, and the last 66 ft of an even 3 m/s2 up to 55 m/s.
    near(Math.sqrt(2 * 18.288 / 9), course.times().sixtyFoot());
    double a = 3;
    double in = Math.sqrt(55 * 55 - 2 * a * 20.1168);
    near((55 + in) / 2, course.times().trapSpeed());
    Gearing gearing = DragCar.gearing();
    assertEquals(DragCar.rpm(3000), engine.at(0.1), 1e-9);
    assertEquals(gearing.engineSpeed(0, 13.5), engine.at(1.5), 1e-9);
    assertEquals(gearing.engineSpeed(3, 54.5), engine.at(11 - 0.5 / a), 0.02);
    for (int i = 0; i < engine.size(); i++) {
      assertTrue(engine.value(i) < 1.02 * gearing.shiftAt());
    }
  }

  @Test
  void aCoastGoesDownToIdlingAndStaysThere() {
    Drive.Coast coast = Drive.Coast.slowing(50, 10, 20, 100, 15);
    Inputs inputs = new Inputs();
    coast.at(0, inputs);
    assertEquals(Inputs.Load.IDLE, inputs.load);
    assertEquals(100, inputs.engineSpeed);
    coast.at(10, inputs);
    assertEquals(30, inputs.roadSpeed, 1e-12);
    assertEquals(60, inputs.engineSpeed, 1e-12);
    assertEquals(20, Drive.Coast.slowing(50, 10, 20, 100, 20).engineSpeed().at(20), 1e-12);
    assertEquals(40, Drive.Coast.slowing(50, 10, 20, 100, 40).engineSpeed().at(19), 1e-12);
    assertEquals(30, Drive.Coast.slowing(0, 10, 20, 100, 30).engineSpeed().at(20), 1e-12);
  }

  @Test
  void whatCannotBeIsRefused() {
    Vehicle stuck = DragCar.dragged(100, 1, 0.7, 0.05);
    assertThrows(
        IllegalArgumentException.class,
        () -> new Pass(stuck, DragCar.AIR, DragCar.QUARTER, 0, 300).run());
    Vehicle car = DragCar.car(300e3, 1);
    assertThrows(IllegalArgumentException.class, () -> new Pass(car, 1.2, 30, 0, 50));
    assertThrows(IllegalArgumentException.class, () -> new Pass(car, 1.2, 400, 0, 200));
    assertThrows(IllegalArgumentException.class, () -> new Pass(car, 1.2, 400, Double.NaN, 50));
    Curve slow = Curve.of(new double[] {0, 5}, new double[] {0, 5});
    assertThrows(IllegalArgumentException.class, () -> MeasuredPass.of(slow, slow));
    assertThrows(
        IllegalArgumentException.class, () -> new Gearing(2, 4, List.of(1.0, 2.0), 100, 0.1));
  }
}
