package soakloop.log;

import java.util.List;
import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/** Takes columns as their headers say. */
final class NamedReadings {
  private final Matching work;

  NamedReadings(Matching work) {
    this.work = work;
  }

  /** Takes what a column's name and unit say. */
  void name(int i) {
    Header header = work.header(i);
    Optional<ColumnNames.Meaning> meaning = header.meaning();
    if (meaning.isEmpty()) {
      return;
    }
    if (!work.hasValues(i)) {
      work.remark(i, "has no values");
    } else if (meaning.get() instanceof ColumnNames.Unsettled open) {
      open(i, header, open);
    } else if (meaning.get() instanceof ColumnNames.Known known) {
      Signal signal = known.signal();
      if (signal == Signal.TIME) {
        work.remark(i, "another column is taken for time");
      } else if (work.columns().chosen().containsKey(scaled(header, signal))) {
        work.remark(i, "the scenario names another column for " + scaled(header, signal).key());
      } else {
        withSignal(i, header, scaled(header, signal));
      }
    }
  }

  /** A pressure's signal on the scale that its unit says. */
  private static Signal scaled(Header header, Signal signal) {
    boolean absolute = header.unit().filter(LogUnits::isAbsolutePressure).isPresent();
    boolean gauge = header.unit().filter(LogUnits::isGaugePressure).isPresent();
    return absolute ? absolute(signal) : gauge ? gauge(signal) : signal;
  }

  private static Signal absolute(Signal signal) {
    return switch (signal) {
      case BOOST -> Signal.MANIFOLD_PRESSURE;
      case BOOST_BEFORE_CORE -> Signal.PRESSURE_BEFORE_CORE;
      default -> signal;
    };
  }

  private static Signal gauge(Signal signal) {
    return switch (signal) {
      case MANIFOLD_PRESSURE -> Signal.BOOST;
      case PRESSURE_BEFORE_CORE -> Signal.BOOST_BEFORE_CORE;
      default -> signal;
    };
  }

  private void withSignal(int i, Header header, Signal signal) {
    work.remark(i, "");
    Optional<Unit> unit = saidUnit(header, signal);
    if (unit.isPresent()) {
      work.put(new Reading(i, signal, unit.get(), Confidence.SURE, ""));
    } else if (header.unit().filter(LogUnits::known).isPresent()) {
      work.remark(i, "its unit is not one of a " + signal.dimension().label());
    } else if (header.unit().isPresent()) {
      work.complain(i, UnitWords.wrongUnit(header.unit().get(), signal));
    } else {
      work.withoutUnit().put(i, signal);
      UnitGuess.of(i, signal, work.stats(i)).ifPresent(work::put);
    }
  }

  /** The unit that a header says, by itself or by its name. */
  static Optional<Unit> saidUnit(Header header, Signal signal) {
    Dimension dimension = signal.dimension();
    if (header.unit().isPresent()) {
      return LogUnits.find(dimension, header.unit().get());
    }
    return header
        .known()
        .filter(k -> k.signal().dimension() == dimension && !k.unit().isEmpty())
        .map(k -> dimension.require(k.unit()));
  }

  private void open(int i, Header header, ColumnNames.Unsettled open) {
    work.remark(i, open.why() + "; name it in the scenario to use it");
    List<Signal> left =
        header.unit().isEmpty()
            ? open.signals()
            : open.signals().stream().filter(s -> saidUnit(header, s).isPresent()).toList();
    boolean pressure = open.signals().contains(Signal.BOOST);
    if (pressure && header.unit().filter(LogUnits::isAbsolutePressure).isPresent()) {
      withSignal(i, header, Signal.MANIFOLD_PRESSURE);
    } else if (pressure && header.unit().filter(LogUnits::isGaugePressure).isPresent()) {
      withSignal(i, header, Signal.BOOST);
    } else if (!pressure && open.signals().size() > 1 && left.size() == 1) {
      saidUnit(header, left.get(0))
          .ifPresent(
              u -> work.put(new Reading(i, left.get(0), u, Confidence.LIKELY, "by its unit")));
    } else {
      work.unsettled().put(i, open);
    }
  }
}
