package soakloop.log;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What is known of a file's columns while their meaning is being settled. */
final class Matching {
  private final RawTable table;
  private final ChosenColumns chosen;
  private final LogColumns columns;
  private final TimeAxis axis;
  private final Problems problems;
  private final String[] remarks;
  private final List<String> complaints = new ArrayList<>();
  private final List<Remark> said = new ArrayList<>();
  private final Map<Integer, String> doubts = new HashMap<>();
  private final Map<Integer, Stats> stats = new HashMap<>();
  private final Map<Integer, Reading> readings = new TreeMap<>();
  private final Map<Integer, ColumnNames.Unsettled> unsettled = new TreeMap<>();
  private final Map<Integer, Signal> withoutUnit = new TreeMap<>();

  Matching(
      RawTable table, ChosenColumns chosen, LogColumns columns, TimeAxis axis, Problems problems) {
    this.table = table;
    this.chosen = chosen;
    this.columns = columns;
    this.axis = axis;
    this.problems = problems;
    this.remarks = new String[table.headers().size()];
    for (int i = 0; i < remarks.length; i++) {
      remarks[i] = header(i).text().isEmpty() ? "has no name" : "not a known name";
    }
  }

  int size() {
    return remarks.length;
  }

  List<Header> headers() {
    return table.headers();
  }

  Header header(int i) {
    return table.headers().get(i);
  }

  ChosenColumns chosen() {
    return chosen;
  }

  LogColumns columns() {
    return columns;
  }

  TimeAxis axis() {
    return axis;
  }

  Problems problems() {
    return problems;
  }

  /** Returns a column's values in the file's unit; nothing if it is not read. */
  @Nullable Series raw(int i) {
    return table.columns()[i];
  }

  /** Returns the values of a column that is read, in the file's unit, by the log's rows. */
  Series rows(int i) {
    return new PickedRows(Objects.requireNonNull(raw(i)), axis);
  }

  Stats stats(int i) {
    Series raw = raw(i);
    return raw == null ? Stats.NONE : stats.computeIfAbsent(i, k -> Stats.of(raw));
  }

  boolean hasValues(int i) {
    return stats(i).count() > 0;
  }

  /** Returns what columns are taken for so far. */
  List<Reading> readings() {
    return List.copyOf(readings.values());
  }

  @Nullable Reading reading(int i) {
    return readings.get(i);
  }

  /** Takes a column for something. */
  void put(Reading reading) {
    readings.put(reading.index(), reading);
    withoutUnit.remove(reading.index());
  }

  /** Takes a column for nothing. */
  void drop(int i) {
    readings.remove(i);
  }

  /** Returns the signals that have a column. */
  Set<Signal> taken() {
    Set<Signal> taken = EnumSet.noneOf(Signal.class);
    taken.addAll(columns.chosen().keySet());
    readings.values().forEach(r -> taken.add(r.signal()));
    return taken;
  }

  /** Returns a signal's values, SI. */
  Optional<Series> si(Signal signal) {
    return readings.values().stream()
        .filter(r -> r.signal() == signal)
        .findFirst()
        .flatMap(this::si);
  }

  /** Returns a column's values, SI. */
  Optional<Series> si(Reading r) {
    return measured(r, PlausibleRange.of(r.signal()));
  }

  /** Returns a pressure's values whichever its scale, Pa. */
  Optional<Series> pressure(Reading r) {
    return measured(r, PlausibleRange.of(Signal.BOOST));
  }

  private Optional<Series> measured(Reading r, PlausibleRange range) {
    Series raw = raw(r.index());
    return raw == null ? Optional.empty() : Optional.of(new Measured(raw, r.unit(), range, axis));
  }

  /** Returns the absolute pressure after the core, Pa; a gauge one counts from 100 kPa. */
  Optional<Series> pressureAfterCore() {
    return si(Signal.MANIFOLD_PRESSURE)
        .or(() -> si(Signal.BOOST).map(boost -> new DerivedPressure.Moved(boost, 100e3)));
  }

  /** Returns columns whose names leave several signals, with those. */
  Map<Integer, ColumnNames.Unsettled> unsettled() {
    return unsettled;
  }

  /** Returns columns of a known signal that say no unit. */
  Map<Integer, Signal> withoutUnit() {
    return withoutUnit;
  }

  /** Returns what is said of a column. */
  String remark(int i) {
    return remarks[i];
  }

  /** Says something of a column. */
  void remark(int i, String what) {
    remarks[i] = what;
  }

  /** Says something of a column that a user must settle if nothing else can be read. */
  void complain(int i, String what) {
    remarks[i] = what;
    complaints.add("column `" + header(i).text() + "`: " + what);
  }

  /** Says what leaves a column's unit open. */
  void doubt(int i, String why) {
    doubts.put(i, why);
  }

  /** Returns what leaves a column's unit open; may be empty. */
  String doubt(int i) {
    return doubts.getOrDefault(i, "");
  }

  /** Says something that a reader of the log should know. */
  void say(Remark remark) {
    said.add(remark);
  }

  List<Remark> said() {
    return said;
  }

  List<String> complaints() {
    return complaints;
  }
}
