package soakloop.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.study.Outcome;

/**
 * Where a run's numbers lie, nine times in ten, when all keys that carry a spread move together.
 *
 * @param draws equally likely cars that could run
 * @param lost those that could not
 * @param keys number of keys that moved
 * @param correlated whether a fit says how keys hang together
 * @param ownError whether a fit says how far the charge sensor and the model of it are off; else
 *     the usual is taken
 * @param times s
 * @param courses bands of channels at those times
 * @param pulls in order
 */
public record RunBands(
    int draws,
    int lost,
    int keys,
    boolean correlated,
    boolean ownError,
    List<Double> times,
    Map<Channel, List<Band>> courses,
    List<OfPull> pulls) {
  /** Channels whose course is told. */
  public static final List<Channel> CHANNELS =
      List.of(Channel.SENSOR, Channel.CHARGE, Channel.CORE_COOLANT_IN);

  /** Usual number of draws. */
  public static final int USUAL_DRAWS = Draws.USUAL;

  /** Fewest draws that bands are read off. */
  public static final int FEWEST_DRAWS = 32;

  /**
   * Bands of one pull.
   *
   * @param numbers what is told of it; those that are not known in any draw are left out
   * @param sensor the charge sensor at even steps from the pull's start to its end
   */
  public record OfPull(Map<PullNumber, Band> numbers, List<Band> sensor) {
    /** Copies. */
    public OfPull {
      numbers = Map.copyOf(numbers);
      sensor = List.copyOf(sensor);
    }
  }

  /** Copies. */
  public RunBands {
    times = List.copyOf(times);
    courses = Map.copyOf(courses);
    pulls = List.copyOf(pulls);
  }

  /**
   * Draws cars and runs them.
   *
   * @param outcome the run as the scenario has it
   * @param draws how many, at least {@link #FEWEST_DRAWS}
   * @param threads runs at a time, at least one
   * @return the bands; empty if no key of the scenario carries a spread, or hardly any of the cars
   *     can run
   * @throws IllegalArgumentException if there are too few draws or threads
   */
  public static Optional<RunBands> of(Outcome outcome, int draws, int threads) {
    if (draws < FEWEST_DRAWS || threads < 1) {
      throw new IllegalArgumentException(draws + " draws on " + threads + " threads");
    }
    Scenario scenario = outcome.scenario();
    Cars cars = Cars.of(scenario, draws);
    return cars.keys() == 0 ? Optional.empty() : new BandRunner(outcome, cars, threads).bands();
  }
}
