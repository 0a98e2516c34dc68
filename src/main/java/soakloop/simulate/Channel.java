package soakloop.simulate;

import soakloop.quantity.Dimension;

/** A quantity that a trace holds over time, in SI units. */
public enum Channel {
  /** Engine speed. */
  ENGINE_SPEED("engine speed", Dimension.ROTATION),
  /** Road speed. */
  ROAD_SPEED("road speed", Dimension.SPEED),
  /** Manifold gauge pressure, after the core. */
  BOOST("boost", Dimension.GAUGE_PRESSURE),
  /** Charge air mass flow. */
  AIR_MASS_FLOW("air mass flow", Dimension.MASS_FLOW),
  /** Air at the blower inlet. */
  INLET_AIR("inlet air", Dimension.TEMPERATURE),
  /** Air leaving the blower's rotors. */
  BLOWER_OUTLET("blower outlet", Dimension.TEMPERATURE),
  /** Gauge pressure before the core; NaN where the core's loss is not known. */
  BOOST_BEFORE_CORE("boost before the core", Dimension.GAUGE_PRESSURE),
  /** Outlet over inlet pressure of the blower; 1 with the bypass open. */
  PRESSURE_RATIO("blower pressure ratio", Dimension.NUMBER),
  /** Shaft power of the blower. */
  BLOWER_POWER("blower power", Dimension.POWER),
  /** Pressure that charge air loses in the core; NaN where it is not known. */
  CORE_LOSS("pressure lost in the core", Dimension.PRESSURE_DIFFERENCE),
  /** Water that condenses in the core. */
  CONDENSATE("water condensing in the core", Dimension.MASS_FLOW),
  /** Air entering the core. */
  CORE_AIR_IN("air into the core", Dimension.TEMPERATURE),
  /** Air leaving the core. */
  CORE_AIR_OUT("air out of the core", Dimension.TEMPERATURE),
  /** True charge temperature after plenum and runners. */
  CHARGE("charge air", Dimension.TEMPERATURE),
  /** What the charge temperature sensor shows. */
  SENSOR("charge sensor", Dimension.TEMPERATURE),
  /** Coolant entering the core. */
  CORE_COOLANT_IN("coolant into the core", Dimension.TEMPERATURE),
  /** Coolant leaving the core. */
  CORE_COOLANT_OUT("coolant out of the core", Dimension.TEMPERATURE),
  /** Mean of the core's metal. */
  CORE_METAL("core metal", Dimension.TEMPERATURE),
  /** Coolant in the first reservoir; NaN without one. */
  RESERVOIR("reservoir", Dimension.TEMPERATURE),
  /** Coolant entering the first heat exchanger; NaN without one. */
  EXCHANGER_COOLANT_IN("coolant into the heat exchanger", Dimension.TEMPERATURE),
  /** Coolant leaving the first heat exchanger; NaN without one. */
  EXCHANGER_COOLANT_OUT("coolant out of the heat exchanger", Dimension.TEMPERATURE),
  /** Plenum and runner metal. */
  PLENUM_METAL("plenum metal", Dimension.TEMPERATURE),
  /** Blower case metal. */
  BLOWER_CASE("blower case", Dimension.TEMPERATURE),
  /** Engine coolant. */
  ENGINE_COOLANT("engine coolant", Dimension.TEMPERATURE),
  /** Coolant flow. */
  COOLANT_FLOW("coolant flow", Dimension.VOLUME_FLOW),
  /** Air speed at the heat exchanger's face. */
  FACE_SPEED("heat exchanger face air", Dimension.SPEED),
  /** Heat from the charge air to the core, that of condensing water with it. */
  HEAT_CORE("heat into the core", Dimension.POWER),
  /** Heat from the charge air to blower case and plenum metal. */
  HEAT_DUCTS("heat from charge air to blower case and plenum", Dimension.POWER),
  /** Heat from the engine to the plenum metal. */
  HEAT_ENGINE("heat from the engine to the plenum", Dimension.POWER),
  /** Pump power into the coolant. */
  HEAT_PUMP("pump heat", Dimension.POWER),
  /** Heat from the underhood air to hoses, reservoir and blower case. */
  HEAT_UNDERHOOD("heat from underhood air", Dimension.POWER),
  /** Heat from the loop to the outside air through the heat exchangers. */
  HEAT_AMBIENT("heat to the outside air", Dimension.POWER),
  /** Heat from the coolant to ice and the water it has become. */
  HEAT_ICE("heat into the ice", Dimension.POWER),
  /** Heat from the coolant to the refrigerant of chillers. */
  HEAT_CHILLER("heat to the chiller", Dimension.POWER),
  /** Power that drives the chillers. */
  CHILLER_POWER("chiller power", Dimension.POWER),
  /** Ice in the tank; NaN where none ever goes in. */
  ICE_LEFT("ice left", Dimension.MASS);

  private final String label;
  private final Dimension dimension;

  Channel(String label, Dimension dimension) {
    this.label = label;
    this.dimension = dimension;
  }

  /** Returns the name shown to people. */
  public String label() {
    return label;
  }

  /** Returns what it measures. */
  public Dimension dimension() {
    return dimension;
  }
}
