package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * What an uneven flow of air over the face takes from a core.
 *
 * <p>Where air is fast a core takes less out of each kilogram, and the slow part does not make up
 * for it. With local conductance going with local air flow to the power n, transfer units N go with
 * flow to -p, p = 1 - n; the mean of w (1 - exp(-N w^-p)) over a face whose flow w has mean 1 and
 * standard deviation s is, to second order,
 *
 * <pre>
 * eps - s^2/2 p N exp(-N) (1 - p + p N)
 * </pre>
 *
 * which is what evenly spread air would give at a conductance multiplied by 1 / (1 + s^2/2 p (1 - p
 * + p N)).
 *
 * <p>Accuracy: derived here for a coolant of even temperature; against averaging over a face,
 * within 0.5 % of the conductance for s to 20 % and N to 3 ({@code UnevenAirTest}). A stream of
 * coolant that warms on its way loses a little more or less, by where the air is fast.
 */
public final class UnevenAir {
  private UnevenAir() {}

  /**
   * Factor on the overall conductance.
   *
   * @param spread standard deviation of the air speed over the face, over its mean [-], 0 to 1
   * @param exponent power of air flow that the overall conductance goes with [-], 0 to 1
   * @param units transfer units, overall conductance over the air's capacity rate [-], 0 or more
   * @return factor [-], above 0 to 1
   */
  public static double factor(double spread, double exponent, double units) {
    Require.within("spread of the air over the face", spread, 0, 1);
    Require.within("exponent of the air flow", exponent, 0, 1);
    Require.notNegative("transfer units", units);
    double fall = 1 - exponent;
    return 1 / (1 + 0.5 * spread * spread * fall * (exponent + fall * units));
  }

  /**
   * Conductance of the air side as it counts with uneven air, beside a coolant side that stays.
   *
   * @param airSide with even air, W/K, 0 or more
   * @param coolantSide the other side and the wall, W/K, above 0
   * @param airRate capacity rate of the air, W/K, above 0
   * @param spread standard deviation of the air speed over the face, over its mean [-], 0 to 1
   * @param exponent power of air flow that the air side goes with [-], 0 to 1
   * @return W/K, at the most {@code airSide}
   */
  public static double airSide(
      double airSide, double coolantSide, double airRate, double spread, double exponent) {
    if (spread == 0 || airSide == 0) {
      return airSide;
    }
    double overall = airSide * coolantSide / (airSide + coolantSide);
    double local = exponent * overall / airSide;
    double lost = 1 / factor(spread, local, overall / airRate) - 1;
    return 1 / (1 / airSide + lost / overall);
  }
}
