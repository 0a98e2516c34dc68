package soakloop.versus;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import soakloop.charge.BlowerSize;
import soakloop.quantity.Curve;
import soakloop.rig.AirDelivery;
import soakloop.rig.Blower;
import soakloop.rig.Day;
import soakloop.rig.Rig;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;
import soakloop.simulate.Setup;

/**
 * Other conditions than those of a session, made of them.
 *
 * @param name in words
 * @param change what is changed of a setup
 */
record Setting(String name, UnaryOperator<Setup> change) {
  /** The conditions as they are. */
  static Setting same() {
    return new Setting("the same conditions", s -> s);
  }

  Setting and(Setting other) {
    return new Setting(name + ", " + other.name, s -> other.change.apply(change.apply(s)));
  }

  /** A day that is warmer throughout: the loop starts as far above the air as it did, by K. */
  static Setting warmer(String name, double by) {
    return new Setting(
        name,
        s -> {
          Day day = s.day();
          Day other =
              new Day(day.temperature() + by, day.pressure(), day.humidity(), day.warming());
          return new Setup(other, s.rig(), warmer(s.start(), by), s.session(), s.chargeLimit());
        });
  }

  private static Start warmer(Start start, double by) {
    return new Start(
        moved(start.charge(), by), moved(start.loopCoolant(), by), start.engineCoolant());
  }

  private static OptionalDouble moved(OptionalDouble value, double by) {
    return value.isEmpty() ? value : OptionalDouble.of(value.getAsDouble() + by);
  }

  /** A start with the loop, and the sensor with it, warmer by K. */
  static Setting warmerStart(String name, double by) {
    return new Setting(name, s -> with(s, warmer(s.start(), by)));
  }

  /** A start with the engine's coolant warmer by K. */
  static Setting warmerEngine(String name, double by) {
    return new Setting(
        name,
        s -> {
          Start start = s.start();
          return with(
              s, new Start(start.charge(), start.loopCoolant(), start.engineCoolant() + by));
        });
  }

  private static Setup with(Setup s, Start start) {
    return new Setup(s.day(), s.rig(), start, s.session(), s.chargeLimit());
  }

  /**
   * More boost: a stated one at every speed by a factor, or a faster drive if it is from pulleys.
   */
  static Setting boost(String name, double factor) {
    return new Setting(
        name,
        s -> {
          Rig rig = s.rig();
          Optional<Curve> boost = rig.boost().map(c -> scaled(c, factor));
          Blower blower = rig.boost().isPresent() ? rig.blower() : faster(rig.blower(), factor);
          Rig other =
              new Rig(
                  rig.coolant(),
                  rig.engine(),
                  blower,
                  boost,
                  rig.plenum(),
                  rig.sensor(),
                  rig.loop(),
                  rig.airflow(),
                  rig.underhood());
          return new Setup(s.day(), other, s.start(), s.session(), s.chargeLimit());
        });
  }

  private static Curve scaled(Curve curve, double factor) {
    double[] x = new double[curve.size()];
    double[] y = new double[curve.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = curve.place(i);
      y[i] = factor * curve.value(i);
    }
    return Curve.of(x, y);
  }

  private static Blower faster(Blower blower, double factor) {
    if (!(blower.delivery() instanceof AirDelivery.PositiveDisplacement driven)) {
      return blower;
    }
    BlowerSize size = driven.size();
    BlowerSize faster =
        new BlowerSize(
            size.displacement(), size.driveRatio() * factor, size.fill(), size.leakage());
    return new Blower(
        new AirDelivery.PositiveDisplacement(faster),
        blower.adiabaticEfficiency(),
        blower.mechanicalEfficiency(),
        blower.inletPickUp(),
        blower.inletLoss(),
        blower.casing());
  }

  /** Pulls on the road: air of a road speed through the heat exchanger, m/s. Passes are there. */
  static Setting road(String name, double speed) {
    return phases(
        name,
        phase ->
            phase.kind() == Phase.Kind.PULL && phase.drive() instanceof Drive.FullLoad full
                ? with(phase, new Drive.FullLoad(full.engineSpeed(), Curve.constant(speed)))
                : phase);
  }

  /** Waits of another length, by a factor. */
  static Setting waits(String name, double factor) {
    return phases(
        name,
        phase ->
            phase.kind() == Phase.Kind.WAIT
                ? new Phase(
                    phase.name(),
                    phase.kind(),
                    phase.duration() * factor,
                    phase.drive(),
                    phase.cooling(),
                    phase.countedAt(),
                    phase.ice())
                : phase);
  }

  private static Setting phases(String name, UnaryOperator<Phase> change) {
    return new Setting(
        name,
        s ->
            new Setup(
                s.day(),
                s.rig(),
                s.start(),
                new Session(s.session().phases().stream().map(change).toList()),
                s.chargeLimit()));
  }

  private static Phase with(Phase phase, Drive drive) {
    return new Phase(
        phase.name(),
        phase.kind(),
        phase.duration(),
        drive,
        phase.cooling(),
        phase.countedAt(),
        phase.ice());
  }
}
