package soakloop.app;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import soakloop.report.ResultFolder;
import soakloop.scenario.Scenario;

/** Where a command writes its results. */
final class ResultsTarget {
  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description =
          "Folder for the results; out/<scenario name> if left out, with -vary or -rank after it for"
              + " those.")
  private Optional<Path> folder = Optional.empty();

  @Option(
      names = "--force",
      description = "Overwrite files in that folder that this program did not write.")
  private boolean force;

  /**
   * Returns the folder.
   *
   * @param scenario which the folder is called by, unless another is asked for
   * @param ending of that name
   */
  ResultFolder of(Scenario scenario, String ending) {
    return ResultFolder.at(folder.orElse(Path.of("out", scenario.name() + ending)), force);
  }
}
