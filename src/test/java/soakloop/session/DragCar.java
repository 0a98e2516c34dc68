package soakloop.session;

import java.util.List;
import soakloop.quantity.Curve;

/** An invented drag car, and idealised ones made of it. */
public final class DragCar {
  /** Pound, kg (international avoirdupois pound, exact). */
  public static final double POUND = 0.45359237;

  /** Mechanical horsepower, W (550 ft lbf/s). */
  public static final double HORSEPOWER = 745.6998715822702;

  /** Quarter of a mile, m. */
  public static final double QUARTER = 402.336;

  /** Mass with driver, kg. */
  public static final double MASS = 1700;

  /** Air of the day, kg/m3. */
  public static final double AIR = 1.19;

  private static final double[] RPM = {1500, 2000, 3000, 4000, 5000, 6000, 6500};
  private static final double[] SHARE = {0.26, 0.36, 0.56, 0.74, 0.89, 0.99, 1};

  private DragCar() {}

  /** Returns rev/s. */
  public static double rpm(double rpm) {
    return rpm / 60;
  }

  /** Returns the car's gears: four, shifted at 6500 rpm. */
  public static Gearing gearing() {
    return new Gearing(Math.PI * 0.66, 3.55, List.of(2.97, 2.07, 1.43, 1.0), rpm(6500), 0.25);
  }

  /**
   * Returns the car with a peak power at the crank, the usual losses and resistances.
   *
   * @param peak W
   * @param grip friction coefficient, both axles driven
   */
  public static Vehicle car(double peak, double grip) {
    double[] speeds = new double[RPM.length];
    double[] watts = new double[RPM.length];
    for (int i = 0; i < RPM.length; i++) {
      speeds[i] = rpm(RPM[i]);
      watts[i] = 0.85 * SHARE[i] * peak;
    }
    return new Vehicle(
        MASS,
        gearing(),
        new Traction(grip, Traction.Driven.BOTH, 1, 0),
        0.75,
        0.014,
        new Vehicle.Rotating(0.04, 0.0025),
        Curve.of(speeds, watts));
  }

  /**
   * Returns a car with one gear that never ends, without resistance or turning parts.
   *
   * @param watt at the wheels at any engine speed
   * @param grip friction coefficient, both axles driven
   */
  public static Vehicle ideal(double watt, double grip) {
    return dragged(watt, grip, 0, 0);
  }

  /**
   * Returns the same with resistance.
   *
   * @param drag m2
   * @param rolling force over weight
   */
  public static Vehicle dragged(double watt, double grip, double drag, double rolling) {
    Gearing gearing = new Gearing(2, 4, List.of(1.0), 1e6, 0.1);
    Traction traction = new Traction(grip, Traction.Driven.BOTH, 1, 0);
    return new Vehicle(
        MASS, gearing, traction, drag, rolling, Vehicle.Rotating.NONE, Curve.constant(watt));
  }

  /** Returns the quarter mile with an invented launch at 3500 rpm and a rollout of a foot. */
  public static PassCourse quarter(Vehicle car) {
    return new Pass(car, AIR, QUARTER, 0.3, rpm(3500)).run();
  }
}
