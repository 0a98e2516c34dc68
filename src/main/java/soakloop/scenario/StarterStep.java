package soakloop.scenario;

/** One step of a session as a log shows it; times s, speeds rev/s, m/s, pressure Pa. */
sealed interface StarterStep {
  /** Length, s. */
  double duration();

  /**
   * Stands and waits.
   *
   * @param off whether the engine is off
   * @param duration s
   */
  record Stands(boolean off, double duration) implements StarterStep {}

  /**
   * Drives.
   *
   * @param engineSpeed mean, rev/s
   * @param roadSpeed mean, m/s
   * @param manifold mean absolute pressure, Pa; NaN if the log does not tell
   * @param duration s
   */
  record Drives(double engineSpeed, double roadSpeed, double manifold, double duration)
      implements StarterStep {}
}
