package soakloop.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soakloop.fluid.Glycol;
import soakloop.quantity.Dimension;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;

/**
 * Random scenario texts, each from a seed of its own, over every key of the table and its whole
 * documented range. All are invented.
 *
 * <p>Keys that depend on one another are kept consistent: alternatives (pulleys or ratio, flow or
 * curve, value or per volume, shares by volume or by mass) come one at a time; what an alternative
 * needs comes with it; a pump curve falls to no pressure; a pump has its speed or its voltage; what
 * stands behind has something in front; a thermostat's off lies below its on and has a fan; shares
 * of a resistance leave something over; a section is there only for what is in the loop. The
 * session is {@link RandomSession}'s.
 */
public final class RandomScenario {
  /** Most of a resistance that air side and wall may take, with room for rounding. */
  private static final double SHARES = 0.98;

  /** Thickness of a heat exchanger that says none, m. */
  private static final double USUAL_DEPTH = 26e-3;

  private final Draw draw;
  private final RandomValue values;
  private final RandomSection root;

  private RandomScenario(long seed) {
    draw = new Draw(seed);
    // Rigs near the usual run on; those from the whole range mostly boil or freeze.
    values = new RandomValue(draw, draw.any(List.of(0.1, 0.25, 0.5, 1.0)));
    root = new RandomSection(draw, values, draw.any(List.of(0.05, 0.3, 0.6, 0.95)), "");
  }

  /**
   * Returns a scenario's text.
   *
   * @param seed the same seed gives the same text
   * @param seconds how long its session may be; waits of hours come now and then all the same
   */
  public static String text(long seed, double seconds) {
    return withAir(new RandomScenario(seed).write(seconds));
  }

  /** Day and boost are drawn each for itself; a boost that leaves the engine no air is raised. */
  private static String withAir(String text) {
    Matcher day = Pattern.compile("(?m)^day: .*?\\bpressure: ([0-9.]+ \\w+)").matcher(text);
    Matcher boost = Pattern.compile("(?m)^boost: (.*)$").matcher(text);
    if (!day.find() || !boost.find()) {
      return text;
    }
    double least =
        Pattern.compile("-?[0-9.]+ (?:k?Pa|bar|psig?|inHg)\\b")
            .matcher(boost.group(1))
            .results()
            .mapToDouble(m -> si(m.group(), Dimension.GAUGE_PRESSURE))
            .min()
            .orElse(0);
    boolean airless = si(day.group(1), Dimension.ABSOLUTE_PRESSURE) + least < 10e3;
    return airless ? text.replaceFirst("(?m)^boost: .*$", "boost: 20 kPa") : text;
  }

  private static double si(String text, Dimension dimension) {
    try {
      return QuantityParser.parse(text, dimension).value();
    } catch (QuantityException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Writes the logs that the scenarios name.
   *
   * @param folder which the scenarios are read in
   */
  public static void writeLogs(Path folder) throws IOException {
    for (RandomSession.Logged log : RandomSession.logs()) {
      Files.writeString(folder.resolve(log.file()), log.text());
    }
  }

  private String write(double seconds) {
    root.perhaps("title").perhaps("about").perhaps("units");
    for (String plain : List.of("day", "engine", "plenum", "sensor", "underhood", "limits")) {
      if (!root.spec(plain).optional() || root.wanted()) {
        root.put(plain, plain.equals("engine") ? engine() : root.below(plain).others());
      }
    }
    if (root.wanted()) {
      root.put("start", start());
    }
    RandomSection blower = blower();
    root.put("blower", blower);
    if (blower.has("air-flow") || draw.chance(0.7)) {
      root.put("boost", values.curve(root.spec("boost"), 10, 150));
    } else if (draw.chance(0.5)) {
      root.put("boost", "from-pulleys");
    }
    output();
    root.put("coolant", coolant());
    RandomLoop loop = new RandomLoop(draw, values, root, this::core, this::heatExchanger);
    loop.write();
    new RandomSession(draw, values, root, loop.iced()).write(seconds);
    if (draw.chance(0.3)) {
      root.put("fitted", fitted());
    }
    if (draw.chance(0.1)) {
      root.put("variants", "[{name: other limit, limits: {charge-temperature: 50 degC}}]");
    }
    return root.lines();
  }

  /** As if a fit had been edited since, more or less. */
  private RandomSection fitted() {
    RandomSection error = root.below("fitted").below("model-error");
    error.put("signal", "charge-temperature").others();
    String c = draw.any(List.of("-1", "0.5", "0", "0.999"));
    return root.below("fitted")
        .put("log", "x.csv")
        .put("sha-256", "0".repeat(64))
        .put("date", "2026-03-14")
        .put("version", "1.2.3")
        .put(
            "keys",
            "[{key: day.temperature, value: 20 degC +/- 2 K},"
                + " {key: boost, values: [1 psi +/- 10 %]}]")
        .put("correlation", "[[1], [" + c + ", 1]]")
        .put("model-error", RandomSection.list(List.of(error.toString())));
  }

  private void output() {
    if (root.wanted()) {
      root.put("power", root.below("power").others().orEmpty());
    }
    if (root.wanted()) {
      RandomSection spark = root.below("spark");
      spark.put("taken-out", values.curve(spark.spec("taken-out"), 280, 380));
      root.put("spark", spark.others());
    }
  }

  /** Returns a few places from one to another; points that crowd and jump make a surface swing. */
  private double[] evenly(double from, double to) {
    double[] places = new double[draw.count(2, 4)];
    Arrays.setAll(places, i -> from + (to - from) * i / (places.length - 1));
    places[places.length - 1] = to;
    return places;
  }

  /** A smooth table: points that jump have no surface between them that is an efficiency. */
  private String efficiencies(RandomSection in) {
    RandomSection table = in.below("efficiency-table");
    KeySpec ratio = table.spec("pressure-ratio");
    KeySpec efficiency = table.spec("efficiency");
    double[] speeds = evenly(draw.between(20, 80), draw.between(100, 300));
    double[] ratios =
        draw.chance(0.3)
            ? evenly(RandomValue.low(ratio), RandomValue.high(ratio))
            : evenly(draw.between(1, 1.6), draw.between(1.8, 4));
    double best = draw.between(0.35, 0.85);
    List<String> rows = new ArrayList<>();
    for (double at : ratios) {
      double[] row = new double[speeds.length];
      for (int i = 0; i < row.length; i++) {
        row[i] = best + draw.between(-0.05, 0.05);
      }
      rows.add(
          in.below("efficiency-table")
              .put("pressure-ratio", values.written(ratio, at))
              .put("efficiency", values.points(efficiency, speeds, row))
              .toString());
    }
    return RandomSection.list(rows);
  }

  private RandomSection blower() {
    RandomSection blower = root.below("blower");
    boolean mapped = draw.chance(0.3);
    if (mapped) {
      blower.put("efficiency-table", efficiencies(blower));
    }
    String no = mapped ? "adiabatic-efficiency" : "efficiency-table";
    if (draw.chance(0.3)) {
      blower.put("air-flow", values.curve(blower.spec("air-flow"), 5, 150));
      blower.others("displacement", "drive-ratio", "volumetric-efficiency", "leakage", no);
    } else {
      blower.any("displacement");
      if (draw.chance(0.5)) {
        blower.put("pulleys", blower.below("pulleys").others());
        blower.others("drive-ratio", no);
      } else {
        blower.any("drive-ratio").others(no);
      }
    }
    if (root.wanted()) {
      blower.put("case", blower.below("case").others());
    }
    return blower;
  }

  /** A charge temperature at random mostly has no loop that gives it, so it is seldom stated. */
  private RandomSection start() {
    RandomSection start = root.below("start");
    KeySpec charge = start.spec("charge");
    if (draw.chance(0.02)) {
      start.put("charge", values.written(charge, RandomValue.low(charge)));
    }
    return draw.chance(0.2) ? start.others() : start.others("charge");
  }

  private RandomSection coolant() {
    RandomSection coolant = root.below("coolant").any("glycol");
    if (!coolant.get("glycol").equals("none")) {
      if (draw.chance(0.5)) {
        coolant.any("by-mass");
      } else {
        boolean ethylene = coolant.get("glycol").equals("ethylene");
        Glycol glycol = ethylene ? Glycol.ETHYLENE : Glycol.PROPYLENE;
        coolant.put(
            "by-volume", values.in(coolant.spec("by-volume"), 0, glycol.maxVolumeFraction()));
      }
    }
    return coolant;
  }

  private RandomSection core() {
    RandomSection core = root.below("core");
    boolean sized = draw.chance(0.7);
    double[] block = {0, 0};
    if (sized) {
      RandomSection size = core.below("size");
      block[0] = number(size, "width");
      block[1] = number(size, "thickness");
      core.put("size", size.others());
      KeySpec free = core.spec("free-height");
      if (root.wanted()) {
        core.put("free-height", values.in(free, block[1] * 1.0001, RandomValue.high(free)));
      }
    }
    return trapped(exchanger(core, sized, "air-flux", block));
  }

  private RandomSection engine() {
    RandomSection engine = root.below("engine");
    if (root.wanted()) {
      String key = "volumetric-efficiency";
      engine.put(key, values.curve(engine.spec(key), 10, 150));
    }
    return engine.others();
  }

  private RandomSection heatExchanger() {
    RandomSection exchanger = root.named("*heat-exchanger");
    RandomSection face = exchanger.below("face");
    double[] block = {number(face, "height"), USUAL_DEPTH};
    exchanger.put("face", face.others());
    if (root.wanted()) {
      block[1] = number(exchanger, "thickness");
    }
    return trapped(exchanger(exchanger, true, "air-speed", block));
  }

  /** Writes air as a share, or as a volume of coolant that is stated. */
  private RandomSection trapped(RandomSection in) {
    if (draw.chance(0.5) || in.has("coolant") || in.has("coolant-share")) {
      return in.perhaps("trapped-air");
    }
    KeySpec coolant = in.spec("coolant");
    KeySpec air = in.spec("trapped-air-volume");
    double most = RandomValue.high(coolant);
    double held = draw.chance(0.5) ? most : values.number(coolant, RandomValue.low(coolant), most);
    in.put("coolant", values.written(coolant, held));
    return in.put(
        "trapped-air-volume", values.in(air, 0, Math.min(RandomValue.high(air), 0.8 * held)));
  }

  /** Writes a value and returns it, SI. */
  private double number(RandomSection in, String key) {
    KeySpec spec = in.spec(key);
    double value = values.number(spec, RandomValue.low(spec), RandomValue.high(spec));
    in.put(key, values.written(spec, value));
    return value;
  }

  /** An exchanger; its block's face across the tubes and its thickness, m. */
  private RandomSection exchanger(RandomSection in, boolean sized, String byFace, double[] block) {
    for (String section : List.of("passes", "cells")) {
      if (root.wanted()) {
        in.put(section, in.below(section).others());
      }
    }
    if (sized && draw.chance(0.35)) {
      in.perhaps("mass").perhaps("coolant");
      RandomGeometry geometry =
          new RandomGeometry(draw, values.oftenAtEnds(), in.seldom("geometry"));
      return in.put("geometry", geometry.write(block[0], block[1]));
    }
    for (String[] pair :
        new String[][] {{"mass", "metal-per-volume"}, {"coolant", "coolant-share"}}) {
      if (!sized || draw.chance(0.4)) {
        in.any(pair[0]);
      } else {
        in.perhaps(pair[1]);
      }
    }
    if (!sized || root.wanted()) {
      in.put("conductance", conductance(in.seldom("conductance"), sized, byFace));
    }
    return in;
  }

  private RandomSection conductance(RandomSection in, boolean sized, String byFace) {
    if (sized && draw.chance(0.2)) {
      in.put("measured", measured(in.below("measured"), byFace.equals("air-speed")));
    } else if (!sized || draw.chance(0.4)) {
      in.any("value").any(sized && draw.chance(0.5) ? byFace : "air-flow").perhaps("coolant-flow");
    } else if (draw.chance(0.6)) {
      in.any("per-volume").perhaps("coolant-flow");
      if (root.wanted()) {
        in.any(draw.any(List.of("air-flow", byFace)));
      }
    }
    KeySpec air = in.spec("air-side-share");
    KeySpec wall = in.spec("wall-share");
    // The wall's own end, half of the resistance, stands only beside a small air side.
    double most = draw.chance(0.5) ? RandomValue.high(air) : SHARES - RandomValue.high(wall);
    double share = values.number(air, RandomValue.low(air), most);
    double left = Math.min(RandomValue.high(wall), SHARES - share);
    if (root.wanted()) {
      in.put("air-side-share", values.written(air, share));
      in.put("wall-share", values.in(wall, 0, left));
    }
    return in.others(
        "value", "per-volume", "air-flow", byFace, "coolant-flow", "air-side-share", "wall-share");
  }

  /** A point that a crossflow exchanger can have: flows near the usual, far from its best. */
  private RandomSection measured(RandomSection in, boolean bySpeed) {
    in.put("size", in.below("size").others());
    KeySpec flow = in.spec("coolant-flow");
    if (bySpeed && draw.chance(0.4)) {
      // A large face in slow air still leaves a tenth within what the coolant can do.
      in.put("air-speed", values.in(in.spec("air-speed"), 0.1, 1));
      in.put("coolant-flow", values.in(flow, 3e-4, RandomValue.high(flow)));
      KeySpec effectiveness = in.spec("effectiveness");
      return in.put("effectiveness", values.in(effectiveness, 0.01, 0.08));
    }
    in.put("air-flow", values.in(in.spec("air-flow"), 0.1, 1));
    double effectiveness = draw.between(0.02, 0.6);
    boolean byCoolant = draw.chance(0.3);
    in.put("coolant-flow", values.in(flow, 2e-4, byCoolant ? 4e-4 : RandomValue.high(flow)));
    if (!byCoolant && draw.chance(0.5)) {
      return in.put("effectiveness", values.written(in.spec("effectiveness"), effectiveness));
    }
    double air = 273 + draw.between(80, 200);
    double coolant = 273 + draw.between(-20, 60);
    in.put("air-in", values.written(in.spec("air-in"), air));
    in.put("coolant-in", values.written(in.spec("coolant-in"), coolant));
    if (byCoolant) {
      double out = coolant + draw.between(1e-3, 0.03) * (air - coolant);
      return in.put("coolant-out", values.written(in.spec("coolant-out"), out));
    }
    double out = air - effectiveness * (air - coolant);
    return in.put("air-out", values.written(in.spec("air-out"), out));
  }
}
