package soakloop.log;

import java.util.List;
import java.util.Optional;

/**
 * Finds layouts that are not read yet, to say what to export instead: rows before the header, a row
 * of units, no header.
 */
final class HardCases {
  /** Rows looked through for a header. */
  private static final int SEARCHED = 60;

  private HardCases() {}

  /** Ends the reading if the table has such a layout. */
  static void check(Table table, List<Header> headers, String text, Problems problems)
      throws LogException {
    List<String> names = table.header().cells();
    if (names.stream().anyMatch(CellReader::isNumber)
        && names.stream().allMatch(c -> CellReader.isMissing(c) || CellReader.isNumber(c))) {
      throw problems.only(
          "row "
              + table.header().line()
              + " holds numbers where the names of the columns must stand; export the log with one"
              + " header row");
    }
    if (headers.stream().noneMatch(h -> h.says(Signal.TIME))) {
      Optional<Long> later = laterHeader(text, table.header().line());
      if (later.isPresent()) {
        throw problems.only(
            "row "
                + later.get()
                + " looks like the header, but must come first; delete the rows above it, or begin"
                + " them with #");
      }
    }
    if (!table.rows().isEmpty() && isUnits(table.rows().get(0))) {
      Table.Row units = table.rows().get(0);
      throw problems.only(
          "row "
              + units.line()
              + " holds units; export the log with the units in the header row, as `"
              + withUnit(table.header(), units)
              + "`, and without this row");
    }
  }

  private static Optional<Long> laterHeader(String text, long headerLine) {
    List<String> lines = text.lines().limit(headerLine + SEARCHED).toList();
    for (int i = (int) headerLine; i < lines.size(); i++) {
      String line = lines.get(i).replace("\"", "");
      if (line.startsWith("#")) {
        continue;
      }
      for (String separator : new String[] {"\t", ";", ","}) {
        List<Header> headers = List.of(line.split(separator, -1)).stream().map(Header::of).toList();
        long known = headers.stream().filter(h -> h.meaning().isPresent()).count();
        if (known >= 2 && headers.stream().anyMatch(h -> h.says(Signal.TIME))) {
          return Optional.of((long) i + 1);
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isUnits(Table.Row row) {
    List<String> said =
        row.cells().stream().map(HardCases::bare).filter(c -> !CellReader.isMissing(c)).toList();
    return said.stream().noneMatch(CellReader::isNumber) && said.stream().anyMatch(LogUnits::known);
  }

  private static String withUnit(Table.Row header, Table.Row units) {
    int n = Math.min(header.cells().size(), units.cells().size());
    for (int i = 0; i < n; i++) {
      if (LogUnits.known(bare(units.cells().get(i)))) {
        return header.cells().get(i) + " [" + bare(units.cells().get(i)) + "]";
      }
    }
    return "Time [s]";
  }

  private static String bare(String cell) {
    return cell.replaceAll("^[\\[(]|[\\])]$", "").strip();
  }
}
