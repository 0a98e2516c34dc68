package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soakloop.plan.EveningAnswer;
import soakloop.plan.EveningPlan;
import soakloop.plan.EveningRunner;
import soakloop.plan.IceRoom;
import soakloop.plan.WaitAnswer;
import soakloop.plan.WaitPlan;
import soakloop.plan.WaitRunner;
import soakloop.plan.Way;
import soakloop.plan.WayReader;
import soakloop.quantity.Dimension;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;
import soakloop.report.ResultFolder;
import soakloop.report.RoundsText;
import soakloop.report.WaitText;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.study.StudyException;

/** {@code wait}: when the car can go again. */
@Command(
    name = "wait",
    description = {
      "Runs the session up to the end of its last pull, lets equally likely cars wait in several"
          + " ways and do that pull again, and finds all waits from which its charge stays under"
          + " the limit; by the clock and by the coolant gauge.",
      "With --rounds it plans an evening of them.",
      ""
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class WaitCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ScenarioArguments arguments = new ScenarioArguments();
  @Mixin private ResultsTarget target = new ResultsTarget();
  @Mixin private Threads threads = new Threads();
  @Mixin private EveningOptions evening = new EveningOptions();

  @Option(
      names = "--limit",
      paramLabel = "TEMPERATURE",
      description =
          "Highest true charge temperature allowed in the next pull, as in '54 degC';"
              + " limits.charge-temperature if left out.")
  private Optional<String> limit = Optional.empty();

  @Option(
      names = "--confidence",
      paramLabel = "PER CENT",
      description = "Share of equally likely cars that must keep it; '90 %%' if left out.")
  private String confidence = "90 %";

  @Option(
      names = "--horizon",
      paramLabel = "TIME",
      description = "Longest wait looked at, 5 min to 12 h; '60 min' if left out.")
  private String horizon = "60 min";

  @Option(
      names = "--way",
      paramLabel = "WAY",
      description =
          "A way of waiting to look at, as often as wanted: idle or off, then any of pump, fans, hood"
              + " (open) and ice with its mass, as in 'off, pump, ice 3 kg'. A handful of sensible ones if left"
              + " out.")
  private List<String> ways = List.of();

  @Option(
      names = "--ice",
      paramLabel = "MASS",
      description =
          "Also looks at waiting with so much ice put into the tank, engine off, once the reservoir"
              + " is below --ice-below.")
  private Optional<String> ice = Optional.empty();

  @Option(
      names = "--ice-below",
      paramLabel = "TEMPERATURE",
      description =
          "Reservoir temperature below which it is opened for ice, at the most 50 degC (122 degF);"
              + " '45 degC' if left out.")
  private String iceBelow = "45 degC";

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "Equally likely cars, drawn over all spreads; 128 if left out, 32 at least.")
  private int draws = WaitPlan.USUAL_DRAWS;

  @Override
  public Integer call() throws Exception {
    threads.check();
    Scenario scenario = arguments.read();
    evening.check();
    if (evening.isAsked()) {
      return rounds(scenario);
    }
    WaitPlan plan = plan(scenario);
    ResultFolder folder = target.of(scenario, "-wait");
    folder.requireRoomForWait();
    WaitAnswer answer = new WaitRunner(plan, threads.count()).answer();
    List<Path> written = folder.write(answer, Version.number());
    PrintWriter out = spec.commandLine().getOut();
    out.println(WaitText.of(answer) + "\nReport: " + written.get(0));
    out.flush();
    return ExitCode.DONE.code();
  }

  private Integer rounds(Scenario read) throws Exception {
    if (ice.isPresent()) {
      throw new StudyException("--ice is for one wait; with --rounds write --ice-left");
    }
    double left = evening.ice();
    Scenario scenario = left > 0 ? IceRoom.made(read, left) : read;
    List<Way> asked = new ArrayList<>();
    for (String way : ways) {
      asked.add(WayReader.read(way));
    }
    if (asked.isEmpty()) {
      asked.addAll(EveningPlan.ways(scenario.setup().rig(), left));
    }
    EveningPlan plan = evening.plan(question(scenario, asked));
    ResultFolder folder = target.of(scenario, "-rounds");
    folder.requireRoomForRounds();
    EveningAnswer answer = new EveningRunner(plan, threads.count()).answer();
    List<Path> written = folder.write(answer, Version.number());
    PrintWriter out = spec.commandLine().getOut();
    out.println(RoundsText.of(answer) + "\nReport: " + written.get(0));
    out.flush();
    return ExitCode.DONE.code();
  }

  private WaitPlan plan(Scenario read) throws StudyException, ScenarioException {
    double mass = ice.isEmpty() ? 0 : WayReader.mass(ice.get());
    List<Way> asked = new ArrayList<>();
    for (String way : ways) {
      asked.add(WayReader.read(way));
    }
    double most = Math.max(mass, asked.stream().mapToDouble(Way::ice).max().orElse(0));
    Scenario scenario = most > 0 ? IceRoom.made(read, most) : read;
    if (asked.isEmpty()) {
      asked.addAll(Way.usual(scenario.setup().rig(), mass > 0 ? mass : Way.usualIce(scenario)));
    } else if (mass > 0) {
      asked.add(new Way(false, true, false, mass));
    }
    return question(scenario, asked).checked();
  }

  private WaitPlan question(Scenario scenario, List<Way> asked) throws StudyException {
    OptionalDouble own =
        limit.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(value("--limit", limit.get(), Dimension.TEMPERATURE));
    return new WaitPlan(
        scenario,
        asked,
        WaitPlan.limit(scenario, own),
        value("--confidence", confidence, Dimension.FRACTION),
        value("--horizon", horizon, Dimension.TIME),
        draws,
        value("--ice-below", iceBelow, Dimension.TEMPERATURE));
  }

  static double value(String option, String text, Dimension dimension) throws StudyException {
    try {
      return QuantityParser.parse(text, dimension).value();
    } catch (QuantityException e) {
      throw new StudyException(option + ": `" + text + "` " + e.getMessage());
    }
  }
}
