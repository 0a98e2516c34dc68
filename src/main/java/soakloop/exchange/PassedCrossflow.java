package soakloop.exchange;

import soakloop.quantity.Bracket;
import soakloop.quantity.Require;

/**
 * A crossflow exchanger whose coolant crosses the air in one or more passes, seen from the air.
 *
 * <p>Each pass unmixed ({@link UnmixedCrossflow}), coolant mixed between passes. Behind one another
 * through the depth they are counterflow overall, the air mixed between them; side by side on the
 * face each has its share of the air ({@link MultiPass}).
 *
 * @param passes number of passes, 1 or more
 * @param throughDepth whether they lie behind one another, and not side by side
 */
public record PassedCrossflow(int passes, boolean throughDepth) {
  /** Transfer units of either stream beyond which nothing is gained. */
  private static final double MANY = 200;

  /** Checks the count. */
  public PassedCrossflow {
    if (passes < 1) {
      throw new IllegalArgumentException("number of passes must be 1 or more, not " + passes);
    }
  }

  /**
   * Effectiveness of the air: how far it goes from its own inlet temperature to the coolant's.
   *
   * @param conductance overall, W/K, 0 or more
   * @param airRate capacity rate of the air, W/K, above 0
   * @param coolantRate capacity rate of the coolant, W/K, above 0
   * @return effectiveness [-], 0 to 1
   */
  public double airEffectiveness(double conductance, double airRate, double coolantRate) {
    Require.notNegative("conductance", conductance);
    Require.positive("capacity rate of the air", airRate);
    Require.positive("capacity rate of the coolant", coolantRate);
    if (!throughDepth) {
      return MultiPass.sideBySide(
          FlowArrangement.CROSS_UNMIXED, conductance / airRate, passes, airRate / coolantRate);
    }
    double least = Math.min(airRate, coolantRate);
    double most = Math.max(airRate, coolantRate);
    double effectiveness =
        MultiPass.counterflow(
            FlowArrangement.CROSS_UNMIXED, conductance / least, passes, least / most);
    return effectiveness * least / airRate;
  }

  /**
   * The most that any conductance reaches.
   *
   * @param airRate capacity rate of the air, W/K, above 0
   * @param coolantRate capacity rate of the coolant, W/K, above 0
   * @return effectiveness of the air [-]
   */
  public double mostEffectiveness(double airRate, double coolantRate) {
    return airEffectiveness(most(airRate, coolantRate), airRate, coolantRate);
  }

  /**
   * The conductance that a measured effectiveness of the air means.
   *
   * @param effectiveness [-], above 0 and below {@link #mostEffectiveness}
   * @param airRate capacity rate of the air, W/K, above 0
   * @param coolantRate capacity rate of the coolant, W/K, above 0
   * @return overall conductance, W/K
   * @throws IllegalArgumentException if no conductance reaches it
   */
  public double conductance(double effectiveness, double airRate, double coolantRate) {
    Require.positive("effectiveness", effectiveness);
    return Bracket.root(
        0,
        most(airRate, coolantRate),
        g -> airEffectiveness(g, airRate, coolantRate) - effectiveness);
  }

  private static double most(double airRate, double coolantRate) {
    return MANY * Math.max(airRate, coolantRate);
  }
}
