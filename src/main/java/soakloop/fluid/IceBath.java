package soakloop.fluid;

import soakloop.quantity.Bracket;

/**
 * Ice thrown into coolant, settled without heat from outside.
 *
 * <p>Ice and liquid are in balance at the freezing point of the liquid as it then is: every kg that
 * melts thins the coolant and raises that point. Glycol stays in the liquid, x = glycol / (liquid +
 * melted). Constant heat capacities; melted water takes {@link #WATER_HEAT_CAPACITY}; the heat of
 * mixing is left out. Freezing points: {@link Glycol} (0.3 to 2.5 K by strength) and 0 degC for
 * water alone.
 *
 * @param liquidMass coolant, kg
 * @param liquidTemperature K
 * @param liquidHeatCapacity J/(kg K)
 * @param glycol which glycol the coolant holds
 * @param massFraction glycol in the coolant before, 0 to 0.6
 * @param iceMass kg, 0 or more
 * @param iceTemperature K, up to 273.15
 */
public record IceBath(
    double liquidMass,
    double liquidTemperature,
    double liquidHeatCapacity,
    Glycol glycol,
    double massFraction,
    double iceMass,
    double iceTemperature) {
  /** Heat capacity of melted water near 10 degC [J/(kg K)]. */
  public static final double WATER_HEAT_CAPACITY = 4190;

  /** Checks the parts. */
  public IceBath {
    soakloop.quantity.Require.positive("coolant mass", liquidMass);
    Require.temperature(liquidTemperature);
    soakloop.quantity.Require.positive("coolant heat capacity", liquidHeatCapacity);
    Require.within("mass fraction of glycol", massFraction, 0, Glycol.MAX_MASS_FRACTION);
    soakloop.quantity.Require.notNegative("ice mass", iceMass);
    Require.within("ice temperature", iceTemperature, 150, Ice.MELTING);
  }

  /**
   * How the bath settles.
   *
   * @param temperature K
   * @param melted ice that melted, kg; below zero if very cold ice froze water out of the coolant
   * @param iceLeft kg
   */
  public record Settled(double temperature, double melted, double iceLeft) {}

  /**
   * The balance.
   *
   * @return temperature and ice left
   * @throws IllegalArgumentException if the ice is so cold that the coolant would freeze until its
   *     glycol exceeds 60 %, or all of its water would
   */
  public Settled settle() {
    double allMelted = temperatureOfLiquid();
    if (iceMass == 0 || allMelted >= freezing(iceMass)) {
      return new Settled(allMelted, iceMass, 0);
    }
    double least = -mostFrozen();
    if (shortOfHeat(least) > 0) {
      throw new IllegalArgumentException(
          "ice at " + iceTemperature + " K would freeze the coolant solid");
    }
    double melted = Bracket.root(least, iceMass, this::shortOfHeat);
    return new Settled(freezing(melted), melted, iceMass - melted);
  }

  /**
   * Freezing point of the coolant with melted water in it.
   *
   * @param melted kg
   * @return K
   */
  public double freezing(double melted) {
    double glycolMass = massFraction * liquidMass;
    return glycolMass == 0
        ? Ice.MELTING
        : GlycolMix.ofMass(
                glycol, Math.min(Glycol.MAX_MASS_FRACTION, glycolMass / (liquidMass + melted)))
            .freezingTemperature();
  }

  /** Temperature with all ice melted, K. */
  private double temperatureOfLiquid() {
    double capacity = liquidMass * liquidHeatCapacity + iceMass * WATER_HEAT_CAPACITY;
    return Ice.MELTING + energy() / capacity;
  }

  /** Energy counted from liquid water and coolant at 0 degC, J. */
  private double energy() {
    return liquidMass * liquidHeatCapacity * (liquidTemperature - Ice.MELTING)
        + iceMass * Ice.enthalpy(iceTemperature);
  }

  /** Energy needed to have so much melted, less what there is, J. */
  private double shortOfHeat(double melted) {
    double over = freezing(melted) - Ice.MELTING;
    double liquid = (liquidMass * liquidHeatCapacity + melted * WATER_HEAT_CAPACITY) * over;
    double ice = (iceMass - melted) * (Ice.HEAT_CAPACITY * over - Ice.HEAT_OF_FUSION);
    return liquid + ice - energy();
  }

  /** Water that may freeze out before the description ends, kg. */
  private double mostFrozen() {
    double glycolMass = massFraction * liquidMass;
    return glycolMass == 0
        ? liquidMass
        : Math.max(0, liquidMass - glycolMass / Glycol.MAX_MASS_FRACTION);
  }
}
