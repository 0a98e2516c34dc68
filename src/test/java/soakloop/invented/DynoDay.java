package soakloop.invented;

/**
 * Pulls on a chassis dyno with idle between them, in a cell that warms a little as the day goes on.
 *
 * <p>After 20 s at idle each pull sweeps engine speed in a straight line; then the throttle shuts,
 * the engine runs down and idles. The last three seconds of a wait bring the engine up to the speed
 * the next pull starts from, at part load.
 *
 * @param day the air
 * @param pulls number of pulls [-]
 * @param boost manifold pressure above the barometer at the top of the sweep [Pa]
 * @param fanVelocity true air speed on the heat exchanger's face [m/s]
 */
record DynoDay(Day day, int pulls, double boost, double fanVelocity) implements Duty {
  static final double FIRST_PULL = 20;
  static final double PULL = 10;
  static final double WAIT = 150;
  static final double FROM = 2600;
  static final double TO = 6700;
  static final double COUNTED_TO = 6500;
  private static final double IDLE = 850;
  private static final double RUN_UP = 3;

  /** Start of a pull [s]. */
  static double pullStart(int pull) {
    return FIRST_PULL + pull * (PULL + WAIT);
  }

  /** Seconds from the start of a pull to the speed it is counted to. */
  static double countedAfter() {
    return PULL * (COUNTED_TO - FROM) / (TO - FROM);
  }

  @Override
  public double duration() {
    return pullStart(pulls);
  }

  @Override
  public Moment at(double time) {
    double sinceFirst = time - FIRST_PULL;
    int pull = Math.min(pulls - 1, (int) Math.floor(sinceFirst / (PULL + WAIT)));
    double since = sinceFirst - pull * (PULL + WAIT);
    double toNext = PULL + WAIT - since;
    boolean another = pull + 1 < pulls;
    double speed = IDLE;
    double pressure = 38e3;
    if (pull >= 0 && since < PULL) {
      speed = FROM + (TO - FROM) * since / PULL;
      double low = (TO - speed) / (TO - FROM);
      pressure = day.pressure() + boost * (1 - 0.11 * low * low);
    } else {
      if (pull >= 0) {
        speed += (TO - IDLE) * StrictMath.exp(-(since - PULL) / 1.1);
      }
      if (another && toNext < RUN_UP) {
        speed += (FROM - IDLE) * Duty.smooth(RUN_UP - toNext, 0, RUN_UP);
        pressure = 62e3;
      }
    }
    double warming = 1 - StrictMath.exp(-time / 500);
    double cell = day.temperature() + 4.0 * warming;
    return new Moment(
        speed,
        0,
        pressure,
        88 + 3 * warming,
        44 + 10 * warming,
        cell + 5 + warming,
        cell,
        fanVelocity);
  }
}
