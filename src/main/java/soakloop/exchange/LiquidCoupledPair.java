package soakloop.exchange;

/**
 * Two exchangers coupled by a circulating liquid, at rest: a hot gas gives its heat to the liquid
 * in the first, a cold gas takes it in the second. No heat enters or leaves on the way.
 *
 * <p>Equation: Q = (Th - Tc) / (1 / (eh Cmin,h) + 1 / (ec Cmin,c) - 1 / CL), with Cmin,h and Cmin,c
 * the smaller capacity rate within each exchanger. Theory: W. M. Kays, A. L. London, Compact Heat
 * Exchangers, liquid-coupled exchangers; this form is derived here from the two energy balances.
 *
 * @param hotInlet hot gas inlet temperature [K]
 * @param hotCapacityRate capacity rate of the hot gas [W/K]
 * @param hotEffectiveness effectiveness of the exchanger of hot gas and liquid [-]
 * @param coldInlet cold gas inlet temperature [K]
 * @param coldCapacityRate capacity rate of the cold gas [W/K]
 * @param coldEffectiveness effectiveness of the exchanger of cold gas and liquid [-]
 * @param liquidCapacityRate capacity rate of the liquid [W/K]
 */
public record LiquidCoupledPair(
    double hotInlet,
    double hotCapacityRate,
    double hotEffectiveness,
    double coldInlet,
    double coldCapacityRate,
    double coldEffectiveness,
    double liquidCapacityRate) {

  /**
   * Checks the arguments. The "hot" inlet may be the colder one: heat is then negative.
   *
   * @throws IllegalArgumentException if a temperature or capacity rate is NaN, infinite or not
   *     above 0, or an effectiveness is not above 0 and at most 1
   */
  public LiquidCoupledPair {
    positive("hot inlet temperature", hotInlet);
    positive("hot capacity rate", hotCapacityRate);
    effectiveness("hot effectiveness", hotEffectiveness);
    positive("cold inlet temperature", coldInlet);
    positive("cold capacity rate", coldCapacityRate);
    effectiveness("cold effectiveness", coldEffectiveness);
    positive("liquid capacity rate", liquidCapacityRate);
  }

  /**
   * Heat carried from the hot to the cold gas.
   *
   * @return heat flow [W]
   */
  public double heat() {
    return (hotInlet - coldInlet) / (1 / hotSide() + 1 / coldSide() - 1 / liquidCapacityRate);
  }

  /**
   * Liquid temperature entering the exchanger of the hot gas.
   *
   * @return temperature [K]
   */
  public double coldLiquid() {
    return hotInlet - heat() / hotSide();
  }

  /**
   * Liquid temperature leaving the exchanger of the hot gas.
   *
   * @return temperature [K]
   */
  public double hotLiquid() {
    return coldInlet + heat() / coldSide();
  }

  /**
   * Outlet temperature of the hot gas.
   *
   * @return temperature [K]
   */
  public double hotOutlet() {
    return hotInlet - heat() / hotCapacityRate;
  }

  /**
   * Outlet temperature of the cold gas.
   *
   * @return temperature [K]
   */
  public double coldOutlet() {
    return coldInlet + heat() / coldCapacityRate;
  }

  private double hotSide() {
    return hotEffectiveness * Math.min(hotCapacityRate, liquidCapacityRate);
  }

  private double coldSide() {
    return coldEffectiveness * Math.min(coldCapacityRate, liquidCapacityRate);
  }

  private static void positive(String name, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be finite and above 0, not " + value);
    }
  }

  private static void effectiveness(String name, double value) {
    if (!(value > 0 && value <= 1)) {
      throw new IllegalArgumentException(name + " must be above 0 and at most 1, not " + value);
    }
  }
}
