package soakloop.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;
import soakloop.scenario.Problem;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.session.Phase;

/**
 * What is to be varied, and what is asked of every run.
 *
 * @param scenario what is varied
 * @param asked the words it was asked in
 * @param keys one, or two that make a grid; the second runs fastest
 * @param measures what is asked, in the order of {@link Measure}
 * @param limits what must not be passed, SI, for some of the measures
 */
public record VaryPlan(
    Scenario scenario,
    Asked asked,
    List<KeyRange> keys,
    List<Measure> measures,
    Map<Measure, Double> limits) {
  /**
   * A question in words.
   *
   * @param ranges one or two keys with ranges, such as {@code reservoir.volume=3 L..12 L/10}
   * @param results words of measures; all that apply if empty
   * @param limits such as {@code coolant=45 degC}, in place of the scenario's
   */
  public record Asked(List<String> ranges, List<String> results, List<String> limits) {
    /** Copies the lists. */
    public Asked {
      ranges = List.copyOf(ranges);
      results = List.copyOf(results);
      limits = List.copyOf(limits);
    }
  }

  /** Most runs of one plan. */
  public static final int MOST_RUNS = 100_000;

  /** About how many points are drawn as a course over the last pull. */
  private static final int COURSES = 7;

  /** Most refusals that are told. */
  private static final int MOST_TOLD = 5;

  /** Copies the collections. */
  public VaryPlan {
    keys = List.copyOf(keys);
    measures = List.copyOf(measures);
    Map<Measure, Double> ordered = new EnumMap<>(Measure.class);
    ordered.putAll(limits);
    limits = Collections.unmodifiableMap(ordered);
  }

  /**
   * Reads what is asked for.
   *
   * @param scenario what is varied
   * @param asked the question
   * @return a plan whose every value the scenario's reader takes
   * @throws StudyException if it cannot be asked
   * @throws ScenarioException if the scenario's reader refuses a key or a value
   */
  public static VaryPlan of(Scenario scenario, Asked asked)
      throws StudyException, ScenarioException {
    if (scenario.session().phases().stream().noneMatch(VaryPlan::hasPull)) {
      throw new StudyException("the session has no pull, and all results are read off pulls");
    }
    if (asked.ranges().isEmpty() || asked.ranges().size() > 2) {
      throw new StudyException(
          "say one key to vary, or two, such as reservoir.volume='3 L..12 L/10'");
    }
    List<KeyRange> keys = new ArrayList<>();
    for (String range : asked.ranges()) {
      keys.add(RangeReader.read(scenario, range));
    }
    if (keys.size() == 2 && keys.get(0).key().equals(keys.get(1).key())) {
      throw new StudyException(keys.get(0).key() + ": is varied twice");
    }
    long runs = keys.stream().mapToLong(KeyRange::size).reduce(1, (a, b) -> a * b);
    if (runs > MOST_RUNS) {
      throw new StudyException(runs + " runs are asked for; at most " + MOST_RUNS + " are made");
    }
    List<Measure> measures = measures(scenario, asked.results());
    Map<Measure, Double> limits = limits(scenario, keys, measures, asked.limits());
    VaryPlan plan = new VaryPlan(scenario, asked, keys, measures, limits);
    plan.checkValues();
    return plan;
  }

  private static boolean hasPull(Phase phase) {
    return phase.kind().isCounted();
  }

  private static List<Measure> measures(Scenario scenario, List<String> results)
      throws StudyException {
    List<Measure> asked = new ArrayList<>();
    for (String word : results) {
      asked.add(Measure.of(word, scenario));
    }
    return List.of(Measure.values()).stream()
        .filter(m -> asked.isEmpty() ? m.isUsual(scenario) : asked.contains(m))
        .toList();
  }

  private static Map<Measure, Double> limits(
      Scenario scenario, List<KeyRange> keys, List<Measure> measures, List<String> stated)
      throws StudyException {
    Map<Measure, Double> limits = new EnumMap<>(Measure.class);
    // A limit that moves with the key is none to hold results against.
    if (keys.stream().noneMatch(k -> k.key().startsWith("limits."))) {
      for (Measure measure : measures) {
        measure.limit(scenario).ifPresent(limit -> limits.put(measure, limit));
      }
    }
    for (String text : stated) {
      String[] parts = text.split("=", 2);
      Measure measure = Measure.of(parts[0], scenario);
      if (!measures.contains(measure)) {
        throw new StudyException(
            "there is a limit for " + measure.key() + " but it is not asked for");
      }
      String value = parts.length < 2 ? "" : parts[1].strip();
      try {
        limits.put(measure, QuantityParser.parse(value, measure.dimension()).value());
      } catch (QuantityException e) {
        throw new StudyException(
            "limit of " + measure.key() + ": found `" + value + "`, which " + e.getMessage());
      }
    }
    return limits;
  }

  /** Returns the number of runs. */
  public int size() {
    return keys.stream().mapToInt(KeyRange::size).reduce(1, (a, b) -> a * b);
  }

  /**
   * Returns the values of the keys at a point, each in its unit.
   *
   * @param index from 0, the last key running fastest
   */
  public List<Double> values(int index) {
    if (keys.size() == 1) {
      return List.of(keys.get(0).values().get(index));
    }
    int columns = keys.get(1).size();
    return List.of(
        keys.get(0).values().get(index / columns), keys.get(1).values().get(index % columns));
  }

  /**
   * Returns a measure's limit, SI.
   *
   * @param measure which
   */
  public OptionalDouble limit(Measure measure) {
    Double limit = limits.get(measure);
    return limit == null ? OptionalDouble.empty() : OptionalDouble.of(limit);
  }

  /**
   * Returns whether a point is drawn as a course over the last pull.
   *
   * @param index from 0
   */
  public boolean hasCourse(int index) {
    return keys.size() == 1 && Evenly.pick(keys.get(0).size(), COURSES).contains(index);
  }

  /**
   * Returns the scenario at a place.
   *
   * @param values of the keys, each in its unit
   * @throws ScenarioException if the values do not go together
   */
  Scenario at(List<Double> values) throws ScenarioException {
    if (keys.size() == 1) {
      return with(scenario, 0, values);
    }
    try {
      return with(with(scenario, 0, values), 1, values);
    } catch (ScenarioException e) {
      // The first may only be allowed beside the second.
      return with(with(scenario, 1, values), 0, values);
    }
  }

  private Scenario with(Scenario from, int key, List<Double> values) throws ScenarioException {
    KeyRange range = keys.get(key);
    return from.with(range.key(), range.written(values.get(key)));
  }

  /** Makes sure that the reader takes every value of every key, alone or beside some other. */
  private void checkValues() throws ScenarioException {
    Map<String, Problem> refused = new LinkedHashMap<>();
    for (int key = 0; key < keys.size(); key++) {
      for (int i = 0; i < keys.get(key).size(); i++) {
        refusal(key, i).forEach(p -> refused.putIfAbsent(p.toString(), p));
      }
    }
    if (!refused.isEmpty()) {
      List<Problem> told = new ArrayList<>(refused.values().stream().limit(MOST_TOLD).toList());
      int more = refused.size() - told.size();
      if (more > 0) {
        told.add(
            new Problem(scenario.source().file(), 0, 0, "", "and " + more + " more like these"));
      }
      throw new ScenarioException(told);
    }
  }

  private List<Problem> refusal(int key, int i) {
    KeyRange range = keys.get(key);
    List<Problem> problems;
    try {
      scenario.with(range.key(), range.written(range.values().get(i)));
      return List.of();
    } catch (ScenarioException e) {
      problems = e.problems();
    }
    boolean somewhere =
        keys.size() == 2
            && IntStream.range(0, keys.get(1 - key).size())
                .anyMatch(j -> goes(key == 0 ? i : j, key == 0 ? j : i));
    return somewhere ? List.of() : problems;
  }

  private boolean goes(int i, int j) {
    try {
      at(List.of(keys.get(0).values().get(i), keys.get(1).values().get(j)));
      return true;
    } catch (ScenarioException e) {
      return false;
    }
  }
}
