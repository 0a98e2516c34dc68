package soakloop.versus;

import java.util.List;
import soakloop.fit.FitCase;
import soakloop.scenario.Scenario;

/**
 * One of those that are compared.
 *
 * @param label short name, different from the others'
 * @param logs its scenario with each of its logs, or once without any; at least one
 */
public record Contender(String label, List<FitCase> logs) {
  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there is nothing in it
   */
  public Contender {
    logs = List.copyOf(logs);
    if (logs.isEmpty()) {
      throw new IllegalArgumentException(label + ": nothing to compare");
    }
  }

  /** Returns its scenario, with its first log. */
  public Scenario scenario() {
    return logs.get(0).scenario();
  }

  /** Returns whether there is a log of it. */
  public boolean isLogged() {
    return logs.stream().anyMatch(FitCase::isLogged);
  }
}
