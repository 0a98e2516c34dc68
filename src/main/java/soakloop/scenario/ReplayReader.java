package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.reading.LogReading;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;

/** Reads a replay: the log drives the car, and the stretches that are said to be pulls count. */
final class ReplayReader {
  private static final int CURVE_POINTS = 64;

  private final In in;
  private final Optional<Scenario.Logged> logged;
  private final Optional<Curve> fullLoad;
  private final Cooling cooling;
  private int pulls;

  /**
   * Reads a replay.
   *
   * @param fullLoad gauge pressure over engine speed, Pa over rev/s, that stands in where the
   *     logged boost is cut off; empty where boost is left to the pulleys, and the cut stays
   */
  ReplayReader(
      In in,
      Optional<Scenario.Logged> logged,
      Optional<Curve> fullLoad,
      Cooling cooling,
      int pullsBefore) {
    this.in = in;
    this.logged = logged;
    this.fullLoad = fullLoad;
    this.cooling = cooling;
    this.pulls = pullsBefore;
  }

  List<Phase> read() {
    OptionalDouble from = in.optional("from");
    OptionalDouble to = in.optional("to");
    List<In> stretches = in.sections("pulls");
    if (logged.isEmpty()) {
      if (!in.context().hasProblems("log")) {
        in.problem("", "needs a log to replay; name it under `log: {file: ...}`");
      }
      stretches.forEach(ReplayReader::skip);
      return List.of();
    }
    LogReading reading = logged.get().reading();
    Log log = reading.log();
    Optional<Curve> speed = reading.curve(Signal.ENGINE_SPEED);
    if (speed.isEmpty()) {
      in.problem("", "needs the engine speed, and the log " + log.name() + " has no column for it");
      stretches.forEach(ReplayReader::skip);
      return List.of();
    }
    double start = from.orElse(log.time(0));
    double end = to.orElse(log.endTime());
    if (!(end > start) || start < log.time(0) || end > log.endTime()) {
      in.problem(
          "",
          "must lie within the log, which goes from "
              + Wanted.seconds(log.time(0))
              + " to "
              + Wanted.seconds(log.endTime())
              + ", and end after it starts");
      stretches.forEach(ReplayReader::skip);
      return List.of();
    }
    List<Phase> phases = new ArrayList<>();
    double at = start;
    for (In stretch : stretches) {
      double pullFrom = stretch.number("from");
      double pullTo = stretch.number("to");
      OptionalDouble countedTo = stretch.optional("counted-to");
      stretch.done();
      if (pullFrom < at || !(pullTo > pullFrom) || pullTo > end) {
        stretch.problem(
            "",
            "must lie within the replay ("
                + Wanted.seconds(start)
                + " to "
                + Wanted.seconds(end)
                + "), after the pull before it, and end after it starts");
        continue;
      }
      if (pullFrom > at) {
        phases.add(phase("replay", Phase.Kind.REPLAY, at, pullFrom, reading, speed.get()));
      }
      Phase pull =
          phase("pull " + ++pulls, Phase.Kind.PULL, pullFrom, pullTo, reading, speed.get());
      phases.add(countedTo.isPresent() ? counted(pull, stretch, countedTo.getAsDouble()) : pull);
      at = pullTo;
    }
    if (at < end) {
      phases.add(phase("replay", Phase.Kind.REPLAY, at, end, reading, speed.get()));
    }
    return phases;
  }

  private static void skip(In stretch) {
    stretch.number("from");
    stretch.number("to");
    stretch.optional("counted-to");
    stretch.done();
  }

  private static Phase counted(Phase pull, In stretch, double countedTo) {
    Drive.Replay drive = (Drive.Replay) pull.drive();
    double step = pull.duration() / CURVE_POINTS;
    for (int i = 0; i <= CURVE_POINTS; i++) {
      if (drive.engineSpeed().at(drive.from() + i * step) >= countedTo) {
        double low = Math.max(0, i - 1) * step;
        double high = i * step;
        for (int k = 0; k < 40; k++) {
          double middle = (low + high) / 2;
          if (drive.engineSpeed().at(drive.from() + middle) >= countedTo) {
            high = middle;
          } else {
            low = middle;
          }
        }
        return new Phase(
            pull.name(),
            pull.kind(),
            pull.duration(),
            drive,
            pull.cooling(),
            OptionalDouble.of(high));
      }
    }
    stretch.problem("counted-to", "is an engine speed that the log does not reach in this pull");
    return pull;
  }

  /** Where logged boost is cut off, the stated boost stands in if it is more. */
  private Curve uncut(Curve boost, OptionalDouble ceiling, Curve speed) {
    if (ceiling.isEmpty() || fullLoad.isEmpty()) {
      return boost;
    }
    double[] time = new double[boost.size()];
    double[] value = new double[boost.size()];
    for (int i = 0; i < time.length; i++) {
      time[i] = boost.place(i);
      value[i] = boost.value(i);
      if (value[i] >= ceiling.getAsDouble()) {
        value[i] = Math.max(value[i], fullLoad.get().at(speed.at(time[i])));
      }
    }
    return Curve.of(time, value);
  }

  private Phase phase(
      String name, Phase.Kind kind, double from, double to, LogReading log, Curve speed) {
    Drive drive =
        new Drive.Replay(
            from,
            speed,
            log.curve(Signal.BOOST).map(boost -> uncut(boost, log.boostCeiling(), speed)),
            log.curve(Signal.ROAD_SPEED),
            log.curve(Signal.INLET_AIR),
            log.curve(Signal.ENGINE_COOLANT));
    return new Phase(name, kind, to - from, drive, cooling, OptionalDouble.empty());
  }
}
