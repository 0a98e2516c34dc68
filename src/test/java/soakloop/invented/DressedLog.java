package soakloop.invented;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import soakloop.log.Signal;
import soakloop.quantity.Unit;

/**
 * A dyno session of the true car, written down in some dress, with what a reader must find in it.
 *
 * @param bytes the file
 * @param times s, as a reader should have them
 * @param values SI before rounding, by signal; NaN where the file says nothing
 * @param grain half of the last digit written, SI, by signal
 * @param timeGrain s
 * @param pulls start and end of each pull, s on the reader's time
 */
@SuppressWarnings("ArrayRecordComponent")
public record DressedLog(
    byte[] bytes,
    double[] times,
    Map<Signal, double[]> values,
    Map<Signal, Double> grain,
    double timeGrain,
    List<double[]> pulls) {
  /** Absolute pressure of the day in the session that is written down, Pa. */
  public static final double BAROMETER = 100.4e3;

  /** Seconds of the session that are written down: two pulls and the wait between. */
  private static final double UNTIL = 215;

  private static final double OFF_UNTIL = 4;

  private record Channel(
      Signal signal,
      String name,
      String metric,
      String us,
      int decimals,
      ToDoubleFunction<TruthLoop.Truth> si) {}

  private static final List<Channel> PLAIN =
      List.of(
          new Channel(
              Signal.ENGINE_SPEED,
              "Engine speed",
              "rpm",
              "rpm",
              0,
              t -> t.moment().engineSpeed() / 60),
          new Channel(Signal.BOOST, "Boost", "kPa", "psi", 2, TruthLoop.Truth::boost),
          new Channel(Signal.INLET_AIR, "Inlet air", "degC", "degF", 1, t -> t.inlet() + 273.15),
          new Channel(
              Signal.CORE_AIR_IN, "Blower outlet", "degC", "degF", 1, t -> t.discharge() + 273.15),
          new Channel(
              Signal.CHARGE_TEMPERATURE,
              "Charge temp",
              "degC",
              "degF",
              1,
              t -> t.sensor() + 273.15),
          new Channel(
              Signal.CORE_COOLANT_IN,
              "Coolant core in",
              "degC",
              "degF",
              1,
              t -> t.coreIn() + 273.15),
          new Channel(
              Signal.CORE_COOLANT_OUT,
              "Coolant core out",
              "degC",
              "degF",
              1,
              t -> t.coreOut() + 273.15),
          new Channel(
              Signal.ENGINE_COOLANT,
              "ECT",
              "degC",
              "degF",
              1,
              t -> t.moment().engineCoolant() + 273.15),
          new Channel(Signal.AIR_MASS_FLOW, "MAF", "g/s", "lb/min", 2, TruthLoop.Truth::airFlow));

  /** The same car with names that say less; the pressure is absolute. */
  private static final List<Channel> OPEN =
      List.of(
          PLAIN.get(0),
          new Channel(
              Signal.MANIFOLD_PRESSURE,
              "Manifold pressure",
              "kPa",
              "psi",
              2,
              t -> t.boost() + BAROMETER),
          new Channel(Signal.INLET_AIR, "IAT", "degC", "degF", 1, PLAIN.get(2).si()),
          PLAIN.get(3),
          new Channel(
              Signal.CHARGE_TEMPERATURE, "Air temp 2", "degC", "degF", 1, PLAIN.get(4).si()),
          new Channel(Signal.CORE_COOLANT_IN, "Water in", "degC", "degF", 1, PLAIN.get(5).si()),
          new Channel(Signal.CORE_COOLANT_OUT, "Water out", "degC", "degF", 1, PLAIN.get(6).si()),
          new Channel(Signal.ENGINE_COOLANT, "Coolant temp", "degC", "degF", 1, PLAIN.get(7).si()));

  private static final class Run {
    static final List<TruthLoop.Truth> TRUTHS =
        InventedLog.COOL_MORNING.run().truths().stream().filter(t -> t.time() < UNTIL).toList();
  }

  /** Writes the session down. */
  public static DressedLog of(LogDress dress) {
    return new Writer(dress).write();
  }

  private static final class Writer {
    private final LogDress dress;
    private final List<Channel> channels;
    private final List<TruthLoop.Truth> rows;
    private final StringBuilder text = new StringBuilder();
    private final List<Double> times = new ArrayList<>();
    private final Map<Signal, List<Double>> values = new EnumMap<>(Signal.class);
    private final Map<Signal, Double> grain = new EnumMap<>(Signal.class);
    private final Map<Signal, String> held = new EnumMap<>(Signal.class);
    private final Map<Signal, Double> heldValue = new EnumMap<>(Signal.class);

    Writer(LogDress dress) {
      this.dress = dress;
      this.channels = dress.names() == LogDress.Names.OPEN ? OPEN : PLAIN;
      List<TruthLoop.Truth> all = new ArrayList<>(Run.TRUTHS);
      if (dress.time() == LogDress.Time.GAP) {
        all.removeIf(t -> t.time() > 60 && t.time() < 130);
      }
      if (dress.time() == LogDress.Time.REVERSED) {
        Collections.reverse(all);
      }
      this.rows = all;
      channels.forEach(c -> values.put(c.signal(), new ArrayList<>()));
    }

    DressedLog write() {
      preamble();
      if (dress.extra() == LogDress.Extra.LONG) {
        line(List.of(timeHeader(), "Channel", "Value", "Unit"));
      } else {
        header();
      }
      for (int i = 0; i < rows.size(); i++) {
        row(i);
      }
      if (dress.time() == LogDress.Time.REVERSED) {
        Collections.reverse(times);
        values.values().forEach(Collections::reverse);
      }
      Map<Signal, double[]> expected = new EnumMap<>(Signal.class);
      values.forEach(
          (s, list) -> expected.put(s, list.stream().mapToDouble(Double::doubleValue).toArray()));
      for (Channel c : channels) {
        Unit unit = unit(c);
        grain.put(c.signal(), 0.5001 * Math.pow(10, -c.decimals()) * unit.scale());
      }
      return new DressedLog(
          bytes(),
          times.stream().mapToDouble(Double::doubleValue).toArray(),
          expected,
          grain,
          timeGrain(),
          pulls());
    }

    private double timeGrain() {
      return switch (dress.time()) {
        case DAYS -> 1e-2;
        case MINUTES -> 4e-5;
        default -> 1e-9;
      };
    }

    private List<double[]> pulls() {
      List<double[]> pulls = new ArrayList<>();
      for (int i = 0; DynoDay.pullStart(i) + DynoDay.PULL < UNTIL; i++) {
        double start = readerTime(DynoDay.pullStart(i));
        pulls.add(new double[] {start, start + DynoDay.PULL});
      }
      return pulls;
    }

    private byte[] bytes() {
      String all = text.toString().replace("\n", dress.lineEnd());
      if (dress.encoding() == LogDress.Encoding.TWICE) {
        all = new String(all.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
      }
      return (dress.encoding().mark + all).getBytes(dress.encoding().charset);
    }

    private void preamble() {
      switch (dress.preamble()) {
        case COMMENTS -> text.append("# Invented log\n# No real car\n");
        case RAGGED -> {
          line(List.of("Invented log"));
          line(List.of("Car", "Falke", "two doors"));
          line(List.of("Date", "2026-05-01"));
          line(List.of("Tyres", "235", "warm"));
          text.append('\n');
        }
        case PADDED -> {
          List<String> padded = new ArrayList<>(Collections.nCopies(channels.size() + 1, ""));
          padded.set(0, "Invented log");
          line(padded);
          padded.set(0, "Displacement");
          padded.set(1, "2.0");
          line(padded);
        }
        default -> {}
      }
    }

    private void header() {
      boolean row =
          dress.units() == LogDress.Units.ROW || dress.units() == LogDress.Units.BRACKETED_ROW;
      List<String> names = new ArrayList<>();
      List<String> units = new ArrayList<>();
      if (dress.extra() == LogDress.Extra.INDEX) {
        names.add("");
        units.add("");
      }
      if (dress.time() != LogDress.Time.ABSENT) {
        names.add(timeHeader());
        units.add(row && timeUnit().length() > 0 ? unitCell(timeUnit()) : "");
      }
      for (Channel c : channels) {
        names.add(head(c));
        units.add(unitCell(symbol(c)));
      }
      extraNames(names, units);
      if (dress.preamble() == LogDress.Preamble.HEADER_COMMENTED) {
        text.append("# ");
      }
      line(names);
      if (row) {
        line(units);
      }
    }

    private void extraNames(List<String> names, List<String> units) {
      switch (dress.extra()) {
        case TRAILING -> {
          names.add("");
          names.add("");
        }
        case DUPLICATES -> {
          names.add("Spare");
          names.add("Spare");
        }
        case NAMELESS -> names.add("");
        case TEXTS -> {
          names.add("Status");
          names.add("Pump");
        }
        default -> {}
      }
      while (units.size() < names.size()) {
        units.add("");
      }
    }

    private String unitCell(String unit) {
      return dress.units() == LogDress.Units.BRACKETED_ROW && !unit.isEmpty()
          ? "[" + unit + "]"
          : unit;
    }

    private String head(Channel c) {
      String name = c.name();
      return switch (dress.units()) {
        case BRACKETS -> name + " [" + symbol(c) + "]";
        case PARENTHESES -> name + " (" + symbol(c).replace("deg", "") + ")";
        case DEGREE_SIGN -> name + " [" + symbol(c).replace("deg", "\u00b0") + "]";
        case AFTER_COMMA -> name + ", " + symbol(c);
        default -> name;
      };
    }

    private String symbol(Channel c) {
      return dress.us() ? c.us() : c.metric();
    }

    private Unit unit(Channel c) {
      return c.signal().dimension().require(symbol(c));
    }

    private String timeUnit() {
      return switch (dress.time()) {
        case BARE_SECONDS, BARE_MILLISECONDS, CLOCK, OVER_MIDNIGHT, ISO, DAYS, ABSENT -> "";
        case EPOCH_SECONDS, EPOCH_MILLISECONDS, EPOCH_MICROSECONDS -> "";
        case MILLISECONDS -> "ms";
        case MINUTES -> "min";
        default -> "s";
      };
    }

    private String timeHeader() {
      String unit = timeUnit();
      return switch (dress.units()) {
        case ROW, BRACKETED_ROW -> "Time";
        case PARENTHESES -> unit.isEmpty() ? "Time" : "Time (" + unit + ")";
        case AFTER_COMMA -> unit.isEmpty() ? "Time" : "Time, " + unit;
        default -> unit.isEmpty() ? "Time" : "Time [" + unit + "]";
      };
    }

    private void row(int i) {
      TruthLoop.Truth truth = rows.get(i);
      if (dress.extra() == LogDress.Extra.LONG) {
        for (Channel c : channels) {
          line(List.of(timeCell(truth.time()), c.name(), cell(c, i, truth), symbol(c)));
        }
        times.add(readerTime(truth.time()));
        return;
      }
      List<String> cells = new ArrayList<>();
      if (dress.extra() == LogDress.Extra.INDEX) {
        cells.add(Integer.toString(i));
      }
      if (dress.time() != LogDress.Time.ABSENT) {
        cells.add(timeCell(truth.time()));
      }
      for (Channel c : channels) {
        cells.add(cell(c, i, truth));
      }
      switch (dress.extra()) {
        case TRAILING -> Collections.addAll(cells, "", "", "");
        case DUPLICATES -> Collections.addAll(cells, "1", "2");
        case NAMELESS -> cells.add("7");
        case TEXTS -> Collections.addAll(cells, i % 3 == 0 ? "idle" : "load", "on");
        default -> {}
      }
      times.add(readerTime(truth.time()));
      line(cells);
      if (dress.time() == LogDress.Time.REPEATS && i % 50 == 0) {
        line(cells);
      }
      if (dress.extra() == LogDress.Extra.REPEATED_HEADER && i == 700) {
        header();
      }
    }

    /** Writes a channel's cell and keeps what a reader should have of it. */
    private String cell(Channel c, int i, TruthLoop.Truth truth) {
      double si = si(c, truth);
      String shown = number(unit(c).fromSi(si), c.decimals());
      boolean left = dress.missing().length() > 0 && (i + c.name().length()) % 17 == 0;
      boolean polled =
          dress.extra() == LogDress.Extra.POLLED || dress.extra() == LogDress.Extra.HELD;
      boolean turn = !polled || i % channels.size() == channels.indexOf(c);
      String suffix =
          switch (dress.units()) {
            case CELLS -> symbol(c).replace("deg", "");
            case SPACED_CELLS -> " " + symbol(c);
            default -> "";
          };
      if (turn && !left) {
        held.put(c.signal(), shown + suffix);
        heldValue.put(c.signal(), si);
      }
      boolean says = (turn && !left) || dress.extra() == LogDress.Extra.HELD;
      list(c).add(says ? heldValue.getOrDefault(c.signal(), Double.NaN) : Double.NaN);
      return says ? held.getOrDefault(c.signal(), "") : left ? dress.missing() : "";
    }

    private List<Double> list(Channel c) {
      return values.computeIfAbsent(c.signal(), s -> new ArrayList<>());
    }

    private double si(Channel c, TruthLoop.Truth truth) {
      boolean off = dress.extra() == LogDress.Extra.ENGINE_OFF && truth.time() < OFF_UNTIL;
      if (off && c.signal() == Signal.ENGINE_SPEED) {
        return 0;
      }
      if (off && c.signal() == Signal.MANIFOLD_PRESSURE) {
        return BAROMETER;
      }
      return off && c.signal() == Signal.BOOST ? 0 : c.si().applyAsDouble(truth);
    }

    private double restartAt() {
      return 100;
    }

    /** The time that a reader should have. */
    private double readerTime(double t) {
      double first = Run.TRUTHS.get(0).time();
      return switch (dress.time()) {
        case CLOCK,
            OVER_MIDNIGHT,
            ISO,
            EPOCH_SECONDS,
            EPOCH_MILLISECONDS,
            EPOCH_MICROSECONDS,
            DAYS ->
            t - first;
        case NEGATIVE -> t - 30;
        // The last row before is at 99.9 s, the first after at 99.9 + 60 s.
        case RESTARTS -> t < restartAt() - 1e-6 ? t : t - 0.1 + 60;
        default -> t;
      };
    }

    private String timeCell(double t) {
      long tenths = Math.round(t * 10);
      return switch (dress.time()) {
        case MILLISECONDS, BARE_MILLISECONDS -> Long.toString(tenths * 100);
        case MINUTES -> number(t / 60, 6);
        case CLOCK -> clock(50_000_000 + tenths * 100);
        case OVER_MIDNIGHT -> clock((86_340_000 + tenths * 100) % 86_400_000);
        case ISO -> "2026-05-01T" + clock(50_000_000 + tenths * 100).replace(',', '.') + "Z";
        case EPOCH_SECONDS -> number(1_700_000_000 + tenths / 10.0, 1);
        case EPOCH_MILLISECONDS -> Long.toString(1_700_000_000_000L + tenths * 100);
        case EPOCH_MICROSECONDS -> Long.toString(1_700_000_000_000_000L + tenths * 100_000);
        case DAYS -> number(45_000.25 + t / 86_400, 8);
        case NEGATIVE -> number((tenths - 300) / 10.0, 1);
        case RESTARTS -> number((t < restartAt() - 1e-6 ? tenths : tenths - 1000) / 10.0, 1);
        case ROUNDED -> Long.toString(Math.floorDiv(tenths, 10));
        default -> number(tenths / 10.0, 1);
      };
    }

    private String clock(long ms) {
      return String.format(
          Locale.ROOT,
          "%02d:%02d:%02d.%03d",
          ms / 3_600_000,
          ms / 60_000 % 60,
          ms / 1000 % 60,
          ms % 1000);
    }

    private String number(double value, int decimals) {
      return BigDecimal.valueOf(value)
          .setScale(decimals, RoundingMode.HALF_UP)
          .toPlainString()
          .replace('.', dress.decimal());
    }

    private void line(List<String> cells) {
      String by = Character.toString(dress.separator());
      for (int i = 0; i < cells.size(); i++) {
        String cell = cells.get(i);
        boolean quoted = cell.contains(by) || dress.extra() == LogDress.Extra.QUOTED;
        text.append(i > 0 ? by : "").append(quoted ? "\"" + cell + "\"" : cell);
      }
      text.append('\n');
    }
  }
}
