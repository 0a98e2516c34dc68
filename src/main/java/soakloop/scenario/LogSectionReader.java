package soakloop.scenario;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soakloop.log.LogColumns;
import soakloop.log.LogException;
import soakloop.log.Signal;
import soakloop.quantity.Unit;

/** Reads the log section and the log it names. */
final class LogSectionReader {
  private final In root;
  private final Source source;
  private final OptionalDouble barometer;

  /**
   * Makes it.
   *
   * @param barometer that the scenario states for the day, Pa; a default one tells nothing of a log
   */
  LogSectionReader(In root, Source source, OptionalDouble barometer) {
    this.root = root;
    this.source = source;
    this.barometer = barometer;
  }

  Optional<Scenario.Logged> read() {
    In in = root.section("log");
    if (!in.present()) {
      return Optional.empty();
    }
    Optional<String> file = in.text("file");
    double startsAt = in.number("starts-at");
    LogColumns columns = new LogColumns(columns(in.section("columns")), in.optional("rate"));
    in.done();
    if (file.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Scenario.Logged(source.log(file.get(), columns, barometer), startsAt));
    } catch (LogException e) {
      for (String problem : e.problems()) {
        in.problem("file", problem);
      }
    } catch (java.nio.file.InvalidPathException e) {
      in.problem("file", "found `" + file.get() + "`, which is no file name");
    }
    return Optional.empty();
  }

  private static Map<Signal, LogColumns.Choice> columns(In in) {
    Map<Signal, LogColumns.Choice> chosen = new EnumMap<>(Signal.class);
    for (Node.Entry entry : in.entries()) {
      Optional<Signal> signal = Signal.named(entry.key());
      if (signal.isEmpty()) {
        in.problem(Node.Scalar.shown(entry.key()), unknown(entry.key()));
      } else {
        choice(in, entry, signal.get()).ifPresent(c -> chosen.put(signal.get(), c));
      }
    }
    return chosen;
  }

  private static String unknown(String key) {
    List<String> known = Stream.of(Signal.values()).map(Signal::key).toList();
    return Nearest.to(key, known)
        .map(near -> "is not a signal; did you mean `" + near + "`?")
        .orElse("is not a signal; known: " + String.join(", ", known));
  }

  private static Optional<LogColumns.Choice> choice(In in, Node.Entry entry, Signal signal) {
    if (entry.value() instanceof Node.Scalar header && !header.text().isBlank()) {
      return Optional.of(new LogColumns.Choice(header.text(), Optional.empty()));
    }
    if (entry.value() instanceof Node.Section section
        && section.find("name").map(Node.Entry::value).orElse(Node.Section.EMPTY)
            instanceof Node.Scalar name) {
      return Optional.of(
          new LogColumns.Choice(name.text(), unit(in, entry.key(), section, signal)));
    }
    problem(
        in,
        entry.value().mark(),
        entry.key(),
        "takes a column's header, or {name: header, unit: ...}");
    return Optional.empty();
  }

  private static Optional<Unit> unit(In in, String key, Node.Section section, Signal signal) {
    Optional<Unit> unit = Optional.empty();
    for (Node.Entry part : section.entries()) {
      String path = key + "." + Node.Scalar.shown(part.key());
      if (part.key().equals("unit")) {
        String found = part.value() instanceof Node.Scalar s ? s.text() : "";
        unit = signal.dimension().unit(found);
        if (unit.isEmpty()) {
          problem(
              in,
              part.value().mark(),
              path,
              "found `" + Node.Scalar.shown(found) + "`; allowed: " + signal.dimension().allowed());
        }
      } else if (!part.key().equals("name")) {
        problem(in, part.mark(), path, "is not a key; known here: name, unit");
      }
    }
    return unit;
  }

  private static void problem(In in, Mark mark, String key, String message) {
    in.context().problem(mark, in.path(key), message);
  }
}
