package soakloop.versus;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.fit.Band;
import soakloop.fit.Place;
import soakloop.log.Signal;
import soakloop.quantity.Estimate;
import soakloop.reading.Effectiveness;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.PullResult;
import soakloop.study.PullResults;

/**
 * What two logs show, and where the difference of their rises comes from.
 *
 * @param runner who runs
 * @param likeliest place of the keys
 * @param places equally likely ones
 */
record Breakdown(Runner runner, Place likeliest, List<Place> places) {
  /** Returns both logs' pulls side by side; none if either has none. */
  List<VersusResult.Raw> of(int one, int other) {
    List<Optional<VersusResult.Shown>> first = shown(one);
    List<Optional<VersusResult.Shown>> second = shown(other);
    List<Origin> things = things(one, other);
    Optional<List<Figures>> best = all(one, other, things, likeliest);
    if (best.isEmpty()) {
      return List.of();
    }
    List<List<Figures>> draws = new ArrayList<>();
    places.forEach(p -> all(one, other, things, p).ifPresent(draws::add));
    List<VersusResult.Raw> pulls = new ArrayList<>();
    for (int i = 0; i < Math.min(first.size(), second.size()); i++) {
      if (first.get(i).isPresent() && second.get(i).isPresent()) {
        pulls.add(raw(i, first.get(i).get(), second.get(i).get(), things, best.get(), draws));
      }
    }
    return List.copyOf(pulls);
  }

  private static VersusResult.Raw raw(
      int pull,
      VersusResult.Shown one,
      VersusResult.Shown other,
      List<Origin> things,
      List<Figures> best,
      List<List<Figures>> draws) {
    Map<Origin, Double> middle = Shapley.of(things, rises(best, pull));
    List<Map<Origin, Double>> each =
        draws.stream().map(d -> Shapley.of(things, rises(d, pull))).toList();
    Map<Origin, Band> parts = new EnumMap<>(Origin.class);
    double rest = other.rise() - one.rise();
    for (Origin thing : things) {
      double own = middle.getOrDefault(thing, 0.0);
      Band spread = Band.of(each.stream().mapToDouble(m -> m.getOrDefault(thing, 0.0)).toArray());
      parts.put(
          thing,
          each.isEmpty()
              ? new Band(own, own, own)
              : new Band(Math.min(own, spread.low()), own, Math.max(own, spread.high())));
      rest -= own;
    }
    return new VersusResult.Raw(best.get(0).names().get(pull), one, other, parts, rest);
  }

  private static double[] rises(List<Figures> sets, int pull) {
    return sets.stream().mapToDouble(f -> f.sensorRise().get(pull)).toArray();
  }

  /** Returns what can differ between two: what was swapped, start and day always. */
  private List<Origin> things(int one, int other) {
    List<Origin> things = new ArrayList<>(List.of(Origin.SWAPPED, Origin.START, Origin.DAY));
    for (Origin origin : List.of(Origin.SESSION, Origin.CAR)) {
      if (!runner.mixer().areAlike(origin, one, other)) {
        things.add(origin);
      }
    }
    return things;
  }

  /** Runs all sets of parts changed from one's to another's; empty if any cannot be run. */
  private Optional<List<Figures>> all(int one, int other, List<Origin> things, Place place) {
    List<Runner.Asked> asked = new ArrayList<>();
    for (List<Origin> set : Shapley.sets(things)) {
      Mix mix = Mix.all(one);
      for (Origin origin : set) {
        mix = mix.with(origin, other);
      }
      asked.add(new Runner.Asked(mix, place, Setting.same()));
    }
    List<Optional<Figures>> ran = runner.run(asked);
    return ran.stream().allMatch(Optional::isPresent)
        ? Optional.of(ran.stream().map(Optional::orElseThrow).toList())
        : Optional.empty();
  }

  /** Returns what a case's log shows of each pull of its session. */
  private List<Optional<VersusResult.Shown>> shown(int inCase) {
    try {
      Scenario scenario = runner.mixer().of(Mix.all(inCase), likeliest);
      if (scenario.logged().isEmpty()) {
        return List.of();
      }
      Trace trace = Simulation.run(scenario.setup().withoutLimit(), Options.STUDY);
      List<PullResult> pulls =
          PullResults.of(trace, scenario.limits().chargeTemperature(), scenario.logged());
      Map<Integer, Double> effectiveness = effectiveness(scenario.logged().get());
      List<Optional<VersusResult.Shown>> all = new ArrayList<>();
      for (PullResult pull : pulls) {
        all.add(
            pull.logged().map(l -> shown(pull, l, scenario.logged().orElseThrow(), effectiveness)));
      }
      return all;
    } catch (ScenarioException | SimulationException e) {
      return List.of();
    }
  }

  private static VersusResult.Shown shown(
      PullResult pull,
      PullResult.Logged logged,
      Scenario.Logged log,
      Map<Integer, Double> effectiveness) {
    double time = pull.startTime() + log.startsAt();
    OptionalDouble coolant =
        log.reading()
            .curve(Signal.CORE_COOLANT_IN)
            .map(c -> OptionalDouble.of(c.at(time)))
            .orElse(OptionalDouble.empty());
    OptionalDouble own = OptionalDouble.empty();
    for (soakloop.reading.Pull found : log.reading().pulls()) {
      boolean same =
          found.start() < pull.endTime() + log.startsAt()
              && found.end() > pull.startTime() + log.startsAt();
      if (same && effectiveness.containsKey(found.number())) {
        own = OptionalDouble.of(effectiveness.getOrDefault(found.number(), Double.NaN));
      }
    }
    return new VersusResult.Shown(logged.sensor().start(), logged.sensor().end(), coolant, own);
  }

  private static Map<Integer, Double> effectiveness(Scenario.Logged logged) {
    Map<Integer, Double> all = new LinkedHashMap<>();
    for (Effectiveness.OfPull pull : logged.reading().effectiveness().pulls()) {
      Estimate value = pull.value();
      all.put(pull.pull(), value.value());
    }
    return all;
  }
}
