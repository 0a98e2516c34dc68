package soakloop.exchange;

import java.util.function.Consumer;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.Require;

/**
 * Layers of fins between flat walls.
 *
 * <p>The number of cells is width over fin pitch and need not be whole.
 *
 * @param fin the fins
 * @param layers number of layers
 * @param width across the flow, m
 * @param length along the flow, m
 * @param metal of the fins
 */
public record FinnedPassage(Fin fin, int layers, double width, double length, Metal metal)
    implements CorePassage {
  /** Checks the parts. */
  public FinnedPassage {
    if (layers < 1) {
      throw new IllegalArgumentException("layers must be 1 or more, not " + layers);
    }
    Require.positive("passage width", width);
    Require.positive("passage length", length);
  }

  /** Number of cells across all layers. */
  public double cells() {
    return layers * width / fin.pitch();
  }

  @Override
  public double freeArea() {
    return cells() * fin.gap() * fin.height();
  }

  @Override
  public double surface() {
    return cells() * fin.surfacePerLength() * length;
  }

  @Override
  public double hydraulicDiameter() {
    return fin.hydraulicDiameter();
  }

  @Override
  public double metalVolume() {
    return cells() * fin.metalPerLength() * length;
  }

  /** Film coefficient, W/(m2 K). */
  double film(double massVelocity, FluidState fluid) {
    return fin.film(massVelocity, fluid, length);
  }

  /**
   * Efficiency of fins and walls together; the fin is cooled from both ends.
   *
   * @param film W/(m2 K)
   * @return efficiency [-]
   */
  double efficiency(double film) {
    double eta =
        FinSurface.finEfficiency(film, metal.conductivity(), fin.thickness(), fin.height() / 2);
    return FinSurface.overall(fin.finShare(), eta);
  }

  /**
   * Conductance of a standing or creeping fluid: that of developed laminar flow in a plain channel
   * of the same cell, walls at one temperature. Natural convection would add to it.
   *
   * @param fluid at its mean temperature
   * @return W/K
   */
  double still(FluidState fluid) {
    DuctShape channel = new DuctShape.Rectangular(fin.gap(), fin.height());
    double film =
        channel.nusseltAtWallTemperature() * fluid.conductivity() / channel.hydraulicDiameter();
    return efficiency(film) * film * surface();
  }

  @Override
  public double conductance(double massVelocity, FluidState fluid) {
    double film = film(massVelocity, fluid);
    return efficiency(film) * film * surface();
  }

  @Override
  public double friction(double massVelocity, double viscosity) {
    return fin.friction(massVelocity, viscosity, length);
  }

  @Override
  public void checkRange(
      double massVelocity, FluidState fluid, Consumer<? super OutsideRange> listener) {
    fin.checkRange(massVelocity, fluid, length, listener);
  }
}
