package soakloop.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import soakloop.quantity.UnitSystem;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/** The scenario that a command works on, and how its numbers are shown. */
final class ScenarioArguments {
  @Parameters(index = "0", paramLabel = "SCENARIO", description = "Scenario file, YAML.")
  private Path file = Path.of("");

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "Units to show, whatever the scenario says.")
  private Optional<UnitSystem> units = Optional.empty();

  /** Reads the scenario. */
  Scenario read() throws ScenarioException {
    Scenario scenario = ScenarioReader.read(file);
    return units.isEmpty()
        ? scenario
        : scenario.with("units", units.get().name().toLowerCase(Locale.ROOT));
  }

  /** Returns the scenario's file. */
  Path file() {
    return file;
  }

  /** Returns what the scenario's file holds, which may have gone since it was read. */
  byte[] content() throws ScenarioException {
    return ScenarioReader.content(file);
  }
}
