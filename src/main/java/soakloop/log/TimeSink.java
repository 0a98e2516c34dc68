package soakloop.log;

import java.util.Optional;

/**
 * Takes the time column's cells as seconds. Digits are kept whole, so that times of years with
 * microseconds lose nothing when their first is taken away.
 */
final class TimeSink {
  private static final int PLACES = 9;

  /** No log is longer, s. */
  private static final double LONGEST = 1e12;

  /** Seconds whose nanoseconds can be counted. */
  private static final double CENTURIES = 4e9;

  private static final long SECOND = 1_000_000_000L;
  private static final long DAY = 86_400 * SECOND;

  private final TimeKind kind;
  private final CellStyle style;
  private final NumberScanner scanner = new NumberScanner();
  private final PackedColumn.Builder values = new PackedColumn.Builder();
  private boolean started;
  private long firstDay;
  private long first;
  private long days;
  private long last = Long.MIN_VALUE;
  private String firstCell = "";

  TimeSink(TimeKind kind, CellStyle style) {
    this.kind = kind;
    this.style = style;
  }

  /** Takes the next row's cell; one that is no time is missing. */
  void cell(char[] text, int offset, int length) {
    int from = offset;
    int to = offset + length;
    while (from < to && text[from] <= ' ') {
      from++;
    }
    while (from < to && text[to - 1] <= ' ') {
      to--;
    }
    if (kind.clock()) {
      clock(new String(text, from, to - from));
    } else if (from < to && scanner.scan(text, from, to, style.decimal())) {
      number(scanner.mantissa, scanner.decimals, text, from, to);
    } else {
      other(new String(text, from, to - from));
    }
  }

  /** Takes a row without such a cell. */
  void missing() {
    values.addMissing();
  }

  /** Takes the last row back. */
  void dropLast() {
    values.dropLast();
  }

  private void number(long mantissa, int decimals, char[] text, int from, int to) {
    if (Math.abs(mantissa) > Long.MAX_VALUE / kind.factor()) {
      values.addMissing();
      return;
    }
    long scaled = mantissa * kind.factor();
    int places = decimals + kind.shift();
    if (!kind.fromFirst()) {
      if (Math.abs(scaled / PowersOfTen.of(Math.min(18, places))) > LONGEST) {
        values.addMissing();
      } else {
        values.add(scaled, places);
      }
      return;
    }
    if (!started) {
      firstCell = new String(text, from, to - from);
    }
    // Seconds of this century in nanoseconds need no more than 63 bits.
    if (places > PLACES || Math.abs(scaled) > Long.MAX_VALUE / PowersOfTen.whole(PLACES - places)) {
      wide(scaled / PowersOfTen.of(Math.min(18, places)));
      return;
    }
    relative(scaled * PowersOfTen.whole(PLACES - places));
  }

  private void wide(double seconds) {
    if (!(Math.abs(seconds) < CENTURIES)) {
      values.addMissing();
      return;
    }
    if (!started) {
      started = true;
      first = Math.round(seconds * SECOND);
    }
    values.add(Math.round(seconds * SECOND - first), PLACES);
  }

  private void relative(long nanoseconds) {
    if (!started) {
      started = true;
      first = nanoseconds;
    }
    long since = nanoseconds - first;
    int places = PLACES;
    while (places > 0 && since % 10 == 0) {
      since /= 10;
      places--;
    }
    values.add(since, places);
  }

  private void clock(String cell) {
    Optional<Clock> read = Clock.of(cell.strip());
    if (read.isEmpty()) {
      values.addMissing();
      return;
    }
    Clock clock = read.get();
    long ofDay = clock.mantissa() * PowersOfTen.whole(PLACES - clock.decimals());
    if (!started) {
      firstCell = cell;
      firstDay = clock.day();
    }
    if (!clock.dated() && last != Long.MIN_VALUE && ofDay < last - DAY / 2) {
      days++;
    }
    last = ofDay;
    relative(ofDay + (clock.day() - firstDay + days) * DAY);
  }

  private void other(String cell) {
    Optional<Double> number = style.number(cell.strip());
    if (number.isEmpty()) {
      values.addMissing();
      return;
    }
    double seconds = number.get() * kind.factor() / PowersOfTen.of(kind.shift());
    if (!started) {
      firstCell = cell;
    }
    if (kind.fromFirst()) {
      wide(seconds);
    } else {
      values.add(Math.abs(seconds) <= LONGEST ? seconds : Double.NaN);
    }
  }

  /** Ends the column; seconds. */
  Series series() {
    return values.build();
  }

  /** Returns the first cell that is a time, as the file has it. */
  String firstCell() {
    return firstCell;
  }
}
