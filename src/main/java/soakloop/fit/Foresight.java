package soakloop.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import soakloop.log.Signal;
import soakloop.scenario.ScenarioException;
import soakloop.session.Session;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.Workers;

/**
 * What planned sessions would tell before they are run: how well a number would be known after so
 * many pulls of each case. Readings change in proportion to the keys; what a sensor tells then does
 * not depend on what it reads, as in {@link Adviser}.
 */
public final class Foresight {
  private static final double STEP = 0.05;

  /** How long after a pull readings still count, s: until the sensor's peak is in. */
  private static final double AFTER = 30;

  private final Posterior posterior;
  private final List<List<Trace>> traces;

  private Foresight(Posterior posterior, List<List<Trace>> traces) {
    this.posterior = posterior;
    this.traces = traces;
  }

  /**
   * Runs the sessions.
   *
   * @param posterior of cases whose data say which signals will be logged
   * @param pulls most that will be asked for: shorter sessions go on with waits and pulls like
   *     their last
   * @param threads runs at a time
   * @return empty if some session has no pull or cannot run
   */
  public static Optional<Foresight> of(Posterior posterior, int pulls, int threads) {
    List<List<Trace>> all = new ArrayList<>();
    for (int i = 0; i < posterior.cases().size(); i++) {
      Optional<List<Trace>> ran = traces(posterior, i, pulls, threads);
      if (ran.isEmpty()) {
        return Optional.empty();
      }
      all.add(ran.get());
    }
    return Optional.of(new Foresight(posterior, all));
  }

  private static Optional<List<Trace>> traces(
      Posterior posterior, int inCase, int pulls, int threads) {
    List<FitKey> keys = posterior.keyList();
    List<Callable<Optional<Trace>>> tasks = new ArrayList<>();
    tasks.add(() -> run(posterior, inCase, posterior.likeliest(), pulls));
    for (int k = 0; k < keys.size(); k++) {
      if (keys.get(k).isOf(inCase)) {
        for (double step : new double[] {STEP, -STEP}) {
          Place moved = posterior.moved(k, step);
          tasks.add(() -> run(posterior, inCase, moved, pulls));
        }
      }
    }
    List<Trace> ran = new ArrayList<>();
    try {
      Workers.run(threads, tasks, t -> t.ifPresent(ran::add));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    if (ran.size() < tasks.size()) {
      return Optional.empty();
    }
    List<Trace> whole = new ArrayList<>(ran.subList(0, 1));
    int next = 1;
    for (FitKey key : keys) {
      for (int way = 0; way < 2; way++) {
        whole.add(key.isOf(inCase) ? ran.get(next++) : ran.get(0));
      }
    }
    return Optional.of(List.copyOf(whole));
  }

  private static Optional<Trace> run(Posterior posterior, int inCase, Place place, int pulls) {
    try {
      Setup setup =
          posterior
              .cases()
              .get(inCase)
              .scenario()
              .with(place.changes(path -> inCase))
              .setup()
              .withoutLimit();
      Optional<Setup> longer = Optional.of(setup);
      while (longer.isPresent() && pulls(longer.get().session()) < pulls) {
        longer = NextPull.of(longer.get());
      }
      return longer.isEmpty()
          ? Optional.empty()
          : Optional.of(Simulation.run(longer.get(), FitModel.OPTIONS));
    } catch (ScenarioException | SimulationException e) {
      return Optional.empty();
    }
  }

  private static int pulls(Session session) {
    return (int) session.phases().stream().filter(p -> p.kind().isCounted()).count();
  }

  /**
   * Returns the standard deviation that a number would have once every case has been logged so far.
   *
   * @param gradient what the number changes by for each key
   * @param pulls of each case, 1 or more
   */
  public double deviation(RealVector gradient, int pulls) {
    RealMatrix known = Evidence.inverse(posterior.covariance());
    for (int i = 0; i < traces.size(); i++) {
      Trace own = traces.get(i).get(0);
      List<Trace.Span> spans = own.pulls();
      double to =
          Math.min(
              own.time(own.size() - 1), spans.get(Math.min(pulls, spans.size()) - 1).end() + AFTER);
      for (SignalData data : posterior.cases().get(i).data()) {
        known = known.add(news(i, data.signal(), to, pulls));
      }
    }
    RealMatrix then = Evidence.inverse(known);
    return Math.sqrt(gradient.dotProduct(then.operate(gradient)));
  }

  private RealMatrix news(int inCase, Signal signal, double to, int pulls) {
    // What it reads wrong throughout is a key of its own.
    Probe probe = new Probe("", signal.channel().orElseThrow(), Optional.of(signal), 0.3, false, 0);
    Map<Integer, FitKey> biases = new HashMap<>();
    List<FitKey> keys = posterior.keyList();
    for (int k = 0; k < keys.size(); k++) {
      if (keys.get(k).moves(inCase, new Role.Bias(signal))) {
        biases.put(k, keys.get(k));
      }
    }
    return new ProbeNews(traces.get(inCase), STEP, 0, to, pulls)
        .of(
            probe,
            posterior.error(signal),
            (k, step) -> {
              FitKey bias = biases.get(k);
              return bias == null ? 0.0 : bias.value(step);
            });
  }
}
