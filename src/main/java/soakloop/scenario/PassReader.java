package soakloop.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.charge.EnginePower;
import soakloop.fluid.MoistAir;
import soakloop.quantity.Curve;
import soakloop.rig.Day;
import soakloop.rig.Rig;
import soakloop.session.AirPower;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.MeasuredPass;
import soakloop.session.Pass;
import soakloop.session.PassCourse;
import soakloop.session.Phase;

/** Reads a drag pass and what goes with it, from the burnout to the return road. */
final class PassReader {
  private final Rig rig;
  private final Day day;
  private final Optional<EnginePower> power;
  private final Optional<VehicleReader.Read> vehicle;
  private final boolean hasVehicle;

  /** Passes worked out already: most of a session's are alike. */
  private final Map<Pass, PassCourse> known = new HashMap<>();

  private int passes;

  PassReader(In root, Rig rig, Day day, Optional<EnginePower> power) {
    this.rig = rig;
    this.day = day;
    this.power = power;
    this.hasVehicle = root.has("vehicle");
    this.vehicle = new VehicleReader(root).read();
  }

  /** Returns the name of the last pass read. */
  String name() {
    return "pass " + passes;
  }

  /** Returns a pass with the phases around it; none if it cannot be. */
  List<Phase> read(In in, Cooling cooling) {
    passes++;
    List<Phase> phases = new ArrayList<>();
    burnout(in.section("burnout"), cooling).ifPresent(phases::add);
    staging(in.section("staging"), cooling).ifPresent(phases::add);
    Optional<PassCourse> course = in.has("road-speed") ? measured(in) : modelled(in);
    course.ifPresent(
        c ->
            phases.add(
                new Phase(
                    name(),
                    Phase.Kind.PASS,
                    c.duration(),
                    new Drive.Pass(c),
                    cooling,
                    OptionalDouble.empty())));
    shutdown(in.section("shutdown"), course, cooling).ifPresent(phases::add);
    returnRoad(in.section("return-road"), cooling).ifPresent(phases::add);
    in.done();
    return phases;
  }

  private Optional<Phase> burnout(In in, Cooling cooling) {
    if (!in.present()) {
      return Optional.empty();
    }
    Phase phase =
        phase(
            "burnout ",
            Phase.Kind.CRUISE,
            in.number("for"),
            new Drive.Cruise(
                in.number("engine-speed"), 0, in.number("manifold-pressure") - day.pressure()),
            cooling);
    in.done();
    return Optional.of(phase);
  }

  private Optional<Phase> staging(In in, Cooling cooling) {
    if (!in.present()) {
      return Optional.empty();
    }
    Drive drive = new Drive.Idle(rig.engine().idleSpeed());
    Phase phase = phase("staging ", Phase.Kind.IDLE, in.number("for"), drive, cooling);
    in.done();
    return Optional.of(phase);
  }

  private Optional<Phase> shutdown(In in, Optional<PassCourse> course, Cooling cooling) {
    if (!in.present()) {
      return Optional.empty();
    }
    double duration = in.number("for");
    double to = in.number("to");
    in.done();
    return course.map(
        c ->
            phase(
                "shutdown ",
                Phase.Kind.CRUISE,
                duration,
                Drive.Coast.slowing(
                    c.endSpeed(), to, duration, c.endEngineSpeed(), rig.engine().idleSpeed()),
                cooling));
  }

  private Optional<Phase> returnRoad(In in, Cooling cooling) {
    if (!in.present()) {
      return Optional.empty();
    }
    Drive drive =
        new Drive.Cruise(
            in.number("engine-speed"),
            in.number("road-speed"),
            in.number("manifold-pressure") - day.pressure());
    Phase phase = phase("return road ", Phase.Kind.CRUISE, in.number("for"), drive, cooling);
    in.done();
    return Optional.of(phase);
  }

  private Phase phase(String name, Phase.Kind kind, double duration, Drive drive, Cooling cooling) {
    return new Phase(name + passes, kind, duration, drive, cooling, OptionalDouble.empty());
  }

  private Optional<PassCourse> measured(In in) {
    for (String other : new String[] {"distance", "rollout"}) {
      in.refuse(other, "has no use beside a measured road-speed, which ends in the traps");
    }
    Optional<Curve> road =
        in.curve("road-speed").filter(curve -> isCourse(in, "road-speed", curve));
    if (in.has("engine-speed")) {
      in.refuse("launch-rpm", "has no use beside a measured engine-speed");
      Optional<Curve> engine =
          in.curve("engine-speed").filter(curve -> isCourse(in, "engine-speed", curve));
      return road.isPresent() && engine.isPresent()
          ? measured(in, road.get(), engine.get())
          : Optional.empty();
    }
    double launch = in.number("launch-rpm");
    if (!hasVehicle) {
      in.problem("road-speed", "needs an engine-speed beside it, or a section vehicle with gears");
    }
    if (road.isEmpty() || vehicle.isEmpty() || in.context().hasProblems()) {
      return Optional.empty();
    }
    return measured(
        in, road.get(), MeasuredPass.engineSpeed(vehicle.get().gearing(), road.get(), launch));
  }

  private static Optional<PassCourse> measured(In in, Curve road, Curve engine) {
    try {
      return Optional.of(MeasuredPass.of(road, engine));
    } catch (IllegalArgumentException e) {
      in.problem("road-speed", "cannot be a pass: " + e.getMessage());
      return Optional.empty();
    }
  }

  private static boolean isCourse(In in, String key, Curve curve) {
    if (in.context().hasProblems(in.path(key))) {
      return false;
    }
    if (curve.size() < 2 || curve.place(0) != 0) {
      in.problem(key, "needs at least two points over time, the first at 0 s");
      return false;
    }
    return true;
  }

  private Optional<PassCourse> modelled(In in) {
    in.refuse("engine-speed", "goes with a measured road-speed only; gears say it otherwise");
    double distance = in.number("distance");
    double rollout = in.number("rollout");
    double launch = in.number("launch-rpm");
    if (!hasVehicle) {
      in.problem("", "needs a section vehicle, which says mass, gears and tyres of the car");
    }
    if (vehicle.isEmpty() || in.context().hasProblems()) {
      return Optional.empty();
    }
    VehicleReader.Read car = vehicle.get();
    if (!(launch < car.gearing().shiftAt())) {
      in.problem("launch-rpm", "must be below vehicle.shift-at");
      return Optional.empty();
    }
    try {
      return power(in, car, launch)
          .map(watts -> new Pass(car.with(watts), density(), distance, rollout, launch))
          .map(pass -> known.computeIfAbsent(pass, Pass::run));
    } catch (IllegalArgumentException e) {
      in.problem("", "cannot be run: " + e.getMessage());
      return Optional.empty();
    }
  }

  private Optional<Curve> power(In in, VehicleReader.Read car, double launch) {
    if (car.wheelPower().isPresent()) {
      return car.wheelPower();
    }
    if (power.isEmpty()) {
      in.problem(
          "",
          "needs the car's power: vehicle.wheel-power or vehicle.crank-power; or a section power"
              + " ({} is enough), and it is worked out from the blower's air");
      return Optional.empty();
    }
    Curve made =
        new AirPower(rig, day, power.get())
            .atWheels(Math.min(launch, car.gearing().shiftAt() / 4), car.gearing().shiftAt());
    for (int i = 0; i < made.size(); i++) {
      if (!(made.value(i) > 0)) {
        in.problem(
            "",
            "finds no power from the blower's air: its drive takes more than the air gives; check"
                + " displacements, drive and boost, or state vehicle.wheel-power");
        return Optional.empty();
      }
    }
    return Optional.of(made);
  }

  private double density() {
    return MoistAir.of(day.temperature(), day.pressure(), day.humidity())
        .density(day.temperature(), day.pressure());
  }
}
