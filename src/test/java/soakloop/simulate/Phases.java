package soakloop.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import soakloop.quantity.Curve;
import soakloop.rig.Rig;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.session.Session;

/** Stretches of sessions for the tests. */
final class Phases {
  private static final Cooling PUMP_OFF = new Cooling(false, true, Cooling.Fan.AUTO);

  private Phases() {}

  /** An instant with the engine off, so that metal starts the same whatever the core. */
  static Phase parked() {
    return engineOff(0.05);
  }

  static Phase engineOff(double seconds) {
    return new Phase(
        "off",
        Phase.Kind.WAIT,
        seconds,
        new Drive.EngineOff(),
        Cooling.ALL,
        OptionalDouble.empty());
  }

  static Phase idle(Rig rig, double seconds) {
    return new Phase(
        "idle",
        Phase.Kind.WAIT,
        seconds,
        new Drive.Idle(rig.engine().idleSpeed()),
        Cooling.ALL,
        OptionalDouble.empty());
  }

  static Phase pull(RandomRigs random, double seconds) {
    double from = random.between(20, 55);
    double to = from + random.between(30, 90);
    double road = random.chance(0.5) ? 0 : random.between(5, 40);
    return pull(from, to, seconds, road);
  }

  /** A straight sweep, rev/s, road speed rising to {@code road} m/s. */
  static Phase pull(double from, double to, double seconds, double road) {
    Curve speed = Curve.of(new double[] {0, seconds}, new double[] {from, to});
    Curve along = Curve.of(new double[] {0, seconds}, new double[] {0, road});
    return new Phase(
        "pull",
        Phase.Kind.PULL,
        seconds,
        new Drive.FullLoad(speed, along),
        Cooling.ALL,
        OptionalDouble.empty());
  }

  static Phase pumpOff(Phase phase) {
    return new Phase(
        phase.name() + ", pump off",
        phase.kind(),
        phase.duration(),
        phase.drive(),
        PUMP_OFF,
        phase.countedAt());
  }

  /** A little of everything: idling, pulls, waits with engine and pump on or off, the road. */
  static Session mixed(RandomRigs random, Rig rig) {
    List<Phase> phases = new ArrayList<>();
    if (random.chance(0.5)) {
      phases.add(idle(rig, random.between(1, 20)));
    }
    phases.add(pull(random, random.between(3, 15)));
    Phase wait =
        random.chance(0.5) ? idle(rig, random.between(5, 40)) : engineOff(random.between(5, 40));
    phases.add(random.chance(0.4) ? pumpOff(wait) : wait);
    phases.add(
        new Phase(
            "road",
            Phase.Kind.CRUISE,
            random.between(5, 30),
            new Drive.Cruise(
                random.between(20, 60), random.between(0, 40), random.between(-60e3, 30e3)),
            Cooling.ALL,
            OptionalDouble.empty()));
    Phase last = pull(random, random.between(3, 12));
    phases.add(random.chance(0.2) ? pumpOff(last) : last);
    return new Session(phases);
  }
}
