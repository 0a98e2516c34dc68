package soakloop.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;

/**
 * The column that holds time, and how it does.
 *
 * @param index from 0
 * @param kind how its cells are written
 * @param confidence how sure
 * @param reason why, where that is worth a word
 */
record TimeColumn(int index, TimeKind kind, Confidence confidence, String reason) {
  /** Finds the time column by the file's first rows. */
  static final class Finder {
    private static final int NAMED = 2;

    private final Layout layout;
    private final CellStyle style;
    private final List<String> complaints = new ArrayList<>();

    Finder(Layout layout, CellStyle style) {
      this.layout = layout;
      this.style = style;
    }

    /** Returns why columns that are named as time cannot be read as such. */
    List<String> complaints() {
      return complaints;
    }

    /** Reads the column that the scenario names. */
    Optional<TimeColumn> chosen(int index, Optional<Unit> unit) {
      return kind(index, unit)
          .map(c -> new TimeColumn(index, c.kind(), Confidence.SURE, "named in the scenario"));
    }

    /** Finds a column by name, else by cells that are clock times or seconds since 1970. */
    Optional<TimeColumn> find() {
      List<TimeColumn> named = new ArrayList<>();
      for (int i = 0; i < layout.headers().size(); i++) {
        if (layout.headers().get(i).says(Signal.TIME)) {
          kind(i, Optional.empty()).ifPresent(named::add);
        }
      }
      if (!named.isEmpty()) {
        return named.stream()
            .max(Comparator.comparingLong(this::distinct).thenComparing(c -> -c.index()));
      }
      return complaints.isEmpty() ? unnamed() : Optional.empty();
    }

    private Optional<TimeColumn> unnamed() {
      for (int i = 0; i < layout.headers().size(); i++) {
        List<String> cells = cells(i);
        if (layout.headers().get(i).meaning().isPresent() || cells.size() < NAMED) {
          continue;
        }
        if (cells.stream().allMatch(Clock::isClock)) {
          return Optional.of(
              new TimeColumn(i, TimeKind.CLOCK, Confidence.LIKELY, "its cells are clock times"));
        }
        double[] values = numbers(cells);
        Optional<TimeKind> epoch = values.length == cells.size() ? epoch(values) : Optional.empty();
        if (epoch.isPresent()) {
          return Optional.of(
              new TimeColumn(
                  i, epoch.get(), Confidence.LIKELY, "its values are " + epoch.get().said()));
        }
      }
      return Optional.empty();
    }

    private long distinct(TimeColumn column) {
      return cells(column.index()).stream().distinct().count();
    }

    private List<String> cells(int index) {
      return layout.sample().stream()
          .filter(r -> index < r.cells().size())
          .map(r -> r.cells().get(index))
          .filter(c -> !CellStyle.isMissing(c))
          .toList();
    }

    private double[] numbers(List<String> cells) {
      return cells.stream().flatMap(c -> style.number(c).stream()).mapToDouble(v -> v).toArray();
    }

    private Optional<TimeColumn> kind(int index, Optional<Unit> chosen) {
      Header header = layout.headers().get(index);
      List<String> cells = cells(index);
      long clocks = cells.stream().filter(Clock::isClock).count();
      if (clocks > 0 && clocks * 2 >= cells.size()) {
        return Optional.of(new TimeColumn(index, TimeKind.CLOCK, Confidence.SURE, "clock time"));
      }
      double[] values = numbers(cells);
      if (values.length == 0 && !cells.isEmpty()) {
        return Optional.empty();
      }
      Optional<Unit> unit = chosen.or(() -> said(header));
      Optional<TimeKind> epoch = epoch(values);
      if (epoch.isPresent()) {
        return Optional.of(
            new TimeColumn(
                index, epoch.get(), Confidence.SURE, epoch.get().said() + ", from the first row"));
      }
      if (unit.isPresent()) {
        return TimeKind.in(unit.get()).map(k -> new TimeColumn(index, k, Confidence.SURE, ""));
      }
      if (header.unit().filter(u -> !u.contains(":")).isPresent()) {
        complaints.add("column `" + header.text() + "`: " + wrongUnit(header));
        return Optional.empty();
      }
      Optional<TimeColumn> guess = guess(index, values);
      if (guess.isEmpty()) {
        complaints.add(
            "column `"
                + header.text()
                + "`: has no unit; head it `"
                + header.name()
                + " [s]`, or write `time: {name: \""
                + header.text()
                + "\", unit: s}` in the scenario under log, columns; allowed: "
                + Dimension.TIME.allowed());
      }
      return guess;
    }

    private static String wrongUnit(Header header) {
      return "has the unit `"
          + header.unit().orElse("")
          + "`; allowed for time: "
          + Dimension.TIME.allowed();
    }

    private static Optional<Unit> said(Header header) {
      return header
          .unit()
          .flatMap(u -> LogUnits.find(Dimension.TIME, u))
          .or(
              () ->
                  header
                      .known()
                      .filter(k -> !k.unit().isEmpty())
                      .map(k -> Dimension.TIME.require(k.unit())));
    }

    /** Seconds, milliseconds or microseconds since 1970, by size: years 2001 to 2039. */
    private static Optional<TimeKind> epoch(double[] values) {
      if (values.length == 0) {
        return Optional.empty();
      }
      double low = Arrays.stream(values).min().getAsDouble();
      double high = Arrays.stream(values).max().getAsDouble();
      if (low >= 1e9 && high < 2.2e9) {
        return Optional.of(TimeKind.EPOCH_SECONDS);
      }
      if (low >= 1e12 && high < 2.2e12) {
        return Optional.of(TimeKind.EPOCH_MILLISECONDS);
      }
      return low >= 1e15 && high < 2.2e15
          ? Optional.of(TimeKind.EPOCH_MICROSECONDS)
          : Optional.empty();
    }

    /** The unit of numbers that say none, by their steps. */
    private Optional<TimeColumn> guess(int index, double[] values) {
      double[] steps =
          IntStream.range(1, values.length)
              .mapToDouble(i -> Math.abs(values[i] - values[i - 1]))
              .filter(d -> d > 0)
              .sorted()
              .toArray();
      if (steps.length < 2) {
        return Optional.empty();
      }
      double step = steps[steps.length / 2];
      boolean whole = Arrays.stream(values).allMatch(v -> v == Math.rint(v));
      double high = Arrays.stream(values).max().orElse(0);
      boolean days = high <= 1 || (high > 20_000 && high < 80_000);
      if (!whole && days && step < 5e-5) {
        return answer(index, TimeKind.DAYS, "no unit said: a spreadsheet's days, by their steps");
      }
      if (!whole) {
        return step <= 10
            ? answer(index, TimeKind.SECONDS, "no unit said: seconds, by their steps")
            : answer(index, TimeKind.MILLISECONDS, "no unit said: milliseconds, by their steps");
      }
      if (step >= 5) {
        return answer(index, TimeKind.MILLISECONDS, "no unit said: milliseconds, by their steps");
      }
      boolean rounded = steps.length < 0.7 * (values.length - 1);
      return rounded || swings(index)
          ? answer(
              index,
              TimeKind.SECONDS,
              rounded
                  ? "no unit said: seconds, since rows share them"
                  : "no unit said: seconds, as the engine speed could not change so in milliseconds")
          : Optional.empty();
    }

    private static Optional<TimeColumn> answer(int index, TimeKind kind, String reason) {
      return Optional.of(new TimeColumn(index, kind, Confidence.LIKELY, reason));
    }

    /** Whether the engine speed changes by more from row to row than it can in milliseconds. */
    private boolean swings(int time) {
      OptionalInt speed =
          IntStream.range(0, layout.headers().size())
              .filter(i -> i != time && layout.headers().get(i).says(Signal.ENGINE_SPEED))
              .findFirst();
      if (speed.isEmpty()) {
        return false;
      }
      double[] rpm = numbers(cells(speed.getAsInt()));
      double[] changes =
          IntStream.range(1, rpm.length)
              .mapToDouble(i -> Math.abs(rpm[i] - rpm[i - 1]))
              .sorted()
              .toArray();
      return changes.length > 20 && changes[(int) (0.9 * changes.length)] > 60;
    }
  }
}
