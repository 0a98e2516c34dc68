package soakloop.log;

import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;

/** What a log's column can mean. */
public enum Signal {
  /** Time of the row. */
  TIME("time", Dimension.TIME, null),
  /** Engine speed. */
  ENGINE_SPEED("engine-speed", Dimension.ROTATION, Channel.ENGINE_SPEED),
  /** Road speed. */
  ROAD_SPEED("road-speed", Dimension.SPEED, Channel.ROAD_SPEED),
  /** Manifold gauge pressure after the core. */
  BOOST("boost", Dimension.GAUGE_PRESSURE, Channel.BOOST),
  /** Air at the blower inlet. */
  INLET_AIR("inlet-air", Dimension.TEMPERATURE, Channel.INLET_AIR),
  /** Air between blower and core. */
  CORE_AIR_IN("core-air-in", Dimension.TEMPERATURE, Channel.CORE_AIR_IN),
  /** Charge temperature after the core, as its sensor shows it. */
  CHARGE_TEMPERATURE("charge-temperature", Dimension.TEMPERATURE, Channel.SENSOR),
  /** Coolant entering the core. */
  CORE_COOLANT_IN("core-coolant-in", Dimension.TEMPERATURE, Channel.CORE_COOLANT_IN),
  /** Coolant leaving the core. */
  CORE_COOLANT_OUT("core-coolant-out", Dimension.TEMPERATURE, Channel.CORE_COOLANT_OUT),
  /** Coolant in the reservoir. */
  RESERVOIR("reservoir", Dimension.TEMPERATURE, Channel.RESERVOIR),
  /** Engine coolant. */
  ENGINE_COOLANT("engine-coolant", Dimension.TEMPERATURE, Channel.ENGINE_COOLANT),
  /** Manifold absolute pressure after the core. */
  MANIFOLD_PRESSURE("manifold-pressure", Dimension.ABSOLUTE_PRESSURE, null),
  /** Gauge pressure between blower and core. */
  BOOST_BEFORE_CORE("boost-before-core", Dimension.GAUGE_PRESSURE, null),
  /** Absolute pressure between blower and core. */
  PRESSURE_BEFORE_CORE("pressure-before-core", Dimension.ABSOLUTE_PRESSURE, null),
  /** Pressure of the atmosphere. */
  BAROMETER("barometer", Dimension.ABSOLUTE_PRESSURE, null),
  /** Air mass flow into the engine. */
  AIR_MASS_FLOW("air-mass-flow", Dimension.MASS_FLOW, Channel.AIR_MASS_FLOW),
  /** Gear engaged, counted from 1; 0 in neutral. */
  GEAR("gear", Dimension.NUMBER, null),
  /** Throttle opening or pedal, a share of fully open. */
  THROTTLE("throttle", Dimension.FRACTION, null),
  /** Power at the wheels. */
  WHEEL_POWER("wheel-power", Dimension.POWER, null),
  /** Torque as the dyno or the engine's computer states it. */
  TORQUE("torque", Dimension.TORQUE, null),
  /** Spark advance before top dead centre. */
  SPARK("spark", Dimension.ANGLE, null),
  /** Spark taken out for knock. */
  KNOCK("knock", Dimension.ANGLE, null),
  /** Air-fuel ratio over the stoichiometric one. */
  LAMBDA("lambda", Dimension.NUMBER, null),
  /** Loop pump: 0 off, 1 fully on. */
  PUMP("pump", Dimension.FRACTION, null),
  /** Heat exchanger fan: 0 off, 1 fully on. */
  FAN("fan", Dimension.FRACTION, null);

  private final String key;
  private final Dimension dimension;
  private final Optional<Channel> channel;

  Signal(String key, Dimension dimension, @org.jspecify.annotations.Nullable Channel channel) {
    this.key = key;
    this.dimension = dimension;
    this.channel = Optional.ofNullable(channel);
  }

  /** Returns the name that a scenario uses for it. */
  public String key() {
    return key;
  }

  /** Returns its name in plain words, such as {@code coolant into the core}. */
  public String label() {
    return switch (this) {
      case CORE_AIR_IN -> "air before the core";
      case CORE_COOLANT_IN -> "coolant into the core";
      case CORE_COOLANT_OUT -> "coolant out of the core";
      case BOOST_BEFORE_CORE -> "boost before the core";
      case PRESSURE_BEFORE_CORE -> "pressure before the core";
      default -> key.replace('-', ' ');
    };
  }

  /** Returns what it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Returns the channel of a trace that it can be laid over. */
  public Optional<Channel> channel() {
    return channel;
  }

  /**
   * Finds a signal by the name that a scenario uses.
   *
   * @param key such as {@code charge-temperature}
   */
  public static Optional<Signal> named(String key) {
    for (Signal signal : values()) {
      if (signal.key.equals(key)) {
        return Optional.of(signal);
      }
    }
    return Optional.empty();
  }
}
