package soakloop.charge;

import soakloop.quantity.Require;

/**
 * Rival rules for what charge temperature does to power <em>at fixed manifold pressure</em>: power
 * goes with T^-n.
 *
 * <p>With a positive-displacement blower manifold pressure is not fixed: a cooler charge lowers it
 * at nearly the same air mass ({@link BoostMatch}). There these rules promise a gain that is not
 * there.
 */
public enum DensityRule {
  /** Air mass goes with density: 1 % per 3 K near 300 K. */
  DENSITY(1),
  /**
   * Square root, as in the ambient correction of SAE J1349 (from memory): 1 % per 6 K near 300 K.
   */
  SQUARE_ROOT(0.5),
  /** The exponent of ISO 1585 (from memory). */
  ISO_EXPONENT(0.6);

  private final double exponent;

  DensityRule(double exponent) {
    this.exponent = exponent;
  }

  /** What to call the rule where its number is shown. */
  public String label() {
    return "power as T^-" + exponent + ", at fixed manifold pressure";
  }

  /**
   * Power at one charge temperature over power at another, same manifold pressure.
   *
   * @param charge K
   * @param reference K
   * @return ratio [-]
   */
  public double powerRatio(double charge, double reference) {
    Require.positive("charge temperature", charge);
    Require.positive("reference temperature", reference);
    return Math.pow(reference / charge, exponent);
  }
}
