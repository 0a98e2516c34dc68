package soakloop.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Reads long files: a row for each value, with its time, its name and perhaps its unit. */
final class LongTable {
  private static final Set<String> NAMES =
      Set.of("name", "channel", "signal", "parameter", "variable", "item", "sensor", "pid", "key");
  private static final Set<String> VALUES = Set.of("value", "reading", "val", "measurement");
  private static final Set<String> UNITS = Set.of("unit", "units", "uom");
  private static final int MOST_NAMES = 500;

  private final LogText text;
  private final Dialect dialect;
  private final Layout layout;
  private final TimeColumn time;
  private final int name;
  private final int value;
  private final int unit;

  private LongTable(
      LogText text,
      Dialect dialect,
      Layout layout,
      TimeColumn time,
      int name,
      int value,
      int unit) {
    this.text = text;
    this.dialect = dialect;
    this.layout = layout;
    this.time = time;
    this.name = name;
    this.value = value;
    this.unit = unit;
  }

  /** Finds whether a file is long: it has a column of names and one of values. */
  static Optional<LongTable> of(LogText text, Dialect dialect, Layout layout) {
    int name = find(layout, NAMES);
    int value = find(layout, VALUES);
    if (name < 0 || value < 0 || layout.headers().size() > 8) {
      return Optional.empty();
    }
    return new TimeColumnFinder(layout, dialect.style())
        .find()
        .map(t -> new LongTable(text, dialect, layout, t, name, value, find(layout, UNITS)));
  }

  private static int find(Layout layout, Set<String> names) {
    for (int i = 0; i < layout.headers().size(); i++) {
      if (names.contains(layout.headers().get(i).text().toLowerCase(java.util.Locale.ROOT))) {
        return i;
      }
    }
    return -1;
  }

  /** Returns how time is written, told as the first of the wide columns. */
  TimeColumn time() {
    return new TimeColumn(0, time.kind(), time.confidence(), time.reason());
  }

  /** Reads the file into one column for each name, with the times of all. */
  RawTable read(OptionalDouble rate, Problems problems) throws LogException {
    QuotedText.Parsed<Rows> parsed =
        QuotedText.parse(text::open, dialect, Rows::new, layout.headers(), problems);
    Rows rows = parsed.rows();
    if (rows.byName.size() > MOST_NAMES) {
      throw problems.only(
          "holds a value a row with more than "
              + MOST_NAMES
              + " names; export one column a signal");
    }
    if (rate.isPresent()) {
      throw problems.only("holds a value a row with its time; take `rate` under log away");
    }
    return pivot(rows, parsed.remark());
  }

  private RawTable pivot(Rows rows, Optional<Remark> quotes) {
    Series times = rows.times.series();
    Series lines = rows.lines.build();
    int n = times.size();
    IntUnaryOperator order = order(times);
    Series which = rows.which.build();
    Series values = rows.values.series();
    int width = rows.byName.size();
    PackedColumn.Builder[] columns = new PackedColumn.Builder[width];
    Arrays.setAll(columns, i -> new PackedColumn.Builder());
    PackedColumn.Builder outTime = new PackedColumn.Builder();
    PackedColumn.Builder outLine = new PackedColumn.Builder();
    double[] row = new double[width];
    Arrays.fill(row, Double.NaN);
    for (int k = 0; k < n; k++) {
      int i = order.applyAsInt(k);
      row[(int) which.at(i)] = values.at(i);
      if (k + 1 < n && times.at(order.applyAsInt(k + 1)) == times.at(i)) {
        continue;
      }
      outTime.add(times.at(i));
      outLine.add((long) lines.at(i), 0);
      for (int c = 0; c < width; c++) {
        columns[c].add(row[c]);
        row[c] = Double.NaN;
      }
    }
    List<Header> headers = new ArrayList<>();
    @Nullable Series[] wide = new @Nullable Series[width + 1];
    headers.add(layout.headers().get(time.index()));
    rows.byName.forEach(
        (text, column) -> {
          headers.add(Header.of(text, column.unit()));
          wide[column.index() + 1] = columns[column.index()].build();
        });
    List<Remark> remarks = new ArrayList<>();
    remarks.add(
        new Remark(
            Remark.Kind.FORMAT,
            layout.firstLine(),
            layout.firstLine(),
            "one value a row: "
                + n
                + " rows become "
                + outTime.size()
                + " of "
                + width
                + " columns"));
    quotes.ifPresent(remarks::add);
    rows.values.remark(layout.headers().get(value).text()).ifPresent(remarks::add);
    String zero = time.kind().fromFirst() ? rows.times.firstCell() : "";
    return new RawTable(
        headers, wide, outTime.build(), zero, outLine.build(), layout.notes(), remarks);
  }

  /** Rows by time; those of one time in the file's order. */
  private static IntUnaryOperator order(Series times) {
    int n = times.size();
    for (int i = 1; i < n; i++) {
      if (times.at(i) < times.at(i - 1)) {
        Integer[] order = new Integer[n];
        Arrays.setAll(order, k -> k);
        Arrays.sort(order, (a, b) -> Double.compare(times.at(a), times.at(b)));
        return k -> order[k];
      }
    }
    return IntUnaryOperator.identity();
  }

  private record Column(int index, String unit) {}

  /** Takes rows. */
  private final class Rows extends QuotedText.Rows {
    private final TimeSink times = new TimeSink(time.kind(), dialect.style());
    private final ColumnSink values;
    private final PackedColumn.Builder which = new PackedColumn.Builder();
    private final PackedColumn.Builder lines = new PackedColumn.Builder();
    private final Map<String, Column> byName = new LinkedHashMap<>();
    private long line;
    private String rowName = "";
    private String rowUnit = "";
    private boolean timed;
    private boolean valued;

    Rows() {
      this.values = new ColumnSink(dialect.style(), "", true);
    }

    @Override
    protected void handleBegin(long startingLineNumber) {
      line = startingLineNumber;
      rowName = "";
      rowUnit = "";
      timed = false;
      valued = false;
    }

    @Override
    protected void handleField(int index, char[] chars, int offset, int length, boolean quoted) {
      if (quoted) {
        quoted(chars, offset, length);
      }
      if (line < layout.firstLine()) {
        return;
      }
      if (index == name) {
        rowName = new String(chars, offset, length).strip();
      } else if (index == unit) {
        rowUnit = new String(chars, offset, length).strip();
      } else if (index == time.index()) {
        times.cell(chars, offset, length);
        timed = true;
      } else if (index == value) {
        values.cell(chars, offset, length, line);
        valued = true;
      }
    }

    @Override
    protected Boolean buildRecord() {
      boolean whole = timed && valued && !rowName.isEmpty();
      if (whole && byName.size() <= MOST_NAMES) {
        Column column = byName.computeIfAbsent(rowName, k -> new Column(byName.size(), rowUnit));
        which.add(column.index(), 0);
        lines.add(line, 0);
        return true;
      }
      if (timed) {
        times.dropLast();
      }
      if (valued) {
        values.dropLast();
      }
      return false;
    }
  }
}
