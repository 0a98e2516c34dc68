package soakloop.versus;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.fit.Advice;
import soakloop.fit.Band;
import soakloop.fit.HeldOut;

/**
 * What a comparison gave.
 *
 * @param plan what was asked
 * @param conditions whose day, start, boost and session all were run under
 * @param cars equally likely cars that were run with every contender
 * @param modelError standard deviation of the model's own error of the charge, K
 * @param heldOut last logged pulls, foretold from those before; none without logs
 * @param contenders in the plan's order
 * @param pairings each further contender against the first, in the plan's order
 * @param sheet what a day of testing the first two would settle; only without logs
 */
public record VersusResult(
    VersusPlan plan,
    String conditions,
    int cars,
    double modelError,
    List<HeldOut> heldOut,
    List<Ran> contenders,
    List<Pairing> pairings,
    Optional<TestSheet> sheet) {
  /** Copies the lists. */
  public VersusResult {
    heldOut = List.copyOf(heldOut);
    contenders = List.copyOf(contenders);
    pairings = List.copyOf(pairings);
  }

  /** Returns whether any of it rests on logs. */
  public boolean isLogged() {
    return plan.contenders().stream().anyMatch(Contender::isLogged);
  }

  /**
   * One contender under the common conditions.
   *
   * @param label whose
   * @param pulls names of the pulls
   * @param figures by pull; those that are not modelled are absent
   * @param course charge over engine speed in the last pull
   */
  public record Ran(
      String label, List<String> pulls, List<Map<PullFigure, Band>> figures, Course course) {
    /** Copies the lists. */
    public Ran {
      pulls = List.copyOf(pulls);
      figures = figures.stream().map(Map::copyOf).toList();
    }
  }

  /**
   * Charge over engine speed.
   *
   * @param speeds rev/s
   * @param charge K at those speeds
   */
  public record Course(List<Double> speeds, List<Band> charge) {
    /** Copies the lists. */
    public Course {
      speeds = List.copyOf(speeds);
      charge = List.copyOf(charge);
    }
  }

  /** What is to be said of two. */
  public enum Verdict {
    /** The second is better, with the confidence asked for. */
    BETTER,
    /** The second is worse. */
    WORSE,
    /** Neither can be said. */
    OPEN
  }

  /**
   * Two contenders.
   *
   * @param one index of the first in the plan
   * @param other index of the second
   * @param verdict on the second, as to the figure that decides
   * @param worse probability that it is worse by at least what was asked
   * @param pulls differences by pull, of the figures that are modelled
   * @param logged what the logs show, pull by pull; none without logs
   * @param conditions what was not alike between the logs, and what each is worth
   * @param elsewhere the deciding figure under other conditions
   * @param grid the same over ambient and boost
   * @param settling what would settle it
   */
  public record Pairing(
      int one,
      int other,
      Verdict verdict,
      double worse,
      List<Map<PullFigure, Difference>> pulls,
      List<Raw> logged,
      List<Condition> conditions,
      List<Elsewhere> elsewhere,
      List<Elsewhere> grid,
      Settling settling) {
    /** Copies the lists. */
    public Pairing {
      pulls = pulls.stream().map(Map::copyOf).toList();
      logged = List.copyOf(logged);
      conditions = List.copyOf(conditions);
      elsewhere = List.copyOf(elsewhere);
      grid = List.copyOf(grid);
    }

    /**
     * Returns the difference of a figure of the last pull.
     *
     * @param figure which
     */
    public Difference last(PullFigure figure) {
      return pulls
          .get(pulls.size() - 1)
          .getOrDefault(figure, new Difference(new Band(0, 0, 0), Double.NaN));
    }
  }

  /**
   * One pull as both logs have it, and where their difference comes from.
   *
   * @param pull its name
   * @param one what the first log shows
   * @param other what the second shows
   * @param parts what each thing that was not alike adds to the second's rise, K: together with
   *     {@code rest} they make the whole difference
   * @param rest what the model does not explain, sensors' noise among it, K
   */
  public record Raw(String pull, Shown one, Shown other, Map<Origin, Band> parts, double rest) {
    /** Copies the map. */
    public Raw {
      parts = Map.copyOf(parts);
    }

    /** Returns the same with the two in each other's place. */
    Raw turned() {
      Map<Origin, Band> signs = new EnumMap<>(Origin.class);
      parts.forEach((o, b) -> signs.put(o, new Band(-b.high(), -b.middle(), -b.low())));
      return new Raw(pull, /* one= */ other, /* other= */ one, signs, -rest);
    }

    /** Returns how much more the second rises, as logged, K. */
    public double difference() {
      return other.rise() - one.rise();
    }

    /** Returns by how much less the second rises, as a share of the first's rise [-]. */
    public double reduction() {
      return -difference() / one.rise();
    }
  }

  /**
   * What a log shows of a pull.
   *
   * @param start charge sensor as it starts, K
   * @param end at the counted end, K
   * @param coolant into the core as it starts, K, if logged
   * @param effectiveness of the core at the counted end by the log alone [-], if it has what that
   *     takes
   */
  public record Shown(
      double start, double end, OptionalDouble coolant, OptionalDouble effectiveness) {
    /** Returns the rise, K. */
    public double rise() {
      return end - start;
    }
  }

  /**
   * A condition that ought to be alike.
   *
   * @param kind which
   * @param one its value with the first, SI
   * @param other its value with the second, SI
   * @param costs what the difference is worth in the deciding figure, K
   * @param window how far apart they may be, SI
   */
  public record Condition(
      ConditionKind kind, double one, double other, double costs, double window) {
    /** What a condition may cost before it counts as broken, K (our own judgement). */
    public static final double TOLERATED = 0.5;

    /** Returns whether it matters: no car is ever so far off that it would cost as much. */
    public boolean matters() {
      return window < kind.furthest(one);
    }

    /** Returns whether they are further apart than they may be. */
    public boolean isBroken() {
      return Math.abs(other - one) > window;
    }
  }

  /**
   * The deciding figure under other conditions.
   *
   * @param name the conditions in words
   * @param ambient temperature of the day, K
   * @param boost highest, Pa
   * @param difference of the two there
   */
  public record Elsewhere(String name, double ambient, double boost, Difference difference) {}

  /**
   * What would settle it.
   *
   * @param deviation standard deviation of the difference from what is not known of the cars, K
   * @param floor what the model's own error adds to it however much is measured, K
   * @param advice sensors and tests, the most telling first
   * @param sessions the deviation after another session of so many pulls with each
   * @param enough fewest such pulls after which the likeliest difference would be told apart; empty
   *     if no number that was tried is enough
   */
  public record Settling(
      double deviation,
      double floor,
      List<Advice> advice,
      List<Double> sessions,
      Optional<Integer> enough) {
    /** Copies the lists. */
    public Settling {
      advice = List.copyOf(advice);
      sessions = List.copyOf(sessions);
    }
  }
}
