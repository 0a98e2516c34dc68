package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soakloop.quantity.Curve;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.HeatExchanger;
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

  private final In root;
  private final Day day;

  LoopReader(In root, Day day) {
    this.root = root;
    this.day = day;
  }

  Loop read() {
    List<LoopElement> elements = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<Node> items = root.items("loop");
    for (Node item : items.subList(0, Math.min(items.size(), MAX_ELEMENTS))) {
      Optional<String> name = name(item, names);
      name.ifPresent(
          n -> {
            names.add(n);
            element(n, item).ifPresent(elements::add);
          });
    }
    if (items.size() > MAX_ELEMENTS) {
      root.problem("loop", "has more than " + MAX_ELEMENTS + " elements");
    }
    requireOne(names, "core", items);
    requireOne(names, "pump", items);
    PressureLoss resistance = resistance();
    if (root.context().hasProblems()) {
      return Fallbacks.loop();
    }
    return new Loop(elements, resistance);
  }

  private Optional<String> name(Node item, List<String> before) {
    if (!(item instanceof Node.Scalar scalar)) {
      root.context().problem(item.mark(), "loop", "has " + item.kind() + "; it takes names");
      return Optional.empty();
    }
    if (before.contains(scalar.text())) {
      root.context().problem(item.mark(), "loop", "has `" + scalar.text() + "` twice");
      return Optional.empty();
    }
    return Optional.of(scalar.text());
  }

  private void requireOne(List<String> names, String kind, List<Node> items) {
    if (!items.isEmpty() && !names.contains(kind)) {
      root.problem("loop", "has no " + kind);
    }
  }

  private Optional<LoopElement> element(String name, Node item) {
    if (name.equals("core")) {
      return Optional.of(new Core(name, new ExchangerReader(root.section("core"), day).core()));
    }
    if (name.equals("pump")) {
      return Optional.of(pump());
    }
    if (isKind(name, "reservoir")) {
      return Optional.of(reservoir(name));
    }
    if (isKind(name, "hose")) {
      return Optional.of(hose(name));
    }
    if (isKind(name, "heat-exchanger")) {
      In in = root.named(name, "*heat-exchanger");
      if (!in.present()) {
        root.problem("", "the loop names `" + name + "`, but there is no such section");
        return Optional.empty();
      }
      ExchangerReader reader = new ExchangerReader(in, day);
      double area = reader.faceArea();
      return Optional.of(new HeatExchanger(name, reader.heatExchanger(), area));
    }
    root.context()
        .problem(
            item.mark(),
            "loop",
            "found `"
                + name
                + "`; allowed: core, pump, and names that end in reservoir, hose or heat-exchanger");
    return Optional.empty();
  }

  private static boolean isKind(String name, String kind) {
    return name.equals(kind) || name.endsWith("-" + kind);
  }

  private Reservoir reservoir(String name) {
    In in = root.named(name, "*reservoir");
    Reservoir reservoir =
        new Reservoir(name, in.number("volume"), in.number("surroundings-conductance"));
    in.done();
    return reservoir;
  }

  private Hose hose(String name) {
    In in = root.named(name, "*hose");
    Materials.HoseWall material =
        Materials.HoseWall.valueOf(in.choice("material").toUpperCase(Locale.ROOT));
    Hose hose =
        new Hose(
            name,
            in.number("length"),
            in.number("bore"),
            material.thick(in.number("wall")),
            in.number("outside-coefficient"),
            in.count("cells"),
            in.count("layers"));
    in.done();
    return hose;
  }

  private Pump pump() {
    In in = root.section("pump");
    Optional<Curve> curve = in.curve("curve");
    PumpDelivery delivery = new PumpDelivery.StatedFlow(1e-3);
    if (curve.isPresent()) {
      if (in.optional("flow").isPresent()) {
        in.problem("curve", "takes the place of flow; give one or the other");
      }
      delivery = fromCurve(in, curve.get());
    } else {
      delivery = new PumpDelivery.StatedFlow(in.number("flow"));
    }
    Pump pump = new Pump("pump", delivery, in.number("power"), in.number("coolant"));
    in.done();
    return pump;
  }

  private static PumpDelivery fromCurve(In in, Curve curve) {
    try {
      return new PumpDelivery.FromCurve(curve);
    } catch (IllegalArgumentException e) {
      in.problem("curve", "is not a pump's: " + e.getMessage());
      return new PumpDelivery.StatedFlow(1e-3);
    }
  }

  private PressureLoss resistance() {
    In in = root.section("plumbing");
    boolean used = in.present() || (root.has("pump") && root.section("pump").has("curve"));
    if (!used) {
      return Fallbacks.loop().resistance();
    }
    PressureLoss loss =
        new PressureLoss(in.number("pressure-loss"), in.number("at-flow"), in.number("exponent"));
    in.done();
    return loss;
  }
}
