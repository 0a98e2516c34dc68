package soakloop.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import soakloop.fluid.Glycol;

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
    return new RandomScenario(seed).write(seconds);
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
        root.put(plain, root.below(plain).others());
      }
    }
    if (root.wanted()) {
      root.put("start", start());
    }
    root.put("blower", blower());
    root.put("boost", values.curve(root.spec("boost"), 10, 150));
    root.put("coolant", coolant());
    RandomLoop loop = new RandomLoop(draw, values, root, this::core, this::heatExchanger);
    loop.write();
    new RandomSession(draw, values, root, loop.iced()).write(seconds);
    return root.lines();
  }

  private RandomSection blower() {
    RandomSection blower = root.below("blower");
    if (draw.chance(0.3)) {
      blower.put("air-flow", values.curve(blower.spec("air-flow"), 5, 150));
      blower.others("displacement", "drive-ratio", "volumetric-efficiency");
    } else {
      blower.any("displacement");
      if (draw.chance(0.5)) {
        blower.put("pulleys", blower.below("pulleys").others());
        blower.others("drive-ratio");
      } else {
        blower.any("drive-ratio").others();
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
    if (sized) {
      core.put("size", core.below("size").others());
    }
    core.perhaps("trapped-air");
    return exchanger(core, sized, "air-flux");
  }

  private RandomSection heatExchanger() {
    RandomSection exchanger = root.named("*heat-exchanger");
    exchanger.put("face", exchanger.below("face").others());
    exchanger.perhaps("thickness").perhaps("trapped-air");
    return exchanger(exchanger, true, "air-speed");
  }

  private RandomSection exchanger(RandomSection in, boolean sized, String byFace) {
    for (String[] pair :
        new String[][] {{"mass", "metal-per-volume"}, {"coolant", "coolant-share"}}) {
      if (!sized || draw.chance(0.4)) {
        in.any(pair[0]);
      } else {
        in.perhaps(pair[1]);
      }
    }
    if (!sized || root.wanted()) {
      in.put("conductance", conductance(in.below("conductance"), sized, byFace));
    }
    for (String section : List.of("passes", "cells")) {
      if (root.wanted()) {
        in.put(section, in.below(section).others());
      }
    }
    return in;
  }

  private RandomSection conductance(RandomSection in, boolean sized, String byFace) {
    if (!sized || draw.chance(0.4)) {
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
}
