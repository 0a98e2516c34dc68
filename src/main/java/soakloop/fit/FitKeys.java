package soakloop.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.reading.LogOptions;
import soakloop.scenario.KeySpec;
import soakloop.scenario.Scenario;
import soakloop.scenario.Stated;
import soakloop.study.KeyLookup;
import soakloop.study.UncertainKey;
import soakloop.study.UncertainKeys;

/** Gathers what may be fitted: every key with a spread, and what sensors may read wrong. */
final class FitKeys {
  /**
   * By how much a temperature sensor may be off throughout, nine times in ten, K (common practice,
   * no source): two of one kind and their plugs agree within that.
   */
  static final Estimate BIAS = new Estimate(0, 2);

  /** Slowest that a sensor is thought to be, s. */
  private static final double SLOWEST = 60;

  /** Starts of keys that belong to one day and one session. */
  private static final List<String> OF_THE_DAY = List.of("start", "session", "day", "log");

  private final List<FitCase> cases;
  private final List<String> own;
  private final List<Integer> groups;

  /**
   * Sets out.
   *
   * @param cases what is fitted
   * @param own starts of keys that every group of cases has to itself
   * @param groups number of each case's group
   */
  FitKeys(List<FitCase> cases, List<String> own, List<Integer> groups) {
    this.cases = cases;
    this.own = own;
    this.groups = groups;
  }

  /** Returns all keys: those of the scenarios in their order, then the sensors. */
  List<FitKey> all() {
    List<FitKey> keys = new ArrayList<>();
    Map<String, Integer> shared = new LinkedHashMap<>();
    for (int i = 0; i < cases.size(); i++) {
      for (UncertainKey key : UncertainKeys.of(cases.get(i).scenario())) {
        FitKey mine = key(i, key);
        add(keys, shared, mine, key.key() + " " + mine.before() + " " + key.parts().size());
      }
    }
    for (int i = 0; i < cases.size(); i++) {
      for (SignalData data : cases.get(i).data()) {
        FitKey bias = bias(i, data.signal());
        add(keys, shared, bias, bias.name());
        if (data.signal() != Signal.CHARGE_TEMPERATURE) {
          FitKey lag = lag(i, data.signal());
          add(keys, shared, lag, lag.name());
        }
      }
    }
    return named(keys);
  }

  /**
   * Adds a key, or joins it to the one that it is the same as. The cases are of one car, whose
   * sensors stay in it.
   *
   * @param alike what must be the same
   */
  private void add(List<FitKey> keys, Map<String, Integer> shared, FitKey key, String alike) {
    int inCase = key.parts().get(0).inCase();
    String whose =
        begins(key, OF_THE_DAY)
            ? "case " + inCase
            : begins(key, own) ? "group " + groups.get(inCase) : "all";
    String common = alike + " of " + whose;
    Integer at = shared.get(common);
    if (at == null) {
      shared.put(common, keys.size());
      keys.add(key);
    } else {
      keys.set(at, joined(keys.get(at), key));
    }
  }

  private static boolean begins(FitKey key, List<String> starts) {
    return starts.stream().anyMatch(s -> key.name().equals(s) || key.name().startsWith(s + "."));
  }

  private FitKey key(int inCase, UncertainKey key) {
    Scenario scenario = cases.get(inCase).scenario();
    KeySpec spec = KeyLookup.spec(key.key()).orElseThrow();
    double low = spec.low().map(Estimate::value).orElse(Double.NEGATIVE_INFINITY);
    double high = spec.high().map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
    List<FitKey.Part> parts = new ArrayList<>();
    for (UncertainKey.Part part : key.parts()) {
      parts.add(FitKey.part(inCase, part.path(), estimate(scenario, part.path()), low, high));
    }
    Estimate first = estimate(scenario, key.parts().get(0).path());
    return new FitKey(
        key.key(),
        key.means(),
        key.dimension(),
        key.assumed(),
        first,
        parts,
        new Role.OfScenario());
  }

  private static Estimate estimate(Scenario scenario, String path) {
    return scenario.values().stream()
        .filter(s -> s.key().equals(path))
        .map(Stated::estimate)
        .findFirst()
        .orElseThrow();
  }

  private static FitKey joined(FitKey one, FitKey other) {
    List<FitKey.Part> parts = new ArrayList<>(one.parts());
    parts.addAll(other.parts());
    return new FitKey(
        one.name(),
        one.means(),
        one.dimension(),
        one.assumed() && other.assumed(),
        one.before(),
        parts,
        one.role());
  }

  private static FitKey bias(int inCase, Signal signal) {
    FitKey.Part part =
        FitKey.part(inCase, "", BIAS, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    return new FitKey(
        "bias." + signal.key(),
        "by how much the sensor reads high: " + signal.label(),
        Dimension.TEMPERATURE_DIFFERENCE,
        true,
        BIAS,
        List.of(part),
        new Role.Bias(signal));
  }

  private static FitKey lag(int inCase, Signal signal) {
    boolean air = signal == Signal.INLET_AIR || signal == Signal.CORE_AIR_IN;
    Estimate lag = air ? LogOptions.DEFAULTS.airLag() : LogOptions.DEFAULTS.coolantLag();
    return new FitKey(
        "lag." + signal.key(),
        "time in which the sensor shows 63 % of a step: " + signal.label(),
        Dimension.TIME,
        true,
        lag,
        List.of(FitKey.part(inCase, "", lag, 0, SLOWEST)),
        new Role.Lag(signal));
  }

  /** Gives keys that two cases have each to itself the case's label. */
  private List<FitKey> named(List<FitKey> keys) {
    List<FitKey> named = new ArrayList<>();
    for (FitKey key : keys) {
      boolean twice = keys.stream().filter(k -> k.name().equals(key.name())).count() > 1;
      String label = cases.get(key.parts().get(0).inCase()).label();
      named.add(
          twice
              ? new FitKey(
                  key.name() + " of " + label,
                  key.means(),
                  key.dimension(),
                  key.assumed(),
                  key.before(),
                  key.parts(),
                  key.role())
              : key);
    }
    return List.copyOf(named);
  }
}
