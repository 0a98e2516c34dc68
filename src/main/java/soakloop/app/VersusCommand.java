package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import soakloop.fit.FitCase;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;
import soakloop.report.ResultFolder;
import soakloop.report.VersusText;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.versus.Contender;
import soakloop.versus.PullFigure;
import soakloop.versus.Versus;
import soakloop.versus.VersusPlan;
import soakloop.versus.VersusResult;

/** {@code versus}: which of several cores is better, fairly. */
@Command(
    name = "versus",
    description = {
      "Says which of two or more scenarios has the better core, how much better and how sure that"
          + " is: their logs are fitted together as one car with different cores, then all are run"
          + " under the same conditions. Also takes the raw difference of the logs apart into core,"
          + " start, day and boost. Without logs it compares descriptions and plans a fair test.",
      ""
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class VersusCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ResultsTarget target = new ResultsTarget();
  @Mixin private Threads threads = new Threads();
  @Mixin private LoggedScenarios given = new LoggedScenarios();

  @Option(
      names = "--swapped",
      paramLabel = "SECTION",
      description =
          "Section of the scenarios that was swapped; core if left out. May be given more than"
              + " once. All else counts as one car and loop.")
  private List<String> swapped = new ArrayList<>();

  @Option(
      names = "--like",
      paramLabel = "SCENARIO",
      description =
          "Run all under this scenario's day, start, boost and session; if left out, under those"
              + " of whichever started hottest.")
  private Optional<Path> like = Optional.empty();

  @Option(
      names = "--by",
      paramLabel = "FIGURE",
      description =
          "What decides, in the last pull: end (charge at the counted end), peak or rise; end if"
              + " left out.")
  private String by = PullFigure.END.key();

  @Option(
      names = "--at-least",
      paramLabel = "DIFFERENCE",
      description = "How much better counts as better, such as '3 K' or '5 degF'; 0 if left out.")
  private String atLeast = "0 K";

  @Option(
      names = "--confidence",
      paramLabel = "PERCENT",
      description = "Probability from which on something is said to be so; 95 if left out.")
  private double confidence = 95;

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "Equally likely cars that the answer is read off; 256 if left out.")
  private int draws = VersusPlan.USUAL_DRAWS;

  @Override
  public Integer call() throws Exception {
    VersusPlan plan = plan();
    ResultFolder folder = target.of(given.name("-against-") + "-versus");
    folder.requireRoomForVersus();
    VersusResult result = Versus.of(plan);
    List<Path> written = folder.write(result, Version.number());
    PrintWriter out = spec.commandLine().getOut();
    out.println(VersusText.of(result) + "\nReport: " + written.get(0));
    out.println("One page to hand on: " + written.get(1));
    out.flush();
    return ExitCode.DONE.code();
  }

  private VersusPlan plan() throws Exception {
    threads.check();
    if (draws < VersusPlan.FEWEST_DRAWS) {
      throw wrong("--draws must be " + VersusPlan.FEWEST_DRAWS + " or more, not " + draws);
    }
    if (!(confidence > 50 && confidence < 100)) {
      throw wrong("--confidence must be above 50 and below 100 %, not " + confidence);
    }
    List<LoggedScenarios.Given> read = given.readWithVariants();
    if (read.size() < 2) {
      throw wrong(
          "versus takes two scenarios or more, each with its logs after it, or one that lists"
              + " variants");
    }
    List<String> sections = swapped.isEmpty() ? List.of("core") : swapped;
    requireSections(sections, read);
    Optional<Scenario> conditions = Optional.empty();
    if (like.isPresent()) {
      conditions = Optional.of(ScenarioReader.read(like.get()));
    }
    return new VersusPlan(
        read.stream().map(VersusCommand::contender).toList(),
        sections,
        conditions,
        deciding(),
        difference(),
        confidence / 100,
        draws,
        threads.count());
  }

  private static Contender contender(LoggedScenarios.Given given) {
    return new Contender(
        given.label().replaceFirst("\\.ya?ml$", ""),
        given.cases().isEmpty()
            ? List.of(
                FitCase.planned(
                    given.label(), given.scenario(), List.of(Signal.CHARGE_TEMPERATURE)))
            : given.cases());
  }

  private void requireSections(List<String> sections, List<LoggedScenarios.Given> read) {
    for (String section : sections) {
      for (LoggedScenarios.Given one : read) {
        List<String> known = one.scenario().sections();
        if (!known.contains(section)) {
          throw wrong(
              "--swapped "
                  + section
                  + ": "
                  + one.label()
                  + " has no such section; it has "
                  + String.join(", ", known));
        }
      }
    }
  }

  private PullFigure deciding() {
    String wanted = by.strip().toLowerCase(Locale.ROOT);
    return VersusPlan.DECIDING.stream()
        .filter(f -> f.key().equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                wrong(
                    "--by takes one of "
                        + String.join(
                            ", ", VersusPlan.DECIDING.stream().map(PullFigure::key).toList())
                        + ", not `"
                        + by
                        + "`"));
  }

  private double difference() {
    try {
      double value = QuantityParser.parse(atLeast, Dimension.TEMPERATURE_DIFFERENCE).value();
      if (!(value >= 0)) {
        throw wrong("--at-least must be 0 or more, not " + atLeast);
      }
      return value;
    } catch (QuantityException e) {
      throw wrong("--at-least: " + e.getMessage());
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
