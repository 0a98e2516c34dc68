package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/** Tells units and places of temperatures by values. */
final class TemperatureReadings {
  /** Engine speed above which the engine runs, rev/s. */
  private static final double RUNNING = 5;

  private final Matching work;
  private Optional<Unit> fileUnit = Optional.empty();

  TemperatureReadings(Matching work) {
    this.work = work;
  }

  /** Finds the unit of temperatures that say none. */
  void units() {
    List<TemperatureUnits.Column> all = new ArrayList<>();
    for (int i = 0; i < work.size(); i++) {
      if (!isTemperature(i)) {
        continue;
      }
      Header header = work.header(i);
      ColumnNames.Unsettled open = work.unsettled().get(i);
      Optional<Signal> name =
          open != null && open.signals().size() == 1
              ? Optional.of(open.signals().get(0))
              : work.header(i).known().map(ColumnNames.Known::signal);
      Optional<String> said =
          Optional.ofNullable(work.reading(i))
              .map(r -> r.unit().symbol())
              .or(() -> TemperatureUnits.symbol(header));
      all.add(new TemperatureUnits.Column(work.header(i).text(), name, said, work.stats(i)));
    }
    Optional<TemperatureUnits.Answer> answer = TemperatureUnits.of(all, running());
    if (answer.isEmpty()) {
      return;
    }
    Unit unit = Dimension.TEMPERATURE.require(answer.get().symbol());
    Map.copyOf(work.withoutUnit())
        .forEach(
            (i, signal) -> {
              if (signal.dimension() == Dimension.TEMPERATURE) {
                work.put(new Reading(i, signal, unit, Confidence.LIKELY, answer.get().reason()));
              }
            });
    fileUnit = Optional.of(unit);
  }

  private boolean isTemperature(int i) {
    Reading r = work.reading(i);
    Signal bare = work.withoutUnit().get(i);
    ColumnNames.Unsettled open = work.unsettled().get(i);
    if (r != null) {
      return r.signal().dimension() == Dimension.TEMPERATURE;
    }
    if (bare != null) {
      return bare.dimension() == Dimension.TEMPERATURE;
    }
    return open != null
        && open.signals().stream().allMatch(s -> s.dimension() == Dimension.TEMPERATURE);
  }

  /** Seconds that the engine runs at least. */
  private double running() {
    Optional<Series> speed = work.si(Signal.ENGINE_SPEED);
    Series time = work.axis().time();
    if (speed.isEmpty() || time.size() < 2) {
      return 0;
    }
    Stats speeds = Stats.of(speed.get());
    double share = speeds.low() > RUNNING ? 0.98 : speeds.middle() > RUNNING ? 0.5 : 0;
    return share * (time.at(time.size() - 1) - time.at(0));
  }

  /** Tells where temperatures are taken whose names leave that open. */
  void places() {
    Map<Integer, Series> open = new TreeMap<>();
    for (var entry : work.unsettled().entrySet()) {
      int i = entry.getKey();
      Series raw = work.raw(i);
      Optional<Unit> unit =
          TemperatureUnits.symbol(work.header(i)).map(Dimension.TEMPERATURE::require);
      if (unit.isEmpty() && work.header(i).unit().isEmpty()) {
        unit = fileUnit;
      }
      if (raw != null && unit.isPresent() && isTemperature(i)) {
        open.put(
            i,
            new Measured(
                raw, unit.get(), PlausibleRange.of(Signal.CHARGE_TEMPERATURE), work.axis()));
      }
    }
    if (!open.isEmpty()) {
      Sweeps sweeps = Sweeps.of(work.axis().time(), work.si(Signal.ENGINE_SPEED));
      new Places(work.axis(), sweeps, this::take)
          .settle(open, work.unsettled(), work.headers(), work.taken());
      new LonePlace(work, this::take).settle(open, sweeps);
    }
  }

  private void take(int i, @Nullable Signal signal, String reason, Confidence confidence) {
    if (signal == null) {
      work.remark(i, reason + "; name it in the scenario to use it");
      return;
    }
    Unit unit =
        TemperatureUnits.symbol(work.header(i))
            .map(Dimension.TEMPERATURE::require)
            .or(() -> fileUnit)
            .orElse(Dimension.TEMPERATURE.si());
    work.put(new Reading(i, signal, unit, confidence, reason));
  }
}
