package soakloop.exchange;

import java.util.function.Consumer;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.PublishedRange;
import soakloop.quantity.Require;

/**
 * Heat transfer and friction in a smooth straight duct, from creeping to turbulent flow.
 *
 * <p>Laminar to Re 2300: {@link LaminarHeating} and {@link DuctShape}. Turbulent from Re 4000:
 * Gnielinski's Nusselt number with the factor 1 + (D/L)^(2/3) for a short duct, Petukhov's friction
 * ({@link PipeFlow}), both on the hydraulic diameter. Between, the weight of the turbulent value
 * rises as 3 s^2 - 2 s^3, so that value and slope are continuous.
 *
 * <p>Accuracy: laminar a few percent where the wall condition is known, turbulent 10 % and up to 20
 * % for ducts that are not round (usual statement in textbooks), transition: order of magnitude.
 *
 * @param shape cross-section
 * @param length heated length, m
 * @param heating what is taken for laminar flow
 */
public record DuctFlow(DuctShape shape, double length, LaminarHeating heating) {
  private static final double LAMINAR_END = 2300;
  private static final double TURBULENT_START = 4000;
  private static final PublishedRange REYNOLDS =
      new PublishedRange("turbulent duct flow (Gnielinski)", "Re", 0, 5e6);
  private static final PublishedRange PRANDTL =
      new PublishedRange("turbulent duct flow (Gnielinski)", "Pr", 0.5, 2000);

  /** Checks the length. */
  public DuctFlow {
    Require.positive("duct length", length);
  }

  /**
   * Mean Nusselt number on the hydraulic diameter.
   *
   * @param reynolds Reynolds number on the hydraulic diameter, 0 or more
   * @param prandtl Prandtl number, above 0
   * @return Nusselt number [-]
   * @throws IllegalArgumentException if either is NaN or out of range
   */
  public double nusselt(double reynolds, double prandtl) {
    Require.notNegative("Reynolds number", reynolds);
    Require.positive("Prandtl number", prandtl);
    double slenderness = shape.hydraulicDiameter() / length;
    double laminar = heating.nusselt(shape, reynolds * prandtl * slenderness);
    double weight = turbulentShare(reynolds);
    if (weight == 0) {
      return laminar;
    }
    double turbulent =
        PipeFlow.gnielinski(reynolds, prandtl, PipeFlow.petukhovFriction(reynolds))
            * (heating == LaminarHeating.ENTRY ? 1 + Math.cbrt(slenderness * slenderness) : 1);
    return laminar + weight * (turbulent - laminar);
  }

  /**
   * Friction factor (Fanning), developed flow.
   *
   * @param reynolds Reynolds number on the hydraulic diameter, above 0
   * @return friction factor, a quarter of Darcy's [-]
   * @throws IllegalArgumentException if the Reynolds number is not finite and above 0
   */
  public double friction(double reynolds) {
    Require.positive("Reynolds number", reynolds);
    double laminar = shape.frictionTimesReynolds() / reynolds;
    double weight = turbulentShare(reynolds);
    return weight == 0
        ? laminar
        : laminar + weight * (PipeFlow.petukhovFriction(reynolds) / 4 - laminar);
  }

  /**
   * Tells what lies outside the published range.
   *
   * @param reynolds Reynolds number
   * @param prandtl Prandtl number
   * @param listener told of each
   */
  public void checkRange(double reynolds, double prandtl, Consumer<? super OutsideRange> listener) {
    REYNOLDS.check(reynolds, listener);
    if (reynolds > LAMINAR_END) {
      PRANDTL.check(prandtl, listener);
    }
  }

  private static double turbulentShare(double reynolds) {
    double s = (reynolds - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
    double inside = Math.max(0, Math.min(1, s));
    return inside * inside * (3 - 2 * inside);
  }
}
