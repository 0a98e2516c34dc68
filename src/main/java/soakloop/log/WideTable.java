package soakloop.log;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
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
    @Nullable ColumnSink[] sinks = new @Nullable ColumnSink[n];
    int timeColumn = time.map(TimeColumn::index).orElse(-1);
    for (int i = 0; i < n; i++) {
      Header header = headers.get(i);
      boolean wanted = chosen.signal(i).isPresent() || header.meaning().isPresent();
      if (i == timeColumn || !wanted) {
        continue;
      }
      String suffix = suffix(i);
      if (!suffix.isEmpty() && header.unit().isEmpty()) {
        headers.set(i, Header.of(header.text(), suffix));
      }
      boolean states =
          header.says(Signal.PUMP)
              || header.says(Signal.FAN)
              || chosen.signal(i).filter(s -> s == Signal.PUMP || s == Signal.FAN).isPresent();
      sinks[i] = new ColumnSink(dialect.style(), suffix, states);
    }
    TimeSink timeSink =
        new TimeSink(time.map(TimeColumn::kind).orElse(TimeKind.SECONDS), dialect.style());
    RowSink rows = new RowSink(layout.firstLine(), timeColumn, timeSink, sinks);
    parse(rows, problems);
    List<Remark> remarks = new ArrayList<>(rows.remarks(dialect, problems));
    @Nullable Series[] columns = new @Nullable Series[n];
    for (int i = 0; i < n; i++) {
      ColumnSink sink = sinks[i];
      if (sink != null) {
        columns[i] = sink.series();
        sink.remark(headers.get(i).text()).ifPresent(remarks::add);
      }
    }
    List<String> notes = new ArrayList<>(layout.notes());
    rows.notes().stream().filter(c -> !notes.contains(c)).forEach(notes::add);
    String zero = time.filter(t -> t.kind().fromFirst()).isPresent() ? timeSink.firstCell() : "";
    return new RawTable(headers, columns, timeSink.series(), zero, rows.lines(), notes, remarks);
  }

  private void parse(RowSink sink, Problems problems) throws LogException {
    try (CsvReader<Boolean> reader = dialect.reader().build(sink, text.open());
        CloseableIterator<Boolean> rows = reader.iterator()) {
      while (rows.hasNext()) {
        rows.next();
      }
    } catch (CsvParseException | IOException | java.io.UncheckedIOException e) {
      Series lines = sink.lines();
      long last = lines.size() == 0 ? 0 : (long) lines.at(lines.size() - 1);
      throw problems.only(Layout.brokenQuote(last + 1));
    }
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
