package soakloop.exchange;

import java.util.function.Consumer;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.PublishedRange;
import soakloop.quantity.Require;

/**
 * A louvred fin between flat tubes. Equations: {@link LouvreCorrelation}.
 *
 * <p>The cell is taken as rectangular and the louvres' edges as no extra surface.
 *
 * @param gap free width, fin pitch less sheet, m
 * @param height fin length from tube to tube, m
 * @param thickness sheet thickness, m
 * @param louvres the louvres
 */
public record LouvredFin(double gap, double height, double thickness, Louvres louvres)
    implements Fin {
  /**
   * Louvres cut into a fin.
   *
   * @param pitch louvre pitch along the flow, m
   * @param length louvre length across the flow, m
   * @param angle louvre angle, rad, above 0 and below a right angle
   * @param tubeHeight height of the tubes (their small outer dimension), m
   */
  public record Louvres(double pitch, double length, double angle, double tubeHeight) {
    /** Checks the parts. */
    public Louvres {
      Require.positive("louvre pitch", pitch);
      Require.positive("louvre length", length);
      Require.positive("louvre angle", angle);
      if (!(angle < Math.PI / 2)) {
        throw new IllegalArgumentException("louvre angle must be below a right angle: " + angle);
      }
      Require.positive("tube height", tubeHeight);
    }
  }

  private static final String NAME = "louvred fin (Chang and others)";
  private static final PublishedRange REYNOLDS =
      new PublishedRange(NAME, "Re on louvre pitch", 100, 3000);
  private static final PublishedRange ANGLE =
      new PublishedRange(NAME, "louvre angle in degrees", 8.4, 35);
  private static final PublishedRange PITCH =
      new PublishedRange(NAME, "fin pitch in m", 0.51e-3, 3.33e-3);
  private static final PublishedRange LOUVRE_PITCH =
      new PublishedRange(NAME, "louvre pitch in m", 0.5e-3, 3e-3);
  private static final PublishedRange LOUVRE_LENGTH =
      new PublishedRange(NAME, "louvre length in m", 2.13e-3, 18.5e-3);
  private static final PublishedRange HEIGHT =
      new PublishedRange(NAME, "fin height in m", 2.84e-3, 25e-3);
  private static final PublishedRange DEPTH =
      new PublishedRange(NAME, "depth in m", 15.6e-3, 57.4e-3);
  private static final PublishedRange TUBE_PITCH =
      new PublishedRange(NAME, "tube pitch in m", 7.5e-3, 25e-3);

  /** Checks the parts. */
  public LouvredFin {
    Require.positive("fin gap", gap);
    Require.positive("fin height", height);
    Require.positive("fin thickness", thickness);
    if (louvres.length() > height) {
      throw new IllegalArgumentException(
          "louvres of " + louvres.length() + " m do not fit a fin of " + height + " m");
    }
  }

  @Override
  public double hydraulicDiameter() {
    return 2 * gap * height / (gap + height);
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
    double j = correlation(depth).colburn(reynolds(massVelocity, fluid.viscosity()));
    double root = Math.cbrt(fluid.prandtl());
    return j * massVelocity * fluid.heatCapacity() / (root * root);
  }

  @Override
  public double friction(double massVelocity, double viscosity, double depth) {
    return correlation(depth).friction(reynolds(massVelocity, viscosity));
  }

  @Override
  public void checkRange(
      double massVelocity,
      FluidState fluid,
      double depth,
      Consumer<? super OutsideRange> listener) {
    REYNOLDS.check(reynolds(massVelocity, fluid.viscosity()), listener);
    ANGLE.check(Math.toDegrees(louvres.angle()), listener);
    PITCH.check(pitch(), listener);
    LOUVRE_PITCH.check(louvres.pitch(), listener);
    LOUVRE_LENGTH.check(louvres.length(), listener);
    HEIGHT.check(height, listener);
    DEPTH.check(depth, listener);
    TUBE_PITCH.check(height + louvres.tubeHeight(), listener);
  }

  @Override
  public Fin withGap(double other) {
    return new LouvredFin(other, height, thickness, louvres);
  }

  /** The equations at this fin, for a depth in m. */
  public LouvreCorrelation correlation(double depth) {
    return new LouvreCorrelation(this, depth);
  }

  private double reynolds(double massVelocity, double viscosity) {
    return Require.positive("mass velocity", massVelocity) * louvres.pitch() / viscosity;
  }
}
