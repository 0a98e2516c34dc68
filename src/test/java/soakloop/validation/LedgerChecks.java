package soakloop.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.session.Phase;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/** The energy of every shipped scenario: it adds up, and a second way of adding agrees. */
final class LedgerChecks implements CheckSuite {
  private static final Path SCENARIOS = Path.of(System.getProperty("basedir", ""), "scenarios");
  private static final double MOST_RESIDUAL = 1e-6;
  private static final double MOST_DIFFERENCE = 1e-4;
  private static final double SAMPLING = 0.05;

  private final CheckList list = new CheckList("Energy ledger");

  @Override
  public List<Check> checks() {
    for (Path file : scenarios()) {
      try {
        scenario(ScenarioReader.read(file));
      } catch (ScenarioException | SimulationException e) {
        throw new IllegalStateException(file + ": " + e.getMessage(), e);
      }
    }
    return list.checks();
  }

  private static List<Path> scenarios() {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void scenario(Scenario scenario) throws SimulationException {
    Options usual = Options.DEFAULT;
    Trace trace = Simulation.run(scenario.setup(), usual.sampledEvery(SAMPLING));
    Options finer =
        usual.withTolerances(usual.absoluteTolerance() / 10, usual.relativeTolerance() / 10);
    EnergyLedger refined = Simulation.run(scenario.setup(), finer).energy();
    list.from(
        Kind.ANALYTIC,
        "conservation of energy: heat in less heat out is what all masses store; shown is the power of"
            + " ten that the residual, over all heat moved, stays under");
    Tolerance residual = Tolerance.absolute(MOST_RESIDUAL);
    list.add(
            scenario.name() + ": residual",
            0,
            bound(trace.energy().residualFraction(), MOST_RESIDUAL),
            residual,
            "-")
        .add(
            scenario.name() + ": residual, tolerances ten times finer",
            0,
            bound(refined.residualFraction(), MOST_RESIDUAL),
            residual,
            "-");
    list.from(
        Kind.ANALYTIC,
        "integral of each heat flow by the trapezoidal rule over samples every 0.05 s; shown is the"
            + " power of ten that the difference, over all heat moved, stays under");
    EnergyLedger energy = trace.energy();
    sum(scenario, trace, Channel.HEAT_CORE, energy.fromChargeToCore());
    sum(scenario, trace, Channel.HEAT_DUCTS, energy.fromChargeToDucts());
    sum(scenario, trace, Channel.HEAT_ENGINE, energy.fromEngine());
    sum(scenario, trace, Channel.HEAT_PUMP, energy.fromPump());
    sum(scenario, trace, Channel.HEAT_UNDERHOOD, energy.fromUnderhood());
    sum(scenario, trace, Channel.HEAT_AMBIENT, energy.toAmbient());
  }

  private void sum(Scenario scenario, Trace trace, Channel channel, double ledger) {
    double difference = Math.abs(integral(trace, channel) - ledger) / trace.energy().turnover();
    list.add(
        scenario.name() + ": " + channel.label(),
        0,
        bound(difference, MOST_DIFFERENCE),
        Tolerance.absolute(MOST_DIFFERENCE),
        "-");
  }

  /** Over the counted time; a phase's last and the next one's first sample share their instant. */
  private static double integral(Trace trace, Channel channel) {
    boolean settles = trace.spans().get(0).phase().kind() == Phase.Kind.SETTLE;
    double from = settles ? trace.spans().get(0).end() : trace.time(0);
    double sum = 0;
    for (int i = trace.firstFrom(from) + 1; i < trace.size(); i++) {
      sum +=
          0.5
              * (trace.value(channel, i) + trace.value(channel, i - 1))
              * (trace.time(i) - trace.time(i - 1));
    }
    return sum;
  }

  /**
   * Rounded up to a power of ten, and to a tenth of what is allowed at the least, for the digits
   * below differ between machines; NaN stays.
   */
  private static double bound(double value, double allowed) {
    return value < allowed / 10 ? allowed / 10 : Math.pow(10, Math.ceil(Math.log10(value)));
  }
}
