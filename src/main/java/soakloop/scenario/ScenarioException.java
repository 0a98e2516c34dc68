package soakloop.scenario;

import java.util.List;
import java.util.stream.Collectors;

/** A scenario that cannot be used, with everything that is wrong with it. */
public final class ScenarioException extends Exception {
  private final List<Problem> problems;

  /**
   * Makes the exception.
   *
   * @param problems at least one, in the order of the text
   */
  public ScenarioException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** Returns everything that is wrong. */
  public List<Problem> problems() {
    return problems;
  }
}
