package soakloop.plan;

import java.util.ArrayList;
import java.util.List;
import soakloop.quantity.Require;
import soakloop.rig.Rig;
import soakloop.session.Cooling;
import soakloop.session.Drive;

/**
 * A way of waiting.
 *
 * @param idles whether the engine idles, else it is off
 * @param pump whether the coolant pump runs
 * @param fans whether shop and car fans run; with the engine idling the car fan by its thermostat
 * @param ice put into the tank once it is cold enough to be opened, kg; only with the engine off
 */
public record Way(boolean idles, boolean pump, boolean fans, double ice) {
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

  /** Returns what cools. */
  Cooling cooling() {
    Cooling.Fan running = idles ? Cooling.Fan.AUTO : Cooling.Fan.ON;
    return new Cooling(pump, fans, fans ? running : Cooling.Fan.OFF, pump);
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
