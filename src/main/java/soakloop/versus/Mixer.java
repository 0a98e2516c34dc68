package soakloop.versus;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import soakloop.fit.FitCase;
import soakloop.fit.Place;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;

/** Makes scenarios of parts of several cases, and sets their keys to a place. */
final class Mixer {
  private final List<FitCase> cases;
  private final List<String> swapped;
  private final Map<Mix, Scenario> mixed = new ConcurrentHashMap<>();

  /**
   * Makes it.
   *
   * @param cases whose parts are taken
   * @param swapped sections that count as swapped
   */
  Mixer(List<FitCase> cases, List<String> swapped) {
    this.cases = cases;
    this.swapped = swapped;
  }

  /** Returns a mix's scenario as its parts state it. */
  Scenario of(Mix mix) throws ScenarioException {
    Scenario known = mixed.get(mix);
    if (known == null) {
      known = made(mix);
      mixed.put(mix, known);
    }
    return known;
  }

  /** Returns a mix's scenario with its keys at a place. */
  Scenario of(Mix mix, Place place) throws ScenarioException {
    return of(mix).with(place.changes(path -> mix.of(Origin.of(path.split("\\.", 2)[0], swapped))));
  }

  private Scenario made(Mix mix) throws ScenarioException {
    Scenario scenario = cases.get(mix.of(Origin.CAR)).scenario();
    for (Origin origin : Origin.values()) {
      Scenario other = cases.get(mix.of(origin)).scenario();
      List<String> names = sections(origin, scenario, other);
      if (origin != Origin.CAR && !scenario.readsAlike(other, names)) {
        scenario = scenario.withSectionsOf(other, names);
      }
    }
    return scenario;
  }

  /** Returns whether two cases state a part alike. */
  boolean areAlike(Origin origin, int one, int other) {
    Scenario first = cases.get(one).scenario();
    Scenario second = cases.get(other).scenario();
    return first.readsAlike(second, sections(origin, first, second));
  }

  private List<String> sections(Origin origin, Scenario one, Scenario other) {
    Set<String> all = new TreeSet<>(one.sections());
    all.addAll(other.sections());
    List<String> names = new ArrayList<>();
    for (String name : all) {
      if (Origin.of(name, swapped) == origin && !Texts.ABOUT.contains(name)) {
        names.add(name);
      }
    }
    return names;
  }

  /** Sections that say nothing of the car. */
  private static final class Texts {
    static final Set<String> ABOUT = Set.of("title", "about", "units", "variants", "fitted");
  }
}
