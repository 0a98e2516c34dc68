package soakloop.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogException;
import soakloop.log.LogReader;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;
import soakloop.quantity.Unit;

/** The logs that a command works on, and what is said of their columns. */
final class LogArguments {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "1..*",
      paramLabel = "LOG",
      description = "Log as the logger wrote it; several are laid over each other.")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = "--column",
      paramLabel = "SIGNAL=NAME",
      description =
          "Which column a signal stands in, such as charge-temperature='Air temp 2', where it is"
              + " not found or found wrong. May be given more than once.")
  private Map<String, String> columns = new LinkedHashMap<>();

  @Option(
      names = "--unit",
      paramLabel = "SIGNAL=UNIT",
      description =
          "Unit of a column named by --column, such as charge-temperature=degF. May be given more"
              + " than once.")
  private Map<String, String> units = new LinkedHashMap<>();

  @Option(
      names = "--rate",
      paramLabel = "RATE",
      description = "Rows a second, such as '10 Hz', of a log without times.")
  private Optional<String> rate = Optional.empty();

  /** Returns the files as given. */
  List<Path> files() {
    return files;
  }

  /**
   * Reads the logs, in the order given.
   *
   * @throws LogException if any cannot be used; says what is wrong with each
   */
  List<Log> read() throws LogException {
    Map<Signal, LogColumns.Choice> chosen = chosen();
    OptionalDouble rows = rows();
    List<Log> logs = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (Path file : files) {
      try {
        logs.add(LogReader.read(file, new LogColumns(having(file, chosen, rows), rows)));
      } catch (LogException e) {
        problems.addAll(e.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new LogException(problems);
    }
    return logs;
  }

  /** Returns what was said of a log's columns. */
  LogColumns columns() {
    return new LogColumns(chosen(), rows());
  }

  private OptionalDouble rows() {
    return rate.isPresent()
        ? OptionalDouble.of(positive("--rate", rate.get(), Dimension.FREQUENCY))
        : OptionalDouble.empty();
  }

  private Map<Signal, LogColumns.Choice> chosen() {
    Map<Signal, LogColumns.Choice> chosen = new EnumMap<>(Signal.class);
    for (Map.Entry<String, String> column : columns.entrySet()) {
      Signal signal = signal("--column", column.getKey());
      Optional<Unit> unit = Optional.empty();
      if (units.containsKey(column.getKey())) {
        unit = Optional.of(unit(signal, units.get(column.getKey())));
      }
      chosen.put(signal, new LogColumns.Choice(column.getValue(), unit));
    }
    for (String key : units.keySet()) {
      signal("--unit", key);
      if (!columns.containsKey(key)) {
        throw wrong("--unit " + key + " needs --column " + key + "=NAME beside it");
      }
    }
    return chosen;
  }

  private Signal signal(String option, String key) {
    return Signal.named(key)
        .orElseThrow(
            () ->
                wrong(
                    option
                        + ": `"
                        + key
                        + "` is not a signal; known: "
                        + String.join(", ", Stream.of(Signal.values()).map(Signal::key).toList())));
  }

  private Unit unit(Signal signal, String text) {
    return signal
        .dimension()
        .unit(text)
        .orElseThrow(
            () ->
                wrong(
                    "--unit "
                        + signal.key()
                        + ": found `"
                        + text
                        + "`; allowed: "
                        + signal.dimension().allowed()));
  }

  /** Reads an option's value, which must be above zero. */
  double positive(String option, String text, Dimension dimension) {
    double value = parsed(option, text, dimension);
    if (!(value > 0)) {
      throw wrong(option + " must be above zero, not " + text);
    }
    return value;
  }

  /** Reads an option's value. */
  double parsed(String option, String text, Dimension dimension) {
    try {
      return QuantityParser.parse(text, dimension).value();
    } catch (QuantityException e) {
      throw wrong(option + " " + text + ": " + e.getMessage());
    }
  }

  /** Of several files each takes the choices whose column it has; one alone must have them all. */
  private Map<Signal, LogColumns.Choice> having(
      Path file, Map<Signal, LogColumns.Choice> chosen, OptionalDouble rows) throws LogException {
    if (files.size() == 1 || chosen.isEmpty()) {
      return chosen;
    }
    Map<Signal, LogColumns.Choice> some = new EnumMap<>(Signal.class);
    Log plain = LogReader.read(file, new LogColumns(Map.of(), rows));
    chosen.forEach(
        (signal, choice) -> {
          boolean has =
              plain.columns().stream()
                  .anyMatch(c -> c.header().strip().equalsIgnoreCase(choice.header().strip()));
          if (has) {
            some.put(signal, choice);
          }
        });
    return some;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
