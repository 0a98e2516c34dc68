package soakloop.exchange;

import java.util.function.Consumer;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.PublishedRange;
import soakloop.quantity.Require;

/**
 * An offset strip fin: short strips, each shifted by half a pitch against the one before.
 *
 * <p>Equations, with alpha = s/h, delta = t/l, gamma = t/s, Re on D = 4 s h l / [2 (s l + h l + t
 * h) + t s]:
 *
 * <pre>
 * j = 0.6522 Re^-0.5403 alpha^-0.1541 delta^0.1499 gamma^-0.0678
 *     [1 + 5.269e-5 Re^1.340 alpha^0.504 delta^0.456 gamma^-1.055]^0.1
 * f = 9.6243 Re^-0.7422 alpha^-0.1856 delta^0.3053 gamma^-0.2659
 *     [1 + 7.669e-8 Re^4.429 alpha^0.920 delta^3.767 gamma^0.236]^0.1
 * </pre>
 *
 * <p>Range (from memory): Re 120 to 1e4, alpha 0.134 to 0.997, delta 0.012 to 0.048, gamma 0.041 to
 * 0.121. Accuracy (from memory): 20 % for j and f. Made for gases: for liquids the Colburn analogy
 * in Pr^(2/3) is a common extension.
 *
 * <p>Source: R. M. Manglik, A. E. Bergles, Exp. Therm. Fluid Sci. 10 (1995) 171. The paper was not
 * seen; public transcriptions agree on j and differ in the last exponent of the first bracket of f
 * (-0.2656, even +0.2659). The majority's -0.2659 is used.
 *
 * @param gap free width s, m
 * @param height free height h, m
 * @param thickness sheet thickness t, m
 * @param strip strip length l, m
 */
public record OffsetStripFin(double gap, double height, double thickness, double strip)
    implements Fin {
  private static final String NAME = "offset strip fin (Manglik and Bergles)";
  private static final PublishedRange REYNOLDS = new PublishedRange(NAME, "Re", 120, 1e4);
  private static final PublishedRange ALPHA =
      new PublishedRange(NAME, "gap over height", 0.134, 0.997);
  private static final PublishedRange DELTA =
      new PublishedRange(NAME, "thickness over strip length", 0.012, 0.048);
  private static final PublishedRange GAMMA =
      new PublishedRange(NAME, "thickness over gap", 0.041, 0.121);

  /** Checks the parts. */
  public OffsetStripFin {
    Require.positive("fin gap", gap);
    Require.positive("fin height", height);
    Require.positive("fin thickness", thickness);
    Require.positive("strip length", strip);
  }

  @Override
  public double hydraulicDiameter() {
    return 4 * gap * height / surfacePerLength();
  }

  @Override
  public double surfacePerLength() {
    return 2 * gap + finPerLength();
  }

  /** Both faces, the strip's front and back edges, and the ends of the wall strip. */
  @Override
  public double finPerLength() {
    return 2 * height + (2 * thickness * height + thickness * gap) / strip;
  }

  /**
   * Colburn factor, j = St Pr^(2/3).
   *
   * @param re Reynolds number on the hydraulic diameter, above 0
   * @return j [-]
   */
  public double colburn(double re) {
    double a = Math.log(gap / height);
    double d = Math.log(thickness / strip);
    double g = Math.log(thickness / gap);
    double r = Math.log(Require.positive("Reynolds number", re));
    double laminar = 0.6522 * Math.exp(-0.5403 * r - 0.1541 * a + 0.1499 * d - 0.0678 * g);
    double turbulent = 5.269e-5 * Math.exp(1.340 * r + 0.504 * a + 0.456 * d - 1.055 * g);
    return laminar * Math.pow(1 + turbulent, 0.1);
  }

  /**
   * Friction factor (Fanning).
   *
   * @param re Reynolds number on the hydraulic diameter, above 0
   * @return f [-]
   */
  public double friction(double re) {
    double a = Math.log(gap / height);
    double d = Math.log(thickness / strip);
    double g = Math.log(thickness / gap);
    double r = Math.log(Require.positive("Reynolds number", re));
    double laminar = 9.6243 * Math.exp(-0.7422 * r - 0.1856 * a + 0.3053 * d - 0.2659 * g);
    double turbulent = 7.669e-8 * Math.exp(4.429 * r + 0.920 * a + 3.767 * d + 0.236 * g);
    return laminar * Math.pow(1 + turbulent, 0.1);
  }

  @Override
  public double film(double massVelocity, FluidState fluid, double depth) {
    double j = colburn(reynolds(massVelocity, fluid.viscosity()));
    double root = Math.cbrt(fluid.prandtl());
    return j * massVelocity * fluid.heatCapacity() / (root * root);
  }

  @Override
  public double friction(double massVelocity, double viscosity, double depth) {
    return friction(reynolds(massVelocity, viscosity));
  }

  @Override
  public void checkRange(
      double massVelocity,
      FluidState fluid,
      double depth,
      Consumer<? super OutsideRange> listener) {
    REYNOLDS.check(reynolds(massVelocity, fluid.viscosity()), listener);
    ALPHA.check(gap / height, listener);
    DELTA.check(thickness / strip, listener);
    GAMMA.check(thickness / gap, listener);
  }

  @Override
  public Fin withGap(double other) {
    return new OffsetStripFin(other, height, thickness, strip);
  }

  private double reynolds(double massVelocity, double viscosity) {
    return Require.positive("mass velocity", massVelocity) * hydraulicDiameter() / viscosity;
  }
}
