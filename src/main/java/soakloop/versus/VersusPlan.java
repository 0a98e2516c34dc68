package soakloop.versus;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soakloop.scenario.Scenario;

/**
 * What is to be compared, and how.
 *
 * @param contenders two or more, labels all different; the others are held against the first
 * @param swapped sections of the scenario that each has its own of, such as {@code core}; all else
 *     is taken to be one car and one loop
 * @param like whose day, start, boost and session all are run under; empty for those of the
 *     contender that started hottest
 * @param by the figure that decides: of the last pull, less is better
 * @param atLeast by how much one must be better to count as better, K, 0 or more
 * @param confidence probability from which on something is said to be so, above 0.5 to below 1
 * @param draws equally likely cars
 * @param threads runs at a time, at least one
 */
public record VersusPlan(
    List<Contender> contenders,
    List<String> swapped,
    Optional<Scenario> like,
    PullFigure by,
    double atLeast,
    double confidence,
    int draws,
    int threads) {
  /** Usual number of draws. */
  public static final int USUAL_DRAWS = 256;

  /** Fewest draws that an answer is read off. */
  public static final int FEWEST_DRAWS = 200;

  /** Figures that may decide. */
  public static final List<PullFigure> DECIDING =
      List.of(PullFigure.END, PullFigure.PEAK, PullFigure.RISE);

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if there are fewer than two contenders, labels twice, or
   *     numbers out of range
   */
  public VersusPlan {
    contenders = List.copyOf(contenders);
    swapped = List.copyOf(swapped);
    Set<String> labels = new HashSet<>();
    contenders.forEach(c -> labels.add(c.label()));
    if (contenders.size() < 2 || labels.size() < contenders.size()) {
      throw new IllegalArgumentException("contenders " + labels);
    }
    if (!DECIDING.contains(by)
        || !(atLeast >= 0)
        || !(confidence > 0.5 && confidence < 1)
        || draws < FEWEST_DRAWS
        || threads < 1) {
      throw new IllegalArgumentException("plan out of range");
    }
  }
}
