package soakloop.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import soakloop.charge.EnginePower;
import soakloop.charge.SparkTable;
import soakloop.log.Log;
import soakloop.quantity.UnitSystem;
import soakloop.reading.LogReading;
import soakloop.rig.Day;
import soakloop.rig.Rig;
import soakloop.session.Session;
import soakloop.session.Start;
import soakloop.simulate.Setup;

/**
 * A checked scenario: everything that a run needs.
 *
 * @param name short name, from the file's
 * @param title shown on top of the report
 * @param about a sentence or two on what it shows, may be empty
 * @param units what results are shown in
 * @param day the day's air
 * @param rig the hardware
 * @param start temperatures at the start
 * @param session what the car does
 * @param limits what must not be passed
 * @param output power and spark, where they are asked for
 * @param logged the logged run beside it, if any
 * @param values every physical value used, stated or assumed
 * @param assumed the defaults used, with reasons
 * @param fitted what a fit left in it, if it comes from one
 * @param source the text it came from, from which variants are made
 */
public record Scenario(
    String name,
    String title,
    String about,
    UnitSystem units,
    Day day,
    Rig rig,
    Start start,
    Session session,
    Limits limits,
    Output output,
    Optional<Logged> logged,
    List<Stated> values,
    List<Assumed> assumed,
    Optional<FitRecord> fitted,
    Source source) {
  /**
   * What must not be passed.
   *
   * @param chargeTemperature K, if limited
   */
  public record Limits(OptionalDouble chargeTemperature) {}

  /**
   * What the charge does to the engine.
   *
   * @param power power from air, if asked for
   * @param spark spark taken out of a hot charge, if stated
   */
  public record Output(Optional<EnginePower> power, Optional<SparkTable> spark) {
    /** Nothing asked for, nothing stated. */
    public static final Output NONE = new Output(Optional.empty(), Optional.empty());
  }

  /**
   * A log with its place in time.
   *
   * @param reading the log and what it shows
   * @param startsAt log time at the session's time zero, s
   */
  public record Logged(LogReading reading, double startsAt) {
    /** Returns the log row by row, as its file has it. */
    public Log log() {
      return reading.log();
    }
  }

  /** Copies the lists. */
  public Scenario {
    values = List.copyOf(values);
    assumed = List.copyOf(assumed);
  }

  /**
   * Returns the same scenario with one key set, checked as a file would be.
   *
   * @param key dotted path such as {@code reservoir.volume}; parts that are numbers count list
   *     items from 1, as in {@code session.2.wait.for}
   * @param value as a file would have it, such as {@code 8 L}
   * @throws ScenarioException if there is no such key or the value is not allowed
   */
  public Scenario with(String key, String value) throws ScenarioException {
    return with(Map.of(key, value));
  }

  /**
   * Returns the same scenario with some keys set at once, so that only what they make together is
   * checked.
   *
   * @param changes values by key, both as {@link #with(String, String)} takes them; no key may lead
   *     into another
   * @throws ScenarioException if a key leads nowhere or the values are not allowed together
   */
  public Scenario with(Map<String, String> changes) throws ScenarioException {
    Source changed = source;
    for (Map.Entry<String, String> change : changes.entrySet()) {
      changed = changed.with(change.getKey(), change.getValue());
    }
    return ScenarioReader.read(changed);
  }

  /**
   * Returns the same scenario with whole sections as another has them, left out where it has none,
   * checked as a file would be. What an earlier fit left goes with the sections that it was of.
   *
   * @param other where the sections come from
   * @param names of sections at the top of a file, such as {@code core}
   * @throws ScenarioException if they do not go together
   */
  public Scenario withSectionsOf(Scenario other, Collection<String> names)
      throws ScenarioException {
    Set<String> all = new TreeSet<>(names);
    Source merged = source.withSections(other.source, all);
    return ScenarioReader.read(merged.withSections(Source.EMPTY, Set.of("fitted")));
  }

  /**
   * Returns the scenarios that its file lists as variants of it, each by its name.
   *
   * @return none if there are none
   * @throws ScenarioException if one of them cannot be
   */
  public List<Scenario> variants() throws ScenarioException {
    List<Scenario> all = new ArrayList<>();
    for (Source variant : VariantsReader.of(source)) {
      all.add(ScenarioReader.read(variant));
    }
    return all;
  }

  /**
   * Returns whether sections at the top of the file read alike in another scenario.
   *
   * @param other beside which
   * @param names of sections
   */
  public boolean readsAlike(Scenario other, Collection<String> names) {
    return source.reads(other.source, names);
  }

  /** Returns the names of the sections at the top of its file, in their order. */
  public List<String> sections() {
    return source.root().entries().stream().map(Node.Entry::key).toList();
  }

  /** Returns what its file says of car, day and session: alike for files that say the same. */
  public String written() {
    return source.written();
  }

  /**
   * Returns what a mistyped key may have meant: a key that this scenario has a value for, stated or
   * assumed, or another with a number.
   *
   * @param key dotted path as written
   */
  public Optional<String> nearestKey(String key) {
    List<String> known = new ArrayList<>();
    values.forEach(stated -> known.add(stated.key()));
    KeyTable.get().specs().stream()
        .filter(row -> row.dimension().isPresent())
        .map(KeySpec::key)
        .filter(row -> !row.startsWith("*") && !row.startsWith("session."))
        .forEach(known::add);
    return Nearest.to(key, known);
  }

  /** Returns the defaults that were used, values and spreads in the units results are shown in. */
  public List<Assumed> assumedAsShown() {
    return assumed.stream().map(a -> AssumedShown.in(units, a, values)).toList();
  }

  /** Returns what a simulation needs. */
  public Setup setup() {
    return new Setup(day, rig, start, session, limits.chargeTemperature());
  }
}
