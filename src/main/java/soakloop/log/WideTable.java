package soakloop.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads files with a column for each signal: the usual ones. */
final class WideTable {
  private static final int SAMPLED = 200;

  private final LogText text;
  private final Dialect dialect;
  private final Layout layout;

  WideTable(LogText text, Dialect dialect, Layout layout) {
    this.text = text;
    this.dialect = dialect;
    this.layout = layout;
  }

  /**
   * Reads the columns whose names are known or chosen, row by row.
   *
   * @param time the time column, if there is one
   */
  RawTable read(Optional<TimeColumn> time, ChosenColumns chosen, Problems problems)
      throws LogException {
    int n = layout.headers().size();
    List<Header> headers = new ArrayList<>(layout.headers());
    String[] suffixes = new String[n];
    for (int i = 0; i < n; i++) {
      suffixes[i] = suffix(i);
      if (!suffixes[i].isEmpty() && headers.get(i).unit().isEmpty()) {
        headers.set(i, Header.of(headers.get(i).text(), suffixes[i]));
      }
    }
    int timeColumn = time.map(TimeColumn::index).orElse(-1);
    TimeKind kind = time.map(TimeColumn::kind).orElse(TimeKind.SECONDS);
    QuotedText.Parsed<RowSink> parsed =
        QuotedText.parse(
            text::open,
            dialect,
            () ->
                new RowSink(
                    layout.firstLine(),
                    timeColumn,
                    new TimeSink(kind, dialect.style()),
                    sinks(timeColumn, suffixes, chosen)),
            headers,
            problems);
    RowSink rows = parsed.rows();
    List<Remark> remarks = new ArrayList<>(rows.remarks(dialect, problems));
    parsed.remark().ifPresent(remarks::add);
    @Nullable Series[] columns = new @Nullable Series[n];
    for (int i = 0; i < n; i++) {
      ColumnSink sink = rows.sink(i);
      if (sink != null) {
        columns[i] = sink.series();
        sink.remark(headers.get(i).text()).ifPresent(remarks::add);
      }
    }
    List<String> notes = new ArrayList<>(layout.notes());
    rows.notes().stream().filter(c -> !notes.contains(c)).forEach(notes::add);
    TimeSink times = rows.time();
    String zero = time.filter(t -> t.kind().fromFirst()).isPresent() ? times.firstCell() : "";
    return new RawTable(headers, columns, times.series(), zero, rows.lines(), notes, remarks);
  }

  /** A sink for each column whose name is known or chosen. */
  private @Nullable ColumnSink[] sinks(int timeColumn, String[] suffixes, ChosenColumns chosen) {
    @Nullable ColumnSink[] sinks = new @Nullable ColumnSink[suffixes.length];
    for (int i = 0; i < sinks.length; i++) {
      Header header = layout.headers().get(i);
      Optional<Signal> named = chosen.signal(i);
      if (i == timeColumn || (named.isEmpty() && header.meaning().isEmpty())) {
        continue;
      }
      boolean states =
          header.says(Signal.PUMP)
              || header.says(Signal.FAN)
              || named.filter(s -> s == Signal.PUMP || s == Signal.FAN).isPresent();
      sinks[i] = new ColumnSink(dialect.style(), suffixes[i], states);
    }
    return sinks;
  }

  /** The unit that follows the numbers in most of a column's cells. */
  private String suffix(int index) {
    Map<String, Integer> seen = new HashMap<>();
    int cells = 0;
    for (Layout.Row row : layout.sample().subList(0, Math.min(SAMPLED, layout.sample().size()))) {
      if (index >= row.cells().size() || CellStyle.isMissing(row.cells().get(index))) {
        continue;
      }
      cells++;
      dialect
          .style()
          .measure(row.cells().get(index))
          .map(CellStyle.Measure::suffix)
          .filter(s -> !s.isEmpty() && LogUnits.known(s))
          .ifPresent(s -> seen.merge(s, 1, Integer::sum));
    }
    int half = cells / 2;
    return seen.entrySet().stream()
        .filter(e -> e.getValue() > half)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("");
  }
}
