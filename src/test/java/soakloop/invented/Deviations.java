package soakloop.invented;

import java.util.Random;

/**
 * How far the true car is from what its owner would write down, drawn from a seed.
 *
 * @param coreConductance true over stated core conductance [-], 0.90 to 1.04
 * @param pumpSpeed true over stated pump speed [-], 0.88 to 1.00; flow follows nearly in proportion
 * @param efficiency true minus stated adiabatic efficiency [-], -0.02 to 0.02
 * @param frontConductance true over nominal heat exchanger conductance [-], 0.90 to 1.10
 * @param fanVelocity true over stated fan air speed [-], 0.90 to 1.06
 * @param coreMass true over stated core mass [-], 0.96 to 1.04
 */
record Deviations(
    double coreConductance,
    double pumpSpeed,
    double efficiency,
    double frontConductance,
    double fanVelocity,
    double coreMass) {

  /**
   * Draws a car and its core.
   *
   * @param carSeed seed of everything but the core
   * @param coreSeed seed of the core
   */
  static Deviations draw(long carSeed, long coreSeed) {
    Random car = scrambled(carSeed);
    Random core = scrambled(coreSeed);
    return new Deviations(
        between(core, 0.90, 1.04),
        between(car, 0.88, 1.00),
        between(car, -0.02, 0.02),
        between(car, 0.90, 1.10),
        between(car, 0.90, 1.06),
        between(core, 0.96, 1.04));
  }

  /** Neighbouring seeds would draw nearly the same first number: spread them out first. */
  private static Random scrambled(long seed) {
    return new Random(seed * 0x9E3779B97F4A7C15L);
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
