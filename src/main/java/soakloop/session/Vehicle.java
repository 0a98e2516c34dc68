package soakloop.session;

import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/**
 * The car as the road feels it.
 *
 * @param mass with driver and fuel, kg
 * @param gearing tyres, gears and shifts
 * @param traction what the driven tyres can push
 * @param drag drag coefficient times frontal area, m2
 * @param rollingResistance force over weight
 * @param rotating what turns with the wheels and the engine
 * @param wheelPower power at the wheels at full load, W over engine speed in rev/s
 */
public record Vehicle(
    double mass,
    Gearing gearing,
    Traction traction,
    double drag,
    double rollingResistance,
    Rotating rotating,
    Curve wheelPower) {
  /**
   * Turning parts as a mass that is pushed along.
   *
   * <p>Equation: mass factor = 1 + wheels + engine x (turns of engine per turn of wheel)^2. Source
   * of the form and of 0.04 and 0.0025: T. D. Gillespie, Fundamentals of Vehicle Dynamics, 1992,
   * chapter 2 (from memory).
   *
   * @param wheels share of the car's mass
   * @param engine share of it for each square of the overall ratio
   */
  public record Rotating(double wheels, double engine) {
    /** Nothing turns. */
    public static final Rotating NONE = new Rotating(0, 0);

    /** Checks the parts. */
    public Rotating {
      Require.notNegative("turning mass of the wheels", wheels);
      Require.notNegative("turning mass of the engine", engine);
    }
  }

  /** Checks the parts. */
  public Vehicle {
    Require.positive("vehicle mass", mass);
    Require.notNegative("drag area", drag);
    Require.notNegative("rolling resistance", rollingResistance);
    for (int i = 0; i < wheelPower.size(); i++) {
      Require.positive("power at the wheels", wheelPower.value(i));
    }
  }

  /** Returns what holds the car back at a road speed in m/s, N. */
  double resistance(double roadSpeed, double airDensity) {
    return rollingResistance * mass * Traction.GRAVITY
        + 0.5 * airDensity * drag * roadSpeed * roadSpeed;
  }
}
