package soakloop.simulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Thermostat;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.simulate.Trace.Event;

/** Runs a session on a rig. */
public final class Simulation {
  private static final double MIN_STEP = 1e-9;
  private static final double MAX_STEP = 60;

  /** First step of a phase, s; shortened if it is too long for the tolerance. */
  private static final double FIRST_STEP = 0.2;

  /** Longest step along a stated pull, s. */
  private static final double MAX_PULL_STEP = 1;

  /** Longest step along a log or a pass, s: a longer one could step over a blip or a shift. */
  private static final double MAX_REPLAY_STEP = 0.25;

  /** Samples of a trace at the most: a session of many hours is sampled more thinly. */
  private static final int MOST_SAMPLES = 100_000;

  /** States of a model at the most: more take gigabytes and minutes to begin with. */
  private static final int MOST_STATES = 20_000;

  private final Setup setup;
  private final Options options;
  private final LoopModel model;
  private final Recorder recorder;
  private final Icing icing;
  private final List<Event> events = new ArrayList<>();
  private final List<Trace.Span> spans = new ArrayList<>();
  private Optional<RosenbrockStep> step = Optional.empty();
  private long evaluations;

  private Simulation(Setup setup, Options options) throws SimulationException {
    this.setup = setup;
    this.options = options;
    this.model = model(setup);
    this.recorder = new Recorder(model);
    this.icing = new Icing(model);
  }

  /**
   * Runs a session with the usual options.
   *
   * @param setup what to run
   * @return what happened
   * @throws SimulationException if the start cannot be, or the run breaks off
   */
  public static Trace run(Setup setup) throws SimulationException {
    return run(setup, Options.DEFAULT);
  }

  /**
   * Runs a session.
   *
   * @param setup what to run
   * @param options how
   * @return what happened
   * @throws SimulationException if the start cannot be, or the run breaks off
   */
  public static Trace run(Setup setup, Options options) throws SimulationException {
    return new Simulation(setup, options).run();
  }

  /**
   * Checks that a session can start, without running it.
   *
   * @param setup what would be run
   * @throws SimulationException if the start cannot be
   */
  public static void checkStart(Setup setup) throws SimulationException {
    LoopModel model = model(setup);
    double[] y = InitialState.of(model, setup);
    for (Phase phase : setup.session().phases()) {
      if (phase.kind() != Phase.Kind.SETTLE) {
        new Icing(model).begin(phase, y);
        return;
      }
    }
  }

  private static LoopModel model(Setup setup) throws SimulationException {
    LoopModel model = new LoopModel(setup.rig(), setup.day(), setup.start().engineCoolant());
    if (model.getDimension() > MOST_STATES) {
      throw SimulationException.input(
          String.format(
              Locale.ROOT,
              "loop: its cells and layers make %d states; allowed: %d; give exchangers and hoses"
                  + " fewer",
              model.getDimension(),
              MOST_STATES));
    }
    return model;
  }

  private Trace run() throws SimulationException {
    double[] y = InitialState.of(model, setup);
    setFan(y);
    double time = setup.session().startTime();
    Ledger.Stored before = model.stored(y);
    for (Phase phase : setup.session().phases()) {
      double end = time + phase.duration();
      y = runPhase(phase, time, end, y);
      spans.add(new Trace.Span(phase, time, end));
      time = end;
      if (phase.kind() == Phase.Kind.SETTLE) {
        model.ledger().clear(y);
        before = model.stored(y);
      }
    }
    EnergyLedger energy = model.ledger().close(before, model.stored(y), y);
    return new Trace(
        recorder.times(),
        recorder.values(),
        spans,
        events,
        energy,
        new Trace.Effort(model.getDimension(), recorder.steps(), evaluations));
  }

  private double[] runPhase(Phase phase, double start, double end, double[] from)
      throws SimulationException {
    double[] y;
    icing.begin(phase, from);
    try {
      model.startPhase(phase, start, from);
      if (step.isEmpty() && !options.explicit()) {
        step = Optional.of(new RosenbrockStep(model, start, from));
      }
      resumeThermostat(start, from);
      noteLimit(phase, start, from);
      ODEIntegrator integrator = integrator(phase);
      recorder.startPhase(start, sampling(phase), options.pullSampling(), from);
      y = integrator.integrate(model, new ODEState(start, from), end).getPrimaryState();
      evaluations += integrator.getEvaluations();
    } catch (MathRuntimeException | IllegalArgumentException e) {
      if (e instanceof MathRuntimeException math
          && math.getSpecifier() == LocalizedCoreFormats.MAX_COUNT_EXCEEDED) {
        throw tooMuchWork(phase, start);
      }
      // The second comes from fluid properties asked for at impossible temperatures.
      throw SimulationException.unfinished(
          String.format(
              Locale.ROOT,
              "%s (from %.1f s): the integration broke off: %s",
              phase.name(),
              start,
              e.getMessage()));
    }
    if (Arrays.stream(y).anyMatch(v -> !Double.isFinite(v))) {
      throw SimulationException.unfinished(
          phase.name() + ": a temperature is not a number any more");
    }
    recorder.endPhase(end, y);
    return y;
  }

  private SimulationException tooMuchWork(Phase phase, double start) {
    return SimulationException.unfinished(
        String.format(
            Locale.ROOT,
            "%s (from %.1f s): given up, this would take too long to compute with %d states; give the"
                + " loop fewer cells or layers, or make the session shorter",
            phase.name(),
            start,
            model.getDimension()));
  }

  private ODEIntegrator integrator(Phase phase) {
    double longest = longestStep(phase.drive());
    ODEIntegrator integrator =
        options.explicit() ? explicit(phase, longest) : linearlyImplicit(longest);
    double left = options.mostWork() / model.getDimension() - evaluations;
    integrator.setMaxEvaluations((int) Math.max(0, Math.min(left, Integer.MAX_VALUE)));
    integrator.addStepHandler(recorder);
    if (!(phase.drive() instanceof Drive.EngineOff)) {
      addLimit(integrator);
    }
    addThermostat(integrator);
    icing.watch(integrator, events);
    return integrator;
  }

  private static double longestStep(Drive drive) {
    if (drive instanceof Drive.Replay || drive instanceof Drive.Pass) {
      return MAX_REPLAY_STEP;
    }
    return drive instanceof Drive.FullLoad ? MAX_PULL_STEP : MAX_STEP;
  }

  private ODEIntegrator linearlyImplicit(double longest) {
    RosenbrockIntegrator integrator =
        new RosenbrockIntegrator(
            model,
            step.orElseThrow(),
            MIN_STEP,
            longest,
            options.absoluteTolerance(),
            options.relativeTolerance());
    integrator.setInitialStepSize(FIRST_STEP);
    return integrator;
  }

  private ODEIntegrator explicit(Phase phase, double longest) {
    double[] absolute = new double[model.getDimension()];
    double[] relative = new double[model.getDimension()];
    Arrays.fill(absolute, options.absoluteTolerance());
    Arrays.fill(relative, options.relativeTolerance());
    for (int i = 0; i < Ledger.FLOWS; i++) {
      absolute[model.ledger().first() + i] = Ledger.IGNORED;
      relative[model.ledger().first() + i] = 0;
    }
    DormandPrince54Integrator integrator =
        new DormandPrince54Integrator(MIN_STEP, longest, absolute, relative);
    integrator.setInitialStepSize(Math.min(1e-5, phase.duration() / 2));
    return integrator;
  }

  /** Notes a soaked sensor that is above the limit where the engine starts. */
  private void noteLimit(Phase phase, double start, double[] y) {
    boolean stoodBefore =
        spans.isEmpty() || spans.get(spans.size() - 1).phase().drive() instanceof Drive.EngineOff;
    boolean runs = !(phase.drive() instanceof Drive.EngineOff);
    if (stoodBefore && runs && setup.chargeLimit().isPresent()) {
      if (y[model.air().sensor()] > setup.chargeLimit().getAsDouble()) {
        events.add(new Event(start, Event.Kind.LIMIT_EXCEEDED));
      }
    }
  }

  private void addLimit(ODEIntegrator integrator) {
    int sensor = model.air().sensor();
    setup
        .chargeLimit()
        .ifPresent(
            limit ->
                integrator.addEventDetector(
                    new Crossing(
                        y -> y[sensor] - limit,
                        (time, rising) -> {
                          events.add(
                              new Event(
                                  time,
                                  rising ? Event.Kind.LIMIT_EXCEEDED : Event.Kind.LIMIT_REGAINED));
                          return false;
                        })));
  }

  private void addThermostat(ODEIntegrator integrator) {
    if (!model.thermostatRules()) {
      return;
    }
    Thermostat thermostat = setup.rig().airflow().thermostat().orElseThrow();
    integrator.addEventDetector(
        new Crossing(
            y -> felt(y) - thermostat.on(), (time, rising) -> rising && switched(time, true)));
    integrator.addEventDetector(
        new Crossing(
            y -> felt(y) - thermostat.off(), (time, rising) -> !rising && switched(time, false)));
  }

  /** Switches the fan for what the coolant did while the thermostat had no say. */
  private void resumeThermostat(double start, double[] y) {
    if (!model.thermostatRules()) {
      return;
    }
    Thermostat thermostat = setup.rig().airflow().thermostat().orElseThrow();
    double felt = felt(y);
    if (felt > thermostat.on() && !model.isFanSwitchedOn()) {
      switched(start, true);
    } else if (felt < thermostat.off() && model.isFanSwitchedOn()) {
      switched(start, false);
    }
  }

  private boolean switched(double time, boolean on) {
    model.switchFan(on);
    events.add(new Event(time, on ? Event.Kind.FAN_ON : Event.Kind.FAN_OFF));
    return true;
  }

  private void setFan(double[] y) {
    setup.rig().airflow().thermostat().ifPresent(t -> model.switchFan(felt(y) > t.on()));
  }

  /** What the thermostat feels: coolant entering the heat exchanger, or the pump without one. */
  private double felt(double[] y) {
    int exchanger = model.first(HeatExchanger.class);
    return model.entering(exchanger < 0 ? model.pumpAt() : exchanger, y);
  }

  private double sampling(Phase phase) {
    double interval =
        switch (phase.kind()) {
          case PULL, PASS, REPLAY -> options.pullSampling();
          case SETTLE, IDLE, WAIT, CRUISE -> options.waitSampling();
        };
    double whole = setup.session().endTime() - setup.session().startTime();
    return Math.max(interval, whole / MOST_SAMPLES);
  }
}
