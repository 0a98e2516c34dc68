package soakloop.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/** The energy ledger of every shipped scenario. */
final class LedgerChecks implements CheckSuite {
  private static final Path FOLDER = Path.of(System.getProperty("basedir", ""), "scenarios");
  private static final double SAMPLING = 0.05; // s
  private static final Options USUAL = Options.DEFAULT.sampledEvery(SAMPLING);
  private static final Options FINER =
      USUAL.withTolerances(USUAL.absoluteTolerance() / 10, USUAL.relativeTolerance() / 10);

  private final CheckList list = new CheckList("Energy ledger");

  @Override
  public List<Check> checks() {
    for (Scenario scenario : shipped()) {
      check(scenario);
    }
    return list.checks();
  }

  static List<Scenario> shipped() {
    try (var files = Files.list(FOLDER)) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .map(LedgerChecks::read)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Scenario read(Path file) {
    try {
      return ScenarioReader.read(file);
    } catch (ScenarioException e) {
      throw new IllegalStateException(e);
    }
  }

  private void check(Scenario scenario) {
    Trace usual = run(scenario, USUAL);
    Trace finer = run(scenario, FINER);
    list.from(
            Kind.ANALYTIC,
            "energy is kept: what all masses gained less the net heat that came in, over all heat"
                + " moved")
        .add(
            "residual, " + scenario.name(),
            0,
            Rounded.to(7, usual.energy().residualFraction()),
            Tolerance.absolute(1e-6),
            "-")
        .add(
            "residual at a tenth of the tolerances, " + scenario.name(),
            0,
            Rounded.to(7, finer.energy().residualFraction()),
            Tolerance.absolute(1e-6),
            "-");
    list.from(
            Kind.ANALYTIC,
            "trapezoids under the recorded heat flows, sampled every 0.05 s, over all heat moved;"
                + " largest of six")
        .add(
            "ledger less trapezoids, " + scenario.name(),
            0,
            Rounded.to(6, largestGap(usual)),
            Tolerance.absolute(1e-4),
            "-");
  }

  private static Trace run(Scenario scenario, Options options) {
    try {
      return Simulation.run(scenario.setup(), options);
    } catch (SimulationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static double largestGap(Trace trace) {
    EnergyLedger e = trace.energy();
    double gap = 0;
    gap = Math.max(gap, Math.abs(sum(trace, Channel.HEAT_CORE) - e.fromChargeToCore()));
    gap = Math.max(gap, Math.abs(sum(trace, Channel.HEAT_DUCTS) - e.fromChargeToDucts()));
    gap = Math.max(gap, Math.abs(sum(trace, Channel.HEAT_ENGINE) - e.fromEngine()));
    gap = Math.max(gap, Math.abs(sum(trace, Channel.HEAT_PUMP) - e.fromPump()));
    gap = Math.max(gap, Math.abs(sum(trace, Channel.HEAT_UNDERHOOD) - e.fromUnderhood()));
    gap = Math.max(gap, Math.abs(sum(trace, Channel.HEAT_AMBIENT) - e.toAmbient()));
    return gap / e.turnover();
  }

  /** The ledger counts from time zero, after any settling. */
  private static double sum(Trace trace, Channel channel) {
    double sum = 0;
    for (int i = 1; i < trace.size(); i++) {
      if (trace.time(i - 1) >= 0) {
        double mean = 0.5 * (trace.value(channel, i - 1) + trace.value(channel, i));
        sum += mean * (trace.time(i) - trace.time(i - 1));
      }
    }
    return sum;
  }
}
