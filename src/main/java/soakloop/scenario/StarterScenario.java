package soakloop.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.Remark;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.UnitSystem;
import soakloop.reading.Finding;
import soakloop.reading.LogReading;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;

/**
 * Makes a scenario from a log, to begin with: day, start, boost over engine speed, session and how
 * the log is read come from the log, each with a comment that says so; what no log tells and a run
 * needs is a stand-in marked GUESS; the other defaults that matter stand as comments, ready to be
 * taken in. The text runs as it stands.
 */
public final class StarterScenario {
  /** Findings and remarks that are told at the top. */
  private static final int TOLD = 8;

  private final LogReading reading;
  private final LogColumns columns;
  private final Path log;
  private final Path target;
  private final UnitSystem units;

  private StarterScenario(
      LogReading reading, LogColumns columns, Path log, Path target, UnitSystem units) {
    this.reading = reading;
    this.columns = columns;
    this.log = log;
    this.target = target;
    this.units = units;
  }

  /**
   * Writes a scenario. Nothing is written to disk.
   *
   * @param reading what the log shows
   * @param columns what was said of the log's columns when it was read
   * @param log the log's file
   * @param target the file that the text is meant for; the log is named relative to its folder, or
   *     absolute if that is far away
   * @param units units of the text and of its results
   * @return YAML, lines ended by a line feed
   */
  public static String of(
      LogReading reading, LogColumns columns, Path log, Path target, UnitSystem units) {
    StarterScenario starter = new StarterScenario(reading, columns, log, target, units);
    for (StartStated stated : StartStated.values()) {
      String text = starter.text(stated);
      if (stated == StartStated.NOTHING || starter.starts(text)) {
        return text;
      }
    }
    throw new IllegalStateException("the last way to state a start is always taken");
  }

  /**
   * Returns the units that most of a log is in.
   *
   * @param log a log as read
   */
  public static UnitSystem unitsOf(Log log) {
    return StarterLog.us(log) ? UnitSystem.US : UnitSystem.METRIC;
  }

  /** How much of the start is stated: a log's temperatures need not go together in the model. */
  private enum StartStated {
    ALL,
    LOOP,
    NOTHING
  }

  /** Whether a run can start so. */
  private boolean starts(String text) {
    try {
      Path folder = Optional.ofNullable(target.toAbsolutePath().getParent()).orElse(target);
      YamlText.Sections sections = YamlText.sections(text, "starter");
      Scenario scenario = ScenarioReader.read(Source.beside(reading, "starter", folder, sections));
      Simulation.checkStart(scenario.setup());
      return true;
    } catch (ScenarioException | SimulationException e) {
      return false;
    }
  }

  private String text(StartStated stated) {
    StarterText text = new StarterText();
    StarterFigures figures = new StarterFigures(units);
    StarterDay day = new StarterDay(reading);
    top(text);
    day(day, figures, text);
    new StarterRig(reading, day, figures, text).write();
    text.offered(
        "limits: {charge-temperature: " + (units == UnitSystem.US ? "130 degF" : "55 degC") + "}",
        "above it the calibration takes spark out; ask whoever is responsible for that");
    start(day, figures, text, stated);
    double zero = Math.round(100 * day.zero()) / 100.0;
    boolean replay = StarterReplay.suits(reading);
    if (replay) {
      StarterReplay.write(reading, figures, text);
    } else {
      StarterBetween between = new StarterBetween(reading, day.pressure());
      new StarterSession(reading, zero, between, figures, text).write();
    }
    new StarterLog(reading, columns)
        .write(log, target, replay ? Optional.empty() : Optional.of(zero), text);
    return text.text();
  }

  private void top(StarterText text) {
    String name = reading.log().name();
    text.words("A scenario to begin with, made from the log " + name + ".");
    text.words(
        "GUESS marks what no log tells"
            + " and a run needs: replace it with what is on the car. A line of \"# key: value\" shows"
            + " what is assumed; take its first \"# \" away to state it, with the car's own value.");
    told().stream().limit(TOLD).forEach(words -> text.words("To know: " + words));
    text.line("title: " + StarterText.quoted("From the log " + StarterText.plain(name)), "");
    text.line("units: " + (units == UnitSystem.US ? "us" : "metric"), "");
    text.blank();
  }

  private List<String> told() {
    List<String> remarks =
        reading.log().remarks().stream()
            .filter(r -> r.kind() == Remark.Kind.TIME_RESTARTS || r.kind() == Remark.Kind.TIME_GAP)
            .map(Remark::text)
            .toList();
    List<String> findings =
        reading.findings().stream()
            .filter(
                f ->
                    switch (f.kind()) {
                      case SATURATION, STUCK, SPIKE, SWAPPED, SENSOR_SOAK, REFRESH -> true;
                      default -> false;
                    })
            .map(f -> f.kind() == Finding.Kind.REFRESH ? f.seen() : f.seen() + " " + f.done())
            .toList();
    return java.util.stream.Stream.concat(findings.stream(), remarks.stream()).toList();
  }

  private static void day(StarterDay day, StarterFigures figures, StarterText text) {
    text.line("day:", "");
    OptionalDouble inlet = day.inletInPulls();
    double spread = inlet.isPresent() ? StarterDay.pickUp().spread() : 10;
    text.line(
        "  temperature: " + figures.show(day.temperature(), spread, Dimension.TEMPERATURE),
        inlet.isPresent()
            ? "from the log: inlet air, "
                + figures.show(inlet.getAsDouble(), Dimension.TEMPERATURE)
                + ", less "
                + figures.show(StarterDay.pickUp().value(), Dimension.TEMPERATURE_DIFFERENCE)
                + " that a warm hood adds. State the day's own if known"
            : "GUESS: replace; the log has no inlet air");
    OptionalDouble barometer = day.barometer();
    if (barometer.isPresent()) {
      text.line(
          "  pressure: " + figures.show(barometer.getAsDouble(), Dimension.ABSOLUTE_PRESSURE),
          "from the log: barometer");
    } else {
      offer("day.pressure", figures, text);
    }
    offer("day.humidity", figures, text);
  }

  private static void offer(String key, StarterFigures figures, StarterText text) {
    text.offered(
        "  " + key.substring(key.lastIndexOf('.') + 1) + ": " + figures.defaultOf(key),
        "is assumed: " + KeyTable.get().require(key).because());
  }

  private void start(StarterDay day, StarterFigures figures, StarterText text, StartStated stated) {
    OptionalDouble charge = day.atStart(Signal.CHARGE_TEMPERATURE);
    Signal coolant =
        day.atStart(Signal.CORE_COOLANT_IN).isPresent() ? Signal.CORE_COOLANT_IN : Signal.RESERVOIR;
    text.line(
        "start:",
        "from the log: at "
            + StarterFigures.seconds(day.zero())
            + " of it, where the session begins");
    temperature("charge", charge, stated == StartStated.ALL, figures, text);
    temperature("loop-coolant", day.atStart(coolant), stated != StartStated.NOTHING, figures, text);
    OptionalDouble engine = day.atStart(Signal.ENGINE_COOLANT);
    if (engine.isPresent() && StarterFigures.allows("start.engine-coolant", engine.getAsDouble())) {
      temperature("engine-coolant", engine, true, figures, text);
    } else {
      text.line(
          "  engine-coolant: " + figures.defaultOf("start.engine-coolant"),
          "GUESS: replace; " + KeyTable.get().require("start.engine-coolant").because());
    }
  }

  private static void temperature(
      String key, OptionalDouble value, boolean stated, StarterFigures figures, StarterText text) {
    if (value.isEmpty()) {
      text.words("  " + key + " is not in the log: what it starts from is worked out");
      return;
    }
    String line =
        "  "
            + key
            + ": "
            + figures.show(
                StarterFigures.within("start." + key, value.getAsDouble()), Dimension.TEMPERATURE);
    if (stated) {
      text.line(line, "");
    } else {
      text.offered(line, "as the log has it, but no rest state of the model as it stands shows it");
    }
  }
}
