package soakloop.exchange;

import java.util.function.Consumer;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.Require;

/**
 * A plain fin: straight rectangular channels, {@link DuctFlow} with the entry taken in.
 *
 * @param gap free width, m
 * @param height free height, m
 * @param thickness sheet thickness, m
 */
public record PlainFin(double gap, double height, double thickness) implements Fin {
  /** Checks the parts. */
  public PlainFin {
    Require.positive("fin gap", gap);
    Require.positive("fin height", height);
    Require.positive("fin thickness", thickness);
  }

  @Override
  public double hydraulicDiameter() {
    return channel().hydraulicDiameter();
  }

  @Override
  public double surfacePerLength() {
    return 2 * (gap + height);
  }

  @Override
  public double finPerLength() {
    return 2 * height;
  }

  @Override
  public double film(double massVelocity, FluidState fluid, double depth) {
    double nusselt =
        flow(depth).nusselt(reynolds(massVelocity, fluid.viscosity()), fluid.prandtl());
    return nusselt * fluid.conductivity() / hydraulicDiameter();
  }

  @Override
  public double friction(double massVelocity, double viscosity, double depth) {
    return flow(depth).friction(reynolds(massVelocity, viscosity));
  }

  @Override
  public void checkRange(
      double massVelocity,
      FluidState fluid,
      double depth,
      Consumer<? super OutsideRange> listener) {
    flow(depth).checkRange(reynolds(massVelocity, fluid.viscosity()), fluid.prandtl(), listener);
  }

  @Override
  public Fin withGap(double other) {
    return new PlainFin(other, height, thickness);
  }

  private DuctShape channel() {
    return new DuctShape.Rectangular(gap, height);
  }

  private DuctFlow flow(double depth) {
    return new DuctFlow(channel(), depth, LaminarHeating.ENTRY);
  }

  private double reynolds(double massVelocity, double viscosity) {
    return Require.positive("mass velocity", massVelocity) * hydraulicDiameter() / viscosity;
  }
}
