package soakloop.log;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Names that loggers give their columns, and what each is taken for (common practice, no source;
 * the longer ones as SAE J1979 words them, from memory).
 *
 * <p>Only a name that is plain is settled here. One that a shop may use for several places is
 * listed with all of them and the reason; values may settle it, else it is read only where the
 * scenario names it. Letter case, spaces and punctuation do not count, nor does "temp" or
 * "temperature" at the end.
 */
final class ColumnNames {
  /** What a name says. */
  sealed interface Meaning {}

  /**
   * A signal.
   *
   * @param signal which
   * @param unit symbol of the unit that the name itself says, empty if none
   */
  record Known(Signal signal, String unit) implements Meaning {}

  /**
   * Something that could be several signals.
   *
   * @param why as the end of a sentence
   * @param signals which
   */
  record Unsettled(String why, List<Signal> signals) implements Meaning {}

  private static final Map<String, Meaning> TABLE = new HashMap<>();

  static {
    known(
        Signal.TIME,
        "time, elapsed time, log time, session time, run time, time stamp, timestamp, date time,"
            + " time of day, clock, gps time, utc, utc time, offset, t");
    known(Signal.TIME, "s", "s, sec, secs, seconds");
    known(Signal.TIME, "ms", "ms, msec, milliseconds, millis");
    known(Signal.ENGINE_SPEED, "engine speed, crank speed, crankshaft speed, motor speed");
    known(Signal.ENGINE_SPEED, "rpm", "rpm, engine rpm, revs");
    known(
        Signal.ROAD_SPEED,
        "road speed, vehicle speed, car speed, ground speed, gps speed, wheel speed, roller speed,"
            + " vss");
    known(Signal.ROAD_SPEED, "mph", "mph");
    known(Signal.ROAD_SPEED, "km/h", "km/h, kph");
    known(
        Signal.BOOST,
        "boost, boost pressure, boost gauge, gauge boost, manifold gauge pressure, relative"
            + " manifold pressure");
    known(
        Signal.INLET_AIR,
        "inlet air, blower inlet, blower inlet air, supercharger inlet, supercharger inlet air,"
            + " airbox air, air box, iat1, pre blower air");
    known(
        Signal.CORE_AIR_IN,
        "core air in, core air inlet, air core in, air into core, blower outlet, blower outlet air,"
            + " blower discharge, blower discharge air, supercharger outlet, supercharger outlet"
            + " air, supercharger discharge air, supercharger discharge, pre core air, air before"
            + " core");
    known(
        Signal.CHARGE_TEMPERATURE,
        "charge, charge air, air charge, manifold air, plenum air, iat2, act, mat, mct, charge air"
            + " cooler, post core air, air after core, core air out");
    known(
        Signal.CORE_COOLANT_IN,
        "core coolant in, core coolant inlet, coolant core in, coolant core inlet, coolant into"
            + " core, core water in, water core in");
    known(
        Signal.CORE_COOLANT_OUT,
        "core coolant out, core coolant outlet, coolant core out, coolant core outlet, coolant out"
            + " of core, core water out, water core out");
    known(
        Signal.RESERVOIR,
        "reservoir, reservoir coolant, reservoir water, tank coolant, tank water");
    known(Signal.ENGINE_COOLANT, "engine coolant, engine water, ect, clt");
    known(
        Signal.MANIFOLD_PRESSURE,
        "map, manifold absolute pressure, absolute manifold pressure, intake manifold absolute"
            + " pressure, absolute boost, boost absolute");
    known(Signal.BOOST_BEFORE_CORE, "boost before core, blower outlet boost");
    known(Signal.PRESSURE_BEFORE_CORE, "pressure before core, blower outlet absolute pressure");
    known(
        Signal.BAROMETER,
        "barometer, baro, barometric pressure, absolute barometric pressure, atmospheric pressure,"
            + " ambient pressure, bap");
    known(
        Signal.AIR_MASS_FLOW,
        "air mass flow, maf, mass air flow, mass air flow rate, airflow, air" + " mass");
    known(Signal.GEAR, "gear, current gear, gear position");
    known(
        Signal.THROTTLE,
        "throttle, throttle position, absolute throttle position, tps, throttle angle, pedal, pedal"
            + " position, accelerator, accelerator position, app");
    known(Signal.WHEEL_POWER, "wheel power, power, roller power, power at wheels");
    known(Signal.WHEEL_POWER, "hp", "whp, wheel hp");
    known(Signal.TORQUE, "torque, wheel torque, engine torque");
    known(
        Signal.SPARK,
        "spark, spark advance, ignition advance, ignition timing, timing advance, spark timing, ign"
            + " adv, timing");
    known(Signal.KNOCK, "knock, knock retard, knock retard total, spark retard, timing retard, kr");
    known(Signal.LAMBDA, "lambda, afr, air fuel ratio, wideband, lambda 1, wideband afr");
    known(
        Signal.PUMP,
        "pump, coolant pump, loop pump, charge cooler pump, cac pump, pump state, pump duty, pump"
            + " status");
    known(Signal.FAN, "fan, cooling fan, heat exchanger fan, fan state, fan duty, fan status");

    unsettled(
        "it may be air before the blower or after the core",
        List.of(Signal.INLET_AIR, Signal.CHARGE_TEMPERATURE, Signal.CORE_AIR_IN),
        "iat, intake air, air, charge inlet, air 1, air 2, air temp 1, air temp 2, iat 3");
    unsettled(
        "it may be the engine's coolant or the loop's",
        List.of(Signal.ENGINE_COOLANT),
        "coolant, water");
    unsettled(
        "it may be the engine's coolant or the loop's",
        List.of(Signal.CORE_COOLANT_IN, Signal.CORE_COOLANT_OUT),
        "coolant in, coolant out, water in, water out");
    unsettled(
        "it does not say where in the loop",
        List.of(Signal.CORE_COOLANT_IN, Signal.CORE_COOLANT_OUT, Signal.RESERVOIR),
        "loop, loop coolant, loop water, charge coolant, charge cooler coolant, charge cooler"
            + " water, charge air cooler coolant, charge air cooler water, cac coolant, cac water,"
            + " ic coolant, ic water, intercooler coolant, intercooler water, aftercooler coolant,"
            + " aftercooler water, core coolant, core water, heat exchanger coolant, heat exchanger"
            + " water, hx coolant, hx water, low temperature coolant, low temperature loop");
    unsettled(
        "it does not say whether it is air or coolant",
        List.of(Signal.CORE_AIR_IN, Signal.CHARGE_TEMPERATURE),
        "core in, core out");
    unsettled(
        "it may be the engine's speed or the car's",
        List.of(Signal.ENGINE_SPEED, Signal.ROAD_SPEED),
        "speed");
    unsettled(
        "it may be gauge or absolute",
        List.of(Signal.BOOST, Signal.MANIFOLD_PRESSURE),
        "manifold pressure, intake pressure, intake manifold pressure");
  }

  private ColumnNames() {}

  /** Finds what a name says; empty for one that is not listed. */
  static Optional<Meaning> find(String name) {
    return Optional.ofNullable(TABLE.get(plain(name)));
  }

  private static void known(Signal signal, String names) {
    known(signal, "", names);
  }

  private static void known(Signal signal, String unit, String names) {
    put(new Known(signal, unit), names);
  }

  private static void unsettled(String why, List<Signal> signals, String names) {
    put(new Unsettled(why, signals), names);
  }

  private static void put(Meaning meaning, String names) {
    for (String name : names.split(",")) {
      TABLE.putIfAbsent(plain(name), meaning);
    }
  }

  private static String plain(String name) {
    String letters = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
    return letters.replaceFirst("(?<=.)(temperature|temp)$", "");
  }
}
