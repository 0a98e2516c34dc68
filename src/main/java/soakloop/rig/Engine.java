package soakloop.rig;

import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/**
 * What of the engine the charge air feels.
 *
 * @param displacement swept volume of a full cycle (two turns), m3
 * @param volumetricEfficiency share of it that fills over engine speed in rev/s, 0.1 to 1.5
 * @param idleSpeed rev/s
 * @param idleManifoldPressure absolute, Pa
 */
public record Engine(
    double displacement,
    Curve volumetricEfficiency,
    double idleSpeed,
    double idleManifoldPressure) {
  /** Checks the parts. */
  public Engine {
    Require.positive("engine displacement", displacement);
    for (int i = 0; i < volumetricEfficiency.size(); i++) {
      Require.within("engine volumetric efficiency", volumetricEfficiency.value(i), 0.1, 1.5);
    }
    Require.positive("idle speed", idleSpeed);
    Require.positive("idle manifold pressure", idleManifoldPressure);
  }

  /**
   * Makes one that fills alike at all speeds.
   *
   * @param displacement swept volume of a full cycle (two turns), m3
   * @param volumetricEfficiency share of it that fills, 0.1 to 1.5
   * @param idleSpeed rev/s
   * @param idleManifoldPressure absolute, Pa
   */
  public Engine(
      double displacement,
      double volumetricEfficiency,
      double idleSpeed,
      double idleManifoldPressure) {
    this(displacement, Curve.constant(volumetricEfficiency), idleSpeed, idleManifoldPressure);
  }

  /**
   * Returns the volume that the engine swallows in a second.
   *
   * @param speed rev/s
   * @return m3/s
   */
  public double swallowedVolume(double speed) {
    return volumetricEfficiency.at(speed) * displacement * speed / 2;
  }
}
