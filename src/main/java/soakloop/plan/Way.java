package soakloop.plan;

import java.util.ArrayList;
import java.util.List;
import soakloop.quantity.Require;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;
import soakloop.rig.TankIce;
import soakloop.scenario.Scenario;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.IceAdded;
import soakloop.session.Phase;

/**
 * A way of waiting.
 *
 * @param idles whether the engine idles, else it is off
 * @param pump whether the coolant pump runs
 * @param fans whether shop and car fans run; with the engine idling the car fan by its thermostat
 * @param hood whether the hood stands open
 * @param ice put into the tank once it is cold enough to be opened, kg; only with the engine off
 */
public record Way(boolean idles, boolean pump, boolean fans, boolean hood, double ice) {
  /** Time to open a tank, put ice in and close it (our own guess), s. */
  static final double HANDLING = 120;

  /** Makes a way with the hood shut. */
  public Way(boolean idles, boolean pump, boolean fans, double ice) {
    this(idles, pump, fans, false, ice);
  }

  /** Checks the parts. */
  public Way {
    Require.notNegative("ice", ice);
    if (ice > 0 && idles) {
      throw new IllegalArgumentException("ice goes in with the engine off only");
    }
  }

  /** Returns what the engine does. */
  Drive drive(Rig rig) {
    return idles ? new Drive.Idle(rig.engine().idleSpeed()) : new Drive.EngineOff();
  }

  /** Returns how long the engine idles before the pull, after being off, s. */
  double startUp() {
    return idles ? 0 : WaitPlan.START_UP;
  }

  /**
   * Returns the shortest wait from pull to pull, s: with ice, the time to open the tank, fill and
   * close it too.
   */
  double shortest() {
    return startUp() + (ice > 0 ? HANDLING : 0);
  }

  /** Returns what cools. */
  Cooling cooling() {
    Cooling.Fan running = idles ? Cooling.Fan.AUTO : Cooling.Fan.ON;
    return new Cooling(pump, fans, fans ? running : Cooling.Fan.OFF, pump, hood);
  }

  /**
   * Returns the ice that a scenario uses at a time: of its last iced wait, else of its start.
   *
   * @param scenario which
   * @return kg; 0 if it has none
   */
  public static double usualIce(Scenario scenario) {
    double ice =
        scenario.setup().rig().loop().pieces().stream()
            .filter(Reservoir.class::isInstance)
            .flatMap(p -> ((Reservoir) p).ice().stream())
            .mapToDouble(TankIce::mass)
            .max()
            .orElse(0);
    for (Phase phase : scenario.session().phases()) {
      ice = phase.ice().map(IceAdded::mass).orElse(ice);
    }
    return ice;
  }

  /**
   * Returns the ways that are looked at if nothing is said.
   *
   * @param rig which fans it has
   * @param ice put in where ice is used, kg; 0 for none
   */
  public static List<Way> usual(Rig rig, double ice) {
    boolean fans = rig.airflow().face().hasShopFan() || rig.airflow().face().hasCarFan();
    List<Way> ways = new ArrayList<>();
    ways.add(new Way(true, true, fans, 0));
    if (fans) {
      ways.add(new Way(false, true, true, 0));
    }
    ways.add(new Way(false, true, false, 0));
    ways.add(new Way(false, false, false, 0));
    if (ice > 0) {
      ways.add(new Way(false, true, fans, ice));
    }
    return List.copyOf(ways);
  }
}
