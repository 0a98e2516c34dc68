package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import soakloop.fit.BandedRun;
import soakloop.fit.RunBands;
import soakloop.report.ResultException;
import soakloop.report.ResultFolder;
import soakloop.report.TextSummary;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.SimulationException;
import soakloop.study.Run;

/** {@code run}: simulate, compare, report. */
@Command(
    name = "run",
    description =
        "Simulates a scenario, compares it with its log if it has one, and writes a report.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class RunCommand implements Callable<Integer> {
  /** Seconds after which a watched report loads itself again; the help says so too. */
  private static final int REFRESH = 2;

  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ScenarioArguments arguments = new ScenarioArguments();
  @Mixin private ResultsTarget target = new ResultsTarget();
  @Mixin private Threads threads = new Threads();

  @Option(
      names = "--watch",
      description = {
        "After the run, run again whenever the scenario or its log changes on disk, until"
            + " interrupted (Ctrl-C). An edit with errors shows them and keeps the last results."
            + " The report page then loads itself again every 2 s, also after the watch has ended,"
            + " until a run without --watch writes it."
      })
  private boolean watch;

  @Option(
      names = "--draws",
      paramLabel = "N",
      description =
          "Equally likely cars that bands are read off, drawn over all spreads; 256 if left out, 0"
              + " for no bands.")
  private int draws = RunBands.USUAL_DRAWS;

  @Override
  public Integer call() throws Exception {
    check();
    if (!watch) {
      tell(once(false));
      return ExitCode.DONE.code();
    }
    PrintWriter out = spec.commandLine().getOut();
    try (Rerun rerun =
        new Rerun(
            arguments.file(), () -> once(true).run().outcome(), out, spec.commandLine().getErr())) {
      tell(once(true));
      rerun.untilInterrupted();
    }
    return ExitCode.DONE.code();
  }

  private void check() {
    threads.check();
    if (draws != 0 && draws < RunBands.FEWEST_DRAWS) {
      throw new ParameterException(
          spec.commandLine(),
          "--draws must be 0, or " + RunBands.FEWEST_DRAWS + " or more, not " + draws);
    }
  }

  /** A run and where its report went. */
  private record Done(BandedRun run, Path report) {}

  private Done once(boolean refreshing)
      throws ScenarioException, SimulationException, ResultException {
    Scenario scenario = arguments.read();
    BandedRun run = BandedRun.of(Run.of(scenario), draws, threads.count());
    ResultFolder folder = target.of(scenario, "");
    String version = Version.number();
    List<Path> written =
        refreshing ? folder.writeRefreshing(run, version, REFRESH) : folder.write(run, version);
    return new Done(run, written.get(0));
  }

  private void tell(Done done) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(TextSummary.of(done.run()));
    out.println();
    out.println("Report: " + done.report());
    out.flush();
  }
}
