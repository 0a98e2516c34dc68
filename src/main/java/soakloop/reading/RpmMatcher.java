package soakloop.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import soakloop.quantity.Estimate;

/**
 * Finds where a second log's climbs of engine speed lie in a first log: all offsets on a coarse
 * grid, then {@link Alignment} from each local best.
 */
final class RpmMatcher {
  /** Coarse steps, s: a tenth of how long a quick pull stays alike to itself. */
  private static final double GRID = 0.2;

  /** Climbs that are matched, rev/s, and how far speed must fall between two. */
  private static final double CLIMB = 800.0 / 60;

  private static final double TURN = 200.0 / 60;

  /** Share of a climb that is left before it counts [-]: idling looks alike everywhere. */
  private static final double OFF_THE_FOOT = 0.05;

  /** Points used on the coarse grid, and share of them that must lie within the first log. */
  private static final int POINTS = 300;

  private static final double INSIDE = 0.9;

  /** Local bests that are looked at closely, and how far they are apart at the least, s. */
  private static final int LOOKED_AT = 25;

  private static final double APART = 1;

  /** Ratios of speeds that a shared engine allows. */
  private static final double LEAST_SCALE = 0.85;

  private static final double MOST_SCALE = 1.15;

  /**
   * An offset fits nearly as well if its misfit is within this factor and this much of the best,
   * rev/s: pulls of one car on one dyno differ by some rpm at the same time.
   */
  private static final double RIVAL = 1.5;

  private static final double RIVAL_BY = 6.0 / 60;

  private static final double NINETY = 1.645;

  private final Updates course;
  private final List<Updates> climbs = new ArrayList<>();
  private final Updates points;
  private final double rows;

  /**
   * Prepares.
   *
   * @param course engine speed of the first log
   * @param other engine speed of the second
   * @param rows standard deviation of when in a row the two were measured, s
   */
  RpmMatcher(Updates course, Updates other, double rows) {
    this.course = course;
    this.rows = rows;
    double gap = other.size() < 2 ? 1 : Math.max(2, 5 * other.spacing());
    for (Leg leg : Leg.of(other, TURN, gap)) {
      double foot = other.value(leg.low());
      double rise = other.value(leg.high()) - foot;
      int low = leg.high();
      while (low > leg.low() && other.value(low - 1) > foot + OFF_THE_FOOT * rise) {
        low--;
      }
      if (rise >= CLIMB) {
        climbs.add(other.part(low, leg.high() + 1));
      }
    }
    this.points = joined(climbs);
  }

  private static Updates joined(List<Updates> climbs) {
    return Updates.of(
        climbs.stream().flatMapToDouble(c -> java.util.Arrays.stream(c.times())).toArray(),
        climbs.stream().flatMapToDouble(c -> java.util.Arrays.stream(c.values())).toArray());
  }

  /** Whether the second log has a climb at all. */
  boolean climbs() {
    return !climbs.isEmpty();
  }

  /** Whether there is an offset at which the climbs lie within the first log. */
  boolean fits() {
    return !guesses().isEmpty();
  }

  /** How far the second log's speed climbs, rev/s. */
  double range() {
    return points.highest() - points.lowest();
  }

  /**
   * Finds the match.
   *
   * @param about roughly known offset, s, which then chooses among those that fit
   * @return empty if the first log follows the second at no offset
   */
  Optional<RpmMatch> find(OptionalDouble about) {
    List<Alignment> found = new ArrayList<>();
    for (double guess : guesses()) {
      Alignment.of(course, points, guess)
          .filter(a -> a.scale() > LEAST_SCALE && a.scale() < MOST_SCALE)
          .filter(a -> Math.abs(a.offset() - guess) < 3)
          .filter(a -> found.stream().noneMatch(f -> same(f, a)))
          .ifPresent(found::add);
    }
    found.sort(Comparator.comparingDouble(Alignment::misfit));
    if (found.isEmpty()) {
      return Optional.empty();
    }
    double limit = RIVAL * found.get(0).misfit() + RIVAL_BY;
    List<Alignment> good = found.stream().filter(a -> a.misfit() <= limit).toList();
    Alignment chosen = good.get(0);
    if (about.isPresent()) {
      double near = about.getAsDouble();
      chosen =
          good.stream()
              .min(Comparator.comparingDouble(a -> Math.abs(a.offset() - near)))
              .orElse(chosen);
    }
    return Optional.of(match(chosen, good));
  }

  private static boolean same(Alignment one, Alignment other) {
    return Math.abs(one.offset() - other.offset()) < APART;
  }

  /** Offsets at which the misfit is lower than at both neighbours, best first. */
  private List<Double> guesses() {
    int every = Math.max(1, points.size() / POINTS);
    Updates few = points.where(i -> i % every == 0);
    double first = course.time(0) - few.time(few.size() - 1);
    double last = course.time(course.size() - 1) - few.time(0);
    int n = (int) Math.ceil((last - first) / GRID) + 1;
    double[] misfit =
        IntStream.range(0, n).mapToDouble(i -> misfit(few, first + i * GRID)).toArray();
    return IntStream.range(0, n)
        .filter(i -> Double.isFinite(misfit[i]))
        .filter(i -> i == 0 || misfit[i] <= misfit[i - 1])
        .filter(i -> i == n - 1 || misfit[i] < misfit[i + 1])
        .boxed()
        .sorted(Comparator.comparingDouble(i -> misfit[i]))
        .limit(LOOKED_AT)
        .map(i -> first + i * GRID)
        .toList();
  }

  /** Mean square of the difference; infinite if too few points lie within the first log. */
  private double misfit(Updates few, double offset) {
    double sum = 0;
    int inside = 0;
    for (int i = 0; i < few.size(); i++) {
      double left = course.at(few.time(i) + offset) - few.value(i);
      if (Double.isFinite(left)) {
        sum += left * left;
        inside++;
      }
    }
    return inside >= INSIDE * few.size() ? sum / inside : Double.POSITIVE_INFINITY;
  }

  private RpmMatch match(Alignment chosen, List<Alignment> good) {
    List<RpmMatch.Rival> rivals =
        good.stream()
            .filter(a -> !same(a, chosen))
            .map(a -> new RpmMatch.Rival(a.offset(), a.misfit()))
            .toList();
    Estimate scale = new Estimate(chosen.scale(), NINETY * chosen.scaleError());
    double spread = NINETY * Math.hypot(chosen.offsetError(), rows);
    Optional<ClockDrift> drift = ClockDrift.of(course, climbs, chosen);
    boolean applied = drift.filter(d -> Math.abs(d.rate().value()) > d.rate().spread()).isPresent();
    double offset = applied ? drift.get().atZero() : chosen.offset();
    return new RpmMatch(
        new Estimate(offset, spread),
        scale,
        chosen.misfit(),
        rivals,
        drift.map(ClockDrift::rate),
        applied);
  }
}
