package soakloop.invented;

import java.util.Locale;

/** How a dressed log writes its times, and what a reader should make of them. */
final class DressTime {
  private static final double RESTART = 100;

  private final LogDress dress;
  private final double first;

  /**
   * Makes it.
   *
   * @param first true time of the first row [s]
   */
  DressTime(LogDress dress, double first) {
    this.dress = dress;
    this.first = first;
  }

  /** How closely a time is written [s]. */
  double grain() {
    return switch (dress.time()) {
      case DAYS -> 1e-2;
      case MINUTES -> 4e-5;
      default -> 1e-9;
    };
  }

  String unit() {
    return switch (dress.time()) {
      case BARE_SECONDS, BARE_MILLISECONDS, CLOCK, OVER_MIDNIGHT, ISO, DAYS, ABSENT -> "";
      case EPOCH_SECONDS, EPOCH_MILLISECONDS, EPOCH_MICROSECONDS -> "";
      case MILLISECONDS -> "ms";
      case MINUTES -> "min";
      default -> "s";
    };
  }

  String header() {
    String unit = unit();
    return switch (dress.units()) {
      case ROW, BRACKETED_ROW -> "Time";
      case PARENTHESES -> unit.isEmpty() ? "Time" : "Time (" + unit + ")";
      case AFTER_COMMA -> unit.isEmpty() ? "Time" : "Time, " + unit;
      default -> unit.isEmpty() ? "Time" : "Time [" + unit + "]";
    };
  }

  /** The time that a reader should have [s]. */
  double read(double t) {
    return switch (dress.time()) {
      case CLOCK, OVER_MIDNIGHT, ISO, EPOCH_SECONDS, EPOCH_MILLISECONDS, EPOCH_MICROSECONDS, DAYS ->
          t - first;
      case NEGATIVE -> t - 30;
      // The last row before is at 99.9 s, the first after at 99.9 + 60 s.
      case RESTARTS -> t < RESTART - 1e-6 ? t : t - 0.1 + 60;
      default -> t;
    };
  }

  String cell(double t) {
    long tenths = Math.round(t * 10);
    return switch (dress.time()) {
      case MILLISECONDS, BARE_MILLISECONDS -> Long.toString(tenths * 100);
      case MINUTES -> dress.number(t / 60, 6);
      case CLOCK -> clock(50_000_000 + tenths * 100);
      case OVER_MIDNIGHT -> clock((86_340_000 + tenths * 100) % 86_400_000);
      case ISO -> "2026-05-01T" + clock(50_000_000 + tenths * 100).replace(',', '.') + "Z";
      case EPOCH_SECONDS -> dress.number(1_700_000_000 + tenths / 10.0, 1);
      case EPOCH_MILLISECONDS -> Long.toString(1_700_000_000_000L + tenths * 100);
      case EPOCH_MICROSECONDS -> Long.toString(1_700_000_000_000_000L + tenths * 100_000);
      case DAYS -> dress.number(45_000.25 + t / 86_400, 8);
      case NEGATIVE -> dress.number((tenths - 300) / 10.0, 1);
      case RESTARTS -> dress.number((t < RESTART - 1e-6 ? tenths : tenths - 1000) / 10.0, 1);
      case ROUNDED -> Long.toString(Math.floorDiv(tenths, 10));
      default -> dress.number(tenths / 10.0, 1);
    };
  }

  private static String clock(long ms) {
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d.%03d",
        ms / 3_600_000,
        ms / 60_000 % 60,
        ms / 1000 % 60,
        ms % 1000);
  }
}
