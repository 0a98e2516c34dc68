package soakloop.scenario;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;

/** What one reading of a scenario gathers: problems, values used, defaults used. */
final class Context {
  private static final int MAX_PROBLEMS = 100;

  private final String file;
  private final Quantities quantities;
  private final Set<Problem> problems = new LinkedHashSet<>();
  private final Map<String, Stated> values = new LinkedHashMap<>();
  private final Map<String, Assumed> assumed = new LinkedHashMap<>();
  private final Set<String> asked = new HashSet<>();

  Context(String file, Quantities quantities, List<Problem> found) {
    this.file = file;
    this.quantities = quantities;
    problems.addAll(found);
  }

  /** Quantities already read once, so that a changed scenario reads only what changed. */
  static final class Quantities {
    private final Map<Dimension, Map<String, Estimate>> known = new ConcurrentHashMap<>();

    Estimate read(String text, Dimension dimension) throws QuantityException {
      Map<String, Estimate> of = known.computeIfAbsent(dimension, d -> new ConcurrentHashMap<>());
      Estimate found = of.get(text);
      if (found == null) {
        found = QuantityParser.parse(text, dimension);
        of.put(text, found);
      }
      return found;
    }
  }

  String file() {
    return file;
  }

  Estimate quantity(String text, Dimension dimension) throws QuantityException {
    return quantities.read(text, dimension);
  }

  /** Notes a problem, once; past a hundred they stop being read. */
  void problem(Mark mark, String key, String message) {
    if (problems.size() < MAX_PROBLEMS) {
      problems.add(new Problem(file, mark.line(), mark.column(), key, message));
    }
  }

  void value(String key, Dimension dimension, Estimate estimate, boolean isAssumed) {
    values.put(key, new Stated(key, dimension, estimate, isAssumed));
  }

  void assumed(String key, KeySpec spec) {
    if (!spec.quiet()) {
      assumed.put(key, new Assumed(key, spec.defaultValue(), spec.defaultSpread(), spec.because()));
    }
  }

  void asked(KeySpec spec) {
    asked.add(spec.key());
  }

  /** Returns the keys of the table that were asked for. */
  Set<String> asked() {
    return asked;
  }

  boolean hasProblems() {
    return !problems.isEmpty();
  }

  /** Returns whether there is a problem with a key, or with one below it. */
  boolean hasProblems(String key) {
    return problems.stream().anyMatch(p -> p.key().equals(key) || p.key().startsWith(key + "."));
  }

  /** Returns the problems in the order of the text. */
  List<Problem> problems() {
    return problems.stream()
        .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
        .toList();
  }

  List<Stated> values() {
    return List.copyOf(values.values());
  }

  List<Assumed> assumed() {
    return List.copyOf(assumed.values());
  }
}
