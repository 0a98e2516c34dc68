package soakloop.invented;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * A way in which a logger writes its file. Each choice is one that loggers make (common practice,
 * no source); no dress is any one product's.
 *
 * @param name what is special about it
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
    String missing) {
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
    OPEN
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
    ENGINE_OFF
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
        "");
  }

  public LogDress parted(char by, char sign) {
    return new LogDress(
        name, by, sign, encoding, lineEnd, preamble, units, us, time, names, extra, missing);
  }

  public LogDress encoded(Encoding as, String end) {
    return new LogDress(
        name, separator, decimal, as, end, preamble, units, us, time, names, extra, missing);
  }

  public LogDress after(Preamble before) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, before, units, us, time, names, extra,
        missing);
  }

  public LogDress units(Units at, boolean american) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, at, american, time, names, extra,
        missing);
  }

  public LogDress timed(Time as) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, as, names, extra,
        missing);
  }

  public LogDress named(Names as) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, time, as, extra, missing);
  }

  public LogDress with(Extra other) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, time, names, other,
        missing);
  }

  public LogDress missing(String word) {
    return new LogDress(
        name, separator, decimal, encoding, lineEnd, preamble, units, us, time, names, extra, word);
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
        missing);
  }
}
