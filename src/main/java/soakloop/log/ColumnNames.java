package soakloop.log;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Names that loggers give their columns, and what each is taken for (common practice, no source).
 *
 * <p>Only a name that is plain is settled here. One that a shop may use for either of two places is
 * listed as unsettled, with the reason, and is read only where the scenario names it. Letter case,
 * spaces and punctuation do not count, nor does "temp" or "temperature" at the end.
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
   */
  record Unsettled(String why) implements Meaning {}

  /** Pressure above vacuum, which is never taken for boost. */
  record AbsolutePressure() implements Meaning {}

  private static final Map<String, Meaning> TABLE = new HashMap<>();

  static {
    put(new Known(Signal.TIME, ""), "time", "elapsed time", "log time", "session time");
    put(new Known(Signal.TIME, "s"), "s", "sec", "secs", "seconds");
    put(new Known(Signal.TIME, "ms"), "ms", "msec", "milliseconds");
    put(new Known(Signal.ENGINE_SPEED, ""), "engine speed", "crank speed", "crankshaft speed");
    put(new Known(Signal.ENGINE_SPEED, "rpm"), "rpm", "engine rpm");
    put(
        new Known(Signal.ROAD_SPEED, ""),
        "road speed",
        "vehicle speed",
        "car speed",
        "ground speed",
        "gps speed",
        "vss");
    put(new Known(Signal.ROAD_SPEED, "mph"), "mph");
    put(new Known(Signal.ROAD_SPEED, "km/h"), "km/h", "kph");
    put(
        new Known(Signal.BOOST, ""),
        "boost",
        "boost pressure",
        "boost gauge",
        "gauge boost",
        "manifold gauge pressure");
    put(
        new Known(Signal.INLET_AIR, ""),
        "inlet air",
        "blower inlet",
        "blower inlet air",
        "supercharger inlet",
        "supercharger inlet air",
        "airbox air",
        "IAT1");
    put(
        new Known(Signal.CORE_AIR_IN, ""),
        "core air in",
        "core air inlet",
        "air core in",
        "air into core",
        "blower outlet",
        "blower outlet air",
        "blower discharge",
        "blower discharge air",
        "supercharger outlet",
        "supercharger outlet air",
        "supercharger discharge air");
    put(
        new Known(Signal.CHARGE_TEMPERATURE, ""),
        "charge",
        "charge air",
        "air charge",
        "manifold air",
        "plenum air",
        "IAT2",
        "ACT",
        "MAT");
    put(
        new Known(Signal.CORE_COOLANT_IN, ""),
        "core coolant in",
        "core coolant inlet",
        "coolant core in",
        "coolant core inlet",
        "coolant into core",
        "core water in",
        "water core in");
    put(
        new Known(Signal.CORE_COOLANT_OUT, ""),
        "core coolant out",
        "core coolant outlet",
        "coolant core out",
        "coolant core outlet",
        "coolant out of core",
        "core water out",
        "water core out");
    put(
        new Known(Signal.RESERVOIR, ""),
        "reservoir",
        "reservoir coolant",
        "reservoir water",
        "tank coolant",
        "tank water");
    put(new Known(Signal.ENGINE_COOLANT, ""), "engine coolant", "engine water", "ECT");

    put(
        new Unsettled("it may be air before the blower or after the core"),
        "IAT",
        "intake air",
        "air",
        "charge inlet");
    put(
        new Unsettled("it may be the engine's coolant or the loop's"),
        "coolant",
        "water",
        "coolant in",
        "coolant out",
        "water in",
        "water out");
    put(
        new Unsettled("it does not say where in the loop"),
        "loop",
        "loop coolant",
        "loop water",
        "charge coolant",
        "charge cooler coolant",
        "charge cooler water");
    put(new Unsettled("it does not say whether it is air or coolant"), "core in", "core out");
    put(new Unsettled("it may be the engine's speed or the car's"), "speed");
    put(new Unsettled("it may be gauge or absolute"), "manifold pressure", "intake pressure");
    put(
        new AbsolutePressure(),
        "MAP",
        "manifold absolute pressure",
        "absolute manifold pressure",
        "absolute boost",
        "boost absolute");
  }

  private ColumnNames() {}

  /** Finds what a name says; empty for one that is not listed. */
  static Optional<Meaning> find(String name) {
    return Optional.ofNullable(TABLE.get(plain(name)));
  }

  private static void put(Meaning meaning, String... names) {
    for (String name : names) {
      if (TABLE.put(plain(name), meaning) != null) {
        throw new IllegalStateException("listed twice: " + name);
      }
    }
  }

  private static String plain(String name) {
    String letters = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
    return letters.replaceFirst("(?<=.)(temperature|temp)$", "");
  }
}
