package soakloop.log;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * Settles which column is which signal and in what unit: first what the scenario says, then what
 * the headers say plainly, then what the values tell. What none of them settles is left unread,
 * with the reason.
 */
final class ColumnMatcher {
  private final List<Header> headers;
  private final @Nullable Series[] raws;
  private final ChosenColumns chosen;
  private final LogColumns columns;
  private final TimeAxis axis;
  private final Problems problems;
  private final String[] remarks;
  private final List<String> complaints = new ArrayList<>();
  private final Map<Integer, Reading> readings = new HashMap<>();
  private final Map<Integer, ColumnNames.Unsettled> unsettled = new TreeMap<>();
  private final Map<Integer, Signal> withoutUnit = new TreeMap<>();

  /**
   * Prepares the matching.
   *
   * @param raws values in the file's units, by column; nothing where a column was not read
   */
  ColumnMatcher(
      List<Header> headers,
      @Nullable Series[] raws,
      ChosenColumns chosen,
      LogColumns columns,
      TimeAxis axis,
      Problems problems) {
    this.headers = headers;
    this.raws = raws;
    this.chosen = chosen;
    this.columns = columns;
    this.axis = axis;
    this.problems = problems;
    this.remarks = new String[headers.size()];
    for (int i = 0; i < remarks.length; i++) {
      remarks[i] = headers.get(i).text().isEmpty() ? "has no name" : "not a known name";
    }
  }

  /** Returns what columns were taken for, by signal. */
  Map<Signal, Reading> match(int timeColumn) {
    chosen.indices().forEach(this::choose);
    for (int i = 0; i < headers.size(); i++) {
      if (i != timeColumn && chosen.signal(i).isEmpty()) {
        name(i);
      }
    }
    temperatures();
    pressures();
    places();
    unsettled.forEach(
        (i, open) -> {
          if (!readings.containsKey(i)) {
            complain(i, remarks[i]);
          }
        });
    withoutUnit.forEach((i, signal) -> complain(i, noUnit(headers.get(i), signal)));
    implausible();
    return settle();
  }

  /** Returns why a column was not read. */
  String remark(int index) {
    return remarks[index];
  }

  /** Returns what a reader must settle if nothing else can be read. */
  List<String> complaints() {
    return complaints;
  }

  private boolean hasValues(int i) {
    Series raw = raws[i];
    return raw != null && Stats.of(raw).count() > 0;
  }

  private Stats stats(int i) {
    Series raw = raws[i];
    return raw == null ? new Stats(0, Double.NaN, Double.NaN, Double.NaN) : Stats.of(raw);
  }

  private Optional<Series> si(Signal signal) {
    return readings.values().stream()
        .filter(r -> r.signal() == signal)
        .findFirst()
        .flatMap(this::si);
  }

  private Optional<Series> si(Reading r) {
    Series raw = raws[r.index()];
    return raw == null
        ? Optional.empty()
        : Optional.of(new Measured(raw, r.unit(), PlausibleRange.of(r.signal()), axis));
  }

  private void put(Reading reading) {
    readings.put(reading.index(), reading);
    withoutUnit.remove(reading.index());
  }

  private void complain(int i, String what) {
    remarks[i] = what;
    complaints.add("column `" + headers.get(i).text() + "`: " + what);
  }

  // --- what the scenario says -------------------------------------------------------------------

  private void choose(Signal signal, int i) {
    if (signal == Signal.TIME) {
      return;
    }
    Header header = headers.get(i);
    remarks[i] = "named in the scenario";
    if (signal == Signal.BOOST && header.isAbsolutePressure()) {
      problems.addColumn(
          header.text(), "is an absolute pressure; boost is gauge: name a gauge column");
      return;
    }
    Optional<Unit> unit = Optional.ofNullable(columns.chosen().get(signal)).flatMap(c -> c.unit());
    if (unit.isEmpty()) {
      chooseUnit(signal, i);
      return;
    }
    if (!signal.dimension().units().contains(unit.get())) {
      problems.addColumn(header.text(), wrongUnit(unit.get().symbol(), signal));
      return;
    }
    Optional<Unit> said = header.unit().flatMap(u -> LogUnits.find(signal.dimension(), u));
    if (said.isPresent() && !said.get().equals(unit.get())) {
      remarks[i] =
          "read in " + unit.get().symbol() + " as the scenario says, not " + said.get().symbol();
    }
    put(new Reading(i, signal, unit.get(), Confidence.SURE, remarks[i]));
  }

  private void chooseUnit(Signal signal, int i) {
    Header header = headers.get(i);
    Optional<Unit> unit = saidUnit(header, signal);
    if (unit.isPresent()) {
      put(new Reading(i, signal, unit.get(), Confidence.SURE, remarks[i]));
    } else if (header.unit().isPresent()) {
      problems.addColumn(header.text(), wrongUnit(header.unit().get(), signal));
    } else {
      Optional<Reading> guess = UnitGuess.of(i, signal, stats(i));
      if (guess.isPresent()) {
        put(guess.get().weaker(Confidence.SURE, remarks[i]));
      } else {
        problems.addColumn(header.text(), noUnit(header, signal));
      }
    }
  }

  // --- what the headers say ---------------------------------------------------------------------

  private void name(int i) {
    Header header = headers.get(i);
    Optional<ColumnNames.Meaning> meaning = header.meaning();
    if (meaning.isEmpty()) {
      return;
    }
    if (!hasValues(i)) {
      remarks[i] = "has no values";
    } else if (meaning.get() instanceof ColumnNames.Unsettled open) {
      open(i, header, open);
    } else if (meaning.get() instanceof ColumnNames.Known known) {
      Signal signal = known.signal();
      if (signal == Signal.TIME) {
        remarks[i] = "another column is taken for time";
      } else if (columns.chosen().containsKey(scaled(header, signal))) {
        remarks[i] = "the scenario names another column for " + scaled(header, signal).key();
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
    remarks[i] = "";
    Optional<Unit> unit = saidUnit(header, signal);
    if (unit.isPresent()) {
      put(new Reading(i, signal, unit.get(), Confidence.SURE, ""));
    } else if (header.unit().filter(LogUnits::known).isPresent()) {
      remarks[i] = "its unit is not one of a " + signal.dimension().label();
    } else if (header.unit().isPresent()) {
      complain(i, wrongUnit(header.unit().get(), signal));
    } else {
      withoutUnit.put(i, signal);
      UnitGuess.of(i, signal, stats(i)).ifPresent(this::put);
    }
  }

  /** The unit that a header says, by itself or by its name. */
  private static Optional<Unit> saidUnit(Header header, Signal signal) {
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
    remarks[i] = open.why() + "; name it in the scenario to use it";
    List<Signal> left =
        header.unit().isEmpty()
            ? open.signals()
            : open.signals().stream().filter(s -> saidUnit(header, s).isPresent()).toList();
    boolean sameDimension = open.signals().stream().map(Signal::dimension).distinct().count() == 1;
    Signal scaled =
        open.signals().contains(Signal.BOOST) ? scaled(header, Signal.TIME) : Signal.TIME;
    if (open.signals().contains(Signal.BOOST)
        && header.unit().filter(LogUnits::isAbsolutePressure).isPresent()) {
      withSignal(i, header, Signal.MANIFOLD_PRESSURE);
    } else if (open.signals().contains(Signal.BOOST)
        && header.unit().filter(LogUnits::isGaugePressure).isPresent()) {
      withSignal(i, header, Signal.BOOST);
    } else if (left.size() == 1 && !sameDimension && scaled == Signal.TIME) {
      saidUnit(header, left.get(0))
          .ifPresent(u -> put(new Reading(i, left.get(0), u, Confidence.LIKELY, "by its unit")));
    } else {
      unsettled.put(i, open);
    }
  }

  // --- what the values tell ---------------------------------------------------------------------

  private void temperatures() {
    List<TemperatureUnits.Column> all = new ArrayList<>();
    for (int i = 0; i < headers.size(); i++) {
      if (!isTemperature(i)) {
        continue;
      }
      Optional<Signal> name = headers.get(i).known().map(ColumnNames.Known::signal);
      Optional<String> said =
          Optional.ofNullable(readings.get(i)).map(r -> r.unit().symbol()).or(saidOf(i));
      all.add(new TemperatureUnits.Column(headers.get(i).text(), name, said, stats(i)));
    }
    Optional<TemperatureUnits.Answer> answer = TemperatureUnits.of(all, running());
    if (answer.isEmpty()) {
      return;
    }
    Unit unit = Dimension.TEMPERATURE.require(answer.get().symbol());
    Map.copyOf(withoutUnit)
        .forEach(
            (i, signal) -> {
              if (signal.dimension() == Dimension.TEMPERATURE) {
                put(new Reading(i, signal, unit, Confidence.LIKELY, answer.get().reason()));
              }
            });
    fileUnit = Optional.of(unit);
  }

  private Optional<Unit> fileUnit = Optional.empty();

  private java.util.function.Supplier<Optional<String>> saidOf(int i) {
    return () -> TemperatureUnits.symbol(headers.get(i));
  }

  private boolean isTemperature(int i) {
    Reading r = readings.get(i);
    Signal bare = withoutUnit.get(i);
    ColumnNames.Unsettled open = unsettled.get(i);
    if (r != null) {
      return r.signal().dimension() == Dimension.TEMPERATURE;
    }
    if (bare != null) {
      return bare.dimension() == Dimension.TEMPERATURE;
    }
    return open != null
        && open.signals().stream().allMatch(s -> s.dimension() == Dimension.TEMPERATURE);
  }

  /** Seconds that the engine is seen to run. */
  private double running() {
    Optional<Series> speed = si(Signal.ENGINE_SPEED);
    Series time = axis.time();
    if (speed.isEmpty() || time.size() < 2) {
      return 0;
    }
    Stats standing = Stats.of(speed.get(), i -> speed.get().at(i) < 5);
    Stats all = Stats.of(speed.get());
    double share = all.count() == 0 ? 0 : 1 - (double) standing.count() / all.count();
    return share * (time.at(time.size() - 1) - time.at(0));
  }

  private void pressures() {
    Optional<Series> speed = si(Signal.ENGINE_SPEED);
    for (Reading r : List.copyOf(readings.values())) {
      boolean manifold = r.signal() == Signal.BOOST || r.signal() == Signal.MANIFOLD_PRESSURE;
      if (manifold && chosen.signal(r.index()).isEmpty()) {
        check(r, speed);
      }
    }
    Map.copyOf(unsettled)
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
        si(r)
            .flatMap(s -> PressureKind.of(s, speed))
            .filter(k -> k.absolute() != (r.signal() == Signal.MANIFOLD_PRESSURE));
    if (kind.isEmpty()) {
      return;
    }
    boolean absolute = kind.get().absolute();
    Signal other = absolute ? Signal.MANIFOLD_PRESSURE : Signal.BOOST;
    Optional<Unit> unit = other.dimension().unit(r.unit().symbol());
    if (columns.chosen().containsKey(other) || unit.isEmpty()) {
      readings.remove(r.index());
      remarks[r.index()] = kind.get().reason() + ", against its name; name it in the scenario";
      return;
    }
    put(r.as(other, unit.get()).weaker(Confidence.LIKELY, kind.get().reason()));
  }

  private void openPressure(int i, Optional<Series> speed) {
    Header header = headers.get(i);
    for (Signal signal : List.of(Signal.MANIFOLD_PRESSURE, Signal.BOOST)) {
      Optional<Reading> as =
          header.unit().isPresent()
              ? saidUnit(header, signal).map(u -> new Reading(i, signal, u, Confidence.LIKELY, ""))
              : UnitGuess.of(i, signal, stats(i));
      Optional<PressureKind> kind =
          as.flatMap(this::si)
              .flatMap(s -> PressureKind.of(s, speed))
              .filter(k -> k.absolute() == (signal == Signal.MANIFOLD_PRESSURE));
      if (as.isPresent() && kind.isPresent() && !columns.chosen().containsKey(signal)) {
        put(as.get().weaker(Confidence.LIKELY, kind.get().reason()));
        unsettled.remove(i);
        return;
      }
    }
  }

  private void places() {
    Places places = new Places(axis, Sweeps.of(axis.time(), si(Signal.ENGINE_SPEED)), this::take);
    Map<Integer, Series> open = new TreeMap<>();
    for (var entry : unsettled.entrySet()) {
      int i = entry.getKey();
      Series raw = raws[i];
      Optional<Unit> unit =
          TemperatureUnits.symbol(headers.get(i)).map(Dimension.TEMPERATURE::require);
      if (unit.isEmpty() && headers.get(i).unit().isEmpty()) {
        unit = fileUnit;
      }
      if (raw != null && unit.isPresent() && isTemperature(i)) {
        open.put(
            i, new Measured(raw, unit.get(), PlausibleRange.of(Signal.CHARGE_TEMPERATURE), axis));
      }
    }
    places.settle(open, unsettled, headers, taken());
  }

  private java.util.Set<Signal> taken() {
    java.util.Set<Signal> taken = java.util.EnumSet.noneOf(Signal.class);
    taken.addAll(columns.chosen().keySet());
    readings.values().forEach(r -> taken.add(r.signal()));
    return taken;
  }

  private void take(int i, @Nullable Signal signal, String reason) {
    if (signal == null) {
      remarks[i] = reason + "; name it in the scenario to use it";
      return;
    }
    Unit unit =
        TemperatureUnits.symbol(headers.get(i))
            .map(Dimension.TEMPERATURE::require)
            .or(() -> fileUnit)
            .orElse(Dimension.TEMPERATURE.si());
    put(new Reading(i, signal, unit, Confidence.LIKELY, reason));
  }

  /** Leaves out columns most of whose values cannot be. */
  private void implausible() {
    for (Reading r : List.copyOf(readings.values())) {
      PlausibleRange range = PlausibleRange.of(r.signal());
      Stats s = stats(r.index()).in(r.unit());
      double middle = s.middle();
      if (s.count() > 0 && !range.contains(middle)) {
        readings.remove(r.index());
        complain(
            r.index(),
            r.unit().format(middle, 1)
                + " "
                + r.unit().symbol()
                + ", as half of its values, is "
                + range.outside(middle, r.unit()));
      }
    }
  }

  private Map<Signal, Reading> settle() {
    Map<Signal, List<Reading>> bySignal = new EnumMap<>(Signal.class);
    readings.values().stream()
        .sorted(java.util.Comparator.comparingInt(Reading::index))
        .forEach(r -> bySignal.computeIfAbsent(r.signal(), s -> new ArrayList<>()).add(r));
    Map<Signal, Reading> settled = new EnumMap<>(Signal.class);
    bySignal.forEach(
        (signal, list) -> {
          Optional<Reading> one = one(list);
          if (one.isPresent()) {
            settled.put(signal, one.get());
            remarks[one.get().index()] = one.get().reason();
            String name = headers.get(one.get().index()).text();
            for (Reading other : list) {
              if (other.index() != one.get().index()) {
                remarks[other.index()] = "`" + name + "` is taken for " + signal.key();
              }
            }
          } else {
            several(signal, list);
          }
        });
    return settled;
  }

  private Optional<Reading> one(List<Reading> list) {
    if (list.size() == 1) {
      return Optional.of(list.get(0));
    }
    List<Reading> sure = list.stream().filter(r -> r.confidence() == Confidence.SURE).toList();
    if (sure.size() == 1) {
      return Optional.of(sure.get(0));
    }
    return sameValues(list) ? Optional.of(list.get(0)) : Optional.empty();
  }

  private boolean sameValues(List<Reading> list) {
    Optional<Series> first = si(list.get(0));
    for (Reading other : list.subList(1, list.size())) {
      Optional<Series> second = si(other);
      if (first.isEmpty() || second.isEmpty()) {
        return false;
      }
      for (int i = 0; i < first.get().size(); i++) {
        double a = first.get().at(i);
        double b = second.get().at(i);
        if (Double.compare(a, b) != 0 && !(Math.abs(a - b) <= 1e-9 * Math.abs(a))) {
          return false;
        }
      }
    }
    return true;
  }

  private void several(Signal signal, Collection<Reading> list) {
    String what =
        "has "
            + list.size()
            + " columns for "
            + signal.key()
            + ": "
            + list.stream()
                .map(r -> "`" + headers.get(r.index()).text() + "`")
                .collect(Collectors.joining(", "))
            + "; write `"
            + signal.key()
            + ": \"...\"` in the scenario under log, columns, to choose one";
    complaints.add(what);
    list.forEach(r -> remarks[r.index()] = "the file " + what);
  }

  // --- words ------------------------------------------------------------------------------------

  private static String wrongUnit(String text, Signal signal) {
    return "has the unit `"
        + text
        + "`; allowed for "
        + signal.key()
        + ": "
        + signal.dimension().allowed();
  }

  private static String noUnit(Header header, Signal signal) {
    Dimension dimension = signal.dimension();
    String example = example(dimension);
    return "has no unit; head it `"
        + header.name()
        + " ["
        + example
        + "]`, or write `"
        + signal.key()
        + ": {name: \""
        + header.text()
        + "\", unit: "
        + example
        + "}` in the scenario under log, columns; allowed: "
        + dimension.allowed();
  }

  private static String example(Dimension dimension) {
    return switch (dimension) {
      case ROTATION -> "rpm";
      case SPEED -> "km/h";
      case TEMPERATURE -> "degC";
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> "kPa";
      case MASS_FLOW -> "g/s";
      case POWER -> "kW";
      default -> dimension.si().symbol();
    };
  }
}
