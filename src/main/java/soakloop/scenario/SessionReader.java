package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.charge.EnginePower;
import soakloop.quantity.Curve;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.rig.Day;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.IceAdded;
import soakloop.session.Phase;

/** Reads what the car does, step by step, with repeats written out. */
final class SessionReader {
  /** Longest session, s. */
  private static final double LONGEST = 7 * 24 * 3600.0;

  private static final int MAX_STEPS = 2000;
  private static final List<String> STEPS =
      List.of("settle", "idle", "pull", "pass", "wait", "cruise", "replay");

  private final In root;
  private final boolean iced;
  private final Rig rig;
  private final Day day;
  private final Optional<Scenario.Logged> logged;
  private final PassReader passes;
  private final List<Phase> phases = new ArrayList<>();
  private int pulls;
  private int waits;

  /** What a wait comes after, such as "pull 2"; empty before the first. */
  private String counted = "";

  private int stepsRead;
  private boolean tooLong;

  SessionReader(
      In root, Rig rig, Day day, Optional<EnginePower> power, Optional<Scenario.Logged> logged) {
    this.root = root;
    this.iced =
        rig.loop().pieces().stream().anyMatch(p -> p instanceof Reservoir r && r.ice().isPresent());
    this.rig = rig;
    this.day = day;
    this.logged = logged;
    this.passes = new PassReader(root, rig, day, power);
  }

  List<Phase> read() {
    steps(root.sections("session"));
    double seconds = phases.stream().mapToDouble(Phase::duration).sum();
    if (seconds > LONGEST) {
      root.problem(
          "session", "lasts " + Math.round(seconds / 3600) + " h; allowed: 168 h (seven days)");
    }
    return phases;
  }

  private void steps(List<In> items) {
    for (In item : items) {
      if (tooLong) {
        return;
      }
      stepsRead++;
      if (stepsRead > MAX_STEPS || phases.size() > MAX_STEPS) {
        tooLong = true;
        item.problem("", "makes the session longer than " + MAX_STEPS + " steps");
        return;
      }
      step(item);
    }
  }

  private void step(In item) {
    if (item.has("pulls")) {
      alone(item, "pulls", List.of("pull", "wait"));
      pulls(item);
    } else if (item.has("repeat") || item.has("steps")) {
      alone(item, "repeat", List.of("steps"));
      repeat(item);
    } else {
      single(item);
    }
    item.done();
  }

  /** Notes the steps that stand where they do not belong. */
  private static void alone(In item, String head, List<String> beside) {
    for (String other : KeyTable.get().below("session")) {
      if (!other.equals(head) && !beside.contains(other)) {
        item.refuse(
            other,
            "does not go with " + head + "; make it a step of its own, with a dash before it");
      }
    }
  }

  private void pulls(In item) {
    if (!item.has("pull")) {
      item.problem("pulls", "counts the pull that stands beside it; there is none");
    }
    int times = item.count("pulls");
    for (int i = 0; i < times; i++) {
      pull(item.section("pull"));
      if (item.has("wait")) {
        waiting(item.section("wait"));
      }
    }
  }

  private void repeat(In item) {
    if (!item.has("repeat") || !item.has("steps")) {
      item.problem("", "needs both: repeat, how many times, and steps, a list of what to repeat");
    }
    int times = item.optional("repeat").isPresent() ? item.count("repeat") : 1;
    List<In> inner = item.has("steps") ? item.sections("steps", "session") : List.of();
    for (int i = 0; i < times && !tooLong; i++) {
      steps(inner);
    }
  }

  private void single(In item) {
    List<String> found = STEPS.stream().filter(item::has).toList();
    if (found.isEmpty()) {
      item.problem(
          "",
          "is no step: it takes "
              + Wanted.oneOf(STEPS)
              + "; or pulls with a pull and a wait; or repeat with steps");
      return;
    }
    for (String other : found.subList(1, found.size())) {
      String counted = found.contains("pull") && other.equals("wait") ? ", or add `pulls: 1`" : "";
      item.refuse(
          other, "does not go with " + found.get(0) + "; give it a dash of its own" + counted);
    }
    In in = item.section(found.get(0));
    switch (found.get(0)) {
      case "settle" -> settle(in);
      case "idle" -> add("idle", Phase.Kind.IDLE, in.number("for"), idle(), in);
      case "pull" -> pull(in);
      case "pass" -> pass(in);
      case "wait" -> waiting(in);
      case "cruise" -> cruise(in);
      default -> replay(in);
    }
  }

  private Drive idle() {
    return new Drive.Idle(rig.engine().idleSpeed());
  }

  private void settle(In in) {
    if (!phases.isEmpty()) {
      in.problem("", "comes first, before time zero, or not at all");
      return;
    }
    add("settle", Phase.Kind.SETTLE, in.number("for"), idle(), in);
  }

  private void waiting(In in) {
    boolean off = in.choice("engine").equals("off");
    Drive drive = off ? new Drive.EngineOff() : idle();
    waits++;
    String name = counted.isEmpty() ? "wait " + waits : "wait after " + counted;
    double duration = in.number("for");
    Optional<IceAdded> ice = ice(in);
    Cooling cooling =
        new Cooling(
            in.on("pump"),
            in.on("shop-fan"),
            fan(in),
            in.on("chiller"),
            in.choice("hood").equals("open"));
    in.done();
    phases.add(
        new Phase(name, Phase.Kind.WAIT, duration, drive, cooling, OptionalDouble.empty(), ice));
  }

  private Optional<IceAdded> ice(In in) {
    if (!in.has("ice")) {
      in.refuse("drain", "makes room for ice; say how much ice goes in");
      return Optional.empty();
    }
    if (!iced && !in.context().hasProblems()) {
      in.problem("ice", "needs a reservoir with a section ice, which says what the ice is like");
    }
    return Optional.of(new IceAdded(in.number("ice"), in.on("drain")));
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
        in.problem(
            "counted-to", "is an engine speed that the pull does not reach; " + range(speed));
      }
    }
    Drive drive = new Drive.FullLoad(speed, roadSpeed);
    Cooling cooling = cooling(in);
    in.done();
    counted = "pull " + pulls;
    phases.add(new Phase(counted, Phase.Kind.PULL, duration, drive, cooling, countedAt));
  }

  /** No shop fan goes along with a car on a strip. */
  private void pass(In in) {
    phases.addAll(passes.read(in, new Cooling(in.on("pump"), false, fan(in), in.on("chiller"))));
    counted = passes.name();
  }

  private static Curve engineSpeed(In in) {
    Curve fallback = Curve.of(new double[] {0, 10}, new double[] {5, 400});
    if (in.has("curve")) {
      for (String other : new String[] {"from", "to", "in"}) {
        in.refuse(other, "has no use beside curve; give one or the other");
      }
      Curve curve = in.curve("curve").orElse(fallback);
      if (in.context().hasProblems(in.path("curve"))) {
        return fallback;
      }
      if (curve.size() < 2 || curve.place(0) != 0) {
        in.problem("curve", "needs at least two points, the first at 0 s");
        return fallback;
      }
      return curve;
    }
    OptionalDouble from = in.optional("from");
    OptionalDouble to = in.optional("to");
    OptionalDouble time = in.optional("in");
    if (from.isEmpty() || to.isEmpty() || time.isEmpty()) {
      if (in.present()) {
        in.problem("", "needs from, to and in (the time it takes), or else a curve");
      }
      return fallback;
    }
    boolean good =
        !in.context().hasProblems(in.path("from")) && !in.context().hasProblems(in.path("to"));
    if (!(to.getAsDouble() > from.getAsDouble())) {
      if (good) {
        in.problem("to", "must be above from");
      }
      return fallback;
    }
    return good
        ? Curve.of(
            new double[] {0, time.getAsDouble()},
            new double[] {from.getAsDouble(), to.getAsDouble()})
        : fallback;
  }

  private static String range(Curve speed) {
    Unit rpm = Dimension.ROTATION.require("rpm");
    double top = 0;
    for (int i = 0; i < speed.size(); i++) {
      top = Math.max(top, speed.value(i));
    }
    return "it goes from " + rpm.format(speed.value(0), 0) + " to " + rpm.format(top, 0) + " rpm";
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
    new ReplayReader(in, logged, rig.boost(), cooling(in), pulls).read().forEach(phases::add);
    pulls = (int) phases.stream().filter(p -> p.kind() == Phase.Kind.PULL).count();
    counted = pulls > 0 ? "pull " + pulls : counted;
    in.done();
  }

  private void add(String name, Phase.Kind kind, double duration, Drive drive, In in) {
    Cooling cooling = cooling(in);
    in.done();
    phases.add(new Phase(name, kind, duration, drive, cooling, OptionalDouble.empty()));
  }

  private static Cooling cooling(In in) {
    return new Cooling(in.on("pump"), in.on("shop-fan"), fan(in), in.on("chiller"));
  }

  private static Cooling.Fan fan(In in) {
    return switch (in.choice("car-fan")) {
      case "on" -> Cooling.Fan.ON;
      case "off" -> Cooling.Fan.OFF;
      default -> Cooling.Fan.AUTO;
    };
  }
}
