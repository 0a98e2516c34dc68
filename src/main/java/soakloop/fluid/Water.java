package soakloop.fluid;

/**
 * Pure liquid water at 0.1 MPa.
 *
 * <p>Equations: with alpha = 10 K / (593 K - t), beta = 10 K / (t - 232 K), tau = t / 10 K the
 * Gibbs energy and the volume are sums of powers of alpha and beta; heat capacity and enthalpy are
 * the exact derivatives of the same Gibbs energy. Viscosity and conductivity are sums of powers of
 * t / 300 K.
 *
 * <p>Valid: 253.15 to 383.15 K, supercooled and superheated liquid included. Extrapolates smoothly
 * beyond, but not across the poles at 232 K and 593 K, which throw.
 *
 * <p>Accuracy against IAPWS-95, R12-08 and R15-11 from 0 to 95 degC: density, heat capacity and
 * conductivity 0.01 %, viscosity 0.02 %.
 *
 * <p>Source: IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1
 * MPa, equations 1 to 3 (Gibbs energy, volume, derivatives), 7 (viscosity) and 8 (conductivity); J.
 * Patek, J. Hruby, J. Klomfar, M. Souckova, A. H. Harvey, J. Phys. Chem. Ref. Data 38 (2009) 21.
 */
public final class Water implements Coolant {
  /** The one instance. */
  public static final Water INSTANCE = new Water();

  private static final double GAS_CONSTANT = 461.51805; // J/(kg K)
  private static final double REFERENCE_PRESSURE = 0.1e6; // Pa
  private static final double SCALE = 10; // K
  private static final double UPPER_POLE = 593; // K
  private static final double LOWER_POLE = 232; // K
  private static final double FREEZING = 273.15; // K
  private static final double MIN_TEMPERATURE = 253.15; // K
  private static final double MAX_TEMPERATURE = 383.15; // K

  // Gibbs energy: powers 4, 5, 7 of alpha; 2 to 5 of beta; tau ln(tau).
  private static final double A1 = -1.661470539e5;
  private static final double A2 = 2.708781640e6;
  private static final double A3 = -1.557191544e8;
  private static final double B1 = -8.237426256e-1;
  private static final double B2 = 1.908956353;
  private static final double B3 = -2.017597384;
  private static final double B4 = 8.546361348e-1;
  private static final double C3 = -8.983025854;

  private final double enthalpyOffset;

  private Water() {
    enthalpyOffset = integral(ENTHALPY_ZERO);
  }

  @Override
  public double density(double t) {
    double a = alpha(t);
    double b = beta(t);
    double a4 = a * a * a * a;
    double fromAlpha =
        a4
            * (6.74458446e3
                + a
                    * (-2.22521604e5
                        + a * a * (1.00231247e8 + a * (-1.63552118e9 + a * 8.32299658e9))));
    double fromBeta =
        b
            * (5.78545292e-3
                + b
                    * (-1.53195665e-2
                        + b
                            * (3.11337859e-2
                                + b * (-4.23546241e-2 + b * (3.38713507e-2 - b * 1.19946761e-2)))));
    double volume =
        GAS_CONSTANT * SCALE / REFERENCE_PRESSURE * (1.93763157e-2 + fromAlpha + fromBeta);
    return 1 / volume;
  }

  @Override
  public double heatCapacity(double t) {
    double a = alpha(t);
    double b = beta(t);
    double a6 = a * a * a * a * a * a;
    double fromAlpha = a6 * (20 * A1 + a * (30 * A2 + a * a * (56 * A3)));
    double fromBeta = b * b * b * b * (6 * B1 + b * (12 * B2 + b * (20 * B3 + b * (30 * B4))));
    return -GAS_CONSTANT * (C3 + t / SCALE * (fromAlpha + fromBeta));
  }

  @Override
  public double enthalpy(double t) {
    return integral(t) - enthalpyOffset;
  }

  private static double integral(double t) {
    double a = alpha(t);
    double b = beta(t);
    double tau = t / SCALE;
    double a4 = a * a * a * a;
    double value =
        -C3 * tau
            + a4
                * (A1 * (1 - 4 * tau * a)
                    + a * (A2 * (1 - 5 * tau * a) + a * a * (A3 * (1 - 7 * tau * a))))
            + b
                * b
                * (B1 * (1 + 2 * tau * b)
                    + b
                        * (B2 * (1 + 3 * tau * b)
                            + b * (B3 * (1 + 4 * tau * b) + b * (B4 * (1 + 5 * tau * b)))));
    return GAS_CONSTANT * SCALE * value;
  }

  @Override
  public double conductivity(double t) {
    double log = Math.log(checked(t) / 300);
    return 1.6630 * Math.exp(-1.15 * log)
        - 1.7781 * Math.exp(-3.4 * log)
        + 1.1567 * Math.exp(-6.0 * log)
        - 0.432115 * Math.exp(-7.6 * log);
  }

  @Override
  public double viscosity(double t) {
    double log = Math.log(checked(t) / 300);
    return 1e-6
        * (280.68 * Math.exp(-1.9 * log)
            + 511.45 * Math.exp(-7.7 * log)
            + 61.131 * Math.exp(-19.6 * log)
            + 0.45903 * Math.exp(-40.0 * log));
  }

  @Override
  public double freezingTemperature() {
    return FREEZING;
  }

  @Override
  public double minTemperature() {
    return MIN_TEMPERATURE;
  }

  @Override
  public double maxTemperature() {
    return MAX_TEMPERATURE;
  }

  @Override
  public String toString() {
    return "Water";
  }

  private static double alpha(double t) {
    return SCALE / (UPPER_POLE - checked(t));
  }

  private static double beta(double t) {
    return SCALE / (checked(t) - LOWER_POLE);
  }

  private static double checked(double t) {
    if (!(t > LOWER_POLE && t < UPPER_POLE)) {
      throw new IllegalArgumentException(
          "liquid water must be between " + LOWER_POLE + " and " + UPPER_POLE + " K, not " + t);
    }
    return t;
  }
}
