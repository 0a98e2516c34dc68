package soakloop.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day, with or without its date: {@code 14:05:02.120}, {@code 2:05:02 PM}, {@code
 * 05:02.1} (minutes and seconds), ISO 8601, or a date with dots or slashes before the time.
 *
 * @param day days since 1970 if an ISO date says so, else 0
 * @param dated whether it does
 * @param mantissa seconds of the day without the decimal sign
 * @param decimals digits behind it
 */
record Clock(long day, boolean dated, long mantissa, int decimals) {
  private static final Pattern TEXT =
      Pattern.compile(
          "(?:(\\d{4})-(\\d\\d)-(\\d\\d)[T ]|\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4},? +)?"
              + "(?:(\\d{1,3}):)?(\\d{1,2}):(\\d{1,2})(?:[.,:](\\d{1,9}))?"
              + "(?: ?([AaPp])\\.?[Mm]\\.?)?"
              + "(?: ?(?:Z|UTC|GMT|([+-])(\\d\\d):?(\\d\\d)?))?");

  /** Returns whether a cell is such a time. */
  static boolean isClock(String cell) {
    return cell.indexOf(':') > 0 && TEXT.matcher(cell).matches();
  }

  /** Reads a cell. */
  static Optional<Clock> of(String cell) {
    if (cell.indexOf(':') <= 0) {
      return Optional.empty();
    }
    Matcher m = TEXT.matcher(cell);
    if (!m.matches()) {
      return Optional.empty();
    }
    long day = 0;
    boolean dated = m.group(1) != null;
    if (dated) {
      try {
        day =
            LocalDate.of(
                    Integer.parseInt(m.group(1)),
                    Integer.parseInt(m.group(2)),
                    Integer.parseInt(m.group(3)))
                .toEpochDay();
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }
    long hours = m.group(4) == null ? 0 : Long.parseLong(m.group(4));
    long minutes = Long.parseLong(m.group(5));
    long seconds = Long.parseLong(m.group(6));
    if ((minutes > 59 && m.group(4) != null) || seconds > 59) {
      return Optional.empty();
    }
    if (m.group(8) != null) {
      boolean afternoon = m.group(8).toLowerCase(Locale.ROOT).equals("p");
      hours = hours % 12 + (afternoon ? 12 : 0);
    }
    String part = m.group(7) == null ? "" : m.group(7);
    long whole = (hours * 60 + minutes) * 60 + seconds - offset(m);
    long fraction = part.isEmpty() ? 0 : Long.parseLong(part);
    return Optional.of(
        new Clock(day, dated, whole * PowersOfTen.whole(part.length()) + fraction, part.length()));
  }

  private static long offset(Matcher m) {
    if (m.group(9) == null) {
      return 0;
    }
    long minutes =
        Long.parseLong(m.group(10)) * 60 + (m.group(11) == null ? 0 : Long.parseLong(m.group(11)));
    return (m.group(9).equals("-") ? -60 : 60) * minutes;
  }
}
