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
          "Folder for the results; out/<name of scenario or log> if left out, with -vary, -rank,"
              + " -fit, -wait or -log after it for those.")
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
    return of(scenario.name() + ending);
  }

  /**
   * Returns the folder.
   *
   * @param name it is called by under {@code out}, unless another is asked for
   */
  ResultFolder of(String name) {
    return ResultFolder.at(folder.orElse(Path.of("out", name)), force);
  }
}
