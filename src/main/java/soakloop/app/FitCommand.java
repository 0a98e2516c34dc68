package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import soakloop.fit.Calibration;
import soakloop.fit.FitCase;
import soakloop.fit.FitException;
import soakloop.fit.FitPlan;
import soakloop.fit.FitResult;
import soakloop.fit.Quantity;
import soakloop.report.FitText;
import soakloop.report.ResultFolder;

/** {@code fit}: find what cannot be measured from logs, and say how well it is then known. */
@Command(
    name = "fit",
    description = {
      "Finds the values of keys that carry a spread which make the modelled sensors show what was"
          + " logged, and says how well they are then known, what the log cannot tell, and what the"
          + " next pull will do. Several scenarios with their logs are fitted together: what they"
          + " state alike is shared.",
      ""
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class FitCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ResultsTarget target = new ResultsTarget();
  @Mixin private Threads threads = new Threads();

  @Mixin private LoggedScenarios given = new LoggedScenarios();

  @Option(
      names = "--key",
      paramLabel = "KEY",
      description =
          "Fit only keys that begin so, such as core or pump.flow; all that carry a spread if left"
              + " out. May be given more than once.")
  private List<String> keys = new ArrayList<>();

  @Option(
      names = "--own",
      paramLabel = "KEY",
      description =
          "Keys that begin so are each scenario's own, even where they state them alike: a swapped"
              + " core. Those of day, start and session always are.")
  private List<String> own = new ArrayList<>();

  @Option(
      names = "--for",
      paramLabel = "NUMBER",
      description =
          "Rank further sensors and tests by how far they narrow this: next-peak, next-end,"
              + " next-coolant, core-duty, core-share or loop-flow; next-peak if left out.")
  private String wanted = Quantity.NEXT_PEAK.key();

  @Option(
      names = "--profile",
      paramLabel = "KEY",
      description =
          "Find the intervals of keys that begin so by following each outwards too, without taking"
              + " the model for a straight line; some seconds a key. May be given more than once.")
  private List<String> profiled = new ArrayList<>();

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "Equally likely cars that intervals are read off; 256 if left out.")
  private int draws = FitPlan.USUAL_DRAWS;

  @Override
  public Integer call() throws Exception {
    check();
    List<LoggedScenarios.Given> read = given.read();
    List<FitCase> cases = read.stream().flatMap(g -> g.cases().stream()).toList();
    List<FittedScenarios.CaseFiles> from = read.stream().flatMap(g -> g.files().stream()).toList();
    FitPlan plan =
        new FitPlan(cases, keys, own, wanted(), draws, threads.count()).profiling(profiled);
    ResultFolder folder = target.of(given.name("-beside-") + "-fit");
    folder.requireRoom(plan);
    FitResult result = fitted(plan);
    Map<String, String> fitted = FittedScenarios.of(result, from, folder.file(""));
    List<Path> written = folder.write(result, fitted, Version.number());
    PrintWriter out = spec.commandLine().getOut();
    out.println(FitText.of(result) + "\nReport: " + written.get(0));
    fitted
        .keySet()
        .forEach(f -> out.println("Fitted: " + folder.file(f) + " (run, vary, rank it)"));
    out.flush();
    return ExitCode.DONE.code();
  }

  private FitResult fitted(FitPlan plan) throws FitException {
    try (ProgressBar bar = ProgressBar.onTerminal(spec.commandLine().getOut())) {
      return Calibration.of(plan, bar::step);
    }
  }

  private void check() {
    threads.check();
    if (draws < FitPlan.FEWEST_DRAWS) {
      throw wrong("--draws must be " + FitPlan.FEWEST_DRAWS + " or more, not " + draws);
    }
  }

  private Quantity wanted() {
    return Quantity.named(wanted)
        .orElseThrow(
            () -> wrong("--for takes one of " + Quantity.keys() + ", not `" + wanted + "`"));
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
