package soakloop.simulate;

import soakloop.fluid.Coolant;

/**
 * A liquid whose properties do not change with temperature, for which exact solutions hold.
 *
 * @param density kg/m3
 * @param heatCapacity J/(kg K)
 * @param conductivity W/(m K)
 */
public record SteadyCoolant(double density, double heatCapacity, double conductivity)
    implements Coolant {
  /** A liquid that conducts about as water does. */
  public SteadyCoolant(double density, double heatCapacity) {
    this(density, heatCapacity, 0.6);
  }

  @Override
  public double density(double t) {
    return density;
  }

  @Override
  public double heatCapacity(double t) {
    return heatCapacity;
  }

  @Override
  public double enthalpy(double t) {
    return heatCapacity * (t - ENTHALPY_ZERO);
  }

  @Override
  public double conductivity(double t) {
    return conductivity;
  }

  @Override
  public double viscosity(double t) {
    return 1e-3;
  }

  @Override
  public double freezingTemperature() {
    return 273.15;
  }

  @Override
  public double minTemperature() {
    return 273.15;
  }

  @Override
  public double maxTemperature() {
    return 373.15;
  }
}
