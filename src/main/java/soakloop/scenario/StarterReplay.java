package soakloop.scenario;

import java.util.Locale;
import java.util.OptionalDouble;
import soakloop.log.Signal;
import soakloop.reading.LogReading;
import soakloop.reading.Pull;
import soakloop.reading.Updates;

/** Writes a session that follows the log: for a car that drives, steps would not say enough. */
final class StarterReplay {
  /** Faster than walking, m/s, and the share of a log from which it is a drive [-]. */
  private static final double MOVING = 2;

  private static final double DRIVE = 0.25;

  /** By how much the log must pass the counted speed, rev/s: noise must not miss it. */
  private static final double PASSED = 10.0 / 60;

  private StarterReplay() {}

  /** Whether a log is better followed: it has what drives the car, and pulls are not most of it. */
  static boolean suits(LogReading reading) {
    double seconds = reading.log().endTime() - reading.log().time(0);
    double moving = reading.updates(Signal.ROAD_SPEED).timeAbove(MOVING);
    boolean followed =
        reading.updates(Signal.ENGINE_SPEED).size() > 1 && reading.updates(Signal.BOOST).size() > 1;
    return followed && (moving > DRIVE * seconds || reading.pulls().isEmpty());
  }

  static void write(LogReading reading, StarterFigures figures, StarterText text) {
    text.line("session:", "");
    text.line(
        "  - replay:",
        "from the log: engine speed, boost and road speed as logged drive the model");
    if (reading.pulls().isEmpty()) {
      text.line("      car-fan: auto", "no pull found; state any under `pulls` here");
      return;
    }
    text.line(
        "      pulls:", "from the log: " + reading.pulls().size() + " found; times are the log's");
    double before = reading.log().time(0);
    for (Pull pull : reading.pulls()) {
      double from = Math.max(before, Math.ceil(100 * pull.start()) / 100);
      double to = Math.min(reading.log().endTime(), Math.floor(100 * pull.end()) / 100);
      if (to - from > 0.1) {
        text.line(
            String.format(
                Locale.ROOT,
                "        - {from: %s s, to: %s s%s}",
                from,
                to,
                counted(reading, figures, from, to)),
            "pull " + pull.number() + (pull.aborted() ? ", lifted early" : ""));
        before = to;
      }
    }
  }

  private static String counted(
      LogReading reading, StarterFigures figures, double from, double to) {
    OptionalDouble counted = reading.countedSpeed();
    Updates speed = reading.updates(Signal.ENGINE_SPEED).between(from, to);
    return counted.isPresent() && speed.highest() > counted.getAsDouble() + PASSED
        ? ", counted-to: " + figures.speed(counted.getAsDouble())
        : "";
  }
}
