package soakloop.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * Settles which column is which signal and in what unit: first what the scenario says, then what
 * the headers say plainly.
 */
final class ColumnMatcher {
  private final List<Header> headers;
  private final Problems problems;
  private final Map<Signal, Match> matches = new EnumMap<>(Signal.class);
  private final List<String> remarks;

  /**
   * A column that will be read.
   *
   * @param index from 0
   * @param signal what it is
   * @param unit of its cells
   */
  record Match(int index, Signal signal, Unit unit) {}

  private ColumnMatcher(List<Header> headers, Problems problems) {
    this.headers = headers;
    this.problems = problems;
    this.remarks = new ArrayList<>();
    headers.forEach(h -> remarks.add(h.text().isEmpty() ? "has no name" : "not a known name"));
  }

  /** Matches all columns; what goes wrong is added to the problems. */
  static ColumnMatcher of(List<Header> headers, LogColumns columns, Problems problems) {
    ColumnMatcher matcher = new ColumnMatcher(headers, problems);
    Map<Integer, Signal> taken = matcher.choose(columns);
    matcher.recognise(columns, taken);
    return matcher;
  }

  /** Returns the columns to read, in the order of {@link Signal}. */
  List<Match> matches() {
    return List.copyOf(matches.values());
  }

  /** Returns the column of a signal. */
  Optional<Match> match(Signal signal) {
    return Optional.ofNullable(matches.get(signal));
  }

  /** Returns what became of every column; those in {@code empty} had no value to read. */
  List<Log.Column> columns(List<Match> empty) {
    List<Log.Column> all = new ArrayList<>();
    for (int i = 0; i < headers.size(); i++) {
      int index = i;
      String text = headers.get(i).text();
      Optional<Match> match = matches.values().stream().filter(m -> m.index() == index).findFirst();
      if (match.isEmpty()) {
        all.add(new Log.Column(text, Optional.empty(), "", remarks.get(i)));
      } else if (empty.contains(match.get())) {
        all.add(new Log.Column(text, Optional.empty(), "", "has no values"));
      } else {
        Match m = match.get();
        all.add(new Log.Column(text, Optional.of(m.signal()), m.unit().symbol(), remarks.get(i)));
      }
    }
    return all;
  }

  private Map<Integer, Signal> choose(LogColumns columns) {
    Map<Integer, Signal> taken = new java.util.HashMap<>();
    for (Signal signal : Signal.values()) {
      Optional<LogColumns.Choice> choice = Optional.ofNullable(columns.chosen().get(signal));
      if (choice.isEmpty()) {
        continue;
      }
      Optional<Integer> found = find(choice.get().header(), signal);
      if (found.isEmpty()) {
        continue;
      }
      int index = found.get();
      Optional<Signal> before = Optional.ofNullable(taken.put(index, signal));
      if (before.isPresent()) {
        problems.addColumn(
            headers.get(index).text(),
            "is named for both " + before.get().key() + " and " + signal.key());
        continue;
      }
      chosenUnit(headers.get(index), signal, choice.get(), index)
          .ifPresent(unit -> matches.put(signal, new Match(index, signal, unit)));
    }
    return taken;
  }

  private Optional<Integer> find(String wanted, Signal signal) {
    List<Integer> found = indices(h -> h.text().equals(wanted.strip()));
    if (found.isEmpty()) {
      found = indices(h -> loose(h.text()).equals(loose(wanted)));
    }
    if (found.size() == 1) {
      return Optional.of(found.get(0));
    }
    if (found.isEmpty()) {
      problems.add(
          "has no column `" + wanted + "` for " + signal.key() + "; its columns are " + list());
    } else {
      problems.add(
          "has "
              + found.size()
              + " columns `"
              + wanted
              + "` for "
              + signal.key()
              + "; give each a name of its own");
    }
    return Optional.empty();
  }

  private Optional<Unit> chosenUnit(
      Header header, Signal signal, LogColumns.Choice choice, int index) {
    remarks.set(index, "named in the scenario");
    if (signal == Signal.BOOST && header.isAbsolutePressure()) {
      problems.addColumn(
          header.text(), "is an absolute pressure; boost is gauge: name a gauge column");
      return Optional.empty();
    }
    if (choice.unit().isPresent()) {
      Unit unit = choice.unit().get();
      if (!signal.dimension().units().contains(unit)) {
        problems.addColumn(header.text(), wrongUnit(unit.symbol(), signal));
        return Optional.empty();
      }
      Optional<Unit> said = header.unit().flatMap(u -> LogUnits.find(signal.dimension(), u));
      if (said.isPresent() && !said.get().equals(unit)) {
        remarks.set(
            index,
            "read in " + unit.symbol() + " as the scenario says, not " + said.get().symbol());
      }
      return Optional.of(unit);
    }
    return headerUnit(header, signal);
  }

  private void recognise(LogColumns columns, Map<Integer, Signal> taken) {
    Map<Signal, List<Integer>> found = new EnumMap<>(Signal.class);
    for (int i = 0; i < headers.size(); i++) {
      Header header = headers.get(i);
      if (taken.containsKey(i) || header.meaning().isEmpty()) {
        continue;
      }
      Optional<ColumnNames.Known> known = header.known();
      if (known.isEmpty()) {
        remarks.set(i, whyUnread(header));
      } else if (columns.chosen().containsKey(known.get().signal())) {
        remarks.set(i, "the scenario names another column for " + known.get().signal().key());
      } else if (isOtherQuantity(header, known.get().signal())) {
        remarks.set(i, whyOther(header, known.get().signal()));
      } else {
        remarks.set(i, "");
        found.computeIfAbsent(known.get().signal(), s -> new ArrayList<>()).add(i);
      }
    }
    found.forEach(this::settle);
  }

  private void settle(Signal signal, List<Integer> found) {
    if (found.size() > 1) {
      problems.add(
          "has "
              + found.size()
              + " columns for "
              + signal.key()
              + ": "
              + found.stream()
                  .map(i -> "`" + headers.get(i).text() + "`")
                  .collect(Collectors.joining(", "))
              + "; write `"
              + signal.key()
              + ": \"...\"` in the scenario under log, columns, to choose one");
      return;
    }
    int index = found.get(0);
    headerUnit(headers.get(index), signal)
        .ifPresent(unit -> matches.put(signal, new Match(index, signal, unit)));
  }

  /** The unit that a header says, or a problem. */
  private Optional<Unit> headerUnit(Header header, Signal signal) {
    Dimension dimension = signal.dimension();
    if (header.unit().isPresent()) {
      String text = header.unit().get();
      Optional<Unit> unit = LogUnits.find(dimension, text);
      if (unit.isEmpty()) {
        problems.addColumn(header.text(), wrongUnit(text, signal));
      }
      return unit;
    }
    Optional<String> implied =
        header
            .known()
            .filter(k -> k.signal().dimension() == dimension && !k.unit().isEmpty())
            .map(ColumnNames.Known::unit);
    if (implied.isPresent()) {
      return Optional.of(dimension.require(implied.get()));
    }
    problems.addColumn(
        header.text(),
        "has no unit; head it `"
            + header.name()
            + " ["
            + example(dimension)
            + "]`, or write `"
            + signal.key()
            + ": {name: \""
            + header.text()
            + "\", unit: "
            + example(dimension)
            + "}` in the scenario under log, columns; allowed: "
            + dimension.allowed());
    return Optional.empty();
  }

  private static String wrongUnit(String text, Signal signal) {
    if (signal == Signal.TIME && text.contains(":")) {
      return "holds clock times; export time as seconds from the start of the log, as `Time [s]`";
    }
    return "has the unit `"
        + text
        + "`; allowed for "
        + signal.key()
        + ": "
        + signal.dimension().allowed();
  }

  /** Whether the unit shows that a listed name stands for something else here. */
  private static boolean isOtherQuantity(Header header, Signal signal) {
    return signal != Signal.TIME
        && header
            .unit()
            .filter(u -> LogUnits.find(signal.dimension(), u).isEmpty() && LogUnits.known(u))
            .isPresent();
  }

  private static String whyOther(Header header, Signal signal) {
    return header.isAbsolutePressure()
        ? "absolute pressure is never taken for boost; name a gauge column"
        : "its unit is not one of a " + signal.dimension().label();
  }

  private static String whyUnread(Header header) {
    if (header.isAbsolutePressure()) {
      return "absolute pressure is never taken for boost; name a gauge column";
    }
    return header
            .meaning()
            .filter(ColumnNames.Unsettled.class::isInstance)
            .map(m -> ((ColumnNames.Unsettled) m).why())
            .orElse("not settled")
        + "; name it in the scenario to use it";
  }

  private static String example(Dimension dimension) {
    return switch (dimension) {
      case TIME -> "s";
      case ROTATION -> "rpm";
      case SPEED -> "km/h";
      case TEMPERATURE -> "degC";
      case GAUGE_PRESSURE -> "kPa";
      default -> dimension.si().symbol();
    };
  }

  private List<Integer> indices(java.util.function.Predicate<Header> test) {
    return IntStream.range(0, headers.size())
        .filter(i -> test.test(headers.get(i)))
        .boxed()
        .toList();
  }

  /** The columns' names, for messages. */
  String list() {
    return headers.stream()
        .filter(h -> !h.text().isEmpty())
        .map(h -> "`" + h.text() + "`")
        .collect(Collectors.joining(", "));
  }

  private static String loose(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
  }
}
