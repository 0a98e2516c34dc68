package soakloop.invented;

/**
 * A charge temperature sensor: its bead follows the air with a lag that falls with flow, and a part
 * of its reading comes up the stem from the metal it is screwed into.
 */
final class ChargeSensor {

  /**
   * What the sensor is.
   *
   * @param lag time constant at 0.45 kg/s [s]
   * @param stem share of the boss in the reading at 0.45 kg/s [-]
   */
  record Shape(double lag, double stem) {

    private static double film(double flow) {
      return 0.03 + StrictMath.pow(flow / 0.45, 0.55);
    }

    /** Share of the boss in a settled reading at an air flow [kg/s]. */
    double bossShare(double flow) {
      double air = film(flow) * (1 - stem) / stem;
      return 1 / (1 + air);
    }
  }

  private final Shape shape;
  private double reading;

  ChargeSensor(Shape shape, double reading) {
    this.shape = shape;
    this.reading = reading;
  }

  /** Steps on by dt [s] at an air flow [kg/s], air and boss temperature [degC]. */
  void step(double dt, double flow, double air, double boss) {
    double toAir = Shape.film(flow) / shape.lag;
    double toBoss = shape.stem / (1 - shape.stem) / shape.lag;
    reading += dt * (toAir * (air - reading) + toBoss * (boss - reading));
  }

  /** What the bead is at [degC]. */
  double reading() {
    return reading;
  }
}
