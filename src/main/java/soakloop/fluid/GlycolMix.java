package soakloop.fluid;

/**
 * A glycol and water mix of fixed strength.
 *
 * <p>The two-dimensional fits of {@link Glycol} are collapsed to cubics in temperature when the mix
 * is made, so a property costs one Horner evaluation.
 */
public final class GlycolMix implements Coolant {
  private static final double MAX_TEMPERATURE = 373.15;

  private final Glycol glycol;
  private final double massFraction;
  private final Cubic density;
  private final Cubic heatCapacity;
  private final Cubic conductivity;
  private final Cubic logViscosity;
  private final double freezing;
  private final double enthalpyOffset;

  private GlycolMix(Glycol glycol, double massFraction) {
    this.glycol = glycol;
    this.massFraction =
        Require.within("mass fraction of glycol", massFraction, 0, Glycol.MAX_MASS_FRACTION);
    MelinderFit fit = glycol.fit();
    density = fit.density(massFraction);
    heatCapacity = fit.heatCapacity(massFraction);
    conductivity = fit.conductivity(massFraction);
    logViscosity = fit.logViscosity(massFraction);
    freezing = fit.freezingTemperature(massFraction);
    enthalpyOffset = heatCapacity.antiderivative(ENTHALPY_ZERO);
  }

  /**
   * A mix stated by mass.
   *
   * @param glycol which glycol
   * @param massFraction mass of glycol per mass of mix [-], 0 to 0.6
   * @return the mix
   * @throws IllegalArgumentException if the fraction is NaN or outside that range
   */
  public static GlycolMix ofMass(Glycol glycol, double massFraction) {
    return new GlycolMix(glycol, massFraction);
  }

  /**
   * A mix stated by volume, converted by {@link Glycol#massFraction(double)}.
   *
   * @param glycol which glycol
   * @param volumeFraction volume of glycol per volume of mix [-], 0 to {@link
   *     Glycol#maxVolumeFraction()}
   * @return the mix
   * @throws IllegalArgumentException if the fraction is NaN or outside that range
   */
  public static GlycolMix ofVolume(Glycol glycol, double volumeFraction) {
    return new GlycolMix(glycol, glycol.massFraction(volumeFraction));
  }

  /**
   * Which glycol this mix holds.
   *
   * @return the glycol
   */
  public Glycol glycol() {
    return glycol;
  }

  /**
   * Strength of the mix.
   *
   * @return mass of glycol per mass of mix [-]
   */
  public double massFraction() {
    return massFraction;
  }

  @Override
  public double density(double t) {
    return density.at(Require.temperature(t));
  }

  @Override
  public double heatCapacity(double t) {
    return heatCapacity.at(Require.temperature(t));
  }

  @Override
  public double enthalpy(double t) {
    return heatCapacity.antiderivative(Require.temperature(t)) - enthalpyOffset;
  }

  @Override
  public double conductivity(double t) {
    return conductivity.at(Require.temperature(t));
  }

  @Override
  public double viscosity(double t) {
    return Math.exp(logViscosity.at(Require.temperature(t)));
  }

  @Override
  public double freezingTemperature() {
    return freezing;
  }

  @Override
  public double minTemperature() {
    return freezing;
  }

  @Override
  public double maxTemperature() {
    return MAX_TEMPERATURE;
  }

  @Override
  public String toString() {
    return "GlycolMix[" + glycol + ", massFraction=" + massFraction + "]";
  }
}
