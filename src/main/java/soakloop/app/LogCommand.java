package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import soakloop.log.Log;
import soakloop.log.LogException;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.UnitSystem;
import soakloop.reading.LogJoin;
import soakloop.reading.LogOptions;
import soakloop.reading.LogReading;
import soakloop.reading.LogStudy;
import soakloop.report.LogSet;
import soakloop.report.LogSheet;
import soakloop.report.LogText;
import soakloop.report.ResultFolder;
import soakloop.scenario.StarterScenario;

/** {@code log}: look at a log as the logger wrote it. */
@Command(
    name = "log",
    description = {
      "Looks at logs: what each column is, what can be trusted, pulls and waits, all pulls read at"
          + " the same engine speed. Several logs are laid over each other, to show before and"
          + " after.",
      ""
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class LogCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private LogArguments arguments = new LogArguments();
  @Mixin private ResultsTarget target = new ResultsTarget();

  @Option(
      names = "--counted-to",
      paramLabel = "SPEED",
      description =
          "Engine speed at which pulls are read, such as '6500 rpm'; the highest round one that all"
              + " whole pulls pass if left out.")
  private Optional<String> counted = Optional.empty();

  @Option(
      names = "--limit",
      paramLabel = "TEMPERATURE",
      description = "Charge temperature over which time is counted, such as '54 degC'.")
  private Optional<String> limit = Optional.empty();

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "Units to show; those of the log's temperatures if left out.")
  private Optional<UnitSystem> units = Optional.empty();

  @Option(
      names = "--join",
      description =
          "The logs are of one session, by two loggers: lay the others over the first by engine"
              + " speed.")
  private boolean join;

  @Option(
      names = "--about",
      paramLabel = "TIME",
      description =
          "With --join: what to add to the second log's time, roughly, such as '-12 s', where pulls"
              + " are too alike to tell.")
  private Optional<String> about = Optional.empty();

  @Option(
      names = "--scenario",
      description =
          "Also write a scenario to begin with, into the results folder: what the log tells is"
              + " stated, the rest is left to defaults and marked.")
  private boolean starter;

  @Override
  public Integer call() throws Exception {
    check();
    LogOptions options = options();
    List<Log> logs = arguments.read();
    LogRoom.require(logs, Runtime.getRuntime().maxMemory());
    LogSet set = join ? joined(logs, options) : sideBySide(logs, options);
    ResultFolder folder = target.of(name());
    Map<String, String> starters = starter ? starter(set, folder) : Map.of();
    List<Path> written = folder.write(set, starters, Version.number());
    PrintWriter out = spec.commandLine().getOut();
    out.print(LogText.of(set));
    out.println();
    out.println("Page:      " + written.get(0));
    written.stream()
        .filter(p -> p.toString().endsWith(".csv"))
        .forEach(p -> out.println("Clean log: " + p));
    starters.keySet().forEach(s -> out.println("Scenario:  " + folder.file(s)));
    out.flush();
    return ExitCode.DONE.code();
  }

  private void check() {
    int count = arguments.files().size();
    if (!join && count > LogSet.MOST) {
      throw wrong("at most " + LogSet.MOST + " logs can be told apart on one chart, not " + count);
    }
    if (join && count < 2) {
      throw wrong("--join takes the logs of two loggers");
    }
    if (starter && (count > 1 || join)) {
      throw wrong(
          "--scenario takes one log; of joined ones, the clean log that --join has written");
    }
    if (about.isPresent() && !join) {
      throw wrong("--about says how --join may lay the logs; it has no use alone");
    }
  }

  private LogOptions options() {
    LogOptions options = LogOptions.DEFAULTS;
    if (counted.isPresent()) {
      options =
          options.countedTo(arguments.positive("--counted-to", counted.get(), Dimension.ROTATION));
    }
    return limit.isPresent()
        ? options.withLimit(arguments.positive("--limit", limit.get(), Dimension.TEMPERATURE))
        : options;
  }

  private LogSet sideBySide(List<Log> logs, LogOptions options) {
    List<LogReading> readings = LogStudy.together(logs, options);
    List<String> labels = LogLabels.of(arguments.files());
    List<LogSheet> sheets = new ArrayList<>();
    for (int i = 0; i < logs.size(); i++) {
      sheets.add(new LogSheet(labels.get(i), readings.get(i), List.of()));
    }
    return new LogSet(sheets, units(logs.get(0)), options.limit());
  }

  private LogSet joined(List<Log> logs, LogOptions options) throws LogException {
    OptionalDouble roughly =
        about.isPresent()
            ? OptionalDouble.of(arguments.parsed("--about", about.get(), Dimension.TIME))
            : OptionalDouble.empty();
    Log whole = logs.get(0);
    List<LogSheet.Joined> joined = new ArrayList<>();
    for (Log other : logs.subList(1, logs.size())) {
      LogJoin one = LogJoin.of(whole, other, roughly);
      joined.add(new LogSheet.Joined(other.name(), one.match()));
      whole = one.log();
    }
    LogSheet sheet = new LogSheet(whole.name(), LogStudy.of(whole, options), joined);
    return new LogSet(List.of(sheet), units(logs.get(0)), options.limit());
  }

  private Map<String, String> starter(LogSet set, ResultFolder folder) throws LogException {
    Path log = arguments.files().get(0);
    String name = LogLabels.stem(log) + ".yaml";
    LogReading reading = set.sheets().get(0).reading();
    String text =
        StarterScenario.of(reading, arguments.columns(), log, folder.file(name), set.units());
    return Map.of(name, text);
  }

  private String name() {
    List<String> stems = arguments.files().stream().map(LogLabels::stem).limit(2).toList();
    return String.join(join ? "-with-" : "-beside-", stems) + "-log";
  }

  /** Returns the units asked for, or those that the log has its temperatures in. */
  private UnitSystem units(Log log) {
    return units.orElseGet(
        () ->
            log.columns().stream()
                    .filter(c -> c.signal().map(Signal::dimension).equals(TEMPERATURE))
                    .findFirst()
                    .filter(c -> c.unit().equals("degF"))
                    .isPresent()
                ? UnitSystem.US
                : UnitSystem.METRIC);
  }

  private static final Optional<Dimension> TEMPERATURE = Optional.of(Dimension.TEMPERATURE);

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
