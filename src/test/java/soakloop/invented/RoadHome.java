package soakloop.invented;

/**
 * The way out of a traffic jam: crawling with the car's fan on, a country road, one pull at full
 * load in third gear, then a steady cruise. An invented road, closed for the purpose.
 *
 * @param day the air
 * @param boost manifold pressure above the barometer at the top of the sweep [Pa]
 * @param fanVelocity true air speed the car's fan makes on the heat exchanger's face [m/s]
 * @param ramShare air speed on the face over road speed [-]
 */
record RoadHome(Day day, double boost, double fanVelocity, double ramShare) implements Duty {
  static final double PULL_START = 238;
  static final double PULL = 7;
  static final double FROM = 2500;
  static final double TO = 6000;
  static final double CRUISE = 255;

  /** Road speed per engine speed in third gear [km/h per rev/min]. */
  private static final double THIRD = 0.024;

  private static final double FIFTH = 0.0375;
  private static final double SIXTH = 0.0455;
  private static final double DURATION = 495;

  @Override
  public double duration() {
    return DURATION;
  }

  private static double roadSpeed(double time) {
    if (time < PULL_START) {
      double crawl = 8 + 2 * StrictMath.sin(time / 4);
      double road =
          67 + 6.5 * StrictMath.sin((time - 55) / 17) - 7 * Duty.smooth(time, 228, PULL_START);
      double ended = FROM * THIRD;
      double moving = crawl + (road - crawl) * Duty.smooth(time, 40, 56);
      return moving + (ended - moving) * Duty.smooth(time, 231, PULL_START);
    }
    if (time < PULL_START + PULL) {
      return THIRD * engineSpeedInPull(time);
    }
    double top = THIRD * TO;
    double cruise = 100 + 1.2 * StrictMath.sin(time / 23);
    return top + (cruise - top) * Duty.smooth(time, PULL_START + PULL, CRUISE);
  }

  private static double engineSpeedInPull(double time) {
    return FROM + (TO - FROM) * (time - PULL_START) / PULL;
  }

  private static double engineSpeed(double time, double road) {
    if (time < 40) {
      return 850 + 60 * Math.max(0, road - 6);
    }
    if (time < 58) {
      double low = 1050 + (2900 - 1050) * Duty.smooth(time, 40, 50);
      return low + (road / FIFTH - low) * Duty.smooth(time, 53, 58);
    }
    if (time < PULL_START) {
      return road / FIFTH + (road / THIRD - road / FIFTH) * Duty.smooth(time, 235.5, 237);
    }
    if (time < PULL_START + PULL) {
      return engineSpeedInPull(time);
    }
    return road / THIRD
        + (road / SIXTH - road / THIRD) * Duty.smooth(time, PULL_START + PULL + 0.8, CRUISE - 6);
  }

  private double manifoldPressure(double time, double speed) {
    if (time < 40) {
      return 42e3;
    }
    if (time < 54) {
      return 72e3;
    }
    if (time < PULL_START) {
      return 49e3 + 3e3 * StrictMath.sin((time - 60) / 17);
    }
    if (time < PULL_START + PULL) {
      double low = (TO - speed) / (TO - FROM);
      return day.pressure() + boost * (1 - 0.12 * low * low);
    }
    return time < CRUISE - 3 ? 32e3 : 58e3;
  }

  @Override
  public Moment at(double time) {
    double road = roadSpeed(time);
    double speed = engineSpeed(time, road);
    double away = time > 40 ? 1 - StrictMath.exp(-(time - 40) / 55) : 0;
    double ram = ramShare * road / 3.6;
    double fan = time < 90 ? fanVelocity : 0.1;
    double recirculated = 4 * StrictMath.exp(-road / 15);
    return new Moment(
        speed,
        road,
        manifoldPressure(time, speed),
        98 - 7 * away,
        76 - 28 * away,
        day.temperature() + 22 - 15 * away,
        day.temperature() + recirculated,
        StrictMath.sqrt(fan * fan + ram * ram));
  }
}
