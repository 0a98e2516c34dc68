package soakloop.log;

import java.util.Optional;
import soakloop.quantity.Unit;

/**
 * How a column writes time: as numbers of a unit or as clock times.
 *
 * @param clock whether cells are clock times
 * @param factor seconds per unit, a whole number
 * @param shift seconds are also divided by ten to this power
 * @param fromFirst whether time zero is put at the first row
 * @param said what it is, in words
 */
record TimeKind(boolean clock, long factor, int shift, boolean fromFirst, String said) {
  /** Clock times, with or without a date. */
  static final TimeKind CLOCK = new TimeKind(true, 1, 0, true, "clock time");

  static final TimeKind SECONDS = new TimeKind(false, 1, 0, false, "s");
  static final TimeKind MILLISECONDS = new TimeKind(false, 1, 3, false, "ms");
  static final TimeKind EPOCH_SECONDS = new TimeKind(false, 1, 0, true, "s since 1970");
  static final TimeKind EPOCH_MILLISECONDS = new TimeKind(false, 1, 3, true, "ms since 1970");
  static final TimeKind EPOCH_MICROSECONDS = new TimeKind(false, 1, 6, true, "us since 1970");
  static final TimeKind DAYS = new TimeKind(false, 86_400, 0, true, "days");

  /** Numbers in a unit. */
  static Optional<TimeKind> in(Unit unit) {
    return switch (unit.symbol()) {
      case "s" -> Optional.of(SECONDS);
      case "ms" -> Optional.of(MILLISECONDS);
      case "us" -> Optional.of(new TimeKind(false, 1, 6, false, "us"));
      case "min" -> Optional.of(new TimeKind(false, 60, 0, false, "min"));
      case "h" -> Optional.of(new TimeKind(false, 3600, 0, false, "h"));
      default -> Optional.empty();
    };
  }

  /** The same with time zero at the first row. */
  TimeKind fromFirstRow() {
    return new TimeKind(clock, factor, shift, true, said);
  }
}
