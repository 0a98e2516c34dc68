package soakloop.session;

import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.quantity.Require;

/**
 * One stretch of a session.
 *
 * @param name shown to people, such as "pull 2"
 * @param kind what it is
 * @param duration s, above zero
 * @param drive what engine and road do
 * @param cooling what cools
 * @param countedAt for a pull or pass, the time from its start at which it is counted, s
 * @param ice put into the tank as it begins
 */
public record Phase(
    String name,
    Kind kind,
    double duration,
    Drive drive,
    Cooling cooling,
    OptionalDouble countedAt,
    Optional<IceAdded> ice) {
  /** What a phase is. */
  public enum Kind {
    /** Comes to rest before time zero. */
    SETTLE,
    /** Idles before or between. */
    IDLE,
    /** Full load, counted. */
    PULL,
    /** From launch to the traps, counted like a pull. */
    PASS,
    /** Waits and cools. */
    WAIT,
    /** Drives at part load. */
    CRUISE,
    /** Follows a log. */
    REPLAY;

    /** Returns whether what the charge does here is counted: in a pull or a pass. */
    public boolean isCounted() {
      return this == PULL || this == PASS;
    }
  }

  /** Makes a phase that begins without ice being put in. */
  public Phase(
      String name,
      Kind kind,
      double duration,
      Drive drive,
      Cooling cooling,
      OptionalDouble countedAt) {
    this(name, kind, duration, drive, cooling, countedAt, Optional.empty());
  }

  /**
   * Returns what is left of it after some time; ice went in as it began, and a pull that was
   * counted is counted at its end.
   *
   * @param passed s from its start, above 0 and below its duration
   */
  public Phase rest(double passed) {
    OptionalDouble counted =
        countedAt.isPresent() && countedAt.getAsDouble() >= passed
            ? OptionalDouble.of(countedAt.getAsDouble() - passed)
            : OptionalDouble.empty();
    return new Phase(name, kind, duration - passed, drive.after(passed), cooling, counted);
  }

  /**
   * Returns the same with another length; a pull that was counted later is counted at its end.
   *
   * @param seconds above 0
   */
  public Phase lasting(double seconds) {
    OptionalDouble counted =
        countedAt.isPresent() && countedAt.getAsDouble() <= seconds
            ? countedAt
            : OptionalDouble.empty();
    return new Phase(name, kind, seconds, drive, cooling, counted, ice);
  }

  /** Checks the parts. */
  public Phase {
    Require.positive("phase duration", duration);
    if (countedAt.isPresent()) {
      Require.within("counted time", countedAt.getAsDouble(), 0, duration);
    }
  }
}
