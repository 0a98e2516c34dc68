package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soakloop.fit.Calibration;
import soakloop.fit.FitCase;
import soakloop.fit.FitPlan;
import soakloop.fit.FitResult;
import soakloop.fit.Quantity;
import soakloop.quantity.UnitSystem;
import soakloop.report.FitText;
import soakloop.report.ResultFolder;
import soakloop.scenario.LogFile;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

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

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description =
          "Scenarios (.yaml or .yml), each followed by further logs of the same session plan, if"
              + " any.")
  private List<Path> files = new ArrayList<>();

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
      names = "--draws",
      paramLabel = "N",
      description = "Equally likely cars that intervals are read off; 256 if left out.")
  private int draws = FitPlan.USUAL_DRAWS;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "Units to show, whatever the scenario says.")
  private Optional<UnitSystem> units = Optional.empty();

  private final List<FittedScenarios.CaseFiles> from = new ArrayList<>();

  @Override
  public Integer call() throws Exception {
    check();
    FitPlan plan = new FitPlan(cases(), keys, own, wanted(), draws, threads.count());
    ResultFolder folder = target.of(name());
    folder.requireRoom(plan);
    FitResult result = Calibration.of(plan);
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

  private void check() {
    threads.check();
    if (draws < FitPlan.FEWEST_DRAWS) {
      throw wrong("--draws must be " + FitPlan.FEWEST_DRAWS + " or more, not " + draws);
    }
    if (!isScenario(files.get(0))) {
      throw wrong(
          "the first file must be a scenario (.yaml); `log --scenario` makes one from a log: "
              + files.get(0));
    }
  }

  private String name() {
    List<String> stems =
        files.stream().filter(FitCommand::isScenario).map(LogLabels::stem).limit(2).toList();
    return String.join("-beside-", stems) + "-fit";
  }

  private Quantity wanted() {
    return Quantity.named(wanted)
        .orElseThrow(
            () -> wrong("--for takes one of " + Quantity.keys() + ", not `" + wanted + "`"));
  }

  private List<FitCase> cases() throws Exception {
    from.clear();
    List<FitCase> cases = new ArrayList<>();
    List<String> labels = LogLabels.of(files);
    Scenario last = read(files.get(0));
    Path scenario = files.get(0);
    for (int i = 0; i < files.size(); i++) {
      if (isScenario(files.get(i))) {
        last = i == 0 ? last : read(files.get(i));
        scenario = files.get(i);
        boolean logFollows = i + 1 < files.size() && !isScenario(files.get(i + 1));
        if (last.logged().isPresent() || !logFollows) {
          cases.add(FitCase.of(labels.get(i), last));
          from.add(new FittedScenarios.CaseFiles(scenario, LogFile.of(scenario).orElseThrow()));
        }
      } else {
        Path log = files.get(i).toAbsolutePath();
        cases.add(FitCase.of(labels.get(i), last.with("log.file", log.toString())));
        from.add(new FittedScenarios.CaseFiles(scenario, log));
      }
    }
    return cases;
  }

  private Scenario read(Path file) throws ScenarioException {
    Scenario scenario = ScenarioReader.read(file);
    return units.isEmpty()
        ? scenario
        : scenario.with("units", units.get().name().toLowerCase(Locale.ROOT));
  }

  private static boolean isScenario(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".yaml") || name.endsWith(".yml");
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
