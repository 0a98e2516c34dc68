package soakloop.log;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soakloop.quantity.Unit;

/** Tells gauge from absolute pressure by values. */
final class PressureReadings {
  private final Matching work;

  PressureReadings(Matching work) {
    this.work = work;
  }

  /** Tells the scale of all manifold pressures. */
  void tell() {
    Optional<Series> speed = work.si(Signal.ENGINE_SPEED);
    for (Reading r : work.readings()) {
      boolean manifold = r.signal() == Signal.BOOST || r.signal() == Signal.MANIFOLD_PRESSURE;
      if (manifold && work.chosen().signal(r.index()).isEmpty()) {
        check(r, speed);
      }
    }
    Map.copyOf(work.unsettled())
        .forEach(
            (i, open) -> {
              if (open.signals().contains(Signal.BOOST)) {
                openPressure(i, speed);
              }
            });
  }

  /** Holds a pressure's scale against its values. */
  private void check(Reading r, Optional<Series> speed) {
    Optional<PressureKind> kind =
        work.pressure(r)
            .flatMap(s -> PressureKind.of(s, speed))
            .filter(k -> k.absolute() != (r.signal() == Signal.MANIFOLD_PRESSURE));
    if (kind.isEmpty()) {
      return;
    }
    boolean absolute = kind.get().absolute();
    Signal other = absolute ? Signal.MANIFOLD_PRESSURE : Signal.BOOST;
    Optional<Unit> unit = other.dimension().unit(r.unit().symbol());
    if (work.columns().chosen().containsKey(other) || unit.isEmpty()) {
      work.drop(r.index());
      work.remark(r.index(), kind.get().reason() + ", against its name; name it in the scenario");
      return;
    }
    work.put(r.as(other, unit.get()).weaker(Confidence.LIKELY, kind.get().reason()));
  }

  private void openPressure(int i, Optional<Series> speed) {
    Header header = work.header(i);
    for (Signal signal : List.of(Signal.MANIFOLD_PRESSURE, Signal.BOOST)) {
      Optional<Reading> as =
          header.unit().isPresent()
              ? NamedReadings.saidUnit(header, signal)
                  .map(u -> new Reading(i, signal, u, Confidence.LIKELY, ""))
              : UnitGuess.of(i, signal, work.stats(i));
      Optional<PressureKind> kind =
          as.flatMap(work::pressure)
              .flatMap(s -> PressureKind.of(s, speed))
              .filter(k -> k.absolute() == (signal == Signal.MANIFOLD_PRESSURE));
      if (as.isPresent() && kind.isPresent() && !work.columns().chosen().containsKey(signal)) {
        work.put(as.get().weaker(Confidence.LIKELY, kind.get().reason()));
        work.unsettled().remove(i);
        return;
      }
    }
  }
}
