package soakloop.invented;

import java.util.ArrayList;
import java.util.List;
import soakloop.invented.TruthLoop.Truth;
import soakloop.log.Signal;
import soakloop.quantity.Unit;

/**
 * A column of a dressed log.
 *
 * @param signal what a reader must take it for
 * @param name without unit
 * @param metric symbol of its unit, empty if it has none
 * @param us the same in US units
 * @param decimals digits written; {@link #STATE} writes on and off
 * @param si what is true
 */
record DressChannel(Signal signal, String name, String metric, String us, int decimals, Course si) {
  /** Decimals of a column that says on or off. */
  static final int STATE = -1;

  private static final double LOADED = 20e3;

  /** What is true of a channel, SI. */
  interface Course {
    double at(DressSession session, Truth truth);
  }

  private static final DressChannel SPEED =
      of(Signal.ENGINE_SPEED, "Engine speed", "rpm", "rpm", 0, t -> t.moment().engineSpeed() / 60);
  private static final DressChannel BOOST =
      of(Signal.BOOST, "Boost", "kPa", "psi", 2, Truth::boost);
  private static final DressChannel INLET = hot(Signal.INLET_AIR, "Inlet air", Truth::inlet);
  private static final DressChannel BEFORE =
      hot(Signal.CORE_AIR_IN, "Blower outlet", Truth::discharge);
  private static final DressChannel CHARGE =
      hot(Signal.CHARGE_TEMPERATURE, "Charge temp", Truth::sensor);
  private static final DressChannel CORE_IN =
      hot(Signal.CORE_COOLANT_IN, "Coolant core in", Truth::coreIn);
  private static final DressChannel CORE_OUT =
      hot(Signal.CORE_COOLANT_OUT, "Coolant core out", Truth::coreOut);
  private static final DressChannel ENGINE =
      hot(Signal.ENGINE_COOLANT, "ECT", t -> t.moment().engineCoolant());
  private static final DressChannel FLOW =
      of(Signal.AIR_MASS_FLOW, "MAF", "g/s", "lb/min", 2, Truth::airFlow);
  private static final DressChannel PRESSURE =
      new DressChannel(
          Signal.MANIFOLD_PRESSURE,
          "Manifold pressure",
          "kPa",
          "psi",
          2,
          (s, t) -> t.boost() + s.barometer());

  private interface Of {
    double at(Truth truth);
  }

  private static DressChannel of(
      Signal signal, String name, String metric, String us, int decimals, Of si) {
    return new DressChannel(signal, name, metric, us, decimals, (s, t) -> si.at(t));
  }

  private static DressChannel hot(Signal signal, String name, Of celsius) {
    return of(signal, name, "degC", "degF", 1, t -> celsius.at(t) + 273.15);
  }

  private DressChannel called(String other) {
    return new DressChannel(signal, other, metric, us, decimals, si);
  }

  /** The columns that a dress's names ask for. */
  static List<DressChannel> all(LogDress.Names names) {
    List<DressChannel> plain =
        List.of(SPEED, BOOST, INLET, BEFORE, CHARGE, CORE_IN, CORE_OUT, ENGINE, FLOW);
    return switch (names) {
      case PLAIN -> plain;
      case FULL -> full(plain);
      case OPEN ->
          List.of(
              SPEED,
              PRESSURE,
              INLET.called("IAT"),
              BEFORE,
              CHARGE.called("Air temp 2"),
              CORE_IN.called("Water in"),
              CORE_OUT.called("Water out"),
              ENGINE.called("Coolant temp"));
      case LONE_OUT -> List.of(SPEED, BOOST, CHARGE, CORE_OUT.called("IC water temp"), ENGINE);
      case LONE_IN -> List.of(SPEED, BOOST, CHARGE, CORE_IN.called("Loop coolant"), ENGINE);
      case ABSOLUTE -> List.of(SPEED, PRESSURE.called("MAP"), INLET, CHARGE, CORE_IN);
    };
  }

  /** Everything a well-wired car logs: what the truth lacks follows from its load. */
  private static List<DressChannel> full(List<DressChannel> plain) {
    List<DressChannel> all = new ArrayList<>(plain);
    all.add(
        new DressChannel(
            Signal.ROAD_SPEED, "Vehicle speed", "km/h", "mph", 1, (s, t) -> s.roadSpeed(t) / 3.6));
    all.add(new DressChannel(Signal.GEAR, "Gear", "", "", 0, DressSession::gear));
    all.add(loaded(Signal.THROTTLE, "Throttle position", "%", 1, 1.0, 0.04));
    all.add(loaded(Signal.LAMBDA, "Lambda", "", 2, 0.84, 1.0));
    all.add(loaded(Signal.SPARK, "Ignition timing", "deg", 1, Math.toRadians(17), 0.5));
    all.add(loaded(Signal.KNOCK, "Knock retard", "deg", 1, Math.toRadians(1.5), 0));
    all.add(loaded(Signal.PUMP, "Coolant pump", "", STATE, 1, 1));
    all.add(loaded(Signal.FAN, "Fan", "", STATE, 0, 1));
    all.add(new DressChannel(Signal.BAROMETER, "Baro", "kPa", "psi", 2, (s, t) -> s.barometer()));
    all.add(of(Signal.WHEEL_POWER, "Power", "kW", "hp", 1, DressChannel::power));
    all.add(
        of(
            Signal.TORQUE,
            "Torque",
            "N m",
            "lb-ft",
            1,
            t -> power(t) / (t.moment().engineSpeed() * Math.PI / 30)));
    return all;
  }

  private static DressChannel loaded(
      Signal signal, String name, String unit, int decimals, double load, double idle) {
    return of(signal, name, unit, unit, decimals, t -> t.boost() > LOADED ? load : idle);
  }

  /** Nine hundred watts a gram of air: common practice, no source. */
  private static double power(Truth t) {
    return 0.9e6 * t.airFlow();
  }

  /** The symbol of its unit in a dress. */
  String symbol(LogDress dress) {
    return dress.us() ? us : metric;
  }

  Unit unit(LogDress dress) {
    return signal.dimension().unit(symbol(dress)).orElse(signal.dimension().si());
  }

  /** Half of the last digit, SI. */
  double grain(LogDress dress) {
    return decimals == STATE ? 1e-9 : 0.5001 * Math.pow(10, -decimals) * unit(dress).scale();
  }
}
