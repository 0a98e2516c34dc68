package soakloop.session;

import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/** Integrates a pass gear by gear: way and road speed over time. */
final class PassRun {
  private static final double LONGEST = 600;
  private static final double MIN_STEP = 1e-10;
  private static final double MAX_STEP = 2;
  private static final double FIRST_STEP = 0.02;
  private static final double TOLERANCE = 1e-9;

  private final Pass pass;
  private final Vehicle vehicle;
  private final Gearing gearing;
  private final double end;
  private final double traction;
  private final PassRecorder recorder;
  private double time;
  private double way;
  private double speed;
  private boolean limited;

  /** What moves the car for a while. */
  private interface Stretch {
    /** Acceleration at a road speed, m/s2. */
    double acceleration(double v);

    /** Engine speed, rev/s. */
    double engineSpeed(double t, double v);
  }

  PassRun(Pass pass) {
    this.pass = pass;
    this.vehicle = pass.vehicle();
    this.gearing = vehicle.gearing();
    this.end = pass.rollout() + pass.distance();
    this.traction = vehicle.traction().limit(vehicle.mass());
    this.recorder =
        new PassRecorder(
            pass.launchSpeed(),
            List.of(pass.rollout(), pass.rollout() + PassTimes.SIXTY_FEET, end - PassTimes.TRAP));
  }

  PassCourse course() {
    Stretch launch = new Driven(0, pass.launchSpeed());
    if (!(launch.acceleration(0) > 0)) {
      throw new IllegalArgumentException(
          "the car does not move off: the wheels push less than rolling takes");
    }
    boolean there = go(launch, gearing.roadSpeed(0, pass.launchSpeed()));
    for (int gear = 0; !there; gear++) {
      there = go(new Driven(gear, 0), gearing.roadSpeed(gear, gearing.shiftAt()));
      if (!there && gear == gearing.top()) {
        limited = true;
        there = go(new AtLimit(), Double.POSITIVE_INFINITY);
      } else if (!there) {
        there = shift(gear);
      }
    }
    double[] marks = recorder.marks();
    return new PassCourse(
        recorder.engineSpeed(),
        recorder.roadSpeed(),
        time,
        new PassTimes(marks[1] - marks[0], time - marks[0], PassTimes.TRAP / (time - marks[2])),
        false,
        limited);
  }

  private boolean shift(int gear) {
    double after = speed + new Rolling(0, 0, 0).acceleration(speed) * gearing.shiftTime();
    Stretch rolling =
        new Rolling(time, gearing.engineSpeed(gear, speed), gearing.engineSpeed(gear + 1, after));
    return go(rolling, Double.POSITIVE_INFINITY, gearing.shiftTime());
  }

  private boolean go(Stretch stretch, double untilSpeed) {
    if (go(stretch, untilSpeed, LONGEST - time)) {
      return true;
    }
    if (time >= LONGEST - 1e-6) {
      throw new IllegalArgumentException("the car does not reach the traps within ten minutes");
    }
    return false;
  }

  /** Goes on until a speed, the traps or a time; returns whether it is there. */
  private boolean go(Stretch stretch, double untilSpeed, double seconds) {
    if (!(speed < untilSpeed)) {
      return false;
    }
    DormandPrince54Integrator integrator =
        new DormandPrince54Integrator(
            MIN_STEP,
            MAX_STEP,
            new double[] {TOLERANCE, TOLERANCE},
            new double[] {TOLERANCE, TOLERANCE});
    integrator.setInitialStepSize(Math.min(FIRST_STEP, seconds / 2));
    integrator.addEventDetector(new Watch(y -> y[0] - end, Action.STOP));
    if (untilSpeed < Double.POSITIVE_INFINITY) {
      integrator.addEventDetector(new Watch(y -> y[1] - untilSpeed, Action.STOP));
    }
    if (stretch instanceof Driven driven) {
      integrator.addEventDetector(
          new Watch(y -> driven.spare(Math.max(0, y[1])), Action.RESET_DERIVATIVES));
    }
    recorder.follow(stretch::engineSpeed);
    integrator.addStepHandler(recorder);
    ODEStateAndDerivative last =
        integrator.integrate(
            new Motion(stretch), new ODEState(time, new double[] {way, speed}), time + seconds);
    time = last.getTime();
    way = last.getPrimaryState()[0];
    speed = Math.max(0, last.getPrimaryState()[1]);
    return way >= end - 1e-9 * end;
  }

  /** Way and speed, and what changes them. */
  private record Motion(Stretch stretch) implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      return new double[] {y[1], stretch.acceleration(Math.max(0, y[1]))};
    }
  }

  /** Driven in a gear, the engine not below a speed: it slips until the gear has caught up. */
  private final class Driven implements Stretch {
    private final int gear;
    private final double slipsAt;
    private final double inertia;

    Driven(int gear, double slipsAt) {
      this.gear = gear;
      this.slipsAt = slipsAt;
      double overall = gearing.overall(gear);
      // An engine that slips does not speed up.
      double engine = slipsAt > 0 ? 0 : vehicle.rotating().engine() * overall * overall;
      this.inertia = vehicle.mass() * (1 + vehicle.rotating().wheels() + engine);
    }

    @Override
    public double acceleration(double v) {
      double resistance = vehicle.resistance(v, pass.airDensity());
      return Math.min(power(v, resistance), tyres(resistance));
    }

    /** Acceleration that power would give, less what the tyres take: changes sign at a kink. */
    double spare(double v) {
      double resistance = vehicle.resistance(v, pass.airDensity());
      return power(v, resistance) - tyres(resistance);
    }

    private double power(double v, double resistance) {
      double n = engineSpeed(0, v);
      double push = vehicle.wheelPower().at(n) / gearing.roadSpeed(gear, n);
      return (push - resistance) / inertia;
    }

    private double tyres(double resistance) {
      return (traction - resistance) / vehicle.mass();
    }

    @Override
    public double engineSpeed(double t, double v) {
      return Math.max(slipsAt, gearing.engineSpeed(gear, v));
    }
  }

  /** Rolling on while the gear is changed, the engine falling to its next speed. */
  private final class Rolling implements Stretch {
    private final double from;
    private final double before;
    private final double after;

    Rolling(double from, double before, double after) {
      this.from = from;
      this.before = before;
      this.after = after;
    }

    @Override
    public double acceleration(double v) {
      return v > 0 ? -vehicle.resistance(v, pass.airDensity()) / vehicle.mass() : 0;
    }

    @Override
    public double engineSpeed(double t, double v) {
      return before + (after - before) * Math.min(1, (t - from) / gearing.shiftTime());
    }
  }

  /** Against the engine's highest speed in top gear. */
  private final class AtLimit implements Stretch {
    @Override
    public double acceleration(double v) {
      return 0;
    }

    @Override
    public double engineSpeed(double t, double v) {
      return gearing.engineSpeed(gearing.top(), v);
    }
  }
}
