package soakloop.reading;

import java.util.ArrayList;
import java.util.List;
import soakloop.log.Signal;

/** Describes the time between pulls. */
final class WaitFinder {
  /** Under this speed an engine does not run by itself, rev/s. */
  private static final double RUNNING = 300.0 / 60;

  /** Faster than walking, m/s. */
  private static final double MOVING = 2;

  /** The shortest wait, s: less is a gear change or back to back. */
  private static final double SHORTEST = 2;

  /** Seconds without rows of which the log knows nothing. */
  private static final double SILENT = 2;

  private WaitFinder() {}

  static List<Wait> between(List<Pull> pulls, Channels channels) {
    List<Wait> waits = new ArrayList<>();
    for (int i = 1; i < pulls.size(); i++) {
      Pull before = pulls.get(i - 1);
      double from = before.end();
      double to = pulls.get(i).start();
      if (to - from >= SHORTEST) {
        waits.add(wait(before.number(), from, to, channels));
      }
    }
    return waits;
  }

  private static Wait wait(int after, double from, double to, Channels channels) {
    Updates all = channels.updates(Signal.ENGINE_SPEED);
    int low = Math.max(0, all.from(from) - 1);
    int high = Math.min(all.size(), all.from(to) + 1);
    Updates speed = all.part(low, Math.max(low, high));
    double silent = Math.max(SILENT, 5 * all.spacing());
    double off = 0;
    double unknown = speed.isEmpty() ? to - from : 0;
    for (int i = 1; i < speed.size(); i++) {
      double step = Math.min(to, speed.time(i)) - Math.max(from, speed.time(i - 1));
      if (step > silent) {
        unknown += step;
      } else if (speed.value(i) < RUNNING && speed.value(i - 1) < RUNNING) {
        off += step;
      }
    }
    double moving = channels.updates(Signal.ROAD_SPEED).between(from, to).timeAbove(MOVING);
    return new Wait(after, from, to, engine(to - from, off, unknown), off, unknown, moving);
  }

  /** An engine that takes a few seconds to stop and to start counts as off. */
  private static Wait.Engine engine(double duration, double off, double unknown) {
    if (unknown > duration / 2) {
      return Wait.Engine.UNKNOWN;
    }
    if (off >= Math.max(0.8 * duration, duration - 20)) {
      return Wait.Engine.OFF;
    }
    return off > SHORTEST ? Wait.Engine.OFF_FOR_A_PART : Wait.Engine.RUNNING;
  }
}
