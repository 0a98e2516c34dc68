package soakloop.versus;

import java.util.List;

/** What a difference between two sets of pulls can come from. */
public enum Origin {
  /** What was swapped. */
  SWAPPED("what was swapped", List.of()),
  /** Temperatures at the session's start. */
  START("start temperatures", List.of("start")),
  /** Day, and the air that is blown at the car. */
  DAY("day and airflow", List.of("day", "airflow")),
  /** Boost, sweeps, waits. */
  SESSION("boost, sweep and waits", List.of("session", "boost", "log", "limits")),
  /** All else that the scenarios state of car and loop. */
  CAR("the rest of car and loop", List.of());

  private final String label;
  private final List<String> sections;

  Origin(String label, List<String> sections) {
    this.label = label;
    this.sections = sections;
  }

  /** Returns what it is, in words. */
  public String label() {
    return label;
  }

  /**
   * Finds what a section of a scenario belongs to.
   *
   * @param section at the top of a scenario, such as {@code core}
   * @param swapped sections that were swapped
   */
  static Origin of(String section, List<String> swapped) {
    if (swapped.contains(section)) {
      return SWAPPED;
    }
    for (Origin origin : values()) {
      if (origin.sections.contains(section)) {
        return origin;
      }
    }
    return CAR;
  }
}
