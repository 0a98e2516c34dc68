package soakloop.exchange;

import java.util.function.Consumer;
import soakloop.quantity.OutsideRange;
import soakloop.quantity.Require;

/**
 * A corrugated fin sheet between two flat walls: the repeating cell, and what flow does in it.
 *
 * <p>Lengths in m. The free height is the wall spacing less the sheet, {@code spacing = height +
 * thickness}; the free width of a cell is the fin pitch less the sheet.
 */
public sealed interface Fin permits PlainFin, OffsetStripFin, LouvredFin {
  /** Free width of a cell, m. */
  double gap();

  /** Free height of a cell, m. */
  double height();

  /** Sheet thickness, m. */
  double thickness();

  /** Hydraulic diameter of the cell, m. */
  double hydraulicDiameter();

  /**
   * Heat-transfer surface of one cell per length of flow, fins and walls, m.
   *
   * @return m2 per m
   */
  double surfacePerLength();

  /**
   * The part of {@link #surfacePerLength} that is fin, m.
   *
   * @return m2 per m
   */
  double finPerLength();

  /**
   * Film coefficient.
   *
   * @param massVelocity mass flow over free area, kg/(m2 s), above 0
   * @param fluid at its mean temperature
   * @param depth flow length, m
   * @return W/(m2 K)
   */
  double film(double massVelocity, FluidState fluid, double depth);

  /**
   * Friction factor (Fanning) on the hydraulic diameter.
   *
   * @param massVelocity mass flow over free area, kg/(m2 s), above 0
   * @param viscosity Pa s
   * @param depth flow length, m
   * @return friction factor [-]
   */
  double friction(double massVelocity, double viscosity, double depth);

  /**
   * Tells what lies outside the published range.
   *
   * @param massVelocity kg/(m2 s)
   * @param fluid at its mean temperature
   * @param depth flow length, m
   * @param listener told of each
   */
  void checkRange(
      double massVelocity, FluidState fluid, double depth, Consumer<? super OutsideRange> listener);

  /**
   * The same fin with another free width.
   *
   * @param gap m
   */
  Fin withGap(double gap);

  /** Fin pitch, m. */
  default double pitch() {
    return gap() + thickness();
  }

  /** Spacing of the walls, m. */
  default double spacing() {
    return height() + thickness();
  }

  /** Share of the surface that is fin [-]. */
  default double finShare() {
    return finPerLength() / surfacePerLength();
  }

  /**
   * Metal of one cell per length of flow, m2: the upright leg and the strip that lies on the wall.
   */
  default double metalPerLength() {
    return thickness() * (height() + thickness() + gap());
  }

  /**
   * The same fin at another fin pitch.
   *
   * @param finsPerMetre fins per metre, from fins per inch or per cm
   * @return the fin
   * @throws IllegalArgumentException if the sheets would leave no gap
   */
  default Fin atDensity(double finsPerMetre) {
    return withGap(gapAt(finsPerMetre, thickness()));
  }

  /**
   * Free width of a cell from a fin density.
   *
   * @param finsPerMetre fins per metre, from fins per inch or per cm
   * @param thickness sheet thickness, m
   * @return free width, m
   * @throws IllegalArgumentException if the sheets would leave no gap
   */
  static double gapAt(double finsPerMetre, double thickness) {
    double gap = 1 / Require.positive("fin density", finsPerMetre) - thickness;
    if (!(gap > 0)) {
      throw new IllegalArgumentException(
          "fins of " + thickness + " m leave no gap at " + finsPerMetre + " per metre");
    }
    return gap;
  }
}
