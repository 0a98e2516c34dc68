package soakloop.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;

/**
 * The loop of a random scenario: its order, pump, pieces, what they cost in pressure, and the air
 * at the heat exchangers.
 */
final class RandomLoop {
  private static final List<String> NAMES =
      List.of("", "supply-", "front-", "a-b-", "kühl-", "x2-", "heat-", "hose-");

  private static final String EXCHANGER = "heat-exchanger";

  private final Draw draw;
  private final RandomValue values;
  private final RandomSection root;
  private final Supplier<RandomSection> core;
  private final Supplier<RandomSection> heatExchanger;
  private final RandomTank tanks;
  private boolean pieceByPiece;

  RandomLoop(
      Draw draw,
      RandomValue values,
      RandomSection root,
      Supplier<RandomSection> core,
      Supplier<RandomSection> heatExchanger) {
    this.draw = draw;
    this.values = values;
    this.root = root;
    this.core = core;
    this.heatExchanger = heatExchanger;
    this.tanks = new RandomTank(draw, values, root);
  }

  /** Returns whether a tank takes ice. */
  boolean iced() {
    return tanks.iced();
  }

  /** Writes core, loop, pump, pieces, plumbing and airflow. */
  void write() {
    boolean pushes = draw.chance(0.6);
    // Ways in parallel need their pieces' losses.
    boolean divides = draw.chance(0.25);
    boolean plumbed = pushes && !divides && draw.chance(0.55);
    pieceByPiece = !plumbed;
    RandomSection pump = root.below("pump");
    if (pushes) {
      pushing(pump);
    } else {
      pump.perhaps("flow").perhaps("power").perhaps("coolant");
    }
    root.put("pump", pump);
    if (plumbed) {
      root.put("plumbing", root.below("plumbing").any("pressure-loss").others());
    }
    root.put("core", pieceByPiece ? loss(core.get()) : core.get());
    List<String> names = pieces();
    boolean blown = names.contains(EXCHANGER);
    Collections.shuffle(names, new Random(draw.count(0, Integer.MAX_VALUE - 1)));
    root.put("loop", RandomSection.list(divides ? divided(names) : names));
    if (blown && draw.chance(0.7)) {
      root.put("airflow", airflow());
    }
  }

  private List<String> pieces() {
    List<String> names = new ArrayList<>(List.of("core", "pump"));
    for (String kind : List.of("reservoir", "hose", EXCHANGER, "chiller")) {
      // A crowd now and then.
      int count = draw.chance(0.02) ? draw.count(3, NAMES.size()) : draw.count(0, 2);
      for (String name : NAMES.subList(0, count)) {
        names.add(name + kind);
        if (kind.equals(EXCHANGER)) {
          RandomSection exchanger = heatExchanger.get();
          if (!name.isEmpty() && draw.chance(0.3)) {
            exchanger.put("behind", EXCHANGER);
          }
          root.put(name + kind, pieceByPiece ? loss(exchanger) : exchanger);
        } else if (kind.equals("chiller") || root.wanted()) {
          root.put(name + kind, piece(kind));
        }
      }
    }
    return names;
  }

  private RandomSection piece(String kind) {
    RandomSection piece =
        switch (kind) {
          case "reservoir" -> tanks.tank();
          case "chiller" -> tanks.chiller();
          default -> root.named("*" + kind).others("roughness", "fittings");
        };
    if (pieceByPiece) {
      for (String key : List.of("port", "pressure-loss", "roughness", "fittings")) {
        if (KeyTable.get().below("*" + kind).contains(key)) {
          piece.perhaps(key);
        }
      }
    }
    return piece;
  }

  /** Gives an exchanger what it costs in pressure, or leaves that to be assumed. */
  private RandomSection loss(RandomSection exchanger) {
    if (!root.wanted()) {
      return exchanger;
    }
    RandomSection loss = exchanger.below("pressure-loss");
    if (draw.chance(0.5)) {
      loss.any("loss").others("usual-loss");
    } else {
      loss.any("usual-loss").others("loss");
    }
    return exchanger.put("pressure-loss", loss);
  }

  /** Stands some pieces side by side, if there are enough. */
  private List<String> divided(List<String> names) {
    List<String> around = new ArrayList<>();
    List<List<String>> ways = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (String name : names) {
      boolean single = name.equals("core") || name.equals("pump");
      if (single || draw.chance(0.3)) {
        around.add(name);
      } else {
        draw.any(ways).add(name);
      }
    }
    List<String> filled =
        ways.stream().filter(way -> !way.isEmpty()).map(RandomSection::list).toList();
    if (filled.size() < 2) {
      return names;
    }
    around.add(draw.count(0, around.size()), "{parallel: " + RandomSection.list(filled) + "}");
    return around;
  }

  private void pushing(RandomSection pump) {
    if (draw.chance(0.5)) {
      pump.put("curve", pumpCurve(pump.spec("curve")));
    } else {
      pump.any("label").perhaps("label-share").perhaps("shut-off");
    }
    if (draw.chance(0.3)) {
      pump.any("voltage").perhaps("rated-voltage");
    } else {
      pump.perhaps("speed");
    }
    pump.perhaps(draw.any(List.of("power", "efficiency"))).perhaps("in-series").perhaps("coolant");
  }

  private String pumpCurve(KeySpec curve) {
    double head = Math.max(1, values.number(curve, 0, RandomValue.high(curve)));
    int size = draw.count(2, 5);
    double[] flows = values.rising(size, 0, draw.across(1e-5, 7e-3));
    flows[0] = 0;
    double[] heads = new double[size];
    for (int i = 0; i < size; i++) {
      heads[i] = head * (1 - (i + (i == 0 ? 0 : draw.between(0, 0.9))) / size);
    }
    if (draw.chance(0.7)) {
      heads[size - 1] = 0;
    }
    return values.points(curve, flows, heads);
  }

  private RandomSection airflow() {
    RandomSection airflow = root.below("airflow");
    boolean duct = draw.chance(0.45);
    boolean fan = draw.chance(0.5);
    if (duct) {
      airflow.put("duct", duct(airflow.below("duct"), fan));
    } else if (fan) {
      KeySpec key = airflow.spec("car-fan");
      airflow.put("car-fan", values.in(key, 0.01, RandomValue.high(key)));
    } else if (draw.chance(0.05)) {
      airflow.put("car-fan", values.written(airflow.spec("car-fan"), 0));
    }
    if (fan) {
      airflow.put("thermostat", thermostat(airflow.below("thermostat")));
    }
    return duct
        ? airflow.others("shop-fan", "weak", "strong", "car-fan", "road-share")
        : airflow.others();
  }

  private RandomSection duct(RandomSection duct, boolean fan) {
    duct.any("loss-factor").any("capture");
    if (fan) {
      KeySpec curve = duct.spec("fan");
      double head = Math.max(1, values.number(curve, 0, RandomValue.high(curve)));
      double[] flows = {0, draw.across(0.01, 1), draw.across(1.1, 4)};
      duct.put(
          "fan", values.points(curve, flows, new double[] {head, head * draw.between(0, 1), 0}));
    }
    return duct.others();
  }

  private RandomSection thermostat(RandomSection thermostat) {
    KeySpec on = thermostat.spec("on");
    KeySpec off = thermostat.spec("off");
    double upper = values.number(on, RandomValue.low(on), RandomValue.high(on));
    double lower =
        values.number(off, RandomValue.low(off), Math.min(RandomValue.high(off), upper - 0.1));
    return thermostat.put("on", values.written(on, upper)).put("off", values.written(off, lower));
  }
}
