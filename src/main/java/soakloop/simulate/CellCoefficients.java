package soakloop.simulate;

import soakloop.exchange.FlowArrangement;

/**
 * Makes one cell of a crossflow exchanger reproduce its own exact steady effectiveness.
 *
 * <p>A cell has one wall temperature, one coolant temperature (of what leaves it) and air passing
 * through. In a steady state the heat is {@code (Tair,in - Tcoolant,in) / R} with {@code R = 1/Ga +
 * 1/Gc + theta/Cc}, where {@code Ga} joins the entering air to the wall, {@code Gc} the wall to the
 * coolant at {@code Tin + theta (Tout - Tin)}, and {@code Cc} is the coolant's capacity rate. The
 * exact R is {@code 1/(eps Cmin)}. {@code Gc} is kept as it is physically, so that a cell with a
 * stopped pump still conducts; {@code Ga} then follows from the exact result at unlimited coolant
 * flow, and {@code theta} from the rest:
 *
 * <pre>
 *   R0 = 1 / (Ca (1 - exp(-UA/Ca)))
 *   1/Ga = R0 - 1/Gc
 *   theta = Cc (1/(eps Cmin) - R0)
 * </pre>
 *
 * <p>With {@code 1/UA = 1/air + 1/Gc} the second reads {@code 1/Ga = 1/air + m(UA/Ca)/Ca}, where
 * {@code m(N) = 1/(1 - exp(-N)) - 1/N} rises from 1/2 to 1. That form loses no digits where the
 * coolant side is poor, and holds where nothing passes to the coolant at all.
 *
 * <p>Two clamps keep the cell from making temperatures that were not there: air leaves no colder
 * than the wall ({@code Ga <= Ca}), and a warmer coolant inlet never cools the cell ({@code theta
 * >= 1 - Cc/Gc}). They act only where one cell holds many transfer units. What the second adds to R
 * is taken off {@code 1/Ga}; only where both act does the cell fall short of the exact result.
 */
final class CellCoefficients {
  /** Air capacity rate over coolant capacity rate below which the air does not count. */
  private static final double NO_AIR = 1e-9;

  /** Below this seven terms of the series give m to the last digit, and quicker. */
  private static final double FEW_UNITS = 0.5;

  /** B(2k) / (2k)! for k from 7 down to 1, B the Bernoulli numbers. */
  private static final double[] SERIES = {
    1.0 / 74_724_249_600.0,
    -691.0 / 1_307_674_368_000.0,
    1.0 / 47_900_160,
    -1.0 / 1_209_600,
    1.0 / 30_240,
    -1.0 / 720,
    1.0 / 12
  };

  /** Share of the air's distance to the wall temperature that a cell closes, 0 to 1. */
  private double airShare;

  /** Where between inlet and outlet the coolant's heat transfer temperature lies, 0 to 1. */
  private double theta;

  double airShare() {
    return airShare;
  }

  double theta() {
    return theta;
  }

  /**
   * Works out a cell.
   *
   * @param air air side of the cell's conductance, W/K
   * @param coolant coolant side of the cell's conductance, W/K
   * @param airRate the cell's air capacity rate, W/K
   * @param coolantRate the cell's coolant capacity rate, W/K
   */
  void update(double air, double coolant, double airRate, double coolantRate) {
    double monotone = 1 - coolantRate / coolant;
    if (!(airRate > NO_AIR * (coolantRate + coolant)) || air == 0) {
      airShare = airRate > 0 && air > 0 ? 1 : 0;
      theta = clamp(monotone > 0.5 ? monotone : 0.5);
      return;
    }
    double overall = air * coolant / (air + coolant);
    double units = overall / airRate;
    double middle = middle(units);
    double resistance = airRate / air + middle; // of Ga, over that of the air's rate
    if (coolantRate == 0 || overall == 0) {
      airShare = Math.min(1, 1 / resistance);
      theta = 1;
      return;
    }
    double still = (1 / units + middle) / airRate; // 1 / (Ca (1 - exp(-units)))
    double least = Math.min(airRate, coolantRate);
    double most = Math.max(airRate, coolantRate);
    double effectiveness =
        FlowArrangement.CROSS_UNMIXED.effectiveness(overall / least, least / most);
    double exact = coolantRate * (1 / (effectiveness * least) - still);
    theta = clamp(Math.max(exact, monotone));
    double left = resistance - airRate * (theta - exact) / coolantRate;
    airShare = left > 1 ? 1 / left : 1;
  }

  /** Returns m of the class comment: 1/2 for few transfer units, 1 for many. */
  private static double middle(double units) {
    if (units > FEW_UNITS) {
      return -1 / Math.expm1(-units) - 1 / units;
    }
    double x = units * units;
    double series = 0;
    for (double term : SERIES) {
      series = series * x + term;
    }
    return 0.5 + units * series;
  }

  private static double clamp(double share) {
    return share < 0 ? 0 : share > 1 ? 1 : share;
  }
}
