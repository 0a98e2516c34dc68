package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.quantity.Curve;
import soakloop.rig.Day;
import soakloop.rig.Engine;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;

/** Reads what the car does, step by step, with repeats written out. */
final class SessionReader {
  private static final int MAX_PHASES = 2000;
  private static final List<String> STEPS =
      List.of("settle", "idle", "pull", "wait", "cruise", "replay");

  private final In root;
  private final Engine engine;
  private final Day day;
  private final Optional<Scenario.Logged> logged;
  private final List<Phase> phases = new ArrayList<>();
  private int pulls;
  private int waits;

  SessionReader(In root, Engine engine, Day day, Optional<Scenario.Logged> logged) {
    this.root = root;
    this.engine = engine;
    this.day = day;
    this.logged = logged;
  }

  List<Phase> read() {
    steps(root.sections("session"));
    if (root.has("session") && phases.isEmpty() && !root.context().hasProblems()) {
      root.problem("session", "has no steps");
    }
    return phases;
  }

  private void steps(List<In> items) {
    for (In item : items) {
      step(item);
      if (phases.size() > MAX_PHASES) {
        item.problem("", "makes the session longer than " + MAX_PHASES + " steps");
        phases.clear();
        return;
      }
    }
  }

  private void step(In item) {
    if (item.has("pulls")) {
      int times = item.count("pulls");
      if (!item.has("pull")) {
        item.problem("pulls", "needs a pull beside it, and may have a wait");
      }
      for (int i = 0; i < times && phases.size() <= MAX_PHASES; i++) {
        pull(item.section("pull"));
        if (item.has("wait")) {
          waiting(item.section("wait"));
        }
      }
    } else if (item.has("repeat")) {
      int times = item.count("repeat");
      List<In> inner = item.sections("steps", "session");
      if (!item.has("steps")) {
        item.problem("repeat", "needs steps beside it");
      }
      for (int i = 0; i < times && phases.size() <= MAX_PHASES; i++) {
        steps(inner);
      }
    } else {
      single(item);
    }
    item.done();
  }

  private void single(In item) {
    List<String> found = STEPS.stream().filter(item::has).toList();
    if (found.size() != 1) {
      item.problem(
          "",
          "needs one of "
              + String.join(", ", STEPS)
              + ", or pulls with a pull, or repeat with steps; found "
              + (found.isEmpty() ? "none" : String.join(", ", found)));
      found.forEach(item::section);
      return;
    }
    In in = item.section(found.get(0));
    switch (found.get(0)) {
      case "settle" -> settle(in);
      case "idle" -> add("idle", Phase.Kind.IDLE, in.number("for"), idle(), in);
      case "pull" -> pull(in);
      case "wait" -> waiting(in);
      case "cruise" -> cruise(in);
      default -> replay(in);
    }
  }

  private Drive idle() {
    return new Drive.Idle(engine.idleSpeed());
  }

  private void settle(In in) {
    if (!phases.isEmpty()) {
      in.problem("", "comes first or not at all");
      return;
    }
    add("settle", Phase.Kind.SETTLE, in.number("for"), idle(), in);
  }

  private void waiting(In in) {
    boolean off = in.choice("engine").equals("off");
    Drive drive = off ? new Drive.EngineOff() : idle();
    waits++;
    String name = pulls > 0 ? "wait after pull " + pulls : "wait " + waits;
    add(name, Phase.Kind.WAIT, in.number("for"), drive, in);
  }

  private void cruise(In in) {
    Drive drive =
        new Drive.Cruise(
            in.number("engine-speed"),
            in.number("road-speed"),
            in.number("manifold-pressure") - day.pressure());
    add("cruise", Phase.Kind.CRUISE, in.number("for"), drive, in);
  }

  private void pull(In in) {
    pulls++;
    Curve speed = engineSpeed(in);
    double duration = speed.place(speed.size() - 1);
    OptionalDouble countedTo = in.optional("counted-to");
    In road = in.section("road-speed");
    Curve roadSpeed = Curve.constant(0);
    if (road.present()) {
      roadSpeed =
          Curve.of(
              new double[] {0, duration}, new double[] {road.number("from"), road.number("to")});
      road.done();
    }
    OptionalDouble countedAt = OptionalDouble.empty();
    if (countedTo.isPresent()) {
      countedAt = reaches(speed, countedTo.getAsDouble());
      if (countedAt.isEmpty()) {
        in.problem("counted-to", "is an engine speed that the pull does not reach");
      }
    }
    Drive drive = new Drive.FullLoad(speed, roadSpeed);
    Cooling cooling = cooling(in);
    in.done();
    phases.add(new Phase("pull " + pulls, Phase.Kind.PULL, duration, drive, cooling, countedAt));
  }

  private static Curve engineSpeed(In in) {
    Optional<Curve> curve = in.curve("curve");
    OptionalDouble from = in.optional("from");
    OptionalDouble to = in.optional("to");
    OptionalDouble time = in.optional("in");
    Curve fallback = Curve.of(new double[] {0, 10}, new double[] {40, 100});
    if (curve.isPresent()) {
      if (from.isPresent() || to.isPresent() || time.isPresent()) {
        in.problem("curve", "takes the place of from, to and in; give one or the other");
      }
      if (curve.get().size() < 2 || curve.get().place(0) != 0) {
        in.problem("curve", "needs at least two points, the first at 0 s");
        return fallback;
      }
      return curve.get();
    }
    if (from.isEmpty() || to.isEmpty() || time.isEmpty()) {
      if (in.present()) {
        in.problem("", "needs from, to and in, or a curve");
      }
      return fallback;
    }
    if (!(to.getAsDouble() > from.getAsDouble())) {
      in.problem("to", "must be above from");
      return fallback;
    }
    return Curve.of(
        new double[] {0, time.getAsDouble()}, new double[] {from.getAsDouble(), to.getAsDouble()});
  }

  /** Returns when a curve first rises to a value. */
  static OptionalDouble reaches(Curve curve, double value) {
    if (curve.value(0) >= value) {
      return curve.value(0) == value ? OptionalDouble.of(curve.place(0)) : OptionalDouble.empty();
    }
    for (int i = 1; i < curve.size(); i++) {
      if (curve.value(i) >= value) {
        double share = (value - curve.value(i - 1)) / (curve.value(i) - curve.value(i - 1));
        return OptionalDouble.of(
            curve.place(i - 1) + share * (curve.place(i) - curve.place(i - 1)));
      }
    }
    return OptionalDouble.empty();
  }

  private void replay(In in) {
    new ReplayReader(in, logged, cooling(in), pulls).read().forEach(phases::add);
    pulls = (int) phases.stream().filter(p -> p.kind() == Phase.Kind.PULL).count();
    in.done();
  }

  private void add(String name, Phase.Kind kind, double duration, Drive drive, In in) {
    Cooling cooling = cooling(in);
    in.done();
    phases.add(new Phase(name, kind, duration, drive, cooling, OptionalDouble.empty()));
  }

  private static Cooling cooling(In in) {
    Cooling.Fan fan =
        switch (in.choice("car-fan")) {
          case "on" -> Cooling.Fan.ON;
          case "off" -> Cooling.Fan.OFF;
          default -> Cooling.Fan.AUTO;
        };
    return new Cooling(in.on("pump"), in.on("shop-fan"), fan);
  }
}
