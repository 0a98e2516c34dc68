package soakloop.charge;

import soakloop.quantity.Require;

/**
 * Power from air: what burning it makes, before and after the blower's drive and the drivetrain
 * have taken theirs.
 *
 * <p>Equation: gross = m / (b A), b the fuel per energy without the blower's drive, A the mass of
 * air over that of fuel. Some 0.9 to 1.05 g/s of air per kW, 1.07 to 1.17 per kW that is left at
 * the crank of a blown engine (both from memory). It knows no engine speed and no throttle: a
 * full-load figure.
 *
 * @param fuelPerEnergy kg/J
 * @param airFuelRatio air over fuel, by mass
 * @param drivetrainLoss share of the crank's power that does not reach the wheels, 0 to below 1
 */
public record EnginePower(double fuelPerEnergy, double airFuelRatio, double drivetrainLoss) {
  /** Checks the parts. */
  public EnginePower {
    Require.positive("fuel per energy", fuelPerEnergy);
    Require.positive("air-fuel ratio", airFuelRatio);
    Require.within("drivetrain loss", drivetrainLoss, 0, 0.99);
  }

  /**
   * Power before the blower's drive is taken off.
   *
   * @param airFlow kg/s, 0 or more
   * @return W
   */
  public double gross(double airFlow) {
    return Require.notNegative("air flow", airFlow) / (fuelPerEnergy * airFuelRatio);
  }

  /**
   * Power that reaches the wheels.
   *
   * @param crank W
   * @return W
   */
  public double wheels(double crank) {
    return crank * (1 - drivetrainLoss);
  }
}
