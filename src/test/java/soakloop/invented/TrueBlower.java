package soakloop.invented;

/**
 * A positive-displacement blower whose leakage matters most at low speed, whose efficiency has a
 * hill over pressure ratio and speed, and whose case stores heat.
 */
final class TrueBlower {

  /**
   * What the blower is.
   *
   * @param displacement [m3/rev]
   * @param ratio blower speed over engine speed [-]
   * @param efficiency adiabatic efficiency on top of the hill [-]
   * @param fullSpeed blower speed at which the filling is stated [rev/s]
   * @param fullFilling volumetric efficiency at that speed and pressure ratio 1.9 [-]
   * @param caseCapacity heat capacity of the case [J/K]
   */
  record Shape(
      double displacement,
      double ratio,
      double efficiency,
      double fullSpeed,
      double fullFilling,
      double caseCapacity) {}

  private static final double CLEARANCE = 0.0085;
  private static final double CASE_TO_ENGINE = 3;
  private static final double CASE_TO_HOOD = 3;

  private final Shape shape;
  private double caseTemperature;
  private double discharge;
  private double out;

  TrueBlower(Shape shape, double caseTemperature) {
    this.shape = shape;
    this.caseTemperature = caseTemperature;
    discharge = caseTemperature;
    out = caseTemperature;
  }

  /**
   * Air drawn in with the bypass closed.
   *
   * @param engineSpeed [rev/s]
   * @param density inlet air density [kg/m3]
   * @param pressureRatio [-]
   * @return air flow [kg/s]
   */
  double airFlow(double engineSpeed, double density, double pressureRatio) {
    double speed = engineSpeed * shape.ratio;
    double atRated = (1 - CLEARANCE - shape.fullFilling) * shape.fullSpeed / StrictMath.sqrt(0.9);
    double leak = atRated * StrictMath.sqrt(Math.max(0, pressureRatio - 1)) / speed;
    return density * shape.displacement * speed * (1 - CLEARANCE - leak);
  }

  /** Adiabatic efficiency at a pressure ratio and blower speed [rev/s]. */
  double efficiency(double pressureRatio, double speed) {
    double p = pressureRatio - 1.8;
    double n = (speed - 0.75 * shape.fullSpeed) / shape.fullSpeed;
    return shape.efficiency - 0.05 * p * p - 0.10 * n * n;
  }

  /**
   * Steps on with the bypass closed.
   *
   * @param gas the air passing
   * @param pressureRatio [-]
   */
  void compress(Stream gas, double engineSpeed, double pressureRatio) {
    double exponent = Day.GAS_CONSTANT / gas.heatCapacity();
    double eta = efficiency(pressureRatio, engineSpeed * shape.ratio);
    double ideal = StrictMath.pow(pressureRatio, exponent) - 1;
    discharge = gas.temperature() + (gas.temperature() + Day.ZERO_CELSIUS) * ideal / eta;
  }

  /** Steps on with the bypass open: the rotors only stir what goes round. */
  void stir(Stream gas, double engineSpeed) {
    double speed = engineSpeed * shape.ratio / 33.3;
    double power = 85 * speed * StrictMath.sqrt(speed);
    discharge = gas.temperature() + power / gas.capacityRate();
  }

  /**
   * Passes the discharge by the case.
   *
   * @return heat the case takes from engine and surroundings [W]
   */
  double passCase(double dt, Stream gas, double engine, double hood) {
    double conductance = 1 + 14 * StrictMath.pow(gas.flow() / 0.45, 0.8);
    double kept = StrictMath.exp(-conductance / gas.capacityRate());
    out = caseTemperature + (discharge - caseTemperature) * kept;
    double fromOutside =
        CASE_TO_ENGINE * (engine - caseTemperature) + CASE_TO_HOOD * (hood - caseTemperature);
    double fromAir = gas.capacityRate() * (discharge - out);
    caseTemperature += dt * (fromAir + fromOutside) / shape.caseCapacity;
    return fromOutside;
  }

  /** Air leaving the rotors [degC]. */
  double discharge() {
    return discharge;
  }

  /** Air leaving the case [degC]. */
  double out() {
    return out;
  }

  /** Heat held above 0 degC [J]. */
  double stored() {
    return caseTemperature * shape.caseCapacity;
  }
}
