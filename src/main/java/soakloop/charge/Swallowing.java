package soakloop.charge;

import soakloop.quantity.Require;

/**
 * What a four-stroke engine swallows at full load: half its displacement a turn, times volumetric
 * efficiency, at the density in its manifold.
 *
 * @param displacement m3
 * @param volumetricEfficiency on manifold density [-], 0.1 to 1.5
 */
public record Swallowing(double displacement, double volumetricEfficiency) {
  /** Checks the parts. */
  public Swallowing {
    Require.positive("engine displacement", displacement);
    Require.within("volumetric efficiency", volumetricEfficiency, 0.1, 1.5);
  }

  /**
   * Volume flow at manifold conditions.
   *
   * @param engineSpeed rev/s
   * @return m3/s
   */
  public double volumeFlow(double engineSpeed) {
    return displacement / 2 * volumetricEfficiency * Require.positive("engine speed", engineSpeed);
  }
}
