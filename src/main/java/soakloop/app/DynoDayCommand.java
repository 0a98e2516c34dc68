package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soakloop.plan.SameStartAnswer;
import soakloop.plan.SameStartPlan;
import soakloop.plan.SameStartRunner;
import soakloop.plan.Way;
import soakloop.plan.WayReader;
import soakloop.quantity.Dimension;
import soakloop.report.ResultFolder;
import soakloop.report.SameStartText;
import soakloop.scenario.Scenario;
import soakloop.study.StudyException;

/** {@code dyno-day}: how far apart pulls must be to start alike. */
@Command(
    name = "dyno-day",
    description = {
      "Says how long to wait between pulls on a dyno so that all of them start alike, coolant as well"
          + " as sensor, and how far charge and power then still vary. The scenario's first pull is"
          + " done again and again.",
      ""
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class DynoDayCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ScenarioArguments arguments = new ScenarioArguments();
  @Mixin private ResultsTarget target = new ResultsTarget();
  @Mixin private Threads threads = new Threads();

  @Option(
      names = "--within",
      paramLabel = "DIFFERENCE",
      description = "How far apart starts may be, as in '3 degF'; '2 K' if left out.")
  private String within = "2 K";

  @Option(
      names = "--pulls",
      paramLabel = "N",
      description = "Pulls that must start alike, 2 to 20; 5 if left out.")
  private int pulls = SameStartPlan.USUAL_PULLS;

  @Option(
      names = "--warm-ups",
      paramLabel = "N",
      description = "Pulls before them that do not count, 0 to 5; 0 if left out.")
  private int warmUps;

  @Option(
      names = "--confidence",
      paramLabel = "PER CENT",
      description = "Share of equally likely cars that must keep it; '90 %%' if left out.")
  private String confidence = "90 %";

  @Option(
      names = "--horizon",
      paramLabel = "TIME",
      description = "Longest interval looked at, 5 min to 12 h; '60 min' if left out.")
  private String horizon = "60 min";

  @Option(
      names = "--way",
      paramLabel = "WAY",
      description =
          "A way of waiting to look at, as often as wanted: idle or off, then any of pump, fans, hood"
              + " (open), as in 'idle, pump, fans'. A handful of sensible ones if left out.")
  private List<String> ways = List.of();

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "Equally likely cars, drawn over all spreads; 64 if left out, 32 at least.")
  private int draws = SameStartPlan.USUAL_DRAWS;

  @Override
  public Integer call() throws Exception {
    threads.check();
    Scenario scenario = arguments.read();
    SameStartPlan plan = plan(scenario);
    ResultFolder folder = target.of(scenario, "-dyno-day");
    folder.requireRoomForDynoDay();
    SameStartAnswer answer = new SameStartRunner(plan, threads.count()).answer();
    List<Path> written = folder.write(answer, Version.number());
    PrintWriter out = spec.commandLine().getOut();
    out.println(SameStartText.of(answer) + "\nReport: " + written.get(0));
    out.flush();
    return ExitCode.DONE.code();
  }

  private SameStartPlan plan(Scenario scenario) throws StudyException {
    List<Way> asked = new ArrayList<>();
    for (String way : ways) {
      asked.add(WayReader.read(way));
    }
    if (asked.isEmpty()) {
      asked.addAll(Way.usual(scenario.setup().rig(), 0));
    }
    return new SameStartPlan(
            scenario,
            asked,
            pulls,
            warmUps,
            WaitCommand.value("--within", within, Dimension.TEMPERATURE_DIFFERENCE),
            WaitCommand.value("--confidence", confidence, Dimension.FRACTION),
            WaitCommand.value("--horizon", horizon, Dimension.TIME),
            draws)
        .checked();
  }
}
