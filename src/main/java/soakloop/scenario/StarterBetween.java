package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import soakloop.log.Signal;
import soakloop.reading.LogReading;
import soakloop.reading.Updates;

/** What the car does between pulls: stands with the engine on or off, or drives. */
final class StarterBetween {
  /** Under this speed no engine runs, rev/s. */
  private static final double RUNNING = 300.0 / 60;

  /** Faster than walking, m/s. */
  private static final double MOVING = 2;

  /** Shorter stops of the engine are none, s. */
  private static final double SHORTEST = 3;

  private final LogReading reading;
  private final double barometer;

  StarterBetween(LogReading reading, double barometer) {
    this.reading = reading;
    this.barometer = barometer;
  }

  /** Returns the steps from one log time to another; none if there is no time between. */
  List<StarterStep> steps(double from, double to) {
    List<StarterStep> steps = new ArrayList<>();
    Updates speed = reading.updates(Signal.ENGINE_SPEED).between(from, to);
    double at = from;
    int i = 0;
    while (i < speed.size()) {
      int next = i;
      while (next < speed.size() && speed.value(next) < RUNNING) {
        next++;
      }
      double off = speed.time(i);
      double on = next == speed.size() ? to : speed.time(next);
      if (next > i && on - off >= SHORTEST) {
        running(steps, at, off);
        add(steps, new StarterStep.Stands(true, on - off));
        at = on;
      }
      i = Math.max(next, i + 1);
    }
    running(steps, at, to);
    return steps;
  }

  private void running(List<StarterStep> steps, double from, double to) {
    Updates road = reading.updates(Signal.ROAD_SPEED).between(from, to);
    Updates speed = reading.updates(Signal.ENGINE_SPEED).between(from, to);
    boolean drives = road.timeAbove(MOVING) > 0.5 * (to - from) && !speed.isEmpty();
    add(
        steps,
        drives
            ? new StarterStep.Drives(speed.mean(), road.mean(), manifold(from, to), to - from)
            : new StarterStep.Stands(false, to - from));
  }

  /** Mean absolute manifold pressure, Pa. */
  double manifold(double from, double to) {
    double absolute = reading.usable(Signal.MANIFOLD_PRESSURE).between(from, to).mean();
    return Double.isNaN(absolute)
        ? reading.usable(Signal.BOOST).between(from, to).mean() + barometer
        : absolute;
  }

  private static void add(List<StarterStep> steps, StarterStep step) {
    if (step.duration() >= 0.1) {
      steps.add(step);
    }
  }
}
