package soakloop.log;

/**
 * Takes a plain decimal number apart: sign, digits, one decimal sign. It is what nearly every cell
 * holds, and it costs no object. Everything else is for {@link CellStyle}.
 */
final class NumberScanner {
  private static final int MOST_DIGITS = 18;

  /** Digits of the last number scanned, without its decimal sign. */
  long mantissa;

  /** How many of them stand behind the decimal sign. */
  int decimals;

  /**
   * Scans a number.
   *
   * @param text where it stands
   * @param from first character
   * @param to one past its last
   * @param decimal decimal sign
   * @return whether all of it is such a number
   */
  boolean scan(char[] text, int from, int to, char decimal) {
    return end(text, from, to, decimal) == to;
  }

  /**
   * Scans the number that a text begins with; returns where it ends, {@code from} if there is none.
   */
  int end(char[] text, int from, int to, char decimal) {
    int at = from;
    boolean negative = false;
    if (at < to && (text[at] == '-' || text[at] == '+')) {
      negative = text[at++] == '-';
    }
    long value = 0;
    int digits = 0;
    int point = -1;
    for (; at < to; at++) {
      int digit = text[at] - '0';
      if (digit >= 0 && digit <= 9) {
        value = value * 10 + digit;
        if (++digits > MOST_DIGITS) {
          return from;
        }
      } else if (text[at] == decimal && point < 0) {
        point = digits;
      } else {
        break;
      }
    }
    if (digits == 0) {
      return from;
    }
    mantissa = negative ? -value : value;
    decimals = point < 0 ? 0 : digits - point;
    return at;
  }
}
