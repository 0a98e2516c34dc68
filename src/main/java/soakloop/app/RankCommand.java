package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soakloop.report.RankText;
import soakloop.report.ResultFolder;
import soakloop.scenario.Scenario;
import soakloop.study.Measure;
import soakloop.study.RankPlan;
import soakloop.study.RankRunner;
import soakloop.study.Ranking;

/** {@code rank}: what matters most among all that is only known within its spread. */
@Command(
    name = "rank",
    description = {
      "Moves every key that has a spread to both ends of it, one at a time, and ranks what that does"
          + " to a result; then moves the first keys together to find what they do only beside"
          + " others.",
      ""
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class RankCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ScenarioArguments arguments = new ScenarioArguments();
  @Mixin private ResultsTarget target = new ResultsTarget();
  @Mixin private Threads threads = new Threads();

  @Option(
      names = "--of",
      paramLabel = "RESULT",
      description =
          "What to rank by: peak-charge, end-charge, coolant or over-limit; peak-charge if left"
              + " out.")
  private String result = Measure.PEAK_CHARGE.key();

  @Option(
      names = "--top",
      paramLabel = "N",
      description =
          "How many of the first keys to move together, 0 for none; 8 if left out. Takes 128 times"
              + " N + 2 runs.")
  private int top = RankPlan.USUAL_TOP;

  @Override
  public Integer call() throws Exception {
    threads.check();
    Scenario scenario = arguments.read();
    RankPlan plan = RankPlan.of(scenario, result, top);
    ResultFolder folder = target.of(scenario, "-rank");
    folder.requireRoomForRanking();
    Ranking ranking = ranking(plan);
    List<Path> written = folder.write(ranking, Version.number());
    PrintWriter out = spec.commandLine().getOut();
    out.println(RankText.of(ranking) + "\nReport: " + written.get(0));
    out.flush();
    return ExitCode.DONE.code();
  }

  private Ranking ranking(RankPlan plan) throws Exception {
    try (ProgressBar bar = ProgressBar.onTerminal(spec.commandLine().getOut())) {
      return new RankRunner(plan, threads.count(), bar::at).ranking();
    }
  }
}
