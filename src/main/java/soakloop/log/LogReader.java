package soakloop.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a log as its logger wrote it.
 *
 * <p>Encoding, separator and decimal sign are found by looking; rows before the header and lines
 * that begin with {@code #} are kept as notes; units stand in the header, in a row below it, in the
 * cells, in the scenario, or are told by the values. Columns are those that the scenario names,
 * else those with a known name. Cells without a number have no value. A long file, with a row for
 * each value, is read too. Memory goes with the values read, one or two bytes each as a rule, not
 * with the file.
 *
 * <p>What is doubtful is said in {@link Log#columns} and {@link Log#remarks}; only what cannot be
 * used is an error. The file is only read. Rows are counted from 1 as an editor shows them.
 */
public final class LogReader {
  private final Path file;
  private final LogColumns columns;
  private final Problems problems;

  private LogReader(Path file, LogColumns columns) {
    this.file = file;
    this.columns = columns;
    this.problems = new Problems(file.toString());
  }

  /**
   * Reads a log.
   *
   * @param file the text file
   * @param columns what the scenario says of its columns
   * @return the log, in SI units, with at least two rows and one signal besides time
   * @throws LogException if it cannot be used; says everything that is wrong with it, up to 20
   *     problems
   */
  public static Log read(Path file, LogColumns columns) throws LogException {
    return new LogReader(file, columns).read();
  }

  private Log read() throws LogException {
    LogText text = LogText.of(file, problems);
    Dialect dialect = Dialect.of(text.head());
    Layout layout = Layout.of(text, dialect, wanted(), problems);
    Optional<LongTable> rows = LongTable.of(text, dialect, layout);
    if (rows.isPresent()) {
      RawTable table = rows.get().read(columns.rate(), problems);
      Layout pivoted = layout.with(table.headers());
      ChosenColumns chosen = ChosenColumns.of(pivoted, columns, problems);
      problems.check();
      return log(pivoted, dialect, table, chosen, Optional.of(rows.get().time()));
    }
    ChosenColumns chosen = ChosenColumns.of(layout, columns, problems);
    problems.check();
    Optional<TimeColumn> time =
        columns.rate().isPresent() ? Optional.empty() : timeColumn(layout, dialect, chosen);
    RawTable table = new WideTable(text, dialect, layout).read(time, chosen, problems);
    problems.check();
    return log(layout, dialect, table, chosen, time);
  }

  private Set<String> wanted() {
    Set<String> wanted = new LinkedHashSet<>();
    columns.chosen().values().forEach(c -> wanted.add(c.header().strip()));
    return wanted;
  }

  private Optional<TimeColumn> timeColumn(Layout layout, Dialect dialect, ChosenColumns chosen)
      throws LogException {
    TimeColumnFinder finder = new TimeColumnFinder(layout, dialect.style());
    Integer index = chosen.indices().get(Signal.TIME);
    Optional<TimeColumn> found =
        index == null
            ? finder.find()
            : finder.chosen(
                index,
                Optional.ofNullable(columns.chosen().get(Signal.TIME)).flatMap(c -> c.unit()));
    if (found.isPresent()) {
      return found;
    }
    if (layout.sample().size() < 2) {
      checkRows(layout.sample().size());
    }
    if (finder.complaints().isEmpty()) {
      String parted =
          layout.headers().size() == 1
              ? " (cells must be parted by commas, semicolons, tabs or bars)"
              : "";
      throw problems.only(
          "has no time column; head it `Time [s]`, name it in the scenario, or say how many rows a"
              + " second there are, as `rate: 10 Hz` under log; its columns are "
              + layout.list()
              + parted);
    }
    finder.complaints().forEach(problems::add);
    problems.check();
    return Optional.empty();
  }

  private void checkRows(int rows) throws LogException {
    if (rows < 2) {
      throw problems.only(
          "has " + rows + (rows == 1 ? " row" : " rows") + " of values; at least 2 are needed");
    }
  }

  private Log log(
      Layout layout,
      Dialect dialect,
      RawTable table,
      ChosenColumns chosen,
      Optional<TimeColumn> time)
      throws LogException {
    TimeAxis axis =
        columns.rate().isPresent()
            ? TimeAxis.even(table.lines().size(), columns.rate().getAsDouble())
            : TimeAxis.of(table.time(), table.lines());
    checkRows(axis.time().size());
    ColumnMatcher matcher = new ColumnMatcher(new Matching(table, chosen, columns, axis, problems));
    int timeIndex = time.map(TimeColumn::index).orElse(-1);
    Map<Signal, Reading> readings = matcher.match(timeIndex);
    problems.check();
    Map<Signal, Series> values = new EnumMap<>(Signal.class);
    readings.forEach(
        (signal, r) -> {
          @Nullable Series raw = table.columns()[r.index()];
          if (raw != null) {
            values.put(signal, new Measured(raw, r.unit(), PlausibleRange.of(signal), axis));
          }
        });
    List<Remark> remarks = new ArrayList<>(format(dialect, table));
    values.forEach(
        (signal, series) ->
            LeftOut.of(
                    (Measured) series,
                    table.headers().get(indexOf(readings, signal)).text(),
                    table.lines())
                .ifPresent(remarks::add));
    values.values().removeIf(s -> Stats.of(s).count() == 0);
    if (values.isEmpty()) {
      throw nothing(matcher, readings, layout);
    }
    List<Log.Column> told = new ArrayList<>();
    for (int i = 0; i < table.headers().size(); i++) {
      told.add(column(i, table.headers().get(i), time, readings, values, matcher));
    }
    Optional<Barometer> barometer = Barometer.of(values);
    barometer.ifPresent(
        b ->
            DerivedPressure.of(values, b)
                .forEach(
                    d -> {
                      values.put(d.signal(), d.values());
                      told.add(d.column());
                    }));
    remarks.addAll(matcher.said());
    remarks.addAll(axis.remarks());
    Series lines = axis.rows().isPresent() ? new PickedRows(table.lines(), axis) : table.lines();
    String name = Optional.ofNullable(file.getFileName()).orElse(file).toString();
    return new Log(name, axis.time(), lines, values, told, table.notes(), remarks, barometer);
  }

  private static int indexOf(Map<Signal, Reading> readings, Signal signal) {
    Reading r = readings.get(signal);
    return r == null ? 0 : r.index();
  }

  private List<Remark> format(Dialect dialect, RawTable table) {
    List<Remark> remarks = new ArrayList<>();
    if (dialect.style().decimal() == ',') {
      remarks.add(new Remark(Remark.Kind.FORMAT, 0, 0, "numbers have a decimal comma"));
    }
    if (columns.rate().isPresent()) {
      remarks.add(
          new Remark(
              Remark.Kind.TIME,
              0,
              0,
              String.format(
                  java.util.Locale.ROOT,
                  "times are made from the stated rate, %.6g rows a second",
                  columns.rate().getAsDouble())));
    } else if (!table.zero().isEmpty()) {
      remarks.add(
          new Remark(Remark.Kind.TIME, 0, 0, "time 0 s is the first row's `" + table.zero() + "`"));
    }
    remarks.addAll(table.remarks());
    return remarks;
  }

  private LogException nothing(ColumnMatcher matcher, Map<Signal, Reading> readings, Layout layout)
      throws LogException {
    matcher.complaints().forEach(problems::add);
    problems.check();
    boolean named =
        !readings.isEmpty()
            || layout.headers().stream()
                .anyMatch(h -> h.known().isPresent() && !h.says(Signal.TIME));
    if (named && readings.isEmpty()) {
      return problems.only("has no value in any known column besides time");
    }
    return problems.only(
        named
            ? "has no value in any known column besides time"
            : "has no column besides time that is known; name them in the scenario; its columns are "
                + layout.list());
  }

  private static Log.Column column(
      int i,
      Header header,
      Optional<TimeColumn> time,
      Map<Signal, Reading> readings,
      Map<Signal, Series> values,
      ColumnMatcher matcher) {
    if (time.isPresent() && time.get().index() == i) {
      TimeColumn t = time.get();
      return new Log.Column(
          header.text(), Optional.of(Signal.TIME), t.kind().said(), t.reason(), t.confidence());
    }
    for (Reading r : readings.values()) {
      if (r.index() == i) {
        return values.containsKey(r.signal())
            ? new Log.Column(
                header.text(),
                Optional.of(r.signal()),
                r.unit().symbol(),
                r.reason(),
                r.confidence())
            : new Log.Column(header.text(), Optional.empty(), "", "has no values");
      }
    }
    return new Log.Column(header.text(), Optional.empty(), "", matcher.remark(i));
  }
}
