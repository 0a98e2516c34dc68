package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.AdamsBashforthIntegrator;
import org.hipparchus.ode.nonstiff.AdamsMoultonIntegrator;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;
import org.hipparchus.ode.nonstiff.HighamHall54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;
import soakloop.session.Phase;

/**
 * Which integrator at which tolerance: prints evaluations, time and error of each on a shipped
 * scenario, the numbers of the decision record on the integrator. Takes minutes, so that it is left
 * out of the build.
 */
@Tag("long")
class IntegratorStudyTest {
  private static final double SAMPLING = 0.5; // s
  private static final double EXACT = 1e-10; // K
  private static final double RELATIVE = 1e-3; // relative tolerance per absolute, 1/K
  private static final int MAX_EVALUATIONS = 400_000; // a phase
  private static final int REPEATS = 12;
  private static final double[] TOLERANCES = {1e-2, 1e-3, 1e-4, 1e-5, 1e-6};

  private final Setup setup;

  IntegratorStudyTest() throws ScenarioException {
    setup = ScenarioReader.read(Path.of("scenarios", "cool-morning.yaml")).setup();
  }

  /** Makes an integrator of a model from a state and absolute and relative tolerances. */
  private interface Maker {
    ODEIntegrator make(LoopModel model, double[] y, double[] absolute, double[] relative);
  }

  /** What a run cost, and the readings at even times. */
  private record Outcome(long evaluations, double seconds, Map<Double, Reading> readings) {}

  private record Reading(double sensor, double coreIn) {}

  private static final Maker USED =
      (model, y, a, r) ->
          new RosenbrockIntegrator(model, new RosenbrockStep(model, 0, y), 1e-9, 60, a[0], r[0]);

  private static final Maker EXPLICIT =
      (model, y, a, r) -> new DormandPrince54Integrator(1e-9, 30, a, r);

  private static final List<Map.Entry<String, Maker>> MAKERS =
      List.of(
          Map.entry("linearly implicit ROS34PW2", USED),
          Map.entry("Dormand-Prince 5(4)", EXPLICIT),
          Map.entry("Higham-Hall 5(4)", (m, y, a, r) -> new HighamHall54Integrator(1e-9, 30, a, r)),
          Map.entry(
              "Dormand-Prince 8(5,3)",
              (m, y, a, r) -> new DormandPrince853Integrator(1e-9, 30, a, r)),
          Map.entry(
              "Gragg-Bulirsch-Stoer",
              (m, y, a, r) -> new GraggBulirschStoerIntegrator(1e-9, 30, a, r)),
          Map.entry(
              "Adams-Bashforth, 4 steps",
              (m, y, a, r) -> new AdamsBashforthIntegrator(4, 1e-9, 30, a, r)),
          Map.entry(
              "Adams-Moulton, 4 steps",
              (m, y, a, r) -> new AdamsMoultonIntegrator(4, 1e-9, 30, a, r)));

  @Test
  void errorsFallWithTheTolerance() throws SimulationException {
    Outcome exact = run((m, y, a, r) -> new DormandPrince853Integrator(1e-12, 30, a, r), EXACT);
    for (Map.Entry<String, Maker> maker : MAKERS) {
      best(maker.getValue(), 1e-4); // warms up
    }
    double unit = best(EXPLICIT, 1e-4).seconds();
    StringBuilder table = new StringBuilder("\n");
    double used = Double.NaN;
    for (Map.Entry<String, Maker> maker : MAKERS) {
      for (double tolerance : TOLERANCES) {
        String row = maker.getKey() + " | " + tolerance + " | ";
        try {
          Outcome outcome = best(maker.getValue(), tolerance);
          Reading error = error(exact, outcome);
          if (maker.getValue() == USED && tolerance == Options.DEFAULT.absoluteTolerance()) {
            used = error.sensor();
          }
          row +=
              String.format(
                  Locale.ROOT,
                  "%d | %.2f | %.1e | %.1e",
                  outcome.evaluations(),
                  outcome.seconds() / unit,
                  error.sensor(),
                  error.coreIn());
        } catch (MathRuntimeException | IllegalArgumentException e) {
          row += "gave up: " + e.getMessage();
        }
        table.append("| ").append(row).append(" |\n");
      }
    }
    System.out.println(table);
    assertTrue(used < 0.01, "the integrator in use errs by " + used + " K");
  }

  private static Reading error(Outcome exact, Outcome other) {
    double sensor = 0;
    double coreIn = 0;
    for (Map.Entry<Double, Reading> at : exact.readings().entrySet()) {
      Reading reading = java.util.Objects.requireNonNull(other.readings().get(at.getKey()));
      sensor = Math.max(sensor, Math.abs(reading.sensor() - at.getValue().sensor()));
      coreIn = Math.max(coreIn, Math.abs(reading.coreIn() - at.getValue().coreIn()));
    }
    return new Reading(sensor, coreIn);
  }

  /** The quickest of some runs, the others only warm up or were disturbed. */
  private Outcome best(Maker maker, double tolerance) throws SimulationException {
    Outcome best = run(maker, tolerance);
    for (int i = 1; i < REPEATS; i++) {
      Outcome next = run(maker, tolerance);
      best = next.seconds() < best.seconds() ? next : best;
    }
    return best;
  }

  private Outcome run(Maker maker, double tolerance) throws SimulationException {
    LoopModel model = new LoopModel(setup.rig(), setup.day(), setup.start().engineCoolant());
    double[] y = InitialState.of(model, setup);
    Map<Double, Reading> readings = new TreeMap<>();
    long evaluations = 0;
    long started = System.nanoTime();
    double time = 0;
    for (Phase phase : setup.session().phases()) {
      model.startPhase(phase, time, y);
      ODEIntegrator integrator = integrator(maker, model, y, tolerance);
      integrator.addStepHandler(step -> read(model, step, readings));
      double end = time + phase.duration();
      y = integrator.integrate(model, new ODEState(time, y), end).getPrimaryState();
      evaluations += integrator.getEvaluations();
      time = end;
    }
    return new Outcome(evaluations, 1e-9 * (System.nanoTime() - started), readings);
  }

  private static void read(
      LoopModel model, ODEStateInterpolator step, Map<Double, Reading> readings) {
    double from = step.getPreviousState().getTime();
    double to = step.getCurrentState().getTime();
    for (double t = SAMPLING * Math.ceil(from / SAMPLING); t <= to; t += SAMPLING) {
      ODEStateAndDerivative state = step.getInterpolatedState(t);
      double[] y = state.getPrimaryState();
      readings.put(t, new Reading(y[model.air().sensor()], model.entering(model.coreAt(), y)));
    }
  }

  private static ODEIntegrator integrator(
      Maker maker, LoopModel model, double[] y, double tolerance) {
    double[] absolute = new double[model.getDimension()];
    double[] relative = new double[model.getDimension()];
    Arrays.fill(absolute, tolerance);
    Arrays.fill(relative, RELATIVE * tolerance);
    int first = model.ledger().first();
    Arrays.fill(absolute, first, first + Ledger.FLOWS, Ledger.IGNORED);
    Arrays.fill(relative, first, first + Ledger.FLOWS, 0);
    ODEIntegrator integrator = maker.make(model, y, absolute, relative);
    if (integrator instanceof AdaptiveStepsizeIntegrator adaptive) {
      adaptive.setInitialStepSize(0.01);
    }
    integrator.setMaxEvaluations(tolerance == EXACT ? Integer.MAX_VALUE : MAX_EVALUATIONS);
    return integrator;
  }
}
