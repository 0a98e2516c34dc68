package soakloop.invented;

/**
 * Intake metal after the core in two lumps: the lid the charge sensor is screwed into, and the
 * runners bolted to the heads. The air meets the lid, then the sensor, then the runners.
 */
final class Plenum {

  /**
   * What the plenum is.
   *
   * @param lidCapacity heat capacity of the lid [J/K]
   * @param runnerCapacity heat capacity of the runners [J/K]
   * @param lidFilm air film on the lid at 0.45 kg/s [W/K]
   * @param runnerFilm air film in the runners at 0.45 kg/s [W/K]
   * @param lidToEngine conductance from the lid's feet to engine coolant [W/K]
   * @param lidToRunner conductance between lid and runners [W/K]
   * @param lidToHood conductance from the lid to the air under the hood [W/K]
   * @param runnerToEngine conductance from runners to engine coolant [W/K]
   */
  record Shape(
      double lidCapacity,
      double runnerCapacity,
      double lidFilm,
      double runnerFilm,
      double lidToEngine,
      double lidToRunner,
      double lidToHood,
      double runnerToEngine) {

    /** Share of the way to lid temperature that air goes along the lid [-]. */
    double lidPull(Stream gas) {
      return 1 - StrictMath.exp(-film(lidFilm, gas) / gas.capacityRate());
    }

    private double runnerPull(Stream gas) {
      return 1 - StrictMath.exp(-film(runnerFilm, gas) / gas.capacityRate());
    }

    private static double film(double reference, Stream gas) {
      return reference * (0.06 + StrictMath.pow(gas.flow() / 0.45, 0.8));
    }
  }

  private final Shape shape;
  private double lid;
  private double runner;
  private double charge;
  private double out;

  Plenum(Shape shape, double lid, double runner) {
    this.shape = shape;
    this.lid = lid;
    this.runner = runner;
    charge = lid;
    out = lid;
  }

  /**
   * Steps on.
   *
   * @param dt step [s]
   * @param gas air leaving the core
   * @param engine engine coolant [degC]
   * @param hood air under the hood [degC]
   * @return heat from engine and hood [W]
   */
  double step(double dt, Stream gas, double engine, double hood) {
    charge = gas.temperature() + (lid - gas.temperature()) * shape.lidPull(gas);
    out = charge + (runner - charge) * shape.runnerPull(gas);
    double rate = gas.capacityRate();
    double across = shape.lidToRunner * (runner - lid);
    double toLid = shape.lidToEngine * (engine - lid) + shape.lidToHood * (hood - lid);
    double toRunner = shape.runnerToEngine * (engine - runner);
    lid += dt * (rate * (gas.temperature() - charge) + across + toLid) / shape.lidCapacity;
    runner += dt * (rate * (charge - out) - across + toRunner) / shape.runnerCapacity;
    return toLid + toRunner;
  }

  /** Air at the charge sensor [degC]. */
  double charge() {
    return charge;
  }

  /** Air entering the heads [degC]. */
  double out() {
    return out;
  }

  /** Metal the charge sensor is screwed into [degC]. */
  double lid() {
    return lid;
  }

  /** Heat held above 0 degC [J]. */
  double stored() {
    return lid * shape.lidCapacity + runner * shape.runnerCapacity;
  }
}
