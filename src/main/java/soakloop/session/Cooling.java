package soakloop.session;

/**
 * What cools during a phase.
 *
 * @param pump whether the coolant pump runs
 * @param shopFan whether the shop fan runs
 * @param carFan what the car's fan does
 * @param chiller whether chillers are switched on
 * @param openHood whether the hood stands open
 */
public record Cooling(
    boolean pump, boolean shopFan, Fan carFan, boolean chiller, boolean openHood) {
  /**
   * Everything as the rig has it: pump, shop fan and chiller on, car fan by its thermostat, hood
   * shut.
   */
  public static final Cooling ALL = new Cooling(true, true, Fan.AUTO);

  /** Makes a cooling with chillers switched on and the hood shut. */
  public Cooling(boolean pump, boolean shopFan, Fan carFan) {
    this(pump, shopFan, carFan, true);
  }

  /** Makes a cooling with the hood shut. */
  public Cooling(boolean pump, boolean shopFan, Fan carFan, boolean chiller) {
    this(pump, shopFan, carFan, chiller, false);
  }

  /** What the car's fan does. */
  public enum Fan {
    /** Runs. */
    ON,
    /** Stands still. */
    OFF,
    /** Follows its thermostat; without one, runs while the engine runs. */
    AUTO
  }
}
