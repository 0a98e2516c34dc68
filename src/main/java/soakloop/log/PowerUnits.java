package soakloop.log;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * Finds the units of power and torque that say none. Power is torque times engine speed, exactly,
 * so that one tells the other, and of two without a unit the speed at which their curves cross
 * tells both: 5252 rpm for hp and lb-ft, 9549 rpm for kW and N m (by the units' definitions).
 */
final class PowerUnits {
  /** Engine speed over which power and torque are compared, rev/s. */
  private static final double WORKING = 25;

  /** Share of its highest value from which on a reading counts. */
  private static final double LOADED = 0.3;

  /** How closely power must agree: metric horsepower is 1.4 % less. */
  private static final double CLOSE = 0.006;

  private record Guess(Unit power, Unit torque) {}

  private final Matching work;

  PowerUnits(Matching work) {
    this.work = work;
  }

  /** Tells what can be told. */
  void tell() {
    Optional<Series> speed = work.si(Signal.ENGINE_SPEED);
    Optional<Integer> power = open(Signal.WHEEL_POWER);
    Optional<Integer> torque = open(Signal.TORQUE);
    if (speed.isEmpty() || (power.isEmpty() && torque.isEmpty())) {
      return;
    }
    Optional<Series> p = power.map(work::rows).or(() -> work.si(Signal.WHEEL_POWER));
    Optional<Series> t = torque.map(work::rows).or(() -> work.si(Signal.TORQUE));
    if (p.isEmpty() || t.isEmpty()) {
      return;
    }
    double angle = angle(p.get(), t.get(), speed.get());
    List<Guess> fit =
        candidates(said(Signal.WHEEL_POWER), said(Signal.TORQUE)).stream()
            .filter(g -> Math.abs(angle * factor(g, power, torque) - 1) < CLOSE)
            .toList();
    if (fit.size() == 1) {
      take(fit.get(0), power, torque);
    }
  }

  /** Watts over newton metres times radians a second, in a row's own units. */
  private static double angle(Series power, Series torque, Series speed) {
    double most = Stats.of(power).top();
    IntPredicate load = row -> speed.at(row) > WORKING && power.at(row) > LOADED * most;
    Series turned = new Ratio(new Ratio(power, torque), speed);
    return Stats.of(turned, load).middle() / (2 * Math.PI);
  }

  private static double factor(Guess g, Optional<Integer> power, Optional<Integer> torque) {
    return (power.isPresent() ? g.power().scale() : 1)
        / (torque.isPresent() ? g.torque().scale() : 1);
  }

  private static List<Guess> candidates(Optional<Unit> power, Optional<Unit> torque) {
    Unit kilowatt = Dimension.POWER.require("kW");
    Unit horsepower = Dimension.POWER.require("hp");
    Unit newtonMetre = Dimension.TORQUE.require("N m");
    Unit poundFoot = Dimension.TORQUE.require("lb-ft");
    if (power.isPresent()) {
      return List.of(new Guess(power.get(), newtonMetre), new Guess(power.get(), poundFoot));
    }
    if (torque.isPresent()) {
      Unit said = torque.get();
      return List.of(
          new Guess(kilowatt, said),
          new Guess(horsepower, said),
          new Guess(LogUnits.METRIC_HORSEPOWER, said));
    }
    return List.of(new Guess(kilowatt, newtonMetre), new Guess(horsepower, poundFoot));
  }

  private void take(Guess g, Optional<Integer> power, Optional<Integer> torque) {
    if (power.isPresent() && torque.isPresent()) {
      double crossing = 60 / (2 * Math.PI) * g.power().scale() / g.torque().scale();
      String why =
          String.format(
              Locale.ROOT,
              "no unit said: power and torque cross at %.0f rpm, so %s and %s",
              crossing,
              g.power().symbol(),
              g.torque().symbol());
      put(power.get(), Signal.WHEEL_POWER, g.power(), why);
      put(torque.get(), Signal.TORQUE, g.torque(), why);
    } else if (power.isPresent()) {
      String why = "no unit said: torque times engine speed is it in " + g.power().symbol();
      put(power.get(), Signal.WHEEL_POWER, g.power(), why);
    } else if (torque.isPresent()) {
      String why = "no unit said: power over engine speed is it in " + g.torque().symbol();
      put(torque.get(), Signal.TORQUE, g.torque(), why);
    }
  }

  private void put(int i, Signal signal, Unit unit, String why) {
    work.put(new Reading(i, signal, unit, Confidence.LIKELY, why));
  }

  /** The one column of a signal that says no unit. */
  private Optional<Integer> open(Signal signal) {
    List<Integer> open =
        work.withoutUnit().entrySet().stream()
            .filter(e -> e.getValue() == signal)
            .map(Map.Entry::getKey)
            .toList();
    return open.size() == 1 && work.si(signal).isEmpty()
        ? Optional.of(open.get(0))
        : Optional.empty();
  }

  private Optional<Unit> said(Signal signal) {
    return work.readings().stream()
        .filter(r -> r.signal() == signal)
        .map(Reading::unit)
        .findFirst();
  }

  /** Returns power, W, as it is read or as torque and engine speed make it. */
  static Optional<Series> power(Matching work) {
    Optional<Series> torque = work.si(Signal.TORQUE);
    Optional<Series> speed = work.si(Signal.ENGINE_SPEED);
    Optional<Series> made =
        torque.isPresent() && speed.isPresent()
            ? Optional.of(new OfTorque(torque.get(), speed.get()))
            : Optional.empty();
    return work.si(Signal.WHEEL_POWER).or(() -> made);
  }

  private record OfTorque(Series torque, Series speed) implements Series {
    @Override
    public int size() {
      return torque.size();
    }

    @Override
    public double at(int row) {
      return torque.at(row) * speed.at(row) * 2 * Math.PI;
    }
  }
}
