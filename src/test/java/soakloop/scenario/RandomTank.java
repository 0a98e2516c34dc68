package soakloop.scenario;

/** Tanks and chillers of a random scenario: layers, ice that mostly has room, capacities. */
final class RandomTank {
  private final Draw draw;
  private final RandomValue values;
  private final RandomSection root;
  private boolean iced;

  RandomTank(Draw draw, RandomValue values, RandomSection root) {
    this.draw = draw;
    this.values = values;
    this.root = root;
  }

  /** Returns whether a tank takes ice. */
  boolean iced() {
    return iced;
  }

  /** Returns a tank, without the key of its ports; one of a loop may have ice. */
  RandomSection tank() {
    RandomSection tank = root.named("*reservoir");
    tank.perhaps("layers");
    if (tank.has("layers") && !tank.get("layers").equals("1")) {
      tank.perhaps("enters");
    }
    if (!iced && draw.chance(0.6)) {
      iced = true;
      KeySpec volume = tank.spec("volume");
      KeySpec capacity = tank.spec("capacity");
      double holds = values.number(capacity, RandomValue.low(capacity), RandomValue.high(capacity));
      double filled =
          values.number(volume, RandomValue.low(volume), Math.min(RandomValue.high(volume), holds));
      tank.put("volume", values.written(volume, filled));
      tank.put("capacity", values.written(capacity, holds));
      tank.put("ice", ice(tank.below("ice"), 1000 * (holds - filled)));
    }
    return tank.others("layers", "enters", "port");
  }

  private RandomSection ice(RandomSection ice, double room) {
    KeySpec mass = ice.spec("mass");
    double most = Math.min(room, RandomValue.high(mass));
    double put = draw.chance(0.05) ? RandomValue.high(mass) : values.number(mass, 0, most);
    ice.put("mass", values.written(mass, put));
    if (draw.chance(0.8)) {
      ice.any("temperature");
    }
    if (put > 0 && draw.chance(0.5)) {
      ice.any("conductance");
    } else if (draw.chance(0.8)) {
      ice.any("pieces").any("coefficient");
    }
    return ice;
  }

  /** Returns a chiller, without the key of its pressure loss. */
  RandomSection chiller() {
    RandomSection chiller = root.named("*chiller");
    chiller.put("capacity", values.curve(chiller.spec("capacity"), 250, 350));
    KeySpec coldest = chiller.spec("coldest");
    if (draw.chance(0.6)) {
      // Water freezes at 0 degC; only glycol could be colder.
      chiller.put("coldest", values.in(coldest, 274, RandomValue.high(coldest)));
    }
    return chiller.others("coldest", "pressure-loss");
  }
}
