package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soakloop.fluid.Coolant;
import soakloop.quantity.Curve;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.Hose;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
import soakloop.rig.Materials;
import soakloop.rig.PressureLoss;
import soakloop.rig.Pump;
import soakloop.rig.PumpDelivery;
import soakloop.rig.Reservoir;

/** Reads the loop: its order, and each element by its name. */
final class LoopReader {
  private static final int MAX_ELEMENTS = 40;

  /**
   * Smallest cell of a hose unless its scenario says otherwise, m3: smaller ones only cost time.
   */
  private static final double CELL_VOLUME = 0.1e-3;

  private static final List<String> KINDS =
      List.of("core", "pump", "reservoir", "hose", "heat-exchanger");

  private final In root;
  private final Day day;
  private final Coolant coolant;

  LoopReader(In root, Day day, Coolant coolant) {
    this.root = root;
    this.day = day;
    this.coolant = coolant;
  }

  Loop read() {
    List<LoopElement> elements = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<Node> items = root.items("loop");
    if (items.isEmpty()) {
      for (Node.Entry entry : root.entries()) {
        KeyTable.get().kindOf(entry.key()).ifPresent(kind -> root.ignore(entry.key()));
      }
    }
    for (Node item : items.subList(0, Math.min(items.size(), MAX_ELEMENTS))) {
      Optional<String> name = name(item, names);
      name.ifPresent(
          n -> {
            names.add(n);
            element(n, item).ifPresent(elements::add);
          });
    }
    if (items.size() > MAX_ELEMENTS) {
      root.problem("loop", "has more than " + MAX_ELEMENTS + " pieces");
    }
    requireOne(names, "core", items);
    requireOne(names, "pump", items);
    PressureLoss resistance = resistance(names.contains("pump"));
    if (root.context().hasProblems()) {
      return Fallbacks.loop();
    }
    return new Loop(elements, resistance);
  }

  private Optional<String> name(Node item, List<String> before) {
    if (!(item instanceof Node.Scalar scalar)) {
      problem(item, "has " + item.kind() + " where the name of a piece should be");
      return Optional.empty();
    }
    if (before.contains(scalar.text())) {
      boolean single = scalar.text().equals("core") || scalar.text().equals("pump");
      problem(
          item,
          "names `"
              + scalar.shown()
              + "` twice; "
              + (single ? "a loop has one" : "a second one needs a name of its own"));
      return Optional.empty();
    }
    return Optional.of(scalar.text());
  }

  private void requireOne(List<String> names, String kind, List<Node> items) {
    if (names.contains(kind)) {
      return;
    }
    root.ignore(kind);
    if (!items.isEmpty()) {
      root.problem("loop", "has no " + kind + "; name it where the coolant meets it");
    }
  }

  private Optional<LoopElement> element(String name, Node item) {
    if (name.equals("core")) {
      return Optional.of(
          new Core(name, new ExchangerReader(root.section(name), day, coolant).core()));
    }
    if (name.equals("pump")) {
      return Optional.of(pump());
    }
    Optional<String> kind = KeyTable.get().kindOf(name);
    if (kind.isEmpty()) {
      problem(item, "found `" + Node.Scalar.shown(name) + "`; " + hint(name));
      return Optional.empty();
    }
    In in = root.named(name, kind.get());
    return switch (kind.get()) {
      case "*reservoir" -> Optional.of(reservoir(name, in));
      case "*hose" -> Optional.of(hose(name, in));
      default -> heatExchanger(name, in, item);
    };
  }

  private static String hint(String name) {
    String allowed = "allowed: core, pump, and names that end in reservoir, hose or heat-exchanger";
    return Nearest.to(name, KINDS).map(n -> "did you mean `" + n + "`? ").orElse("") + allowed;
  }

  private Optional<LoopElement> heatExchanger(String name, In in, Node item) {
    if (!in.present()) {
      if (!root.has(name)) {
        problem(
            item,
            "names `"
                + name
                + "`, so a section `"
                + name
                + ":` must say at least the size of its"
                + " face");
      }
      return Optional.empty();
    }
    return Optional.of(new ExchangerReader(in, day, coolant).heatExchanger(name));
  }

  private static Reservoir reservoir(String name, In in) {
    Reservoir reservoir =
        new Reservoir(name, in.number("volume"), in.number("surroundings-conductance"));
    in.done();
    return reservoir;
  }

  private static Hose hose(String name, In in) {
    Materials.HoseWall material =
        Materials.HoseWall.valueOf(in.choice("material").toUpperCase(Locale.ROOT));
    double length = in.number("length");
    double bore = in.number("bore");
    Hose hose =
        new Hose(
            name,
            length,
            bore,
            material.thick(in.number("wall")),
            in.number("outside-coefficient"),
            cells(in, Math.PI / 4 * bore * bore * length),
            in.count("layers"));
    in.done();
    return hose;
  }

  /** Returns the cells asked for, or else the usual ones, fewer in a hose that holds little. */
  private static int cells(In in, double volume) {
    int cells = in.count("cells");
    return in.has("cells") ? cells : Math.max(1, Math.min(cells, (int) (volume / CELL_VOLUME)));
  }

  private Pump pump() {
    In in = root.section("pump");
    Optional<Curve> curve = in.curve("curve");
    PumpDelivery delivery;
    if (curve.isPresent()) {
      in.refuse("flow", "has no use beside curve; give one or the other");
      delivery = fromCurve(in, curve.get());
    } else {
      delivery = new PumpDelivery.StatedFlow(in.number("flow"));
    }
    Pump pump = new Pump("pump", delivery, in.number("power"), in.number("coolant"));
    in.done();
    return pump;
  }

  private static PumpDelivery fromCurve(In in, Curve curve) {
    if (!in.context().hasProblems(in.path("curve"))) {
      try {
        return new PumpDelivery.FromCurve(curve);
      } catch (IllegalArgumentException e) {
        in.problem("curve", "is not a pump's: " + e.getMessage());
      }
    }
    return new PumpDelivery.StatedFlow(1e-3);
  }

  private PressureLoss resistance(boolean hasPump) {
    if (hasPump && !root.section("pump").has("curve")) {
      root.refuse(
          "plumbing",
          "has no use: the pump's flow does not come from a curve; give pump.curve, or take this"
              + " out");
      return Fallbacks.loop().resistance();
    }
    In in = root.section("plumbing");
    PressureLoss loss =
        new PressureLoss(in.number("pressure-loss"), in.number("at-flow"), in.number("exponent"));
    in.done();
    return loss;
  }

  private void problem(Node item, String message) {
    root.context().problem(item.mark(), "loop", message);
  }
}
