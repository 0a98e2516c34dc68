package soakloop.fit;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What is to be fitted.
 *
 * @param cases scenarios with their logs, at least one, labels all different
 * @param chosen starts of the keys that may move; empty for all that carry a spread
 * @param own starts of keys that each car has to itself, such as {@code core}; those of the day and
 *     the session are each case's
 * @param groups number of the car that each case is of: cases of one number share even what each
 *     car has to itself
 * @param profiled starts of the keys whose intervals are also found without taking the model for a
 *     straight line, which takes its time
 * @param wanted the number that further sensors and tests are ranked by
 * @param draws equally likely cars that bands are read off
 * @param threads runs at a time, at least one
 */
public record FitPlan(
    List<FitCase> cases,
    List<String> chosen,
    List<String> own,
    List<Integer> groups,
    List<String> profiled,
    Quantity wanted,
    int draws,
    int threads) {
  /** Fewest draws that bands are read off. */
  public static final int FEWEST_DRAWS = 200;

  /** Usual number of draws. */
  public static final int USUAL_DRAWS = Draws.USUAL;

  /**
   * Plans a fit that asks for the next pull's peak.
   *
   * @param cases scenarios with their logs, at least one, labels all different
   * @param chosen starts of the keys that may move; empty for all that carry a spread
   * @param own starts of keys that each case has to itself
   * @param draws equally likely cars that bands are read off
   * @param threads runs at a time, at least one
   */
  public FitPlan(
      List<FitCase> cases, List<String> chosen, List<String> own, int draws, int threads) {
    this(cases, chosen, own, Quantity.NEXT_PEAK, draws, threads);
  }

  /**
   * Plans a fit of cases each of which has to itself what is its own.
   *
   * @param cases scenarios with their logs, at least one, labels all different
   * @param chosen starts of the keys that may move; empty for all that carry a spread
   * @param own starts of keys that each case has to itself
   * @param wanted the number that further sensors and tests are ranked by
   * @param draws equally likely cars that bands are read off
   * @param threads runs at a time, at least one
   */
  public FitPlan(
      List<FitCase> cases,
      List<String> chosen,
      List<String> own,
      Quantity wanted,
      int draws,
      int threads) {
    this(
        cases,
        chosen,
        own,
        IntStream.range(0, cases.size()).boxed().toList(),
        List.of(),
        wanted,
        draws,
        threads);
  }

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if there is no case, a case without a group, or too few draws
   *     or threads
   */
  public FitPlan {
    cases = List.copyOf(cases);
    chosen = List.copyOf(chosen);
    own = List.copyOf(own);
    groups = List.copyOf(groups);
    profiled = List.copyOf(profiled);
    if (cases.isEmpty()) {
      throw new IllegalArgumentException("nothing to fit");
    }
    if (groups.size() != cases.size()) {
      throw new IllegalArgumentException(groups.size() + " groups of " + cases.size() + " cases");
    }
    if (draws < FEWEST_DRAWS || threads < 1) {
      throw new IllegalArgumentException(draws + " draws on " + threads + " threads");
    }
  }

  /**
   * Returns the same with keys whose intervals are also found by profile.
   *
   * @param keys starts of their names
   */
  public FitPlan profiling(List<String> keys) {
    return new FitPlan(cases, chosen, own, groups, keys, wanted, draws, threads);
  }
}
