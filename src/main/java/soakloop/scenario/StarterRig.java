package soakloop.scenario;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import soakloop.charge.Compression;
import soakloop.fluid.Air;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.UnitSystem;
import soakloop.reading.LogReading;

/**
 * Writes the hardware: what air flow, boost and temperatures tell of engine and blower, and
 * stand-ins marked as guesses for what no log tells.
 */
final class StarterRig {
  private static final String GUESS = "GUESS: replace";

  /** Stand-ins: common sizes, no source. */
  private static final double DISPLACEMENT = 5e-3;

  private static final double DRIVE_RATIO = 2.3;
  private static final double BOOST = 70e3;

  /** Charge temperature and inlet loss where none is logged, K and Pa. */
  private static final double CHARGE = 325;

  private static final double INLET_LOSS = 2e3;

  /** Adiabatic efficiencies that are believed [-]; beyond, a sensor lags or is somewhere else. */
  private static final double LEAST_EFFICIENCY = 0.4;

  private static final double MOST_EFFICIENCY = 0.85;

  private final LogReading reading;
  private final StarterDay day;
  private final StarterFigures figures;
  private final StarterText text;
  private final StarterBoost channel;
  private final List<double[]> boost;
  private final List<double[]> airFlow;

  StarterRig(LogReading reading, StarterDay day, StarterFigures figures, StarterText text) {
    this.reading = reading;
    this.day = day;
    this.figures = figures;
    this.text = text;
    this.channel = new StarterBoost(reading);
    List<double[]> after = channel.over(Signal.BOOST);
    this.boost =
        !after.isEmpty()
            ? after
            : channel.over(Signal.MANIFOLD_PRESSURE).stream()
                .map(p -> new double[] {p[0], p[1] - day.pressure()})
                .toList();
    this.airFlow = channel.over(Signal.AIR_MASS_FLOW);
  }

  void write() {
    engine();
    blower();
    boost();
    text.blank();
    core();
    text.blank();
    loop();
    text.blank();
  }

  private void engine() {
    OptionalDouble swallowed = displacement();
    text.line("engine:", "");
    text.line(
        "  displacement: " + litres(swallowed.orElse(DISPLACEMENT)) + " +/- 25 %",
        swallowed.isPresent()
            ? GUESS
                + " with the engine's own; from logged air mass flow and boost, if the engine"
                + " fills to 92 %"
            : GUESS + " with the engine's own, and take the spread out");
    offer("  ", "engine.volumetric-efficiency");
    OptionalDouble idle = day.idling(Signal.ENGINE_SPEED);
    if (idle.isPresent() && StarterFigures.allows("engine.idle-speed", idle.getAsDouble())) {
      text.line(
          "  idle-speed: " + figures.speed(idle.getAsDouble()), "from the log: between the pulls");
    } else {
      offer("  ", "engine.idle-speed");
    }
    OptionalDouble vacuum = idleManifold();
    if (vacuum.isPresent()) {
      text.line(
          "  idle-manifold-pressure: "
              + figures.show(vacuum.getAsDouble(), Dimension.ABSOLUTE_PRESSURE),
          "from the log: between the pulls");
    } else {
      offer("  ", "engine.idle-manifold-pressure");
    }
  }

  private OptionalDouble idleManifold() {
    OptionalDouble absolute = day.idling(Signal.MANIFOLD_PRESSURE);
    OptionalDouble gauge = day.idling(Signal.BOOST);
    double value =
        absolute.isPresent()
            ? absolute.getAsDouble()
            : gauge.isPresent() ? gauge.getAsDouble() + day.pressure() : Double.NaN;
    // A boost channel that ends at zero shows no vacuum.
    boolean told = value < 0.9 * day.pressure();
    return told && StarterFigures.allows("engine.idle-manifold-pressure", value)
        ? OptionalDouble.of(value)
        : OptionalDouble.empty();
  }

  private static String litres(double volume) {
    return String.format(java.util.Locale.ROOT, "%.1f L", volume * 1e3);
  }

  private double topBoost() {
    return boost.isEmpty() ? BOOST : boost.get(boost.size() - 1)[1];
  }

  private double chargeDensity() {
    double charge =
        reading.table().stream()
            .flatMapToDouble(r -> r.counted().stream())
            .average()
            .orElse(CHARGE);
    return (day.pressure() + Math.max(0, topBoost())) / (Air.GAS_CONSTANT * charge);
  }

  private static double usual(String key) {
    return KeyTable.get().require(key).defaultEstimate().orElseThrow().value();
  }

  /** The displacement that swallows the logged air at the logged boost, m3; empty if not logged. */
  private OptionalDouble displacement() {
    if (airFlow.isEmpty() || boost.isEmpty()) {
      return OptionalDouble.empty();
    }
    double[] top = airFlow.get(airFlow.size() - 1);
    double swept = top[1] / chargeDensity() / (top[0] / 2 * usual("engine.volumetric-efficiency"));
    return StarterFigures.allows("engine.displacement", swept)
        ? OptionalDouble.of(swept)
        : OptionalDouble.empty();
  }

  private void blower() {
    text.line("blower:", "");
    if (airFlow.isEmpty()) {
      double swallowed = DISPLACEMENT / 2 * usual("engine.volumetric-efficiency") * chargeDensity();
      double inlet =
          (day.pressure() - INLET_LOSS)
              / (Air.GAS_CONSTANT * (day.temperature() + StarterDay.pickUp().value()));
      double displacement =
          StarterFigures.within(
              "blower.displacement",
              swallowed / (DRIVE_RATIO * usual("blower.volumetric-efficiency") * inlet));
      text.line(
          "  displacement: "
              + String.format(java.util.Locale.ROOT, "%.2f L/rev +/- 25 %%", displacement * 1e3),
          GUESS + "; so chosen that the engine above swallows its air at the boost below");
      text.line("  drive-ratio: " + DRIVE_RATIO, GUESS + ", or give pulleys: {crank: , blower: }");
    } else {
      text.line(
          "  air-flow: " + curve(airFlow, Dimension.MASS_FLOW),
          "from the log: air mass flow in the pulls; or displacement and drive-ratio in its place");
    }
    OptionalDouble efficiency = efficiency();
    if (efficiency.isPresent()) {
      text.line(
          "  adiabatic-efficiency: "
              + figures.show(efficiency.getAsDouble(), Dimension.FRACTION)
              + " +/- 8 points",
          "from the log: air into the core where pulls are counted; a slow sensor there makes it too high");
    } else {
      offer("  ", "blower.adiabatic-efficiency");
    }
    offer("  ", "blower.inlet-pick-up");
    offer("  ", "blower.inlet-loss");
  }

  private OptionalDouble efficiency() {
    double[] seen =
        reading.table().stream()
            .filter(r -> r.countedAt().isPresent())
            .mapToDouble(r -> efficiency(r.countedAt().getAsDouble()))
            .filter(Double::isFinite)
            .toArray();
    double middle = StarterBoost.median(seen);
    return middle > LEAST_EFFICIENCY && middle < MOST_EFFICIENCY
        ? OptionalDouble.of(middle)
        : OptionalDouble.empty();
  }

  private double efficiency(double at) {
    double inlet = reading.usable(Signal.INLET_AIR).at(at);
    double outlet = reading.usable(Signal.CORE_AIR_IN).at(at);
    double gauge = reading.usable(Signal.BOOST).at(at);
    double ratio = (day.pressure() + gauge) / (day.pressure() - INLET_LOSS);
    return outlet > inlet + 10 && inlet > 200 && ratio > 1 && ratio < 10
        ? Compression.efficiency(inlet, outlet, ratio)
        : Double.NaN;
  }

  private void boost() {
    if (boost.isEmpty()) {
      boolean before = reading.log().has(Signal.BOOST_BEFORE_CORE);
      text.line(
          "boost: " + figures.show(BOOST, Dimension.GAUGE_PRESSURE) + " +/- 30 %",
          GUESS
              + (before
                  ? "; the log has pressure before the core only"
                  : "; the log does not tell it at full load"));
      return;
    }
    String cut =
        reading.boostCeiling().isPresent()
            ? "; cut off at "
                + figures.show(reading.boostCeiling().getAsDouble(), Dimension.GAUGE_PRESSURE)
                + ", the true boost there is at least that"
            : "";
    text.line(
        "boost: " + curve(boost, Dimension.GAUGE_PRESSURE),
        "from the log: middle of "
            + (channel.pulls().size() == 1 ? "1 pull" : channel.pulls().size() + " pulls")
            + cut);
  }

  private String curve(List<double[]> points, Dimension of) {
    String key = of == Dimension.MASS_FLOW ? "blower.air-flow" : "boost";
    return points.stream()
        .map(
            p ->
                "["
                    + figures.speed(p[0])
                    + ", "
                    + figures.show(StarterFigures.within(key, p[1]), of)
                    + "]")
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private void core() {
    boolean us = figures.units() == UnitSystem.US;
    text.line("core:", "");
    text.line(
        us
            ? "  size: {length: 14 in, width: 6.5 in, thickness: 2.2 in}"
            : "  size: {length: 350 mm, width: 170 mm, thickness: 55 mm}",
        GUESS + "; block without tanks: along the tubes, across them, depth that air passes");
    text.offered(
        "  passes: {count: 2, arranged: depth}",
        "how often the coolant crosses the air; 1 pass is assumed");
    text.offered("  mass: " + (us ? "7.5 lb" : "3.4 kg"), "weighed dry; from its size if left out");
    text.line("coolant: {glycol: ethylene, by-volume: " + glycol() + "}", GUESS);
  }

  /** A cold day needs more. */
  private String glycol() {
    return day.temperature() > 263 ? "30 %" : "50 %";
  }

  private void loop() {
    boolean us = figures.units() == UnitSystem.US;
    text.line(
        "loop: [reservoir, pump, supply-hose, core, return-hose, heat-exchanger]",
        GUESS + " if the coolant meets them in another order");
    text.line(
        "heat-exchanger: {face: "
            + (us ? "{width: 25 in, height: 12 in}" : "{width: 640 mm, height: 300 mm}")
            + "}",
        GUESS + " with the finned face");
    text.line(
        "airflow: {shop-fan: " + (StarterReplay.suits(reading) ? "none" : "weak") + "}",
        GUESS + ": none, weak, strong, or the speed of the air at the face");
    section("reservoir", "volume");
    section("pump", "flow");
    section("supply-hose", "length", "bore");
    section("return-hose", "length", "bore");
    section("plenum", "mass", "conductance");
    section("sensor", "time-constant");
  }

  /** Offers a section with its defaults. */
  private void section(String name, String... keys) {
    String kind = KeyTable.get().kindOf(name).orElse(name);
    String because = KeyTable.get().require(kind + "." + keys[0]).because();
    String pairs =
        java.util.Arrays.stream(keys)
            .map(k -> k + ": " + figures.defaultOf(kind + "." + k))
            .collect(Collectors.joining(", "));
    text.offered(name + ": {" + pairs + "}", "is assumed: " + because);
  }

  private void offer(String indent, String key) {
    KeySpec spec = KeyTable.get().require(key);
    text.offered(
        indent + key.substring(key.lastIndexOf('.') + 1) + ": " + figures.defaultOf(key),
        "is assumed: " + spec.because());
  }
}
