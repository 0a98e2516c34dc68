package soakloop.simulate;

import java.util.Optional;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Ice;

/**
 * The freezing point of the loop's coolant as melted ice thins it.
 *
 * <p>Glycol stays in the liquid: x = glycol / (coolant + melted), over the coolant of the whole
 * loop. With the pump on the loop turns over in 12 to 24 s and ice lasts longer, so the tank is
 * hardly thinner than the rest; with the pump off it is, and ice then melts against coolant a few
 * kelvin too cold at the most.
 */
final class ThinnedCoolant {
  private static final double STEP = 1e-3; // kg

  private final Optional<Glycol> glycol;
  private final double coolant;
  private double glycolMass;

  /**
   * Takes the loop as it is filled.
   *
   * @param coolant what fills it
   * @param mass all of it, kg
   */
  ThinnedCoolant(Coolant coolant, double mass) {
    this.coolant = mass;
    if (coolant instanceof GlycolMix mix) {
      this.glycol = Optional.of(mix.glycol());
      this.glycolMass = mix.massFraction() * mass;
    } else {
      this.glycol = Optional.empty();
    }
  }

  /**
   * Returns the temperature at which ice and coolant are in balance, K.
   *
   * @param melted water of the ice, kg
   */
  double freezing(double melted) {
    return glycol.isEmpty()
        ? Ice.MELTING
        : glycol.get().freezingTemperature(glycolMass / (coolant + melted));
  }

  /** Returns how that rises with melted water, K/kg. */
  double slope(double melted) {
    return glycol.isEmpty() ? 0 : (freezing(melted + STEP) - freezing(melted - STEP)) / (2 * STEP);
  }

  /** Returns the glycol in the loop, kg. */
  double glycolMass() {
    return glycolMass;
  }

  void setGlycolMass(double mass) {
    glycolMass = mass;
  }

  /** Lets the thinned coolant off until its mass is as it was filled, with its share of glycol. */
  void drain(double melted) {
    glycolMass *= coolant / (coolant + melted);
  }
}
