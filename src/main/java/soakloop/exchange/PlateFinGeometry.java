package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * Bar and plate: finned layers of air and of coolant in turn, flat plates between, bars along the
 * open edges.
 *
 * <p>Fins of both sides are of the same metal as the plates. Bars close each layer along two edges:
 * their width lies outside the width and depth given here.
 *
 * @param width coolant's path in one pass, m
 * @param depth thickness of the core, m
 * @param airLayers number of air layers; coolant layers are one more
 * @param fin air fins
 * @param coolantFin fins in the coolant layers
 * @param wall plate thickness, m
 * @param bar width of the bars, m, 0 to leave them out
 * @param passes coolant passes
 * @param metal of fins, plates and bars
 */
public record PlateFinGeometry(
    double width,
    double depth,
    int airLayers,
    Fin fin,
    Fin coolantFin,
    double wall,
    double bar,
    int passes,
    Metal metal)
    implements CoreGeometry {
  /** Checks the parts. */
  public PlateFinGeometry {
    Require.positive("core width", width);
    Require.positive("core depth", depth);
    Require.positive("plate thickness", wall);
    Require.notNegative("bar width", bar);
    if (airLayers < 1 || passes < 1) {
      throw new IllegalArgumentException(
          "air layers and passes must be 1 or more: " + airLayers + ", " + passes);
    }
  }

  private int plates() {
    return 2 * airLayers + 2;
  }

  @Override
  public double faceHeight() {
    return airLayers * fin.spacing() + (airLayers + 1) * coolantFin.spacing() + plates() * wall;
  }

  @Override
  public FinnedPassage air() {
    return new FinnedPassage(fin, airLayers, width, depth, metal);
  }

  @Override
  public CorePassage coolant() {
    return new FinnedPassage(coolantFin, airLayers + 1, depth, width, metal);
  }

  /** The outermost plates part coolant from nothing. */
  @Override
  public double wallArea() {
    return 2 * airLayers * width * depth;
  }

  @Override
  public double plateVolume() {
    double bars =
        2
            * bar
            * (airLayers * fin.spacing() * depth + (airLayers + 1) * coolantFin.spacing() * width);
    return plates() * wall * width * depth + bars;
  }

  @Override
  public CoreGeometry withDepth(double other) {
    return new PlateFinGeometry(width, other, airLayers, fin, coolantFin, wall, bar, passes, metal);
  }

  @Override
  public CoreGeometry withWidth(double other) {
    return new PlateFinGeometry(other, depth, airLayers, fin, coolantFin, wall, bar, passes, metal);
  }

  @Override
  public CoreGeometry withAirLayers(int other) {
    return new PlateFinGeometry(width, depth, other, fin, coolantFin, wall, bar, passes, metal);
  }

  @Override
  public CoreGeometry withFin(Fin other) {
    return new PlateFinGeometry(
        width, depth, airLayers, other, coolantFin, wall, bar, passes, metal);
  }
}
