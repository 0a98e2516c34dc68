package soakloop.log;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What parts a file's cells and how it writes numbers, found by looking at its first lines.
 *
 * @param separator comma, semicolon, tab or bar
 * @param style of its numbers
 * @param spacedQuotes whether blanks stand between separators and quotes
 */
record Dialect(char separator, CellStyle style, boolean spacedQuotes) {
  /** What begins a line that is no row. */
  static final char COMMENT = '#';

  private static final char[] SEPARATORS = {'\t', ';', ',', '|'};
  private static final int LINES = 120;
  private static final Pattern SPACED =
      Pattern.compile("(^|[,;|]) +\"|\" +[,;|]", Pattern.MULTILINE);
  private static final Pattern VALUE =
      Pattern.compile(
          "[+-]?\\d[\\d.,:]*( ?[^\\d\\s,;].{0,8})?|\\d{4}-\\d\\d.*|\\d\\d?[./]\\d\\d?[./]\\d.*");
  private static final Pattern COMMA_FOR_SURE =
      Pattern.compile(
          "[+-]?(\\d*,\\d{1,2}|\\d*,\\d{4,}|0,\\d+|\\d{4,},\\d+|\\d{1,3}(\\.\\d{3})+,\\d+)(\\D.*)?");
  private static final Pattern POINT_FOR_SURE =
      Pattern.compile(
          "[+-]?(\\d*\\.\\d{1,2}|\\d*\\.\\d{4,}|0\\.\\d+|\\d{4,}\\.\\d+|\\d{1,3}(,\\d{3})+\\.\\d+)([^\\d.].*)?");
  private static final Pattern EITHER = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}(\\D.*)?");

  /** Finds the dialect of a text's beginning. */
  static Dialect of(String head) {
    List<String> lines =
        head.lines().filter(l -> !l.isBlank() && l.charAt(0) != COMMENT).limit(LINES).toList();
    char best = bySign(lines.isEmpty() ? "" : lines.get(0));
    double most = 0;
    for (char separator : SEPARATORS) {
      double score = score(lines, separator);
      if (score > most) {
        most = score;
        best = separator;
      }
    }
    CellStyle style = style(lines, best);
    boolean quotes = head.indexOf('"') >= 0;
    return new Dialect(best, style, quotes && best != '\t' && SPACED.matcher(head).find());
  }

  /** Without numbers to go by: a tab if the first line has one, else a semicolon, else a comma. */
  private static char bySign(String line) {
    String plain = line.replaceAll("\"[^\"]*\"", "");
    if (plain.indexOf('\t') >= 0) {
      return '\t';
    }
    return plain.indexOf(';') >= 0 ? ';' : ',';
  }

  /** How many lines have the usual number of cells, and how many of their cells are values. */
  private static double score(List<String> lines, char separator) {
    java.util.Map<Integer, double[]> byCount = new java.util.HashMap<>();
    for (String line : lines) {
      List<String> cells = split(line, separator);
      double[] sum = byCount.computeIfAbsent(cells.size(), k -> new double[2]);
      for (String cell : cells) {
        sum[0] += isValue(cell) ? 1 : 0;
        sum[1] += cell.isEmpty() ? 0 : 1;
      }
    }
    double best = 0;
    for (var entry : byCount.entrySet()) {
      double[] sum = entry.getValue();
      if (entry.getKey() > 1 && sum[1] > 0) {
        best = Math.max(best, sum[0] * sum[0] / sum[1]);
      }
    }
    return best;
  }

  private static boolean isValue(String cell) {
    char first = cell.isEmpty() ? ' ' : cell.charAt(0);
    boolean may = first == '-' || first == '+' || (first >= '0' && first <= '9');
    return may && (isPlain(cell) || VALUE.matcher(cell).matches());
  }

  /** Digits, with one point among them at most: what most cells are. */
  private static boolean isPlain(String cell) {
    int points = 0;
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      points += c == '.' ? 1 : 0;
      if (points > 1 || (c != '.' && (c < '0' || c > '9'))) {
        return false;
      }
    }
    return true;
  }

  /** Whether a point in a plain cell parts no thousands. */
  private static boolean isDecimal(String cell) {
    int behind = cell.length() - 1 - cell.indexOf('.');
    return (behind == 1 || behind == 2) && isPlain(cell);
  }

  private static CellStyle style(List<String> lines, char separator) {
    int comma = 0;
    int point = 0;
    int either = 0;
    for (String line : lines) {
      for (String cell : split(line, separator)) {
        if (cell.indexOf(',') < 0 && cell.indexOf('.') < 0) {
          continue;
        }
        if (isDecimal(cell)) {
          point++;
        } else if (COMMA_FOR_SURE.matcher(cell).matches()) {
          comma++;
        } else if (POINT_FOR_SURE.matcher(cell).matches()) {
          point++;
        } else if (EITHER.matcher(cell).matches()) {
          either++;
        }
      }
    }
    if (comma == point) {
      return either > 0 && separator == ';' && comma == 0 ? CellStyle.COMMA : CellStyle.POINT;
    }
    return comma > point ? CellStyle.COMMA : CellStyle.POINT;
  }

  /** Parts one line, blanks around cells taken off. */
  static List<String> split(String line, char separator) {
    List<String> cells = new ArrayList<>();
    int start = 0;
    boolean quoted = false;
    for (int i = 0; i <= line.length(); i++) {
      if (i < line.length() && line.charAt(i) == '"') {
        quoted = !quoted;
      } else if (i == line.length() || (!quoted && line.charAt(i) == separator)) {
        String cell = line.substring(start, i).strip();
        boolean whole = cell.length() > 1 && cell.charAt(0) == '"' && cell.endsWith("\"");
        cells.add(whole ? cell.substring(1, cell.length() - 1).strip() : cell);
        start = i + 1;
      }
    }
    return cells;
  }

  /** Returns a reader of this dialect. */
  CsvReader.CsvReaderBuilder reader() {
    return CsvReader.builder()
        .fieldSeparator(separator)
        .quoteCharacter('"')
        .commentStrategy(CommentStrategy.READ)
        .commentCharacter(COMMENT)
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
        .allowUnclosedQuote(false)
        .trimWhitespacesAroundQuotes(spacedQuotes);
  }

  /** Returns the separator's name. */
  String separatorName() {
    return switch (separator) {
      case '\t' -> "tab";
      case ';' -> "semicolon";
      case '|' -> "bar";
      default -> "comma";
    };
  }
}
