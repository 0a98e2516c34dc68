package soakloop.fluid;

/**
 * The two glycols used as antifreeze, each with the property fits of its aqueous solutions.
 *
 * <p>Equation: F(t, x) = sum over i, j of C[i][j] (t - tb)^i (x - xb)^j with x the mass fraction of
 * glycol; density, heat capacity and conductivity are F itself, viscosity is exp(F); the freezing
 * temperature is a polynomial in (x - xb) alone. Valid: 0 &lt;= x &lt;= 0.6, freezing temperature
 * &lt;= t &lt;= 373.15 K.
 *
 * <p>Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd ed.,
 * International Institute of Refrigeration, 2010; coefficients read from their transcription in
 * CoolProp (MEG.json, MPG.json), the book itself was not seen. Public transcriptions of the
 * ethylene block disagree in two signs of the viscosity fit (first and second power of temperature,
 * second power of x). The signs used here follow the viscosity of pure water at x = 0 within 1.7 %
 * from 0.5 to 99 degC; the other pair misses it by up to 22 %.
 *
 * <p>Accuracy against the tables of the ASHRAE Handbook: density 1 %, heat capacity 3 %,
 * conductivity 4 %, viscosity 15 % below 0 degC and 7 % above.
 */
public enum Glycol {
  /** Ethylene glycol (monoethylene glycol, MEG). */
  ETHYLENE,
  /** Propylene glycol (1,2-propanediol, MPG). */
  PROPYLENE;

  /** Highest mass fraction of the fits [-]. */
  public static final double MAX_MASS_FRACTION = 0.6;

  MelinderFit fit() {
    return switch (this) {
      case ETHYLENE -> MelinderFit.ETHYLENE;
      case PROPYLENE -> MelinderFit.PROPYLENE;
    };
  }

  private VolumeTable volumeTable() {
    return switch (this) {
      case ETHYLENE -> VolumeTable.ETHYLENE;
      case PROPYLENE -> VolumeTable.PROPYLENE;
    };
  }

  /**
   * The highest volume fraction that stays within the fits.
   *
   * @return volume fraction [-] whose mass fraction is {@link #MAX_MASS_FRACTION}
   */
  public double maxVolumeFraction() {
    return volumeTable().maxVolumeFraction();
  }

  /**
   * Mass fraction of glycol in a mix stated by volume.
   *
   * <p>Linear between the rows of the volume-to-mass table for 10, 20, 30, 40 and 50 % by volume
   * and the row of 60 % by mass; the table's own rounding is 0.05 points, the interpolation adds
   * less than 0.1 points.
   *
   * <p>Source: ASHRAE Handbook, Fundamentals, chapter on secondary coolants, tables of freezing
   * point against mass and volume percent (as stored in CoolProp's data files; edition not stated).
   *
   * @param volumeFraction volume fraction of glycol [-], 0 to {@link #maxVolumeFraction()}
   * @return mass fraction of glycol [-], 0 to {@link #MAX_MASS_FRACTION}
   * @throws IllegalArgumentException if the fraction is NaN or outside that range
   */
  public double massFraction(double volumeFraction) {
    Require.within("volume fraction of glycol", volumeFraction, 0, maxVolumeFraction());
    return volumeTable().massFraction(volumeFraction);
  }

  /**
   * Temperature at which the first ice forms on cooling a mix, or the last melts in it.
   *
   * @param massFraction mass fraction of glycol [-], taken into 0 to {@link #MAX_MASS_FRACTION}
   * @return freezing temperature [K]
   */
  public double freezingTemperature(double massFraction) {
    return fit().freezingTemperature(Math.max(0, Math.min(MAX_MASS_FRACTION, massFraction)));
  }
}
