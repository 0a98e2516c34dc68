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
    return new Sweep(FROM, TO, PULL, boost, 4.0, fanVelocity)
        .at(day, time, pull >= 0 ? since : Double.NaN, another ? toNext : Double.NaN);
  }
}
