package soakloop.scenario;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import soakloop.log.Signal;
import soakloop.quantity.Correlation;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;

/**
 * Reads what a fit left in a scenario, after all else was read: the section repeats the values that
 * were found, so that it shows which of them were edited since.
 */
final class FitRecordReader {
  /** What a value may differ by and still be the same, as a share of its spread. */
  private static final double SAME = 1e-6;

  private final In in;
  private final List<Stated> stated;

  /**
   * Makes it.
   *
   * @param root of the scenario
   * @param stated every value read before
   */
  FitRecordReader(In root, List<Stated> stated) {
    this.in = root.section("fitted");
    this.stated = stated;
  }

  Optional<FitRecord> read() {
    if (!in.present()) {
      return Optional.empty();
    }
    String log = in.text("log").orElse("");
    String sha = in.text("sha-256").orElse("");
    String date = in.text("date").orElse("");
    String version = in.text("version").orElse("");
    if (!sha.isEmpty() && !sha.matches("[0-9a-f]{64}")) {
      in.problem("sha-256", "is no SHA-256: it has 64 of the characters 0-9 and a-f");
    }
    List<In> items = in.sections("keys");
    List<FitRecord.Key> keys = keys(items);
    Optional<Correlation> correlation = correlation(items.size());
    Map<Signal, FitRecord.ModelError> errors = errors();
    in.done();
    return correlation.isEmpty() || correlation.get().size() != keys.size()
        ? Optional.empty()
        : Optional.of(new FitRecord(log, sha, date, version, keys, correlation.get(), errors));
  }

  private List<FitRecord.Key> keys(List<In> items) {
    List<FitRecord.Key> keys = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (In item : items) {
      Optional<String> name = item.text("key");
      List<Node> values = item.items("values");
      Optional<String> value = item.text("value");
      item.done();
      if (name.isEmpty()) {
        continue;
      }
      if (value.isPresent() == !values.isEmpty()) {
        item.problem("", "takes either value, or values of a curve's points");
      }
      Optional<Dimension> dimension = dimension(item, name.get());
      if (!names.add(name.get())) {
        item.problem("key", "`" + name.get() + "` stands in this list twice");
      }
      if (dimension.isPresent()) {
        List<Estimate> read = new ArrayList<>();
        value.ifPresent(v -> estimate(item, v, dimension.get()).ifPresent(read::add));
        for (Node node : values) {
          String text = node instanceof Node.Scalar s ? s.text() : "";
          estimate(item, text, dimension.get()).ifPresent(read::add);
        }
        keys.add(new FitRecord.Key(name.get(), read, holds(name.get(), read)));
      }
    }
    return keys;
  }

  /** Returns what a key measures; notes a key that there is not. */
  private static Optional<Dimension> dimension(In item, String name) {
    for (String start : List.of(FitRecord.BIAS, FitRecord.LAG)) {
      if (name.startsWith(start)) {
        if (Signal.named(name.substring(start.length())).isPresent()) {
          return Optional.of(
              start.equals(FitRecord.BIAS) ? Dimension.TEMPERATURE_DIFFERENCE : Dimension.TIME);
        }
        item.problem("key", "found `" + Node.Scalar.shown(name) + "`, which names no signal");
        return Optional.empty();
      }
    }
    Optional<Dimension> dimension = KeyTable.get().find(name).flatMap(KeySpec::dimension);
    if (dimension.isEmpty()) {
      item.problem("key", "found `" + Node.Scalar.shown(name) + "`, which is no key with a number");
    }
    return dimension;
  }

  private static Optional<Estimate> estimate(In item, String text, Dimension dimension) {
    try {
      Estimate read = item.context().quantity(text, dimension);
      if (read.spread() > 0) {
        return Optional.of(read);
      }
      item.problem("", "found `" + Node.Scalar.shown(text) + "`, which needs its spread (+/-)");
    } catch (QuantityException e) {
      item.problem("", "found `" + Node.Scalar.shown(text) + "`, which " + e.getMessage());
    }
    return Optional.empty();
  }

  /** Returns whether the scenario has just these values of a key. */
  private boolean holds(String name, List<Estimate> found) {
    if (name.startsWith(FitRecord.BIAS) || name.startsWith(FitRecord.LAG)) {
      return true;
    }
    List<Estimate> now =
        stated.stream()
            .filter(s -> s.key().equals(name) || isPoint(s.key(), name))
            .map(Stated::estimate)
            .filter(e -> e.spread() > 0)
            .toList();
    boolean same = now.size() == found.size();
    for (int i = 0; same && i < now.size(); i++) {
      double near = SAME * found.get(i).spread();
      same =
          Math.abs(now.get(i).value() - found.get(i).value()) <= near
              && Math.abs(now.get(i).spread() - found.get(i).spread()) <= near;
    }
    return same;
  }

  private static boolean isPoint(String key, String curve) {
    return key.startsWith(curve + ".") && key.substring(curve.length()).matches("\\.\\d+\\.2");
  }

  private Optional<Correlation> correlation(int keys) {
    List<Node> rows = in.items("correlation");
    if (rows.size() != keys) {
      in.problem("correlation", "has " + rows.size() + " rows for " + keys + " keys");
      return Optional.empty();
    }
    double[][] lower = new double[keys][];
    for (int i = 0; i < keys; i++) {
      List<Node> row = rows.get(i) instanceof Node.Items items ? items.items() : List.of();
      lower[i] = row.stream().mapToDouble(FitRecordReader::number).toArray();
    }
    try {
      return Optional.of(Correlation.ofLower(lower));
    } catch (IllegalArgumentException e) {
      in.problem("correlation", String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }

  /** Returns a plain number; NaN for anything else. */
  private static double number(Node node) {
    return node instanceof Node.Scalar s && s.text().matches("-?\\d(\\.\\d{1,9})?")
        ? Double.parseDouble(s.text())
        : Double.NaN;
  }

  private Map<Signal, FitRecord.ModelError> errors() {
    Map<Signal, FitRecord.ModelError> errors = new EnumMap<>(Signal.class);
    for (In item : in.sections("model-error")) {
      Optional<String> name = item.text("signal");
      Optional<Signal> signal = name.flatMap(Signal::named);
      double deviation = item.ofModel("deviation");
      double time = item.ofModel("time");
      item.done();
      if (name.isPresent() && signal.isEmpty()) {
        List<String> known = Stream.of(Signal.values()).map(Signal::key).toList();
        String near =
            Nearest.to(name.get(), known).map(n -> "; did you mean `" + n + "`?").orElse("");
        item.problem(
            "signal", "found `" + Node.Scalar.shown(name.get()) + "`, which is no signal" + near);
      }
      if (signal.isPresent()
          && errors.put(signal.get(), new FitRecord.ModelError(deviation, time)) != null) {
        item.problem("signal", "`" + signal.get().key() + "` stands in this list twice");
      }
    }
    return errors;
  }
}
