package soakloop.versus;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import soakloop.fit.Place;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.session.Phase;
import soakloop.simulate.Channel;
import soakloop.simulate.Options;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/**
 * Under what conditions a session runs, as far as they ought to be alike.
 *
 * @param values SI by kind: temperatures, highest boost in Pa, mean wait in s
 */
record Circumstances(Map<ConditionKind, Double> values) {
  static final Circumstances UNKNOWN = new Circumstances(Map.of());

  Circumstances {
    values = Map.copyOf(values);
  }

  double of(ConditionKind kind) {
    return values.getOrDefault(kind, Double.NaN);
  }

  static Optional<Circumstances> of(Mixer mixer, Mix mix, Place place) {
    return of(mixer, mix, place, Setting.same());
  }

  static Optional<Circumstances> of(Mixer mixer, Mix mix, Place place, Setting setting) {
    try {
      Scenario scenario = mixer.of(mix, place);
      Setup setup = setting.change().apply(scenario.setup().withoutLimit());
      return Optional.of(of(setup, Simulation.run(setup, Options.STUDY)));
    } catch (ScenarioException | SimulationException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Circumstances of(Setup setup, Trace trace) {
    Map<ConditionKind, Double> values = new EnumMap<>(ConditionKind.class);
    int start = trace.firstFrom(0);
    values.put(ConditionKind.LOOP_START, trace.value(Channel.CORE_COOLANT_IN, start));
    values.put(ConditionKind.ENGINE_COOLANT, setup.start().engineCoolant());
    values.put(ConditionKind.DAY, setup.day().temperature());
    double boost = Double.NEGATIVE_INFINITY;
    for (Trace.Span pull : trace.pulls()) {
      for (int i = trace.firstFrom(pull.start());
          i < trace.size() && trace.time(i) <= pull.end();
          i++) {
        boost = Math.max(boost, trace.value(Channel.BOOST, i));
      }
    }
    values.put(ConditionKind.BOOST, boost);
    double waits =
        setup.session().phases().stream()
            .filter(p -> p.kind() == Phase.Kind.WAIT)
            .mapToDouble(Phase::duration)
            .average()
            .orElse(Double.NaN);
    values.put(ConditionKind.WAITS, waits);
    return new Circumstances(values);
  }
}
