package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Looks for the header, the units and the first row of values. */
final class LayoutFinder {
  private static final int ROWS_BEFORE_VALUES = 4;

  private final List<Layout.Row> rows;
  private final Dialect dialect;
  private final Set<String> wanted;

  LayoutFinder(List<Layout.Row> all, Dialect dialect, Set<String> wanted) {
    this.rows = all;
    this.dialect = dialect;
    this.wanted = wanted;
  }

  Layout find(Problems problems) throws LogException {
    int header = named();
    if (header >= 0 && isUnits(rows.get(header))) {
      // Units such as rpm are names too; the names may stand in a comment above them.
      Optional<Layout.Row> names =
          commentHeader(rows.subList(0, header), dialect, rows.get(header).cells());
      if (names.isPresent()) {
        return layout(names.get(), indexOf(names.get().line()));
      }
    }
    if (header < 0) {
      header = above(firstValues());
    }
    if (header < 0) {
      int values = firstValues();
      boolean none = values < 0 || values == rows.size();
      List<String> cells = none ? List.of() : rows.get(values).cells();
      Optional<Layout.Row> comment =
          commentHeader(none ? rows : rows.subList(0, values), dialect, cells);
      if (comment.isPresent()) {
        return layout(comment.get(), indexOf(comment.get().line()));
      }
      Layout.Row first = rows.get(none ? 0 : values);
      throw problems.only(
          "row "
              + first.line()
              + " holds numbers where the names of the columns must stand; export the log with"
              + " one header row");
    }
    return layout(rows.get(header), header);
  }

  private Layout layout(Layout.Row header, int at) {
    int next = at + 1;
    List<String> units = List.of();
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < at; i++) {
      notes.add(note(rows.get(i)));
    }
    for (int i = next; i < Math.min(rows.size(), at + ROWS_BEFORE_VALUES); i++) {
      Layout.Row row = rows.get(i);
      if (row.comment()) {
        continue;
      }
      if (units.isEmpty() && isUnits(row)) {
        units = row.cells();
        next = i + 1;
      } else if (hasValues(row)) {
        break;
      } else if (i + 1 < rows.size() && followsHeader(i + 1)) {
        notes.add(note(row));
        next = i + 1;
      } else {
        break;
      }
    }
    List<Layout.Row> sample =
        next < rows.size()
            ? rows.subList(next, rows.size()).stream().filter(r -> !r.comment()).toList()
            : List.of();
    long firstLine = sample.isEmpty() ? Long.MAX_VALUE : sample.get(0).line();
    List<String> said = units;
    List<Header> headers =
        IntStream.range(0, header.cells().size())
            .mapToObj(i -> Header.of(header.cells().get(i), i < said.size() ? said.get(i) : ""))
            .toList();
    return new Layout(headers, header.line(), firstLine, sample, List.copyOf(notes));
  }

  /** A row of values or of units must come soon for a row of texts to be a second header. */
  private boolean followsHeader(int from) {
    for (int i = from; i < Math.min(rows.size(), from + 2); i++) {
      if (!rows.get(i).comment()) {
        return hasValues(rows.get(i)) || isUnits(rows.get(i));
      }
    }
    return false;
  }

  /** The row that names most signals. */
  private int named() {
    int best = -1;
    long most = 0;
    for (int i = 0; i < Math.min(rows.size(), 400); i++) {
      Layout.Row row = rows.get(i);
      if (row.comment() || hasValues(row)) {
        continue;
      }
      long known = known(row.cells(), wanted);
      if (known > most && (known > 1 || row.cells().size() < 3 || isFollowedByValues(i))) {
        most = known;
        best = i;
      }
    }
    return best;
  }

  private boolean isFollowedByValues(int i) {
    return followsHeader(i + 1);
  }

  private int firstValues() {
    for (int i = 0; i < rows.size(); i++) {
      Layout.Row row = rows.get(i);
      boolean again = i + 1 >= rows.size() || hasValues(rows.get(i + 1));
      if (!row.comment() && hasValues(row) && again) {
        return i;
      }
    }
    return rows.stream().anyMatch(r -> !r.comment()) ? -1 : rows.size();
  }

  private int above(int values) {
    int i = values < 0 ? rows.size() - 1 : values - 1;
    int wantedCells = values < 0 ? 1 : rows.get(Math.min(values, rows.size() - 1)).cells().size();
    int first = -1;
    for (; i >= 0; i--) {
      Layout.Row row = rows.get(i);
      if (row.comment() || isUnits(row)) {
        continue;
      }
      boolean fits = Math.abs(row.cells().size() - wantedCells) <= 1 + wantedCells / 4;
      if (!hasValues(row) && (values < 0 || fits)) {
        first = i;
        if (values >= 0) {
          break;
        }
      } else if (values >= 0) {
        break;
      }
    }
    return first;
  }

  private int indexOf(long line) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).line() == line) {
        return i;
      }
    }
    return 0;
  }

  private boolean hasValues(Layout.Row row) {
    for (String cell : row.cells()) {
      if (isValue(cell)) {
        return true;
      }
    }
    return false;
  }

  private boolean isValue(String cell) {
    return !cell.isEmpty()
        && cell.length() < 40
        && (dialect.style().measure(cell).isPresent() || Clock.isClock(cell));
  }

  private boolean isUnits(Layout.Row row) {
    if (hasValues(row)) {
      return false;
    }
    List<String> said = row.cells().stream().filter(c -> !CellStyle.isMissing(c)).toList();
    long units = said.stream().filter(LogUnits::known).count();
    return units > 0 && units * 3 >= said.size();
  }

  private static String note(Layout.Row row) {
    List<String> said = row.cells().stream().filter(c -> !c.isEmpty()).toList();
    return said.size() > 1
        ? said.get(0) + ": " + String.join(", ", said.subList(1, said.size()))
        : String.join("", said).strip();
  }

  /** A comment that names as many columns as the values have. */
  static Optional<Layout.Row> commentHeader(
      List<Layout.Row> rows, Dialect dialect, List<String> values) {
    for (int i = rows.size() - 1; i >= 0; i--) {
      if (rows.get(i).comment()) {
        List<String> cells =
            new ArrayList<>(Dialect.split(rows.get(i).cells().get(0), dialect.separator()));
        int wide = values.size();
        boolean fits = wide == 0 || (cells.size() <= wide + 1 && cells.size() * 2 >= wide);
        while (fits && cells.size() < wide) {
          cells.add("");
        }
        if (cells.size() > 1 && fits && known(cells, Set.of()) > 1) {
          return Optional.of(new Layout.Row(rows.get(i).line(), cells, true));
        }
      }
    }
    return Optional.empty();
  }

  private static long known(List<String> cells, Set<String> wanted) {
    return cells.stream()
        .filter(c -> wanted.contains(c) || Header.of(c).meaning().isPresent())
        .count();
  }
}
