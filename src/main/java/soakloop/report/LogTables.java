package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.reading.CoolantFlow;
import soakloop.reading.Effectiveness;
import soakloop.reading.PullReading;
import soakloop.reading.Wait;

/**
 * A log in tables.
 *
 * @param set the logs
 * @param words how things are said
 */
record LogTables(LogSet set, LogWords words) {
  /** A column that is shown if any pull of any log has it. */
  private record Column(String head, Function<PullReading, String> cell) {}

  /** Returns the pulls of one log, with the columns that any of the logs has values for. */
  Table pulls(LogSheet sheet) {
    int air = words.decimals(sheet, Signal.CHARGE_TEMPERATURE);
    int coolant = words.decimals(sheet, Signal.CORE_COOLANT_IN);
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("Pull", r -> LogWords.number(r.pull())));
    columns.add(new Column("At", r -> Display.clock(r.pull().start())));
    columns.add(temperature("Start", air, PullReading::start));
    columns.add(temperature(countedHead(), air, PullReading::counted));
    columns.add(temperature("Peak", air, PullReading::peak));
    columns.add(
        new Column(
            "Rise", r -> shown(r.rise(), v -> signed(v, Dimension.TEMPERATURE_DIFFERENCE, air))));
    columns.add(temperature("Coolant in", coolant, PullReading::coolantStart));
    columns.add(new Column("Boost", this::boost));
    columns.add(new Column("Power", r -> shown(r.power(), v -> number(v, Dimension.POWER, 0))));
    columns.add(new Column("Over limit", r -> shown(r.overLimit(), LogTables::seconds)));
    columns.removeIf(c -> set.sheets().stream().allMatch(s -> empty(c, s)));
    List<List<String>> rows = new ArrayList<>();
    for (PullReading reading : sheet.reading().table()) {
      rows.add(columns.stream().map(c -> c.cell().apply(reading)).toList());
    }
    return new Table(columns.stream().map(Column::head).toList(), rows, 1, columns.size() - 1);
  }

  private static String seconds(double s) {
    return s > 0 && s < 0.5 ? "<1 s" : String.format(Locale.ROOT, "%.0f s", s);
  }

  private static boolean empty(Column column, LogSheet sheet) {
    return sheet.reading().table().stream()
        .allMatch(r -> column.cell().apply(r).equals(Display.NOTHING));
  }

  /** Returns what the columns of pulls are in. */
  String pullUnits() {
    Display display = words.display();
    List<String> said = new ArrayList<>();
    said.add("temperatures in " + display.symbol(Dimension.TEMPERATURE));
    String difference = display.symbol(Dimension.TEMPERATURE_DIFFERENCE);
    if (!difference.equals(display.symbol(Dimension.TEMPERATURE))) {
      said.add("rise in " + difference);
    }
    if (set.sheets().stream().anyMatch(s -> any(s, PullReading::boost))) {
      said.add("boost in " + display.symbol(Dimension.GAUGE_PRESSURE));
    }
    if (set.sheets().stream().anyMatch(s -> any(s, PullReading::power))) {
      said.add("power in " + display.symbol(Dimension.POWER));
    }
    return String.join(", ", said);
  }

  private static boolean any(LogSheet sheet, Function<PullReading, OptionalDouble> value) {
    return sheet.reading().table().stream().anyMatch(r -> value.apply(r).isPresent());
  }

  private String countedHead() {
    return set.counted().isPresent()
        ? "At " + words.display().number(set.counted().getAsDouble(), Dimension.ROTATION, 0)
        : "Counted";
  }

  private Column temperature(
      String head, int decimals, Function<PullReading, OptionalDouble> value) {
    return new Column(
        head, r -> shown(value.apply(r), v -> number(v, Dimension.TEMPERATURE, decimals)));
  }

  private String boost(PullReading reading) {
    String most = shown(reading.boost(), v -> number(v, Dimension.GAUGE_PRESSURE, 1));
    return reading.boostIsLeast() && reading.boost().isPresent() ? most + "+" : most;
  }

  private static String shown(OptionalDouble value, Function<Double, String> how) {
    return value.isPresent() ? how.apply(value.getAsDouble()) : Display.NOTHING;
  }

  private String number(double value, Dimension dimension, int decimals) {
    return words.display().number(value, dimension, decimals);
  }

  private String signed(double value, Dimension dimension, int decimals) {
    return words.display().signed(value, dimension, decimals);
  }

  /** Returns how each pull sweeps. */
  Table sweeps(LogSheet sheet) {
    boolean geared = sheet.reading().pulls().stream().anyMatch(p -> p.gearing().isPresent());
    List<List<String>> rows = new ArrayList<>();
    for (PullReading r : sheet.reading().table()) {
      List<String> row = new ArrayList<>(List.of(LogWords.number(r.pull()), words.sweep(r.pull())));
      row.add(
          r.pull()
              .sweep()
              .map(s -> number(10 * Math.rint(s.rate() * 6) / 60, Dimension.ROTATION, 0) + " rpm/s")
              .orElse(Display.NOTHING));
      if (geared) {
        row.add(shown(r.pull().gearing(), this::gearing));
      }
      row.add(String.format(Locale.ROOT, "\u00b1 %.1f s", r.pull().within()));
      rows.add(row);
    }
    List<String> head = new ArrayList<>(List.of("Pull", "Engine speed", "Rate"));
    if (geared) {
      head.add("Gearing");
    }
    head.add("Ends known to");
    return new Table(head, rows, 2, head.size() - 1);
  }

  /** Shows turns of the engine for each unit of road speed. */
  private String gearing(double turnsPerMetre) {
    double rpm = words.display().units().unit(Dimension.SPEED).toSi(1) * turnsPerMetre * 60;
    return String.format(Locale.ROOT, "%.1f rpm per ", rpm)
        + words.display().symbol(Dimension.SPEED);
  }

  /** Returns the waits between pulls. */
  Table waits(LogSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (Wait wait : sheet.reading().waits()) {
      rows.add(
          List.of(
              wait.after() + " to " + (wait.after() + 1),
              Display.duration(wait.duration()),
              LogWords.engine(wait),
              wait.moving() > 0 ? Display.duration(wait.moving()) : Display.NOTHING));
    }
    return new Table(List.of("From pull", "Wait", "Engine", "Rolling"), rows, 9, 9);
  }

  /** Returns what each column that was read was taken as. */
  Table read(LogSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (Log.Column column : sheet.log().columns()) {
      if (column.signal().isPresent()) {
        rows.add(
            List.of(
                column.header(),
                column.signal().get().label(),
                column.unit(),
                column.confidence().name().toLowerCase(Locale.ROOT)));
      }
    }
    return new Table(List.of("Column", "Taken as", "Unit", "How sure"), rows, 9, 9);
  }

  /** Returns how each column was understood. */
  Table columns(LogSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (Log.Column column : sheet.log().columns()) {
      String head = column.header().isEmpty() ? "(no name)" : column.header();
      String taken = column.signal().map(Signal::label).orElse("not read");
      String sure =
          column.signal().isEmpty() ? "" : column.confidence().name().toLowerCase(Locale.ROOT);
      rows.add(List.of(head, taken, column.unit(), sure, column.remark()));
    }
    return new Table(List.of("Column", "Taken as", "Unit", "How sure", "Why"), rows, 9, 9);
  }

  /** Returns the core's effectiveness pull by pull. */
  Table effectiveness(LogSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (Effectiveness.OfPull p : sheet.reading().effectiveness().pulls()) {
      rows.add(
          List.of(
              String.valueOf(p.pull()),
              number(p.airIn(), Dimension.TEMPERATURE, 0),
              number(p.airOut(), Dimension.TEMPERATURE, 0),
              number(p.coolantIn(), Dimension.TEMPERATURE, 0),
              LogSentences.percent(p.value().value()),
              LogSentences.percent(p.value().value() - p.value().spread())
                  + " to "
                  + LogSentences.percent(p.value().value() + p.value().spread())));
    }
    List<String> head =
        List.of("Pull", "Air in", "Air out", "Coolant in", "Effectiveness", "Nine in ten");
    return new Table(head, rows, 1, 5);
  }

  /** Returns the loop's flow from the heat balance, pull by pull. */
  Table flows(LogSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (CoolantFlow.OfPull p : sheet.reading().coolantFlow().pulls()) {
      rows.add(
          List.of(
              String.valueOf(p.pull()),
              words.display().heat(p.airHeat()),
              words.display().show(p.rise(), Dimension.TEMPERATURE_DIFFERENCE, 1),
              words.display().spread(p.flow(), Dimension.VOLUME_FLOW)));
    }
    List<String> head = List.of("Pull", "From the air", "Mean rise of coolant", "Loop flow");
    return new Table(head, rows, 1, 3);
  }
}
