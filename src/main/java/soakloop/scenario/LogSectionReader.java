package soakloop.scenario;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import soakloop.log.Log;
import soakloop.log.LogColumns;
import soakloop.log.LogException;
import soakloop.log.Signal;
import soakloop.quantity.Unit;

/** Reads the log section and the log it names. */
final class LogSectionReader {
  private final In root;
  private final Source source;

  LogSectionReader(In root, Source source) {
    this.root = root;
    this.source = source;
  }

  Optional<Scenario.Logged> read() {
    In in = root.section("log");
    if (!in.present()) {
      return Optional.empty();
    }
    Optional<String> file = in.text("file");
    double startsAt = in.number("starts-at");
    LogColumns columns = columns(in.section("columns"));
    in.done();
    if (file.isEmpty()) {
      if (!in.has("file")) {
        in.problem("file", "is missing: CSV file, relative to the scenario");
      }
      return Optional.empty();
    }
    try {
      Log log = source.log(file.get(), columns);
      return Optional.of(new Scenario.Logged(log, startsAt));
    } catch (LogException e) {
      for (String problem : e.problems()) {
        in.problem("file", problem);
      }
    } catch (java.nio.file.InvalidPathException e) {
      in.problem("file", "found `" + file.get() + "`, which is no file name");
    }
    return Optional.empty();
  }

  private static LogColumns columns(In in) {
    Map<Signal, LogColumns.Choice> chosen = new EnumMap<>(Signal.class);
    for (Node.Entry entry : in.entries()) {
      Optional<Signal> signal = Signal.named(entry.key());
      if (signal.isEmpty()) {
        in.context()
            .problem(entry.mark(), in.path(entry.key()), "is not a signal; known: " + signals());
      } else {
        choice(in, entry, signal.get()).ifPresent(c -> chosen.put(signal.get(), c));
      }
    }
    return chosen.isEmpty() ? LogColumns.NONE : new LogColumns(chosen);
  }

  private static Optional<LogColumns.Choice> choice(In in, Node.Entry entry, Signal signal) {
    if (entry.value() instanceof Node.Scalar header) {
      return Optional.of(new LogColumns.Choice(header.text(), Optional.empty()));
    }
    if (entry.value() instanceof Node.Section section
        && section.find("name").map(Node.Entry::value).orElse(null) instanceof Node.Scalar name) {
      Optional<Unit> unit = Optional.empty();
      for (Node.Entry part : section.entries()) {
        if (part.key().equals("unit") && part.value() instanceof Node.Scalar symbol) {
          unit = signal.dimension().unit(symbol.text());
          if (unit.isEmpty()) {
            in.context()
                .problem(
                    symbol.mark(),
                    in.path(entry.key()) + ".unit",
                    "found `" + symbol.text() + "`; allowed: " + signal.dimension().allowed());
          }
        } else if (!part.key().equals("name")) {
          in.context()
              .problem(
                  part.mark(),
                  in.path(entry.key()) + "." + part.key(),
                  "is not a key; known here: name, unit");
        }
      }
      return Optional.of(new LogColumns.Choice(name.text(), unit));
    }
    in.context()
        .problem(
            entry.value().mark(),
            in.path(entry.key()),
            "takes a column's header, or {name: header, unit: ...}");
    return Optional.empty();
  }

  private static String signals() {
    StringBuilder names = new StringBuilder();
    for (Signal signal : Signal.values()) {
      names.append(names.length() == 0 ? "" : ", ").append(signal.key());
    }
    return names.toString();
  }
}
