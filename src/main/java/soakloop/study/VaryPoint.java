package soakloop.study;

import java.util.List;
import java.util.Optional;

/** What became of one point of a grid. */
public sealed interface VaryPoint {
  /** Returns its index in the grid, the last key running fastest. */
  int index();

  /**
   * A point that ran.
   *
   * @param index in the grid
   * @param values one for each measure of the plan, SI
   * @param lastPull the charge sensor over the last pull, for the few points that are drawn so
   */
  record Ran(int index, List<Double> values, Optional<Course> lastPull) implements VaryPoint {
    /** Copies the list. */
    public Ran {
      values = List.copyOf(values);
    }
  }

  /**
   * A point that could not be run.
   *
   * @param index in the grid
   * @param reason why, in plain words
   */
  record Hole(int index, String reason) implements VaryPoint {}

  /**
   * The charge sensor over a pull.
   *
   * @param times since the pull's start, s
   * @param values as many, K
   */
  record Course(List<Double> times, List<Double> values) {
    /** Copies the lists. */
    public Course {
      times = List.copyOf(times);
      values = List.copyOf(values);
    }
  }
}
