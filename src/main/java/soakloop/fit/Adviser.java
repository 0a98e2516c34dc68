package soakloop.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.scenario.ScenarioException;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.Workers;

/**
 * Ranks what could be measured next by how far it is expected to narrow a quantity of the next
 * pull.
 *
 * <p>About the likeliest place readings change in proportion to the keys. What a sensor would tell
 * then does not depend on what it would read: with slopes J and covariance C of its readings the
 * keys' covariance S becomes (S^-1 + J'C^-1 J)^-1, and a quantity of gradient g has the variance
 * g'Sg (D. V. Lindley, "On a measure of the information provided by an experiment", 1956, for the
 * normal linear case; from memory). What a new sensor may read wrong throughout is allowed for.
 */
final class Adviser {
  private static final double STEP = 0.05;

  /** How much longer a longer wait is. */
  private static final double LONGER = 3;

  /** Share of the boost in a pull at less of it. */
  private static final double LESS = 0.7;

  private final Fitted fitted;
  private final int inCase;
  private final RealMatrix known;
  private final RealVector gradient;
  private final double rest;

  /** A session that readings are taken of. */
  private interface Plan {
    Setup of(Setup own);
  }

  private Adviser(Fitted fitted, int inCase, RealVector gradient, double rest) {
    this.fitted = fitted;
    this.inCase = inCase;
    this.known = Evidence.inverse(fitted.covariance());
    this.gradient = gradient;
    this.rest = rest;
  }

  /**
   * Ranks sensors and tests, the most telling first.
   *
   * @param fitted what is known
   * @param inCase whose next pull
   * @param quantity of it
   * @return nothing if there is no next pull
   */
  static List<Advice> of(Fitted fitted, int inCase, Quantity quantity) {
    if (NextPull.of(fitted.model().cases().get(inCase).scenario().setup()).isEmpty()) {
      return List.of();
    }
    Adviser adviser = new Adviser(fitted, inCase, new ArrayRealVector(), 0);
    return new Adviser(fitted, inCase, adviser.gradient(quantity), 0).ranked();
  }

  /**
   * Ranks sensors and tests for any number, the most telling first.
   *
   * @param fitted what is known
   * @param inCase whose session is gone on with
   * @param gradient what the number changes by for each key
   * @param rest its variance from what no log tells of
   * @return nothing if there is no next pull
   */
  static List<Advice> of(Fitted fitted, int inCase, RealVector gradient, double rest) {
    return NextPull.of(fitted.model().cases().get(inCase).scenario().setup()).isEmpty()
        ? List.of()
        : new Adviser(fitted, inCase, gradient, rest).ranked();
  }

  private List<Advice> ranked() {
    List<Advice> all = new ArrayList<>();
    List<SignalData> data = fitted.model().cases().get(inCase).data();
    List<Trace> own = traces(setup -> setup).orElse(List.of());
    for (Probe probe : Probe.ALL) {
      boolean there = data.stream().anyMatch(d -> probe.signal().equals(Optional.of(d.signal())));
      if (!there && !own.isEmpty() && Double.isFinite(own.get(0).value(probe.channel(), 0))) {
        all.add(advice(probe.name(), false, news(probe, own, 0)));
      }
    }
    test(all, "one more pull like the last", s -> s);
    test(all, "one more pull after a wait three times as long", s -> s.wait(Adviser::longer));
    test(all, "one more pull after a wait with the pump off", s -> s.wait(Adviser::withoutPump));
    // Of a boost that is left to the pulleys no share can be named before the pull is run.
    Optional<Curve> boost = fitted.model().cases().get(inCase).scenario().rig().boost();
    boost.ifPresent(
        stated ->
            test(
                all,
                "one more pull at 70 % of the boost",
                s -> s.pull(pull -> atLessBoost(pull, stated))));
    all.sort(Comparator.comparingDouble(Advice::then));
    return List.copyOf(all);
  }

  private Advice advice(String what, boolean isTest, RealMatrix news) {
    RealMatrix then = Evidence.inverse(known.add(news));
    return new Advice(
        what,
        isTest,
        Math.sqrt(rest + gradient.dotProduct(fitted.covariance().operate(gradient))),
        Math.sqrt(rest + gradient.dotProduct(then.operate(gradient))));
  }

  /** What is changed of the session that is added. */
  private record Changes(NextPull.Change waiting, NextPull.Change pulling) {
    Changes wait(NextPull.Change change) {
      return new Changes(change, pulling);
    }

    Changes pull(NextPull.Change change) {
      return new Changes(waiting, change);
    }
  }

  /** A way of changing what is added. */
  private interface Variation {
    Changes of(Changes plain);
  }

  private void test(List<Advice> all, String what, Variation variation) {
    Changes changes = variation.of(new Changes(p -> p, p -> p));
    Optional<List<Trace>> ran =
        traces(own -> NextPull.changed(own, changes.waiting(), changes.pulling()).orElseThrow());
    if (ran.isEmpty()) {
      return;
    }
    List<Trace> traces = ran.get();
    List<Trace.Span> pulls = traces.get(0).pulls();
    // What was logged already, up to the end of the last pull, is not counted again.
    double from = pulls.size() < 2 ? 0 : pulls.get(pulls.size() - 2).end();
    RealMatrix news = fitted.covariance().createMatrix(keys(), keys());
    for (SignalData data : fitted.model().cases().get(inCase).data()) {
      Signal signal = data.signal();
      Probe probe =
          new Probe("", signal.channel().orElseThrow(), Optional.of(signal), 0.3, false, 0);
      news = news.add(news(probe, traces, from));
    }
    all.add(advice(what, true, news));
  }

  private static Phase longer(Phase wait) {
    return NextPull.lasting(wait, LONGER * wait.duration());
  }

  private static Phase withoutPump(Phase wait) {
    Cooling cooling = new Cooling(false, wait.cooling().shopFan(), wait.cooling().carFan());
    return new Phase(
        wait.name(), wait.kind(), wait.duration(), wait.drive(), cooling, wait.countedAt());
  }

  private static Phase atLessBoost(Phase pull, Curve stated) {
    if (!(pull.drive() instanceof Drive.FullLoad full)) {
      return pull;
    }
    int points = 20;
    double[] times = new double[points + 1];
    double[] boost = new double[points + 1];
    for (int i = 0; i <= points; i++) {
      times[i] = pull.duration() * i / points;
      boost[i] = LESS * stated.at(full.engineSpeed().at(times[i]));
    }
    Drive.Replay less =
        new Drive.Replay(
            0,
            full.engineSpeed(),
            Optional.of(Curve.of(times, boost)),
            Optional.of(full.roadSpeed()),
            Optional.empty(),
            Optional.empty());
    return new Phase(
        pull.name(), pull.kind(), pull.duration(), less, pull.cooling(), pull.countedAt());
  }

  private int keys() {
    return fitted.place().getDimension();
  }

  /**
   * Runs a plan at the likeliest place, then with each key moved up and down; empty if any of these
   * cannot be.
   */
  private Optional<List<Trace>> traces(Plan plan) {
    List<Callable<Optional<Trace>>> tasks = new ArrayList<>();
    tasks.add(() -> run(plan, fitted.place().toArray()));
    for (int k = 0; k < keys(); k++) {
      for (double step : new double[] {STEP, -STEP}) {
        double[] place = fitted.place().toArray();
        place[k] += step;
        tasks.add(() -> run(plan, place));
      }
    }
    List<Trace> traces = new ArrayList<>();
    try {
      Workers.run(fitted.model().threads(), tasks, t -> t.ifPresent(traces::add));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    return traces.size() == tasks.size() ? Optional.of(List.copyOf(traces)) : Optional.empty();
  }

  private Optional<Trace> run(Plan plan, double[] place) {
    try {
      Setup own = fitted.model().scenario(inCase, place).setup().withoutLimit();
      return Optional.of(Simulation.run(plan.of(own), FitModel.OPTIONS));
    } catch (ScenarioException | SimulationException e) {
      return Optional.empty();
    }
  }

  private RealVector gradient(Quantity quantity) {
    List<Trace> traces = traces(own -> NextPull.of(own).orElseThrow()).orElse(List.of());
    RealVector slope = new ArrayRealVector(keys());
    if (traces.isEmpty()) {
      return slope;
    }
    for (int k = 0; k < keys(); k++) {
      double up = quantity.of(traces.get(1 + 2 * k)) + shift(quantity, k, STEP);
      double down = quantity.of(traces.get(2 + 2 * k)) + shift(quantity, k, -STEP);
      slope.setEntry(k, (up - down) / (2 * STEP));
    }
    return slope;
  }

  private double shift(Quantity quantity, int key, double step) {
    return quantity.isOfSensor() ? bias(Signal.CHARGE_TEMPERATURE, key, step) : 0;
  }

  private double bias(Signal signal, int key, double step) {
    double[] place = fitted.place().toArray();
    place[key] += step;
    return fitted.model().of(inCase, new Role.Bias(signal), place);
  }

  /** Returns what a probe's readings tell from a time on. */
  private RealMatrix news(Probe probe, List<Trace> traces, double from) {
    Trace own = traces.get(0);
    double end = own.time(own.size() - 1);
    int pulls = fitted.model().cases().get(inCase).pulls();
    CorrelatedError error =
        probe
            .signal()
            .map(s -> fitted.errors().getOrDefault(s, Evidence.USUAL))
            .orElse(Evidence.USUAL);
    return new ProbeNews(traces, STEP, from, end, pulls)
        .of(probe, error, (k, step) -> probe.signal().map(s -> bias(s, k, step)).orElse(0.0));
  }
}
