package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * What a finned surface does less well than a bare wall.
 *
 * <p>Source: standard one-dimensional fin theory, e.g. F. P. Incropera, D. P. DeWitt, Fundamentals
 * of Heat and Mass Transfer, chapter 3; W. M. Kays, A. L. London, Compact Heat Exchangers, chapter
 * 2. Exact for an even film coefficient and a thin straight fin with no heat through its tip.
 */
public final class FinSurface {
  private FinSurface() {}

  /**
   * Fin efficiency: eta = tanh(m L) / (m L), m = sqrt(2 h / (k t)).
   *
   * @param film film coefficient, W/(m2 K), 0 or more
   * @param metalConductivity W/(m K), above 0
   * @param thickness m, above 0
   * @param length from the root to where no heat flows (half the height between two walls), m
   * @return efficiency [-], above 0 to 1
   */
  public static double finEfficiency(
      double film, double metalConductivity, double thickness, double length) {
    Require.notNegative("film coefficient", film);
    Require.positive("metal conductivity", metalConductivity);
    Require.positive("fin thickness", thickness);
    Require.positive("fin length", length);
    double ml = length * Math.sqrt(2 * film / (metalConductivity * thickness));
    // Below this the series 1 - (m L)^2 / 3 is exact to the last digit.
    return ml < 1e-8 ? 1 : Math.tanh(ml) / ml;
  }

  /**
   * Efficiency of fins and wall together: eta_o = 1 - (Af / A)(1 - eta).
   *
   * @param finShare fin surface over whole surface [-], 0 to 1
   * @param finEfficiency [-], 0 to 1
   * @return efficiency [-], 0 to 1
   */
  public static double overall(double finShare, double finEfficiency) {
    Require.within("share of fin surface", finShare, 0, 1);
    Require.within("fin efficiency", finEfficiency, 0, 1);
    return 1 - finShare * (1 - finEfficiency);
  }
}
