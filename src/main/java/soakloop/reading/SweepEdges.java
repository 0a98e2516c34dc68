package soakloop.reading;

import java.util.Optional;

/**
 * Finds where a steady climb of engine speed begins and ends.
 *
 * <p>From a stretch that is surely in it, it is followed both ways for as long as the next updates
 * lie on the smooth continuation of the last two seconds. A bad update, or some within a third of a
 * second, does not end it if two good ones follow. Where the updates are dense enough, {@link Kink}
 * then places both ends between updates.
 */
final class SweepEdges {
  /** How far ahead an update may be that shows that the climb goes on, s. */
  private static final double AHEAD = 0.3;

  /** Updates closer than this say nothing new, s. */
  private static final double DENSE = 0.04;

  /** How much of the climb its continuation is drawn from, s. */
  private static final double MEMORY = 2;

  /** Bend that few updates do not tell, of the climb from one to the next [-]. */
  private static final double BEND = 0.05;

  /** Share of the mean climb that one update must show [-]. */
  private static final double LEAST_CLIMB = 0.4;

  private static final int FEWEST = 3;
  private static final int FEWEST_REMEMBERED = 6;
  private static final int FEWEST_FOR_PARABOLA = 6;

  private final Updates raw;
  private final Updates speed;
  private final double spacing;
  private final double noise;
  private final double quantum;

  /**
   * A climb.
   *
   * @param start s
   * @param end s
   * @param from its speed at its first update, smoothed, rev/s
   * @param to its speed at its last update, smoothed, rev/s
   * @param rate mean rate between them, rev/s per s
   */
  record Edges(double start, double end, double from, double to, double rate) {
    double duration() {
      return end - start;
    }
  }

  /**
   * Prepares.
   *
   * @param raw engine speed
   * @param noise standard deviation of one update
   * @param quantum smallest step
   */
  SweepEdges(Updates raw, double noise, double quantum) {
    this.raw = raw;
    this.quantum = quantum;
    int together = together(raw, noise);
    this.speed = together == 1 ? raw : averaged(raw, together);
    this.spacing = speed.size() < 2 ? 0 : speed.spacing();
    this.noise = noise / Math.sqrt(together);
  }

  /**
   * Updates averaged to follow a noisy signal: as many as make its noise small beside what a usual
   * pull (300 rpm a second) climbs in 0.1 s, or as lie within 0.04 s, but no more than 0.3 s of
   * them.
   */
  private static int together(Updates raw, double noise) {
    if (raw.size() < FEWEST) {
      return 1;
    }
    double between = raw.spacing();
    double wanted = Math.ceil(Math.pow(4 * noise / (30.0 / 60), 2));
    double dense = Math.floor(DENSE / between);
    return (int) Math.max(1, Math.min(Math.max(wanted, dense), Math.floor(AHEAD / between)));
  }

  private static Updates averaged(Updates raw, int together) {
    int n = raw.size() / together;
    double[] time = new double[n];
    double[] value = new double[n];
    for (int i = 0; i < n; i++) {
      for (int k = i * together; k < (i + 1) * together; k++) {
        time[i] += raw.time(k) / together;
        value[i] += raw.value(k) / together;
      }
    }
    return Updates.of(time, value);
  }

  /**
   * Finds the ends of the climb around a stretch.
   *
   * @param seedFrom start of the stretch, s
   * @param seedTo its end, s
   * @param notBefore s
   * @param notAfter s
   * @return empty if the stretch has too few updates
   */
  Optional<Edges> around(double seedFrom, double seedTo, double notBefore, double notAfter) {
    int low = speed.from(seedFrom);
    int high = speed.from(seedTo);
    while (high >= speed.size() || (high > low && speed.time(high) > seedTo)) {
      high--;
    }
    while (high - low + 1 < FEWEST) {
      boolean down = low > 0 && speed.time(low - 1) >= notBefore;
      boolean up = high + 1 < speed.size() && speed.time(high + 1) <= notAfter;
      if (!down && !up) {
        return Optional.empty();
      }
      low -= down ? 1 : 0;
      high += up ? 1 : 0;
    }
    high = follow(low, high, 1, notAfter);
    low = follow(low, high, -1, notBefore);
    return Optional.of(placed(low, high, notBefore));
  }

  /** Follows the climb; returns the index of its outermost update. */
  private int follow(int low, int high, int way, double limit) {
    int inner = way > 0 ? low : high;
    int outer = way > 0 ? high : low;
    while (true) {
      int next = onward(inner, outer, way, limit);
      if (next == outer) {
        return outer;
      }
      outer = next;
    }
  }

  private int onward(int inner, int outer, int way, double limit) {
    Optional<LeastSquares.Fit> fit = continuation(inner, outer, way);
    if (fit.isEmpty()) {
      return outer;
    }
    for (int i = outer + way; reachable(i, outer, way, limit); i += way) {
      boolean next = i == outer + way;
      boolean goesOn =
          next || !reachable(i + way, i, way, limit) || onLine(i + way, inner, outer, fit.get());
      if (onLine(i, inner, outer, fit.get()) && goesOn) {
        return i;
      }
    }
    return outer;
  }

  /** Whether the climb can go on to an update if those between are bad. */
  private boolean reachable(int i, int outer, int way, double limit) {
    if (i < 0 || i >= speed.size() || way * (limit - speed.time(i)) < -1e-9) {
      return false;
    }
    double away = way * (speed.time(i) - speed.time(outer));
    return (away <= AHEAD || Math.abs(i - outer) <= 2) && away <= Math.max(1, 5 * spacing);
  }

  private boolean onLine(int i, int inner, int outer, LeastSquares.Fit fit) {
    double distance = speed.time(i) - speed.time(outer);
    double widened = Math.sqrt(1 + fit.shapeAt(distance));
    return climbs(i, inner, outer)
        && Math.abs(speed.value(i) - fit.at(distance)) <= tolerance(inner, outer, widened);
  }

  /**
   * Whether speed climbs from update to update, where they are so far apart that noise does not
   * hide it: a few updates of idling must not bend the continuation towards them.
   */
  private boolean climbs(int i, int inner, int outer) {
    double expected = rate(inner, outer) * (speed.time(i) - speed.time(outer));
    double step = speed.value(i) - speed.value(outer);
    return Math.abs(expected) < 8 * noise || step / expected > LEAST_CLIMB;
  }

  private double rate(int inner, int outer) {
    return (speed.value(outer) - speed.value(inner)) / (speed.time(outer) - speed.time(inner));
  }

  private Optional<LeastSquares.Fit> continuation(int inner, int outer, int way) {
    int back = outer;
    while (back != inner
        && (Math.abs(speed.time(back) - speed.time(outer)) < MEMORY
            || Math.abs(back - outer) + 1 < FEWEST_REMEMBERED)) {
      back -= way;
    }
    Updates last = speed.part(Math.min(back, outer), Math.max(back, outer) + 1);
    int degree = last.size() >= FEWEST_FOR_PARABOLA ? 2 : 1;
    return LeastSquares.fit(last, LeastSquares.powers(speed.time(outer), degree));
  }

  /**
   * How far an update may lie off: four standard deviations, but never so far that half a second of
   * standing still would pass; and a little of what it climbs from update to update, since few
   * updates tell little of a bend.
   *
   * @param widened standard deviation of what is left of an update over its own noise
   */
  private double tolerance(int inner, int outer, double widened) {
    double rate = Math.abs(rate(inner, outer));
    double most = 0.35 * rate * Math.max(spacing, 0.5);
    double least = Math.max(10.0 / 60, 1.5 * quantum);
    double sparse = Math.max(0, Math.min(1, (spacing - 0.3) / 0.7));
    double bent = BEND * rate * spacing * (1 + 1.5 * sparse);
    return bent + Math.max(least, Math.min(most, 4 * noise * widened));
  }

  private Edges placed(int low, int high, double notBefore) {
    double half = spacing / 2;
    double earliest = Math.max(notBefore, speed.time(low) - (speed == raw ? 0 : half));
    double latest = speed.time(high) + half;
    double middle = (earliest + latest) / 2;
    double after = Math.min(middle, earliest + 1.5);
    double start = Kink.find(raw, earliest, earliest - 1.2, after).orElse(earliest);
    double end = latest;
    Updates climb = speed.part(low, high + 1);
    double first = Math.max(start, speed.time(low));
    double last = Math.min(end, speed.time(high));
    double from = level(climb, first);
    double to = level(climb, last);
    return new Edges(start, end, from, to, (to - from) / (last - first));
  }

  /** The climb's speed at a moment by a line or parabola through its updates nearest to it. */
  private static double level(Updates climb, double moment) {
    double reach = Math.max(1.2, 3.5 * climb.spacing());
    Updates beside = climb.between(moment - reach, moment + reach);
    int degree = beside.size() >= FEWEST_FOR_PARABOLA ? 2 : 1;
    return LeastSquares.fit(beside, LeastSquares.powers(moment, degree))
        .map(fit -> fit.factor(0))
        .orElseGet(() -> climb.near(moment, Double.POSITIVE_INFINITY));
  }
}
