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
    char sign = at < to ? text[at] : 0;
    if (sign == '-' || sign == '+') {
      at++;
    }
    int start = at;
    long value = 0;
    int digit;
    while (at < to && (digit = text[at] - '0') >= 0 && digit <= 9) {
      value = value * 10 + digit;
      at++;
    }
    int digits = at - start;
    int behind = 0;
    if (at < to && text[at] == decimal) {
      int point = ++at;
      while (at < to && (digit = text[at] - '0') >= 0 && digit <= 9) {
        value = value * 10 + digit;
        at++;
      }
      behind = at - point;
      digits += behind;
    }
    if (digits == 0 || digits > MOST_DIGITS) {
      return from;
    }
    mantissa = sign == '-' ? -value : value;
    decimals = behind;
    return at;
  }
}
