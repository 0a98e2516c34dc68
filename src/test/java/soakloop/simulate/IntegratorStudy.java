package soakloop.simulate;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.AdamsBashforthIntegrator;
import org.hipparchus.ode.nonstiff.AdamsMoultonIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;
import org.hipparchus.ode.nonstiff.HighamHall54Integrator;
import soakloop.scenario.ScenarioReader;
import soakloop.session.Phase;

/**
 * Which integrator, at which tolerance: prints work and error of each on a shipped scenario. Run
 * its main from the project's folder; it takes a minute or two and is no part of the build.
 */
final class IntegratorStudy {
  private static final double SAMPLING = 0.5;
  private static final double REFERENCE = 1e-10;

  private static final int REPEATS = 15;
  private static final int WARM_UP = 3;

  private final Setup setup;

  private IntegratorStudy(Setup setup) {
    this.setup = setup;
  }

  /** One way of integrating; a tolerance per state, absolute and relative. */
  private interface Method {
    ODEIntegrator with(double[] absolute, double[] relative);
  }

  private record Named(String name, Method method) {}

  /** Sensor and coolant into the core by turns, K. */
  private record Result(List<Double> values, long evaluations, double seconds) {
    double furthestFrom(Result other, int channel) {
      double most = 0;
      for (int i = channel; i < values.size(); i += 2) {
        most = Math.max(most, Math.abs(values.get(i) - other.values.get(i)));
      }
      return most;
    }
  }

  private static final List<Named> METHODS =
      List.of(
          new Named("Dormand-Prince 5(4)", (a, r) -> new DormandPrince54Integrator(1e-9, 30, a, r)),
          new Named(
              "Dormand-Prince 8(5,3)", (a, r) -> new DormandPrince853Integrator(1e-9, 30, a, r)),
          new Named("Higham-Hall 5(4)", (a, r) -> new HighamHall54Integrator(1e-9, 30, a, r)),
          new Named(
              "Gragg-Bulirsch-Stoer", (a, r) -> new GraggBulirschStoerIntegrator(1e-9, 30, a, r)),
          new Named(
              "Adams-Bashforth, 4 steps",
              (a, r) -> new AdamsBashforthIntegrator(4, 1e-9, 30, a, r)),
          new Named(
              "Adams-Moulton, 4 steps", (a, r) -> new AdamsMoultonIntegrator(4, 1e-9, 30, a, r)));

  public static void main(String[] args) throws Exception {
    String file = args.length > 0 ? args[0] : "scenarios/cool-morning.yaml";
    IntegratorStudy study = new IntegratorStudy(ScenarioReader.read(Path.of(file)).setup());
    Named precise = METHODS.get(1);
    Result reference = study.run(precise, REFERENCE);
    for (int i = 0; i < WARM_UP; i++) {
      for (Named named : METHODS) {
        study.fastest(named, 1e-4);
      }
    }
    double unit = study.fastest(METHODS.get(0), 1e-4).seconds;
    System.out.println(
        "method, absolute tolerance [K], evaluations, time ratio, sensor error [K], core in [K]");
    for (Named named : METHODS) {
      for (double tolerance : new double[] {1e-2, 1e-3, 1e-4, 1e-5, 1e-6}) {
        System.out.println(study.row(named, tolerance, unit, reference));
      }
    }
  }

  private String row(Named named, double tolerance, double unit, Result reference)
      throws SimulationException {
    try {
      Result r = fastest(named, tolerance);
      return String.format(
          Locale.ROOT,
          "%-26s %.0e %8d %6.2f %9.1e %9.1e",
          named.name,
          tolerance,
          r.evaluations,
          r.seconds / unit,
          r.furthestFrom(reference, 0),
          r.furthestFrom(reference, 1));
    } catch (RuntimeException e) {
      return String.format(
          Locale.ROOT, "%-26s %.0e broke off: %s", named.name, tolerance, e.getMessage());
    }
  }

  /** Runs several times, since the machine has other things to do, and returns the fastest. */
  private Result fastest(Named named, double tolerance) throws SimulationException {
    Result best = run(named, tolerance);
    for (int i = 0; i < REPEATS; i++) {
      Result again = run(named, tolerance);
      best = again.seconds < best.seconds ? again : best;
    }
    return best;
  }

  private Result run(Named named, double tolerance) throws SimulationException {
    LoopModel model = new LoopModel(setup.rig(), setup.day(), setup.start().engineCoolant());
    double[] y = InitialState.of(model, setup);
    double[] absolute = new double[y.length];
    double[] relative = new double[y.length];
    Arrays.fill(absolute, tolerance);
    Arrays.fill(relative, 1e-3 * tolerance);
    for (int i = 0; i < Ledger.FLOWS; i++) {
      absolute[model.ledger().first() + i] = Ledger.IGNORED;
      relative[model.ledger().first() + i] = 0;
    }
    List<Double> values = new ArrayList<>();
    long evaluations = 0;
    long began = System.nanoTime();
    double time = setup.session().startTime();
    for (Phase phase : setup.session().phases()) {
      model.startPhase(phase, time, y);
      ODEIntegrator integrator = named.method.with(absolute, relative);
      double start = time;
      double end = time + phase.duration();
      integrator.addStepHandler(
          step -> {
            double from = step.getPreviousState().getTime();
            double to = step.getCurrentState().getTime();
            long first = (long) Math.ceil((from - start) / SAMPLING + 1e-9);
            for (long k = first; start + k * SAMPLING <= to && to <= end; k++) {
              double[] at = step.getInterpolatedState(start + k * SAMPLING).getPrimaryState();
              values.add(at[model.air().sensor()]);
              values.add(model.entering(model.coreAt(), at));
            }
          });
      y = integrator.integrate(model, new ODEState(time, y), end).getPrimaryState();
      evaluations += integrator.getEvaluations();
      time = end;
    }
    return new Result(List.copyOf(values), evaluations, (System.nanoTime() - began) / 1e9);
  }
}
