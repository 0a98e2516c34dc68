package soakloop.invented;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * A way in which a logger writes its file. Each choice is one that loggers make (common practice,
 * no source); no dress is any one product's.
 *
 * @param name what is special about it
 * @param road whether the session is one on the road, else one on rollers
 */
public record LogDress(
    String name,
    char separator,
    char decimal,
    Encoding encoding,
    String lineEnd,
    Preamble preamble,
    Units units,
    boolean us,
    Time time,
    Names names,
    Extra extra,
    String missing,
    boolean road) {
  /** How characters become bytes. */
  public enum Encoding {
    UTF_8(StandardCharsets.UTF_8, ""),
    UTF_8_MARKED(StandardCharsets.UTF_8, "\ufeff"),
    LATIN_1(StandardCharsets.ISO_8859_1, ""),
    UTF_16_MARKED(StandardCharsets.UTF_16LE, "\ufeff"),
    UTF_16_BARE(StandardCharsets.UTF_16LE, ""),
    UTF_16_BIG(StandardCharsets.UTF_16BE, "\ufeff"),
    /** UTF-8 of text that was UTF-8 already and taken for Latin-1. */
    TWICE(StandardCharsets.UTF_8, "");

    final Charset charset;
    final String mark;

    Encoding(Charset charset, String mark) {
      this.charset = charset;
      this.mark = mark;
    }
  }

  /** What stands before the names. */
  public enum Preamble {
    NONE,
    COMMENTS,
    RAGGED,
    PADDED,
    /** The names themselves begin with the mark of a comment. */
    HEADER_COMMENTED
  }

  /** Where units stand. */
  public enum Units {
    BRACKETS,
    PARENTHESES,
    DEGREE_SIGN,
    AFTER_COMMA,
    ROW,
    BRACKETED_ROW,
    CELLS,
    SPACED_CELLS,
    NOWHERE
  }

  /** How time is written. */
  public enum Time {
    SECONDS,
    BARE_SECONDS,
    MILLISECONDS,
    BARE_MILLISECONDS,
    MINUTES,
    CLOCK,
    OVER_MIDNIGHT,
    ISO,
    EPOCH_SECONDS,
    EPOCH_MILLISECONDS,
    EPOCH_MICROSECONDS,
    DAYS,
    NEGATIVE,
    RESTARTS,
    ROUNDED,
    REPEATS,
    REVERSED,
    GAP,
    ABSENT
  }

  /** What columns are called. */
  public enum Names {
    /** Names that settle all. */
    PLAIN,
    /** Names that leave air, coolant and pressure to the values. */
    OPEN,
    /** Plain names, with road speed, gear, throttle, lambda, spark, knock, states, power too. */
    FULL,
    /** One temperature of the loop, taken where coolant leaves the core, with no place said. */
    LONE_OUT,
    /** The same, taken where it enters. */
    LONE_IN,
    /** An absolute pressure without a barometer. */
    ABSOLUTE
  }

  /** Something else about the layout. */
  public enum Extra {
    NONE,
    INDEX,
    TRAILING,
    DUPLICATES,
    NAMELESS,
    QUOTED,
    SHORT_ROWS,
    TEXTS,
    POLLED,
    HELD,
    LONG,
    REPEATED_HEADER,
    ENGINE_OFF,
    /** One quote that opens a cell and never closes. */
    BROKEN_QUOTE
  }

  /** The plainest dress. */
  public static LogDress plain(String name) {
    return new LogDress(
        name,
        ',',
        '.',
        Encoding.UTF_8,
        "\n",
        Preamble.NONE,
        Units.BRACKETS,
        false,
        Time.SECONDS,
        Names.PLAIN,
        Extra.NONE,
        "",
        false);
  }

  public LogDress parted(char by, char sign) {
    return new LogDress(
        name, by, sign, encoding, lineEnd, preamble, units, us, time, names, extra, missing, road);
  }

  public LogDress encoded(Encoding as, String end) {
    return new LogDress(
        name, separator, decimal, as, end, preamble, units, us, time, names, extra, missing, road);
  }

  public LogDress after(Preamble before) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, before, units, us, time, names, extra, missing,
        road);
  }

  public LogDress units(Units at, boolean american) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, at, american, time, names, extra,
        missing, road);
  }

  public LogDress timed(Time as) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, as, names, extra, missing,
        road);
  }

  public LogDress named(Names as) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, time, as, extra, missing,
        road);
  }

  public LogDress with(Extra other) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, time, names, other,
        missing, road);
  }

  public LogDress missing(String word) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, time, names, extra, word,
        road);
  }

  /** The same on the road. */
  public LogDress onTheRoad() {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, time, names, extra,
        missing, true);
  }

  /** Writes a number as this dress does. */
  String number(double value, int decimals) {
    return BigDecimal.valueOf(value)
        .setScale(decimals, RoundingMode.HALF_UP)
        .toPlainString()
        .replace('.', decimal);
  }

  @Override
  public String toString() {
    return String.join(
        ", ",
        name,
        "parted by " + (separator == '\t' ? "tab" : separator),
        "decimal " + decimal,
        encoding.toString(),
        preamble.toString(),
        units + (us ? " US" : ""),
        time.toString(),
        names.toString(),
        extra.toString(),
        road ? "road" : "rollers",
        missing);
  }
}
