package soakloop.exchange;

import soakloop.quantity.Require;

/** Several equal passes of one exchanger in series. */
public final class MultiPass {
  private MultiPass() {}

  /**
   * Overall effectiveness of equal passes in overall counterflow, each stream mixed between passes.
   *
   * <p>Equation: r = ((1 - e C) / (1 - e))^n, eps = (r - 1) / (r - C); at C = 1 eps = n e / (1 + (n
   * - 1) e).
   *
   * <p>Source: R. K. Shah, D. P. Sekulic, Fundamentals of Heat Exchanger Design, Wiley, 2003;
   * Incropera and DeWitt, table 11.3 (n shell passes).
   *
   * @param passEffectiveness effectiveness of one pass [-], 0 to 1
   * @param passes number of passes, 1 or more
   * @param capacityRatio Cmin / Cmax [-], 0 to 1
   * @return overall effectiveness [-], 0 to 1
   * @throws IllegalArgumentException if an argument is NaN or outside its range
   */
  public static double counterflow(double passEffectiveness, int passes, double capacityRatio) {
    if (!(passEffectiveness >= 0 && passEffectiveness <= 1)) {
      throw new IllegalArgumentException(
          "effectiveness of a pass must lie in 0 to 1, not " + passEffectiveness);
    }
    if (passes < 1) {
      throw new IllegalArgumentException("number of passes must be 1 or more, not " + passes);
    }
    if (!(capacityRatio >= 0 && capacityRatio <= 1)) {
      throw new IllegalArgumentException("capacity ratio must lie in 0 to 1, not " + capacityRatio);
    }
    double unbalance = 1 - capacityRatio;
    if (unbalance == 0) {
      return passes * passEffectiveness / (1 + (passes - 1) * passEffectiveness);
    }
    // r - 1, without the cancellation of a ratio close to 1; infinite for a perfect pass.
    double rise =
        Math.expm1(passes * Math.log1p(passEffectiveness * unbalance / (1 - passEffectiveness)));
    return rise < Double.POSITIVE_INFINITY ? rise / (rise + unbalance) : 1;
  }

  /**
   * As {@link #counterflow(double, int, double)}, the conductance shared equally by the passes.
   *
   * @param pass flow arrangement within each pass
   * @param ntu transfer units of the whole exchanger [-], 0 or more
   * @param passes number of passes, 1 or more
   * @param capacityRatio Cmin / Cmax [-], 0 to 1
   * @return overall effectiveness [-], 0 to 1
   * @throws IllegalArgumentException if an argument is NaN or outside its range
   */
  public static double counterflow(
      FlowArrangement pass, double ntu, int passes, double capacityRatio) {
    if (passes < 1) {
      throw new IllegalArgumentException("number of passes must be 1 or more, not " + passes);
    }
    return counterflow(pass.effectiveness(ntu / passes, capacityRatio), passes, capacityRatio);
  }

  /**
   * Overall effectiveness of equal passes side by side on the face: the second stream crosses them
   * one after the other, the first is shared among them and each share meets one pass only.
   *
   * <p>Equation: with c the first stream's capacity rate over the second's and e the effectiveness
   * of a pass by the first stream's share, each pass takes the share e c / n of what drives it, so
   * the heat over that of the first stream brought to the second's inlet temperature is (1 - (1 - e
   * c / n)^n) / c; for c towards 0 that is e. Derived here.
   *
   * @param pass flow arrangement within each pass
   * @param ntu conductance of the whole exchanger over the first stream's capacity rate [-], 0 or
   *     more
   * @param passes number of passes, 1 or more
   * @param rateRatio capacity rate of the first stream over that of the second [-], above 0
   * @return temperature change of the first stream over the difference of the inlets [-], 0 to 1
   * @throws IllegalArgumentException if an argument is NaN or outside its range
   */
  public static double sideBySide(FlowArrangement pass, double ntu, int passes, double rateRatio) {
    if (passes < 1) {
      throw new IllegalArgumentException("number of passes must be 1 or more, not " + passes);
    }
    double share = Require.positive("ratio of the capacity rates", rateRatio) / passes;
    double least = Math.min(1, 1 / share);
    double effectiveness = pass.effectiveness(ntu / least, Math.min(share, 1 / share)) * least;
    return -Math.expm1(passes * Math.log1p(-effectiveness * share)) / rateRatio;
  }
}
