package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * A core as a tape measure and a catalogue describe it: layers of air fins with coolant between.
 *
 * <p>Coolant flows along the width, air through the depth. There is one layer of coolant more than
 * of air, so that coolant lies on both outsides.
 */
public sealed interface CoreGeometry permits TubeFinGeometry, PlateFinGeometry {
  /** Length of the coolant's path in one pass, across the air, m. */
  double width();

  /** Thickness of the core, the air's path, m. */
  double depth();

  /** Number of air layers. */
  int airLayers();

  /** Number of coolant passes. */
  int passes();

  /** Air fins. */
  Fin fin();

  /** Height of the core's face, m. */
  double faceHeight();

  /** Air side, m. */
  FinnedPassage air();

  /** Coolant side, all passes side by side. */
  CorePassage coolant();

  /** Metal of everything. */
  Metal metal();

  /** Wall between air and coolant: its thickness, m. */
  double wall();

  /** Wall between air and coolant: its surface, m2. */
  double wallArea();

  /** Metal of plates and bars that is in neither passage, m3. */
  double plateVolume();

  /**
   * The same core, thicker or thinner; fins, ports, mass and volume follow.
   *
   * @param depth m
   */
  CoreGeometry withDepth(double depth);

  /**
   * The same core on another face width; tube length follows.
   *
   * @param width m
   */
  CoreGeometry withWidth(double width);

  /**
   * The same core with more or fewer layers; face height follows.
   *
   * @param airLayers number of air layers
   */
  CoreGeometry withAirLayers(int airLayers);

  /**
   * The same core with other air fins.
   *
   * @param fin the fins
   */
  CoreGeometry withFin(Fin fin);

  /**
   * The same core, its thickness multiplied: 1.2 for 20 % thicker.
   *
   * @param factor above 0
   */
  default CoreGeometry thicker(double factor) {
    return withDepth(depth() * Require.positive("thickness factor", factor));
  }

  /**
   * The same core at another fin density.
   *
   * @param finsPerMetre from fins per inch or per cm
   */
  default CoreGeometry withFinDensity(double finsPerMetre) {
    return withFin(fin().atDensity(finsPerMetre));
  }

  /** Frontal area to the air, m2. */
  default double frontalArea() {
    return width() * faceHeight();
  }

  /**
   * How many air layers fit a face, with one coolant layer more.
   *
   * @param faceHeight m
   * @param airLayer height of an air layer, m
   * @param coolantLayer height of a coolant layer or tube with its walls, m
   * @return whole layers, 1 or more
   * @throws IllegalArgumentException if not one fits
   */
  static int layersIn(double faceHeight, double airLayer, double coolantLayer) {
    Require.positive("face height", faceHeight);
    Require.positive("air layer height", airLayer);
    Require.positive("coolant layer height", coolantLayer);
    // The tolerance keeps a face of exactly n layers from losing one to rounding.
    double layers = (faceHeight - coolantLayer) / (airLayer + coolantLayer) + 1e-9;
    if (!(layers >= 1)) {
      throw new IllegalArgumentException(
          "no air layer of " + airLayer + " m fits a face of " + faceHeight + " m");
    }
    return (int) Math.min(layers, Integer.MAX_VALUE);
  }
}
