package soakloop.session;

import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/**
 * A pass from launch to the traps, over time from launch.
 *
 * @param engineSpeed rev/s over s
 * @param roadSpeed m/s over s
 * @param duration from launch to the finish line, s
 * @param times what the clocks would show
 * @param measured whether the road speed was measured rather than worked out
 * @param limited whether the engine runs against its highest speed in top gear before the traps
 */
public record PassCourse(
    Curve engineSpeed,
    Curve roadSpeed,
    double duration,
    PassTimes times,
    boolean measured,
    boolean limited) {
  /** Checks the duration. */
  public PassCourse {
    Require.positive("a pass's duration", duration);
  }

  /** Returns the road speed in the traps, m/s. */
  public double endSpeed() {
    return roadSpeed.at(duration);
  }

  /** Returns the engine speed in the traps, rev/s. */
  public double endEngineSpeed() {
    return engineSpeed.at(duration);
  }
}
