package soakloop.plan;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import soakloop.quantity.Estimate;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.Stated;

/** A tank that ice can be put into, in a scenario that says nothing of ice. */
public final class IceRoom {
  /** Litres above coolant and ice. */
  private static final double SPARE = 0.5;

  /** Spreads above its stated volume that a drawn tank may be. */
  private static final double SPREADS = 3;

  private IceRoom() {}

  /** Returns whether a scenario says what its ice is like. */
  private static boolean isStated(Scenario scenario) {
    return scenario.values().stream().anyMatch(s -> s.key().endsWith("reservoir.ice.temperature"));
  }

  /**
   * Returns the scenario with ice as ice usually is and, where it does not say what its tank holds,
   * room for it. One that says what its ice is like stays as it is.
   *
   * @param scenario which
   * @param kilograms that there must be room for
   * @throws ScenarioException if it cannot have ice
   */
  public static Scenario made(Scenario scenario, double kilograms) throws ScenarioException {
    Optional<Stated> tank =
        scenario.values().stream().filter(s -> s.key().endsWith("reservoir.volume")).findFirst();
    if (isStated(scenario) || tank.isEmpty()) {
      return scenario;
    }
    String name = tank.get().key().replaceFirst("\\.volume$", "");
    Map<String, String> changes = new LinkedHashMap<>();
    changes.put(name + ".ice", "{mass: 0 kg}");
    if (scenario.values().stream().noneMatch(s -> s.key().equals(name + ".capacity"))) {
      Estimate volume = tank.get().estimate();
      double litres = 1000 * (volume.value() + SPREADS * volume.spread()) + kilograms + SPARE;
      changes.put(name + ".capacity", String.format(Locale.ROOT, "%.2f L", litres));
    }
    return scenario.with(changes);
  }
}
