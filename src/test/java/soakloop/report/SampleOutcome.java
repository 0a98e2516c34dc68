package soakloop.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Log;
import soakloop.quantity.Curve;
import soakloop.quantity.UnitSystem;
import soakloop.reading.LogOptions;
import soakloop.reading.LogStudy;
import soakloop.rig.Day;
import soakloop.scenario.Assumed;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.scenario.Source;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;
import soakloop.study.Comparison;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * A made-up outcome to draw and write: plausible curves from a few lumps, not from the simulation.
 *
 * @param title the scenario's title
 * @param units what to show in
 * @param pulls how many
 * @param limit charge temperature limit, degC, if any
 * @param logged whether an invented log stands beside it
 */
record SampleOutcome(
    String title, UnitSystem units, int pulls, OptionalDouble limit, boolean logged) {
  static final double PULL = 10;
  static final double WAIT = 150;
  static final double LEAD = 20;

  static SampleOutcome standard() {
    return new SampleOutcome(
        "Cool morning, five pulls, 55 mm core (invented)",
        UnitSystem.METRIC,
        5,
        OptionalDouble.of(54),
        true);
  }

  SampleOutcome titled(String other) {
    return new SampleOutcome(other, units, pulls, limit, logged);
  }

  SampleOutcome in(UnitSystem other) {
    return new SampleOutcome(title, other, pulls, limit, logged);
  }

  SampleOutcome pulls(int count) {
    return new SampleOutcome(title, units, count, limit, logged);
  }

  SampleOutcome limit(OptionalDouble other) {
    return new SampleOutcome(title, units, pulls, other, logged);
  }

  SampleOutcome withoutLog() {
    return new SampleOutcome(title, units, pulls, limit, false);
  }

  Outcome make() {
    Session session = session();
    SampleTrace made = SampleTrace.run(session, kelvin(limit));
    Trace trace = made.trace();
    Optional<Log> log = logged ? Optional.of(SampleTrace.log(trace, session)) : Optional.empty();
    Scenario scenario =
        new Scenario(
            "cool-morning",
            title,
            "An invented car on an invented chassis dyno: how the charge creeps up over five pulls"
                + " with short waits.",
            units,
            new Day(290.15, 100.4e3, 0.6),
            SampleRig.make(),
            new Start(OptionalDouble.of(302.15), OptionalDouble.of(297.15), 361.15),
            session,
            new Scenario.Limits(kelvin(limit)),
            Scenario.Output.NONE,
            log.map(l -> new Scenario.Logged(LogStudy.of(l, LogOptions.DEFAULTS), 0)),
            List.of(),
            assumed(),
            Optional.empty(),
            source());
    List<PullResult> results = new ArrayList<>();
    for (Trace.Span span : trace.pulls()) {
      results.add(SampleReadings.pull(trace, span, log, kelvin(limit)));
    }
    Optional<Comparison> comparison = log.map(l -> SampleReadings.compare(trace, l));
    return new Outcome(
        scenario, trace, results, comparison, Optional.empty(), Optional.empty(), warnings());
  }

  /** Any source does: the report never reads it. */
  private static Source source() {
    try {
      return ScenarioReader.read(Path.of("scenarios/two-runs.yaml")).source();
    } catch (ScenarioException e) {
      throw new IllegalStateException(e);
    }
  }

  private static OptionalDouble kelvin(OptionalDouble celsius) {
    return celsius.isPresent()
        ? OptionalDouble.of(celsius.getAsDouble() + 273.15)
        : OptionalDouble.empty();
  }

  private Session session() {
    List<Phase> phases = new ArrayList<>();
    Drive idle = new Drive.Idle(14);
    phases.add(new Phase("idle", Phase.Kind.IDLE, LEAD, idle, Cooling.ALL, OptionalDouble.empty()));
    Curve sweep = Curve.of(new double[] {0, PULL}, new double[] {2600 / 60.0, 6700 / 60.0});
    for (int i = 1; i <= pulls; i++) {
      phases.add(
          new Phase(
              "pull " + i,
              Phase.Kind.PULL,
              PULL,
              new Drive.FullLoad(sweep, Curve.constant(0)),
              Cooling.ALL,
              OptionalDouble.of(PULL * 3900 / 4100)));
      phases.add(
          new Phase("wait " + i, Phase.Kind.WAIT, WAIT, idle, Cooling.ALL, OptionalDouble.empty()));
    }
    if (pulls == 0) {
      phases.add(
          new Phase(
              "cooldown",
              Phase.Kind.WAIT,
              900,
              new Drive.EngineOff(),
              new Cooling(true, true, Cooling.Fan.OFF),
              OptionalDouble.empty()));
    }
    return new Session(phases);
  }

  private static List<Assumed> assumed() {
    return List.of(
        new Assumed(
            "sensor.time-constant", "2 s", "40 %", "Threaded sensors in moving air; no source."),
        new Assumed("hose.outside", "12 W/(m2 K)", "50 %", "Still to slowly moving underhood air."),
        new Assumed("pump.power", "60 W", "", "Small electric pump at 13.5 V."));
  }

  private static List<Warning> warnings() {
    return List.of(
        new Warning(
            Warning.Kind.LOG_INCOMPLETE,
            "The log has no coolant leaving the core: the core's own heat is not checked."));
  }

  static Map<Channel, double[]> columns(int size) {
    Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
    for (Channel channel : Channel.values()) {
      columns.put(channel, new double[size]);
    }
    return columns;
  }
}
