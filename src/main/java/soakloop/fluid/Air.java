package soakloop.fluid;

/**
 * Dry air as an ideal gas with variable heat capacity.
 *
 * <p>Enthalpy is zero at 273.15 K. The heat capacity fit is made for 200 to 500 K and extrapolates
 * smoothly (at 600 K it is 0.4 % above the 1051 J/(kg K) of handbooks, a value from memory).
 * Temperatures [K] must be finite and above zero, otherwise {@link IllegalArgumentException}.
 * Nothing is allocated per call.
 */
public final class Air {
  /** Specific gas constant [J/(kg K)]. */
  public static final double GAS_CONSTANT = 287.05;

  /** Lower end of the heat capacity fit [K]. */
  public static final double MIN_TEMPERATURE = 200;

  /** Upper end of the heat capacity fit [K]. */
  public static final double MAX_TEMPERATURE = 500;

  private static final double ZERO = 273.15; // K, enthalpy and entropy are zero here
  private static final int MAX_ITERATIONS = 50;

  private static final Cubic HEAT_CAPACITY =
      new Cubic(0, 1012.284, -8.02346865e-2, 1.20836874e-4, 2.19504408e-7);

  private Air() {}

  /**
   * Isobaric specific heat capacity.
   *
   * <p>Cubic fitted for this project, 200 to 500 K, to the ideal-gas heat capacity of Lemmon et
   * al.; largest error of the fit 0.19 J/(kg K).
   *
   * <p>Source: E. W. Lemmon, R. T. Jacobsen, S. G. Penoncello, D. G. Friend, Thermodynamic
   * Properties of Air, J. Phys. Chem. Ref. Data 29 (2000) 331.
   *
   * @param t temperature [K]
   * @return heat capacity [J/(kg K)]
   */
  public static double heatCapacity(double t) {
    return HEAT_CAPACITY.at(Require.temperature(t));
  }

  /**
   * Specific enthalpy: the exact integral of {@link #heatCapacity} from 273.15 K.
   *
   * @param t temperature [K]
   * @return enthalpy [J/kg]
   */
  public static double enthalpy(double t) {
    return HEAT_CAPACITY.antiderivative(Require.temperature(t))
        - HEAT_CAPACITY.antiderivative(ZERO);
  }

  /**
   * Temperature part of the specific entropy: the exact integral of cp/T from 273.15 K.
   *
   * @param t temperature [K]
   * @return entropy at the reference pressure [J/(kg K)]
   */
  public static double entropy(double t) {
    Require.temperature(t);
    Cubic c = HEAT_CAPACITY;
    return c.c0() * Math.log(t / ZERO) + powers(c, t) - powers(c, ZERO);
  }

  private static double powers(Cubic c, double t) {
    return t * (c.c1() + t * (c.c2() / 2 + t * c.c3() / 3));
  }

  /**
   * Dynamic viscosity of the dilute gas.
   *
   * <p>Equation: mu = 0.0266958 sqrt(M t) / (sigma^2 Omega), ln Omega a quartic in ln(t / 103.3 K).
   *
   * <p>Source: E. W. Lemmon, R. T. Jacobsen, Viscosity and Thermal Conductivity Equations for
   * Nitrogen, Oxygen, Argon, and Air, Int. J. Thermophys. 25 (2004) 21; coefficients as in CoolProp
   * (Air.json).
   *
   * @param t temperature [K]
   * @return viscosity [Pa s]
   */
  public static double viscosity(double t) {
    double l = Math.log(Require.temperature(t) / 103.3);
    double logOmega = 0.431 + l * (-0.4623 + l * (0.08406 + l * (0.005341 - l * 0.00331)));
    return 1e-6 * 0.0266958 * Math.sqrt(28.9586 * t) / (0.36 * 0.36 * Math.exp(logOmega));
  }

  /**
   * Thermal conductivity of the dilute gas.
   *
   * <p>Equation: k = 1.308 mu + 1.405 s^-1.1 - 1.036 s^-0.3 with s = 132.6312 K / t, k in mW/(m K)
   * and mu in uPa s.
   *
   * <p>Source: as {@link #viscosity}.
   *
   * @param t temperature [K]
   * @return conductivity [W/(m K)]
   */
  public static double conductivity(double t) {
    double log = Math.log(132.6312 / Require.temperature(t));
    double mu = 1e6 * viscosity(t);
    return 1e-3 * (1.308 * mu + 1.405 * Math.exp(-1.1 * log) - 1.036 * Math.exp(-0.3 * log));
  }

  /**
   * The temperature of a given enthalpy, the inverse of {@link #enthalpy}, by Newton's method.
   *
   * @param h enthalpy [J/kg], above that of 0 K
   * @return temperature [K], to about the last digit
   * @throws IllegalArgumentException if {@code h} is NaN, infinite or below the enthalpy of 0 K
   */
  public static double temperatureAtEnthalpy(double h) {
    double target = h + HEAT_CAPACITY.antiderivative(ZERO);
    if (!(target > 0 && target < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("no air temperature has the enthalpy " + h + " J/kg");
    }
    // Starting on the convex side, every step after the first comes down towards the root.
    double t = target / HEAT_CAPACITY.c0();
    for (int i = 0; i < MAX_ITERATIONS; i++) {
      double step = (HEAT_CAPACITY.antiderivative(t) - target) / HEAT_CAPACITY.at(t);
      t -= step;
      if (Math.abs(step) <= 1e-9 * t) {
        return t;
      }
    }
    throw new IllegalArgumentException("no air temperature found for enthalpy " + h + " J/kg");
  }

  /**
   * Outlet temperature of an isentropic compression or expansion, variable heat capacity.
   *
   * @param t1 inlet temperature [K]
   * @param pressureRatio outlet over inlet absolute pressure [-], above 0
   * @return outlet temperature [K]
   * @throws IllegalArgumentException if an argument is NaN, infinite or not above 0
   */
  public static double isentropicTemperature(double t1, double pressureRatio) {
    return isentropicTemperature(t1, pressureRatio, GAS_CONSTANT);
  }

  /**
   * As {@link #isentropicTemperature(double, double)} for a stated gas constant.
   *
   * <p>Equation: s(t2) - s(t1) = R ln(pressure ratio), solved by Newton's method in ln t.
   *
   * @param t1 inlet temperature [K]
   * @param pressureRatio outlet over inlet absolute pressure [-], above 0
   * @param gasConstant specific gas constant [J/(kg K)], above 0
   * @return outlet temperature [K]
   * @throws IllegalArgumentException if an argument is NaN, infinite or not above 0
   */
  public static double isentropicTemperature(double t1, double pressureRatio, double gasConstant) {
    if (!(pressureRatio > 0 && pressureRatio < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("pressure ratio must be above 0, not " + pressureRatio);
    }
    if (!(gasConstant > 0 && gasConstant < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("gas constant must be above 0, not " + gasConstant);
    }
    double rise = gasConstant * Math.log(pressureRatio);
    double target = entropy(t1) + rise;
    double t = t1 * Math.exp(rise / heatCapacity(t1));
    for (int i = 0; i < MAX_ITERATIONS; i++) {
      double step = (entropy(t) - target) / heatCapacity(t);
      t *= Math.exp(-step);
      if (Math.abs(step) <= 1e-9) {
        return t;
      }
    }
    throw new IllegalArgumentException(
        "no outlet temperature found for inlet " + t1 + " K and pressure ratio " + pressureRatio);
  }
}
