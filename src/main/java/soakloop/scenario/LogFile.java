package soakloop.scenario;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** The log that a scenario file names. */
public final class LogFile {
  private LogFile() {}

  /**
   * Looks for the name of the log, however wrong the rest of the scenario may be.
   *
   * @param scenario YAML, UTF-8
   * @return where the log is or should be; empty if none is named or the file is no YAML
   */
  public static Optional<Path> of(Path scenario) {
    try {
      String shown = scenario.toString();
      Node.Section root = YamlText.sections(ScenarioReader.text(scenario, shown), shown).root();
      return root.find("log")
          .map(Node.Entry::value)
          .flatMap(log -> log instanceof Node.Section s ? s.find("file") : Optional.empty())
          .map(Node.Entry::value)
          .flatMap(name -> name instanceof Node.Scalar s ? Optional.of(s.text()) : Optional.empty())
          .map(name -> scenario.resolveSibling(name));
    } catch (ScenarioException | InvalidPathException e) {
      return Optional.empty();
    }
  }
}
