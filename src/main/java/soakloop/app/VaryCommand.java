package soakloop.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soakloop.report.ResultFolder;
import soakloop.report.VaryPart;
import soakloop.report.VaryParts;
import soakloop.report.VaryText;
import soakloop.scenario.Scenario;
import soakloop.study.FingerPrint;
import soakloop.study.Variation;
import soakloop.study.VaryPlan;
import soakloop.study.VaryPoint;
import soakloop.study.VaryRunner;

/** {@code vary}: one or two keys over ranges, and where the limits are crossed. */
@Command(
    name = "vary",
    description = {
      "Runs a scenario over values of one key, or a grid of two, shows what it changes, and finds"
          + " where limits are crossed.",
      "",
      "A range is '3 L..12 L/10' (ten even values; nine if left out), a list '3 L,5 L,8 L', or"
          + " multiples of the scenario's value 'x0.5..x2/7' (or '50 %%..200 %%/7' for a key that"
          + " does not itself take per cent).",
      ""
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class VaryCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private ScenarioArguments arguments = new ScenarioArguments();
  @Mixin private ResultsTarget target = new ResultsTarget();
  @Mixin private Threads threads = new Threads();

  @Parameters(
      index = "1..*",
      paramLabel = "KEY=RANGE",
      description = "What to vary, such as reservoir.volume='3 L..12 L/10'; one key or two.")
  private List<String> ranges = new ArrayList<>();

  @Option(
      names = "--result",
      paramLabel = "NAME",
      description =
          "What to read off every run: peak-charge, end-charge, coolant, over-limit, boost,"
              + " boost-before-core, core-loss, blower-power, crank-power, wheel-power, spark-out;"
              + " temperatures, time over the limit and boost from pulleys if left out. May be"
              + " given more than once.")
  private List<String> results = new ArrayList<>();

  @Option(
      names = "--limit",
      paramLabel = "NAME=VALUE",
      description = "A limit for a result, such as 'coolant=45 degC', in place of the scenario's.")
  private List<String> limits = new ArrayList<>();

  @Option(
      names = "--part",
      paramLabel = "I/N",
      description = "Make the I-th of N shares of the runs only, to be merged later.")
  private Optional<String> part = Optional.empty();

  @Option(
      names = "--merge",
      paramLabel = "DIR",
      description = "Make the results from all parts in that folder; no KEY=RANGE beside it.")
  private Optional<Path> merge = Optional.empty();

  @Override
  public Integer call() throws Exception {
    check();
    Scenario scenario = arguments.read();
    ResultFolder folder = target.of(scenario, "-vary");
    return part.isPresent() ? share(scenario, folder, part.get()) : whole(scenario, folder);
  }

  private void check() {
    threads.check();
    if (merge.isPresent() && part.isPresent()) {
      throw wrong("--part makes one part, --merge joins all of them: one or the other");
    }
    if (merge.isPresent() && !(ranges.isEmpty() && results.isEmpty() && limits.isEmpty())) {
      throw wrong("--merge takes keys, results and limits from the parts; leave them out");
    }
    if (merge.isEmpty() && ranges.isEmpty()) {
      throw wrong("say what to vary, such as reservoir.volume='3 L..12 L/10'");
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  private int share(Scenario scenario, ResultFolder folder, String text) throws Exception {
    Share share =
        Share.of(text).orElseThrow(() -> wrong("--part takes I/N such as 2/8, not " + text));
    VaryPlan plan = plan(scenario);
    int from = VaryPart.from(share.part(), share.of(), plan.size());
    int to = VaryPart.from(share.part() + 1, share.of(), plan.size());
    List<VaryPoint> points = run(plan, from, to);
    VaryPart made = new VaryPart(origin(scenario, plan.asked()), share.part(), share.of(), points);
    say("Part: " + folder.write(made));
    return ExitCode.DONE.code();
  }

  private int whole(Scenario scenario, ResultFolder folder) throws Exception {
    Optional<VaryParts> parts =
        merge.isPresent() ? Optional.of(VaryParts.in(merge.get())) : Optional.empty();
    VaryPlan plan = parts.isPresent() ? VaryPlan.of(scenario, parts.get().asked()) : plan(scenario);
    folder.requireRoom(plan);
    List<VaryPoint> points;
    if (parts.isPresent()) {
      VaryPart.Origin here = origin(scenario, plan.asked());
      parts.get().requireMadeFrom(here.scenario(), here.log(), here.version());
      points = parts.get().points(plan);
    } else {
      points = run(plan, 0, plan.size());
    }
    Variation variation =
        new VaryRunner(plan, threads.count(), (done, all) -> {}).variation(points);
    List<Path> written = folder.write(variation, Version.number());
    say(VaryText.of(variation) + "\nReport: " + written.get(0));
    return ExitCode.DONE.code();
  }

  private VaryPlan plan(Scenario scenario) throws Exception {
    return VaryPlan.of(scenario, new VaryPlan.Asked(ranges, results, limits));
  }

  private VaryPart.Origin origin(Scenario scenario, VaryPlan.Asked asked) throws Exception {
    return new VaryPart.Origin(
        Version.number(), FingerPrint.of(arguments.content()), FingerPrint.ofLog(scenario), asked);
  }

  private List<VaryPoint> run(VaryPlan plan, int from, int to) throws InterruptedException {
    try (ProgressBar bar = ProgressBar.onTerminal(spec.commandLine().getOut())) {
      return new VaryRunner(plan, threads.count(), bar::at).points(from, to);
    }
  }

  private void say(String text) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(text);
    out.flush();
  }

  /**
   * A share of the runs.
   *
   * @param part from 1
   * @param of how many
   */
  record Share(int part, int of) {
    private static final int MOST = 100_000;

    /** Reads {@code I/N}; empty if it is none. */
    static Optional<Share> of(String text) {
      String[] numbers = text.strip().split("/", -1);
      if (numbers.length != 2
          || !numbers[0].matches("\\d{1,6}")
          || !numbers[1].matches("\\d{1,6}")) {
        return Optional.empty();
      }
      int part = Integer.parseInt(numbers[0]);
      int of = Integer.parseInt(numbers[1]);
      return part >= 1 && part <= of && of <= MOST
          ? Optional.of(new Share(part, of))
          : Optional.empty();
    }
  }
}
