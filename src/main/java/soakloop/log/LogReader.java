package soakloop.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads a plain CSV log: one header row, then numbers.
 *
 * <p>Cells are parted by commas, semicolons or tabs, whichever the header row has; text is UTF-8
 * with or without a byte order mark; lines that begin with {@code #} are kept as notes; blank lines
 * and rows without any value are skipped. Columns are those that the scenario names, else those
 * with a known name; a unit stands in the header or in the scenario. A cell that is empty, {@code
 * NaN} or {@code N/A} has no value.
 *
 * <p>The file is only read. All problems found are reported at once, with rows counted from 1 as an
 * editor shows them.
 */
public final class LogReader {
  /** Engine speed under which an engine with a blower makes no boost, rev/s. */
  private static final double IDLING = 1200.0 / 60;

  /** Gauge pressure that no idling engine has but an absolute one shows, Pa. */
  private static final double ABSOLUTE_AT_IDLE = 20e3;

  private final Table table;
  private final List<Header> headers;
  private final Problems problems;

  private LogReader(Table table, List<Header> headers, Problems problems) {
    this.table = table;
    this.headers = headers;
    this.problems = problems;
  }

  /**
   * Reads a log.
   *
   * @param file the CSV file
   * @param columns what the scenario says of its columns
   * @return the log, in SI units, with at least two rows and one signal besides time
   * @throws LogException if it cannot be used; says everything that is wrong with it, up to 20
   *     problems
   */
  public static Log read(Path file, LogColumns columns) throws LogException {
    Problems problems = new Problems(file.toString());
    String text = LogText.read(file, problems);
    Table table = Table.of(text, problems);
    List<Header> headers = table.header().cells().stream().map(Header::of).toList();
    HardCases.check(table, headers, text, problems);
    String name = Optional.ofNullable(file.getFileName()).orElse(file).toString();
    return new LogReader(table, headers, problems).log(name, columns);
  }

  private Log log(String name, LogColumns columns) throws LogException {
    ColumnMatcher matcher = ColumnMatcher.of(headers, columns, problems);
    Optional<ColumnMatcher.Match> found = matcher.match(Signal.TIME);
    if (found.isEmpty()) {
      problems.check();
      throw noTime(matcher);
    }
    ColumnMatcher.Match time = found.get();
    if (matcher.matches().size() < 2) {
      problems.check();
      throw problems.only(
          "has no column besides time that is known; name them in the scenario; its columns are "
              + matcher.list());
    }
    List<Table.Row> rows = wholeRows();
    double[] times = column(time, rows);
    checkRising(time, rows, times);
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    List<ColumnMatcher.Match> empty = new ArrayList<>();
    for (ColumnMatcher.Match match : matcher.matches()) {
      double[] column = match.equals(time) ? times : column(match, rows);
      if (IntStream.range(0, column.length).allMatch(i -> Double.isNaN(column[i]))) {
        empty.add(match);
      } else if (!match.equals(time)) {
        values.put(match.signal(), column);
      }
    }
    checkGauge(matcher, rows, values);
    if (table.rows().size() < 2) {
      problems.add(
          "has " + count(table.rows().size(), "row") + " of values; at least 2 are needed");
    }
    problems.check();
    if (values.isEmpty()) {
      throw problems.only("has no value in any known column besides time");
    }
    return new Log(name, times, values, matcher.columns(empty), table.notes());
  }

  private LogException noTime(ColumnMatcher matcher) {
    String parted =
        headers.size() == 1 ? " (cells must be parted by commas, semicolons or tabs)" : "";
    return problems.only(
        "has no time column; head it `Time [s]` or name it in the scenario; its columns are "
            + matcher.list()
            + parted);
  }

  /** Rows with a cell for every column; surplus cells do not count if they are empty. */
  private List<Table.Row> wholeRows() {
    List<Table.Row> whole = new ArrayList<>();
    int wanted = headers.size();
    for (Table.Row row : table.rows()) {
      List<String> cells = row.cells();
      boolean emptySurplus =
          cells.size() > wanted
              && cells.subList(wanted, cells.size()).stream().allMatch(String::isEmpty);
      if (cells.size() == wanted || emptySurplus) {
        whole.add(row);
      } else {
        String hint =
            cells.size() > wanted && table.separator() == ','
                ? "; a decimal comma or a comma in a text without quotes makes such rows"
                : "";
        problems.addRow(
            row.line(),
            "has "
                + count(cells.size(), "cell")
                + ", but the header has "
                + wanted
                + " (parted by "
                + table.separatorName()
                + ")"
                + hint);
      }
    }
    return whole;
  }

  private double[] column(ColumnMatcher.Match match, List<Table.Row> rows) {
    CellReader reader =
        new CellReader(headers.get(match.index()).text(), match.signal(), match.unit(), problems);
    double[] column = new double[rows.size()];
    for (int i = 0; i < column.length; i++) {
      Table.Row row = rows.get(i);
      column[i] = reader.read(row.line(), row.cells().get(match.index()));
    }
    return column;
  }

  private void checkRising(ColumnMatcher.Match match, List<Table.Row> rows, double[] times) {
    int before = -1;
    for (int i = 0; i < times.length; i++) {
      if (Double.isNaN(times[i])) {
        continue;
      }
      if (before >= 0 && !(times[i] > times[before])) {
        Table.Row row = rows.get(i);
        Table.Row last = rows.get(before);
        problems.addCell(
            row.line(),
            headers.get(match.index()).text(),
            "the time `"
                + row.cells().get(match.index())
                + "` does not rise above `"
                + last.cells().get(match.index())
                + "` in row "
                + last.line()
                + "; export one run with times that rise from row to row");
      }
      before = i;
    }
  }

  /** Refuses a boost column that stays well above zero at idle: it counts from vacuum. */
  private void checkGauge(
      ColumnMatcher matcher, List<Table.Row> rows, Map<Signal, double[]> values) {
    Optional<ColumnMatcher.Match> match = matcher.match(Signal.BOOST);
    double[] boost = values.getOrDefault(Signal.BOOST, new double[0]);
    double[] speed = values.getOrDefault(Signal.ENGINE_SPEED, new double[0]);
    int[] idling =
        IntStream.range(0, Math.min(boost.length, speed.length))
            .filter(i -> speed[i] < IDLING && !Double.isNaN(boost[i]))
            .toArray();
    if (match.isEmpty()
        || idling.length == 0
        || IntStream.of(idling).anyMatch(i -> boost[i] <= ABSOLUTE_AT_IDLE)) {
      return;
    }
    int index = match.get().index();
    Table.Row row = rows.get(idling[0]);
    problems.addCell(
        row.line(),
        headers.get(index).text(),
        "`"
            + row.cells().get(index)
            + "` "
            + match.get().unit().symbol()
            + " at idle looks like an absolute pressure; boost is gauge: name a gauge column");
  }

  private static String count(int n, String what) {
    return n + " " + what + (n == 1 ? "" : "s");
  }
}
