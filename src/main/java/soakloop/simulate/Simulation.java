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
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.simulate.Trace.Event;

/**
 * Runs a session on a rig: the whole of it, or piece by piece from any state it was in.
 *
 * <p>A simulation compiles its car once and may run it on as often as wanted, from states kept
 * before; each such run begins with what its state says and nothing of the run before it. Not
 * thread-safe.
 */
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
  private final LoopModel model;
  private final Icing icing;
  private final FanSwitch fan;
  private final Icing.Memory noIceYet;
  private Optional<RosenbrockStep> step = Optional.empty();

  // What holds for the running stretch.
  private Options options;
  private Recorder recorder;
  private StateKeeper keeper;
  private final List<Event> events = new ArrayList<>();
  private final List<Trace.Span> spans = new ArrayList<>();
  private Ledger.Stored opened;
  private double whole;
  private boolean stood = true;
  private long evaluations;

  private Simulation(Setup setup) throws SimulationException {
    this.setup = setup;
    this.model = model(setup);
    this.icing = new Icing(model);
    this.fan = new FanSwitch(model);
    this.noIceYet = icing.memory();
    this.options = Options.DEFAULT;
    this.recorder = new Recorder(model);
    this.keeper = new StateKeeper(new double[0], model.getDimension(), this::state);
    this.opened = new Ledger.Stored(0, 0, 0, 0, 0);
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
    Simulation car = of(setup);
    return car.runOn(car.start(), setup.session().phases(), options).trace();
  }

  /**
   * Compiles a car to be run piece by piece.
   *
   * @param setup what to run; its session says when and how it starts
   * @throws SimulationException if it has too many states
   */
  public static Simulation of(Setup setup) throws SimulationException {
    return new Simulation(setup);
  }

  /**
   * Returns the state that the session starts from.
   *
   * @throws SimulationException if the start cannot be
   */
  public CarState start() throws SimulationException {
    double[] y = InitialState.of(model, setup);
    fan.set(y);
    icing.recall(noIceYet);
    stood = true;
    opened = model.stored(y);
    return state(setup.session().startTime(), y);
  }

  /**
   * Runs the car on.
   *
   * @param from where it stands; a state of the same setup
   * @param phases what it does next, in order, at least one
   * @param how how that is computed and recorded
   * @param keep times at which states are kept, s of the session, never falling, within the phases
   * @return what happened
   * @throws SimulationException if the run breaks off
   * @throws IllegalArgumentException if the state is of another car or a time is outside
   */
  public Stretch runOn(CarState from, List<Phase> phases, Options how, double... keep)
      throws SimulationException {
    double[] y = from.y();
    if (y.length != model.getDimension()) {
      throw new IllegalArgumentException("a state of another car");
    }
    options = how;
    recorder = new Recorder(model);
    keeper = new StateKeeper(keep, y.length, this::state);
    events.clear();
    spans.clear();
    evaluations = 0;
    whole = phases.stream().mapToDouble(Phase::duration).sum();
    stood = from.stood();
    opened = from.opened();
    model.switchFan(from.fanOn());
    icing.recall(from.ice());
    keeper.start(from);
    double time = from.time();
    for (Phase phase : phases) {
      double end = time + phase.duration();
      y = runPhase(phase, time, end, y);
      spans.add(new Trace.Span(phase, time, end));
      time = end;
      if (phase.kind() == Phase.Kind.SETTLE) {
        model.ledger().clear(y);
        opened = model.stored(y);
      }
    }
    Trace trace =
        new Trace(
            recorder.times(),
            recorder.values(),
            spans,
            events,
            model.ledger().close(opened, model.stored(y), y),
            new Trace.Effort(model.getDimension(), recorder.steps(), evaluations));
    return new Stretch(trace, keeper.kept(), state(time, y));
  }

  private CarState state(double time, double[] y) {
    return new CarState(time, y, model.isFanSwitchedOn(), stood, icing.memory(), opened);
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

  private double[] runPhase(Phase phase, double start, double end, double[] from)
      throws SimulationException {
    double[] y;
    icing.begin(phase, from);
    try {
      model.startPhase(phase, start, from);
      if (step.isEmpty() && !options.explicit()) {
        step = Optional.of(new RosenbrockStep(model, start, from));
      }
      fan.resume(start, from, events);
      noteLimit(phase, start, from);
      stood = phase.drive() instanceof Drive.EngineOff;
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
    integrator.addStepHandler(keeper);
    if (!(phase.drive() instanceof Drive.EngineOff)) {
      addLimit(integrator);
    }
    fan.watch(integrator, events);
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
    boolean runs = !(phase.drive() instanceof Drive.EngineOff);
    if (stood && runs && setup.chargeLimit().isPresent()) {
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

  private double sampling(Phase phase) {
    double interval =
        switch (phase.kind()) {
          case PULL, PASS, REPLAY -> options.pullSampling();
          case SETTLE, IDLE, WAIT, CRUISE -> options.waitSampling();
        };
    return Math.max(interval, whole / MOST_SAMPLES);
  }
}
