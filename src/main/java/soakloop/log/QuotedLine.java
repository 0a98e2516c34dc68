package soakloop.log;

/**
 * How the quotes of one line stand.
 *
 * @param opened where a quote stands that the line does not close well, -1 if there is none
 * @param cell index of its cell, from 0
 * @param spoilt whether it is followed by a quote that neither ends a cell nor is doubled
 * @param separators outside quotes, up to where it breaks off
 * @param beginsLikeARow whether its first character is one of a number, a quote or a separator
 */
record QuotedLine(int opened, int cell, boolean spoilt, int separators, boolean beginsLikeARow) {
  /** What parts cells, and whether blanks may stand around quotes. */
  record Style(char separator, boolean spaced) {
    boolean isBlank(char c) {
      return spaced && c == ' ';
    }
  }

  /** How a line goes on that begins within quotes. */
  enum Rest {
    OPEN,
    CLOSES,
    SPOILT
  }

  /**
   * Looks at a line.
   *
   * @param from quotes before this place are known to be well
   */
  static QuotedLine of(String line, int from, Style style) {
    int separators = 0;
    boolean start = true;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == style.separator()) {
        separators++;
        start = true;
      } else if (start && c == '"' && i >= from) {
        int end = closing(line, i + 1);
        if (end < 0 || !endsCell(line, end + 1, style)) {
          return new QuotedLine(i, separators, end >= 0, separators, begins(line, style));
        }
        i = end;
        start = false;
      } else if (!style.isBlank(c)) {
        start = false;
      }
    }
    return new QuotedLine(-1, 0, false, separators, begins(line, style));
  }

  /** Looks at a line that begins within quotes. */
  static Rest rest(String line, Style style) {
    int end = closing(line, 0);
    if (end < 0) {
      return Rest.OPEN;
    }
    boolean well = endsCell(line, end + 1, style) && of(line, end + 1, style).opened() < 0;
    return well ? Rest.CLOSES : Rest.SPOILT;
  }

  private static boolean begins(String line, Style style) {
    char first = line.isEmpty() ? ' ' : line.charAt(0);
    return (first >= '0' && first <= '9')
        || "-+.\"".indexOf(first) >= 0
        || first == style.separator();
  }

  /** Where the quote stands that closes; a doubled one does not. */
  private static int closing(String line, int from) {
    for (int i = from; i < line.length(); i++) {
      if (line.charAt(i) == '"') {
        if (i + 1 < line.length() && line.charAt(i + 1) == '"') {
          i++;
        } else {
          return i;
        }
      }
    }
    return -1;
  }

  private static boolean endsCell(String line, int after, Style style) {
    int i = after;
    while (i < line.length() && style.isBlank(line.charAt(i))) {
      i++;
    }
    return i == line.length()
        || line.charAt(i) == style.separator()
        || line.charAt(i) == '\n'
        || line.charAt(i) == '\r';
  }
}
