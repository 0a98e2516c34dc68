package soakloop.scenario;

/**
 * A random geometry of an exchanger that fits its block: at least one layer of air and two of
 * coolant across the face, ports no wider than the thickness.
 */
final class RandomGeometry {
  /** What is taken of a length, so that rounding in other units does not matter. */
  private static final double ROOM = 0.999;

  /** Fewest louvred fins that the thinnest sheet may have, 1/m. */
  private static final double FEW = 345;

  private final Draw draw;
  private final RandomValue values;
  private final RandomSection in;

  RandomGeometry(Draw draw, RandomValue values, RandomSection in) {
    this.draw = draw;
    this.values = values;
    this.in = in;
  }

  RandomSection write(double across, double depth) {
    boolean plates = draw.chance(0.5);
    in.put("kind", plates ? "bar-and-plate" : "tube-and-fin");
    double wall = number(in, "wall", Math.min(depth / 10, across / 30));
    double coolant;
    if (plates) {
      RandomSection fins = in.below("coolant-fins");
      coolant = number(fins, "height", across / 6);
      in.perhaps("bar").put("coolant-fins", fins(fins));
    } else {
      RandomSection ports = in.below("ports");
      coolant = number(ports, "height", across / 6);
      number(ports, "width", ROOM * (depth - 2 * wall));
      in.put("ports", ports.others());
    }
    double layer = coolant + 2 * wall;
    RandomSection fins = in.below("fins");
    double height = number(fins, "height", ROOM * (across - 2 * layer));
    in.put("fins", fins(fins));
    int most = (int) (ROOM * (across - layer) / (height + layer));
    if (most >= 1 && in.wanted()) {
      in.put("layers", String.valueOf(values.count(in.spec("layers"), most)));
    }
    return in.others("layers", "bar");
  }

  private RandomSection fins(RandomSection fins) {
    fins.any("kind");
    if (fins.get("kind").equals("louvred")) {
      KeySpec density = fins.spec("density");
      // The equation of louvre friction ends where a thin sheet has few fins.
      fins.put("density", values.in(density, FEW, RandomValue.high(density)));
    }
    return switch (fins.get("kind")) {
      case "offset-strip" -> fins.others("louvre-pitch", "louvre-share", "louvre-angle");
      case "louvred" -> fins.others("strip");
      default -> fins.others("strip", "louvre-pitch", "louvre-share", "louvre-angle");
    };
  }

  /** Writes a value of the key's range up to a most, and returns it, m. */
  private double number(RandomSection section, String key, double most) {
    KeySpec spec = section.spec(key);
    double low = RandomValue.low(spec);
    double high = Math.max(low, Math.min(RandomValue.high(spec), most));
    double value = values.number(spec, low, high);
    section.put(key, values.written(spec, value));
    return value;
  }
}
