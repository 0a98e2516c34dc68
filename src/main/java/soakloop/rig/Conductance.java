package soakloop.rig;

import java.util.Optional;
import soakloop.exchange.GeometricCore;
import soakloop.fluid.Coolant;

/**
 * Conductance between air and coolant, side by side, so that each side follows its own flow. Both
 * end in the middle of the wall.
 */
public sealed interface Conductance permits PowerLawConductance, GeometricConductance {
  /**
   * Returns what is left if only a share of the passages takes part: so much of the conductance, at
   * a coolant flow that is so much smaller for the same speed in them.
   *
   * @param share of the passages, above 0 to 1
   */
  Conductance narrowed(double share);

  /**
   * Returns the conductance from air to the middle of the wall, evenly spread air.
   *
   * @param flow air flow, kg/s, 0 or more
   * @param temperature mean temperature of the air, K; counts only where {@link
   *     #followsTemperature}
   * @return W/K; 0 without flow
   */
  double airSide(double flow, double temperature);

  /**
   * Returns the conductance from the middle of the wall to the coolant.
   *
   * @param flow coolant flow, m3/s, 0 or more
   * @param temperature mean temperature of the coolant, K; counts only where {@link
   *     #followsTemperature}
   * @param coolant which coolant
   * @return W/K, above 0 without flow too unless what is left then was said to be nothing
   */
  double coolantSide(double flow, double temperature, Coolant coolant);

  /** Returns the power of air flow that the air side goes with, 0 to 1. */
  double airExponent();

  /**
   * Returns how unevenly air meets the face: standard deviation of its speed over the mean, 0 to 1;
   * 0 where the conductance has it in it.
   */
  default double unevenAir() {
    return 0;
  }

  /** Returns whether the sides change with the streams' temperatures. */
  default boolean followsTemperature() {
    return false;
  }

  /** Returns what it was worked out from, if from geometry. */
  default Optional<GeometricCore> geometry() {
    return Optional.empty();
  }
}
