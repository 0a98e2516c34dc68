package soakloop.log;

import java.util.List;

/**
 * A log that cannot be used; each problem says the file, the row and column, and what is allowed.
 */
public final class LogException extends Exception {
  private final List<String> problems;

  /**
   * Makes the exception.
   *
   * @param problems one line each, at least one
   */
  public LogException(List<String> problems) {
    super(String.join("\n", problems));
    this.problems = List.copyOf(problems);
  }

  /** Returns the problems. */
  public List<String> problems() {
    return problems;
  }
}
