package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * Finds the unit of an air mass flow that says none, by what burns it or by the engine that would
 * swallow it. Bounds are common practice, no source.
 */
final class FlowUnits {
  private static final List<String> UNITS = List.of("g/s", "kg/h", "lb/min", "kg/s");

  /** Power from an air flow under full load, W/(kg/s): ten hp of a lb/min, less what is lost. */
  private static final double LEAST_POWER = 0.55e6;

  private static final double MOST_POWER = 1.35e6;

  /** What a charge-cooled car's engine swallows in two turns, m3. */
  private static final double SMALLEST = 1.3e-3;

  private static final double LARGEST = 8e-3;

  /** Charge taken for the reckoning, K, and the gas constant of dry air, J/(kg K). */
  private static final double CHARGE = 320;

  private static final double GAS_CONSTANT = 287.05;

  /** Engine speed over which flows are compared, rev/s. */
  private static final double WORKING = 25;

  /** Share of the highest pressure or power from which on there is load. */
  private static final double LOADED = 0.8;

  private final Matching work;

  FlowUnits(Matching work) {
    this.work = work;
  }

  /** Tells the unit of an air mass flow, or says why not. */
  void tell() {
    List<Integer> open =
        work.withoutUnit().entrySet().stream()
            .filter(e -> e.getValue() == Signal.AIR_MASS_FLOW)
            .map(e -> e.getKey())
            .toList();
    Optional<Series> speed = work.si(Signal.ENGINE_SPEED).map(this::held);
    if (open.isEmpty() || speed.isEmpty()) {
      return;
    }
    for (int i : open) {
      Series raw = held(work.rows(i));
      PowerUnits.power(work).ifPresent(p -> byPower(i, raw, held(p), speed.get()));
      if (work.withoutUnit().containsKey(i)) {
        work.pressureAfterCore().ifPresent(p -> bySize(i, raw, held(p), speed.get()));
      }
    }
  }

  private Series held(Series values) {
    return Held.of(values, work.axis().time());
  }

  private void byPower(int i, Series raw, Series power, Series speed) {
    double loaded = LOADED * Stats.of(power).top();
    IntPredicate load = row -> speed.at(row) > WORKING && power.at(row) > loaded;
    Stats each = Stats.of(new Ratio(power, raw), load);
    if (each.count() == 0 || !(each.middle() > 0)) {
      return;
    }
    List<Unit> fit = new ArrayList<>();
    for (String symbol : UNITS) {
      Unit unit = Dimension.MASS_FLOW.require(symbol);
      double made = each.middle() / unit.scale();
      if (made >= LEAST_POWER && made <= MOST_POWER) {
        fit.add(unit);
      }
    }
    if (fit.size() == 1) {
      Unit unit = fit.get(0);
      String said =
          String.format(
              Locale.ROOT,
              "no unit said: as %s it makes %.2f kW a g/s of air, as engines do",
              unit.symbol(),
              each.middle() / unit.scale() / 1e6);
      work.put(new Reading(i, Signal.AIR_MASS_FLOW, unit, Confidence.LIKELY, said));
    }
  }

  private void bySize(int i, Series raw, Series pressure, Series speed) {
    double loaded = LOADED * Stats.of(pressure).top();
    IntPredicate load = row -> speed.at(row) > WORKING && pressure.at(row) > loaded;
    Stats each = Stats.of(new Ratio(new Ratio(raw, pressure), speed), load);
    double size = 2 * GAS_CONSTANT * CHARGE * each.middle();
    if (each.count() == 0 || !(size > 0)) {
      return;
    }
    List<Unit> fit = new ArrayList<>();
    List<String> said = new ArrayList<>();
    for (String symbol : UNITS) {
      Unit unit = Dimension.MASS_FLOW.require(symbol);
      double swallowed = size * unit.scale();
      if (swallowed > SMALLEST / 10 && swallowed < LARGEST * 10) {
        said.add(String.format(Locale.ROOT, "%.1f L as %s", swallowed * 1e3, symbol));
      }
      if (swallowed >= SMALLEST && swallowed <= LARGEST) {
        fit.add(unit);
      }
    }
    String engine = "the engine would swallow " + String.join(", ", said);
    if (fit.size() == 1) {
      String so = "no unit said: " + engine + ", so " + fit.get(0).symbol();
      work.put(new Reading(i, Signal.AIR_MASS_FLOW, fit.get(0), Confidence.LIKELY, so));
    } else if (fit.size() > 1) {
      work.doubt(
          i,
          engine
              + ", which leaves "
              + fit.stream().map(Unit::symbol).collect(Collectors.joining(" and ")));
    }
  }
}
