package soakloop.scenario;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import soakloop.log.Confidence;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.Signal;
import soakloop.reading.Finding;
import soakloop.reading.LogReading;

/** Writes the log section, so that the log is read the same way again. */
final class StarterLog {
  /** Folders that a relative path may climb. */
  private static final int CLIMB = 3;

  private final LogReading reading;
  private final LogColumns columns;

  StarterLog(LogReading reading, LogColumns columns) {
    this.reading = reading;
    this.columns = columns;
  }

  void write(Path log, Path target, Optional<Double> startsAt, StarterText text) {
    text.line("log:", "");
    text.line("  file: " + StarterText.quoted(path(log, target)), "");
    if (startsAt.isPresent()) {
      text.line(
          "  starts-at: "
              + StarterFigures.trimmed(String.format(Locale.ROOT, "%.2f", startsAt.get()))
              + " s",
          "log time at the session's time zero");
    }
    columns
        .rate()
        .ifPresent(r -> text.line("  rate: " + r + " Hz", "as stated: the log has no times"));
    Map<Signal, Log.Column> settled = settled();
    if (!settled.isEmpty()) {
      text.line("  columns:", "what names alone do not settle, as it was read");
      settled.forEach((signal, column) -> column(signal, column, text));
    }
  }

  private static void column(Signal signal, Log.Column column, StarterText text) {
    String unit =
        signal
            .dimension()
            .unit(column.unit())
            .filter(u -> !column.unit().isBlank())
            .map(u -> ", unit: " + StarterText.quoted(column.unit()))
            .orElse("");
    text.line(
        "    " + signal.key() + ": {name: " + StarterText.quoted(column.header()) + unit + "}",
        column.confidence() == Confidence.GUESSED ? "GUESS: " + column.remark() : column.remark());
  }

  /** The columns that are named: those that the values settled, that were named, or are swapped. */
  private Map<Signal, Log.Column> settled() {
    Map<Signal, Log.Column> all = new EnumMap<>(Signal.class);
    for (Log.Column column : reading.log().columns()) {
      column
          .signal()
          .filter(s -> !column.header().isBlank() && !derived(column))
          .ifPresent(s -> all.put(s, column));
    }
    Map<Signal, Log.Column> named = new LinkedHashMap<>();
    Map<Signal, Signal> exchanged = exchanged();
    all.forEach(
        (signal, column) -> {
          Log.Column held = all.getOrDefault(exchanged.getOrDefault(signal, signal), column);
          boolean open =
              column.confidence() != Confidence.SURE
                  || columns.chosen().containsKey(signal)
                  || exchanged.containsKey(signal);
          if (signal == Signal.TIME ? columns.chosen().containsKey(signal) : open) {
            named.put(signal, held);
          }
        });
    return named;
  }

  /** Whether a column was made from another: the file has none of that name. */
  private static boolean derived(Log.Column column) {
    return column.header().matches(".* (less|plus) barometer") && column.unit().equals("Pa");
  }

  private Map<Signal, Signal> exchanged() {
    Map<Signal, Signal> exchanged = new EnumMap<>(Signal.class);
    for (Finding finding : reading.findings()) {
      if (finding.kind() == Finding.Kind.SWAPPED) {
        boolean air = finding.signal().equals(Optional.of(Signal.CHARGE_TEMPERATURE));
        Signal one = air ? Signal.CHARGE_TEMPERATURE : Signal.CORE_COOLANT_IN;
        Signal other = air ? Signal.CORE_AIR_IN : Signal.CORE_COOLANT_OUT;
        exchanged.put(one, other);
        exchanged.put(other, one);
      }
    }
    return exchanged;
  }

  /**
   * The log as the scenario should name it: relative where both are moved together most likely,
   * else absolute. Links are followed, so that a folder above means the same to all.
   */
  static String path(Path log, Path target) {
    Path folder = Optional.ofNullable(target.toAbsolutePath().getParent()).orElse(target);
    Path from = real(folder);
    Path to = real(log);
    if (from.getRoot() == null || !from.getRoot().equals(to.getRoot())) {
      return log.toAbsolutePath().normalize().toString();
    }
    Path relative = from.relativize(to);
    long climbs = 0;
    for (Path part : relative) {
      climbs += part.toString().equals("..") ? 1 : 0;
    }
    return climbs > CLIMB ? to.toString() : relative.toString().replace(File.separatorChar, '/');
  }

  /** A path without links, as far as it is there. */
  private static Path real(Path path) {
    Path absolute = path.toAbsolutePath().normalize();
    for (Path at = absolute; at != null; at = at.getParent()) {
      if (Files.exists(at)) {
        try {
          return at.toRealPath().resolve(at.relativize(absolute)).normalize();
        } catch (IOException e) {
          return absolute;
        }
      }
    }
    return absolute;
  }

  /** Units that the chosen columns are in: US if more temperatures are in degF than not. */
  static boolean us(Log log) {
    List<String> read = log.columns().stream().map(Log.Column::unit).toList();
    long us = read.stream().filter(List.of("degF", "psi", "mph", "lb/min")::contains).count();
    long metric =
        read.stream().filter(List.of("degC", "kPa", "bar", "km/h", "g/s", "K")::contains).count();
    return us > metric;
  }
}
