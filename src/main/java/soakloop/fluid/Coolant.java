package soakloop.fluid;

/**
 * Properties of a liquid coolant at ambient pressure, as functions of temperature only.
 *
 * <p>All temperatures are absolute [K]. Every method computes for any finite temperature that is
 * physically possible; outside {@link #minTemperature()} to {@link #maxTemperature()} the
 * correlation is extrapolated smoothly, and it is for the caller to say so. A temperature that is
 * NaN, infinite, not above zero or past a pole of the correlation throws {@link
 * IllegalArgumentException}.
 *
 * <p>Implementations are immutable and allocate nothing per call.
 */
public interface Coolant {
  /** The temperature at which every coolant's {@link #enthalpy} is zero [K]. */
  double ENTHALPY_ZERO = 273.15;

  /**
   * Density.
   *
   * @param t temperature [K]
   * @return density [kg/m3]
   * @throws IllegalArgumentException if {@code t} is not a possible temperature
   */
  double density(double t);

  /**
   * Isobaric specific heat capacity.
   *
   * @param t temperature [K]
   * @return heat capacity [J/(kg K)]
   * @throws IllegalArgumentException if {@code t} is not a possible temperature
   */
  double heatCapacity(double t);

  /**
   * Specific enthalpy: the exact integral of {@link #heatCapacity} from {@link #ENTHALPY_ZERO}.
   *
   * @param t temperature [K]
   * @return enthalpy [J/kg]
   * @throws IllegalArgumentException if {@code t} is not a possible temperature
   */
  double enthalpy(double t);

  /**
   * Thermal conductivity.
   *
   * @param t temperature [K]
   * @return conductivity [W/(m K)]
   * @throws IllegalArgumentException if {@code t} is not a possible temperature
   */
  double conductivity(double t);

  /**
   * Dynamic viscosity.
   *
   * @param t temperature [K]
   * @return viscosity [Pa s]
   * @throws IllegalArgumentException if {@code t} is not a possible temperature
   */
  double viscosity(double t);

  /**
   * The temperature at which the first ice forms on cooling [K].
   *
   * @return freezing temperature [K]
   */
  double freezingTemperature();

  /**
   * Lower end of the range the correlation was made for.
   *
   * @return lowest temperature of the correlation [K]
   */
  double minTemperature();

  /**
   * Upper end of the range the correlation was made for.
   *
   * @return highest temperature of the correlation [K]
   */
  double maxTemperature();

  /**
   * A temperature taken into the correlation's range.
   *
   * @param t temperature [K]
   * @return the same, or the end of the range that is nearer [K]
   */
  default double held(double t) {
    return Math.max(minTemperature(), Math.min(maxTemperature(), t));
  }
}
