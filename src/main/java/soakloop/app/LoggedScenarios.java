package soakloop.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soakloop.fit.FitCase;
import soakloop.fit.FitException;
import soakloop.quantity.UnitSystem;
import soakloop.scenario.LogFile;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/** Several scenarios, each with its own log and further ones. */
final class LoggedScenarios {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description =
          "Scenarios (.yaml or .yml), each followed by further logs of the same session plan, if"
              + " any.")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "Units to show, whatever the scenario says.")
  private Optional<UnitSystem> units = Optional.empty();

  /**
   * A scenario with its logs.
   *
   * @param label short name
   * @param scenario as its file has it
   * @param cases with each log
   * @param files that each case comes from
   */
  record Given(
      String label, Scenario scenario, List<FitCase> cases, List<FittedScenarios.CaseFiles> files) {
    Given {
      cases = List.copyOf(cases);
      files = List.copyOf(files);
    }
  }

  /** Reads all, with every log there is. A scenario without any has no case. */
  List<Given> readAny() throws ScenarioException, FitException {
    if (!isScenario(files.get(0))) {
      throw new ParameterException(
          spec.commandLine(),
          "the first file must be a scenario (.yaml); `log --scenario` makes one from a log: "
              + files.get(0));
    }
    List<String> labels = LogLabels.of(files);
    List<Given> all = new ArrayList<>();
    int next = 0;
    while (next < files.size()) {
      Path file = files.get(next);
      String label = labels.get(next++);
      Scenario scenario = read(file);
      List<FitCase> cases = new ArrayList<>();
      List<FittedScenarios.CaseFiles> from = new ArrayList<>();
      if (scenario.logged().isPresent()) {
        cases.add(FitCase.of(label, scenario));
        from.add(new FittedScenarios.CaseFiles(file, LogFile.of(file).orElseThrow()));
      }
      while (next < files.size() && !isScenario(files.get(next))) {
        Path log = files.get(next).toAbsolutePath();
        cases.add(FitCase.of(labels.get(next), scenario.with("log.file", log.toString())));
        from.add(new FittedScenarios.CaseFiles(file, log));
        next++;
      }
      all.add(new Given(label, scenario, cases, from));
    }
    return all;
  }

  /** Reads the same, and after each scenario the variants that its file lists. */
  List<Given> readWithVariants() throws ScenarioException, FitException {
    List<Given> all = new ArrayList<>();
    for (Given one : readAny()) {
      all.add(one);
      for (Scenario variant : one.scenario().variants()) {
        Scenario shown = inUnits(variant);
        boolean isOwnLog = variant.logged().isPresent() && !sameLog(variant, one.scenario());
        List<FitCase> cases = isOwnLog ? List.of(FitCase.of(variant.name(), shown)) : List.of();
        all.add(new Given(variant.name(), shown, cases, List.of()));
      }
    }
    return all;
  }

  /** A variant that states no log of its own has none: the one above is of another car. */
  private static boolean sameLog(Scenario one, Scenario other) {
    return one.readsAlike(other, List.of("log"));
  }

  /** Reads all; every scenario needs a log. */
  List<Given> read() throws ScenarioException, FitException {
    List<Given> all = readAny();
    for (Given one : all) {
      if (one.cases().isEmpty()) {
        FitCase.of(one.label(), one.scenario()); // says what is missing
      }
    }
    return all;
  }

  /** Returns a name made of those of the first two scenarios. */
  String name(String between) {
    List<String> stems =
        files.stream().filter(LoggedScenarios::isScenario).map(LogLabels::stem).limit(2).toList();
    return String.join(between, stems);
  }

  private Scenario read(Path file) throws ScenarioException {
    return inUnits(ScenarioReader.read(file));
  }

  private Scenario inUnits(Scenario scenario) throws ScenarioException {
    return units.isEmpty()
        ? scenario
        : scenario.with("units", units.get().name().toLowerCase(Locale.ROOT));
  }

  static boolean isScenario(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".yaml") || name.endsWith(".yml");
  }
}
