package soakloop.invented;

import java.util.ArrayList;
import java.util.List;
import soakloop.invented.TruthCar.Mesh;
import soakloop.invented.TruthLoop.Truth;

/** An invented session that logs are dressed from, ten rows a second. */
enum DressSession {
  /** Two pulls on rollers in fourth gear, and the wait between. */
  DYNO(215) {
    @Override
    InventedLog log() {
      return InventedLog.COOL_MORNING;
    }

    @Override
    double roadSpeed(Truth t) {
      return t.moment().engineSpeed() * FOURTH;
    }

    @Override
    int gear(Truth t) {
      return 4;
    }

    @Override
    List<double[]> pulls() {
      List<double[]> pulls = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        pulls.add(new double[] {DynoDay.pullStart(i), DynoDay.pullStart(i) + DynoDay.PULL});
      }
      return pulls;
    }
  },

  /** Out of a traffic jam, a country road, one pull in third gear, a cruise. */
  ROAD(300) {
    @Override
    InventedLog log() {
      return InventedLog.TRAFFIC_RECOVERY;
    }

    @Override
    double roadSpeed(Truth t) {
      return t.moment().roadSpeed();
    }

    @Override
    int gear(Truth t) {
      double each = t.moment().roadSpeed() / t.moment().engineSpeed();
      return t.time() < 50 ? 1 : each < 0.0305 ? 3 : each < 0.0415 ? 5 : 6;
    }

    @Override
    List<double[]> pulls() {
      double start = RoadHome.PULL_START;
      return List.of(new double[] {start, start + RoadHome.PULL});
    }
  };

  /** Road speed per engine speed on the rollers [km/h per rev/min]. */
  private static final double FOURTH = 0.031;

  private static final double INTERVAL = 0.1;

  private final double until;
  private List<Truth> truths = List.of();

  DressSession(double until) {
    this.until = until;
  }

  abstract InventedLog log();

  /** The car's speed [km/h]. */
  abstract double roadSpeed(Truth truth);

  abstract int gear(Truth truth);

  /** Start and end of each pull [s]. */
  abstract List<double[]> pulls();

  /** Absolute pressure of the day [Pa]. */
  double barometer() {
    return log().duty().day().pressure();
  }

  /** What is true on each row. */
  synchronized List<Truth> truths() {
    if (truths.isEmpty()) {
      InventedLog log = log();
      truths =
          List.copyOf(
              TruthLoop.run(
                      log.car(), log.duty(), log.start(), Mesh.SHIPPED.step(), until, INTERVAL)
                  .truths());
    }
    return truths;
  }
}
