package soakloop.exchange;

import java.util.function.Consumer;
import soakloop.quantity.OutsideRange;

/** All parallel passages of one stream through a core, in one pass. */
public sealed interface CorePassage permits FinnedPassage, PortPassage {
  /** Free cross-section of all passages together, m2. */
  double freeArea();

  /** Heat-transfer surface, m2. */
  double surface();

  /** Length that the stream flows in one pass, m. */
  double length();

  /** Hydraulic diameter, m. */
  double hydraulicDiameter();

  /** Metal of fins, or of tubes, m3. */
  double metalVolume();

  /**
   * Conductance from the stream to the wall, fin efficiency included.
   *
   * @param massVelocity kg/(m2 s), above 0
   * @param fluid at its mean temperature
   * @return W/K
   */
  double conductance(double massVelocity, FluidState fluid);

  /**
   * Friction factor (Fanning).
   *
   * @param massVelocity kg/(m2 s), above 0
   * @param viscosity Pa s
   * @return friction factor [-]
   */
  double friction(double massVelocity, double viscosity);

  /**
   * Tells what lies outside a published range.
   *
   * @param massVelocity kg/(m2 s)
   * @param fluid at its mean temperature
   * @param listener told of each
   */
  void checkRange(double massVelocity, FluidState fluid, Consumer<? super OutsideRange> listener);

  /** Volume of the stream in the passages, m3. */
  default double fluidVolume() {
    return freeArea() * length();
  }
}
