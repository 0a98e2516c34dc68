package soakloop.flow;

import soakloop.quantity.Require;

/**
 * Loss factors of fittings on the velocity head in the smaller section.
 *
 * <p>Source: textbook values (Borda and Carnot for the expansion); sharp entry, exit, contraction
 * and elbow from memory. Spread: a third for the contraction, a factor of two for bends and elbows.
 */
public final class Fittings {
  /** Sharp-edged entry from a tank; from memory, tables give 0.5 to 0.57. */
  public static final double SHARP_ENTRY = 0.5;

  /** Exit into a tank: all of the velocity head. */
  public static final double EXIT = 1;

  /** Smooth right-angled bend, radius 1.5 diameters; 0.33 near Re 1.5e4 in a reference library. */
  public static final double SMOOTH_BEND = 0.33;

  /** Moulded right-angled elbow; from memory, 0.3 to 1.5 by make. */
  public static final double ELBOW = 0.9;

  private Fittings() {}

  /**
   * Sudden contraction: 0.5 (1 - s).
   *
   * @param areaRatio small over large section [-], 0 to 1
   */
  public static double contraction(double areaRatio) {
    return 0.5 * (1 - Require.within("area ratio", areaRatio, 0, 1));
  }

  /**
   * Sudden expansion: (1 - s)^2.
   *
   * @param areaRatio small over large section [-], 0 to 1
   */
  public static double expansion(double areaRatio) {
    double step = 1 - Require.within("area ratio", areaRatio, 0, 1);
    return step * step;
  }
}
