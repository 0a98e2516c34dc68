package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soakloop.report.ResultFolder;
import soakloop.report.TextSummary;
import soakloop.scenario.Scenario;
import soakloop.study.Outcome;
import soakloop.study.Run;

/** {@code run}: simulate, compare, report. */
@Command(
    name = "run",
    description =
        "Simulates a scenario, compares it with its log if it has one, and writes a report.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class RunCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ScenarioArguments arguments = new ScenarioArguments();

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Folder for the results; out/<scenario name> if left out.")
  private Optional<Path> folder = Optional.empty();

  @Option(
      names = "--force",
      description = "Overwrite files in that folder that this program did not write.")
  private boolean force;

  @Override
  public Integer call() throws Exception {
    Scenario scenario = arguments.read();
    Outcome outcome = Run.of(scenario);
    Path target = folder.orElse(Path.of("out", scenario.name()));
    List<Path> written = ResultFolder.at(target, force).write(outcome, Version.number());
    PrintWriter out = spec.commandLine().getOut();
    out.print(TextSummary.of(outcome));
    out.println();
    out.println("Report: " + written.get(0));
    out.flush();
    return ExitCode.DONE.code();
  }
}
