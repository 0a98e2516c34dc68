package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * Flat tubes with ports, fins between them.
 *
 * <p>Ports that are pitched through the depth: {@code depth / portPitch} of them, a mean number
 * that need not be whole. The plain band on either side is taken as part of the pitch.
 *
 * @param width tube length between the headers, m
 * @param depth thickness of the core, m
 * @param airLayers number of fin layers; tubes are one more
 * @param fin air fins
 * @param port one port of a tube
 * @param portPitch distance of the ports along the depth, m
 * @param wall tube wall between port and fin, m
 * @param passes coolant passes
 * @param heating what is taken for laminar coolant
 * @param metal of fins and tubes
 */
public record TubeFinGeometry(
    double width,
    double depth,
    int airLayers,
    Fin fin,
    DuctShape port,
    double portPitch,
    double wall,
    int passes,
    LaminarHeating heating,
    Metal metal)
    implements CoreGeometry {
  /** Checks the parts. */
  public TubeFinGeometry {
    Require.positive("core width", width);
    Require.positive("core depth", depth);
    Require.positive("port pitch", portPitch);
    Require.positive("tube wall", wall);
    if (airLayers < 1 || passes < 1) {
      throw new IllegalArgumentException(
          "air layers and passes must be 1 or more: " + airLayers + ", " + passes);
    }
    if (!(portPitch > port.width())) {
      throw new IllegalArgumentException(
          "ports of " + port.width() + " m do not fit a pitch of " + portPitch + " m");
    }
  }

  /** Outer height of a tube, m. */
  public double tubeHeight() {
    return port.height() + 2 * wall;
  }

  @Override
  public double faceHeight() {
    return airLayers * fin.spacing() + (airLayers + 1) * tubeHeight();
  }

  @Override
  public FinnedPassage air() {
    return new FinnedPassage(fin, airLayers, width, depth, metal);
  }

  @Override
  public CorePassage coolant() {
    return new PortPassage(
        port, depth / portPitch, airLayers + 1, depth * tubeHeight(), width, heating);
  }

  @Override
  public double wallArea() {
    return 2 * (airLayers + 1) * width * depth;
  }

  @Override
  public double plateVolume() {
    return 0;
  }

  @Override
  public CoreGeometry withDepth(double other) {
    return new TubeFinGeometry(
        width, other, airLayers, fin, port, portPitch, wall, passes, heating, metal);
  }

  @Override
  public CoreGeometry withWidth(double other) {
    return new TubeFinGeometry(
        other, depth, airLayers, fin, port, portPitch, wall, passes, heating, metal);
  }

  @Override
  public CoreGeometry withAirLayers(int other) {
    return new TubeFinGeometry(
        width, depth, other, fin, port, portPitch, wall, passes, heating, metal);
  }

  @Override
  public CoreGeometry withFin(Fin other) {
    return new TubeFinGeometry(
        width, depth, airLayers, other, port, portPitch, wall, passes, heating, metal);
  }
}
