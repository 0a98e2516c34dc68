package soakloop.charge;

import soakloop.quantity.Require;

/**
 * What a blower's inner compression allows at best.
 *
 * <p>A blower that compresses to a built-in pressure ratio pi and then opens to the outlet does the
 * ideal work up to pi and pushes against the outlet pressure with what volume is left:
 *
 * <pre>
 * w / (p1 v1) = g/(g-1) (pi^((g-1)/g) - 1) + pi^(-1/g) (PR - pi)
 * </pre>
 *
 * <p>pi = 1 is the blower without inner compression, w / (p1 v1) = PR - 1. No leakage, no friction:
 * an upper limit of the adiabatic efficiency. Source: indicator-diagram thermodynamics, derived
 * here; the limit for pi = 1 is a textbook result.
 *
 * @param ratio built-in pressure ratio pi, 1 or more
 */
public record BuiltInRatio(double ratio) {
  /** No inner compression. */
  public static final BuiltInRatio NONE = new BuiltInRatio(1);

  private static final double G = Compression.GAMMA;

  /** Checks the ratio. */
  public BuiltInRatio {
    Require.within("built-in pressure ratio", ratio, 1, 10);
  }

  /**
   * Work over inlet pressure times inlet volume.
   *
   * @param pressureRatio 1 or more
   * @return w / (p1 v1) [-]; below the built-in ratio the blower compresses too far first
   */
  public double work(double pressureRatio) {
    Require.within("pressure ratio", pressureRatio, 1, 100);
    return ideal(ratio) + Math.pow(ratio, -1 / G) * (pressureRatio - ratio);
  }

  /**
   * Greatest possible adiabatic efficiency.
   *
   * @param pressureRatio above 1
   * @return efficiency [-], above 0 to 1
   */
  public double efficiencyLimit(double pressureRatio) {
    if (!(pressureRatio > 1)) {
      throw new IllegalArgumentException(
          "there is no efficiency at pressure ratio " + pressureRatio + ", only above 1");
    }
    return ideal(pressureRatio) / work(pressureRatio);
  }

  private static double ideal(double ratio) {
    return G / (G - 1) * (Math.pow(ratio, (G - 1) / G) - 1);
  }
}
