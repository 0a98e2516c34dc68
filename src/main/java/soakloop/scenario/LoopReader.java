package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.flow.Resistance;
import soakloop.fluid.Coolant;
import soakloop.rig.Branches;
import soakloop.rig.Day;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;

/** Reads the loop: its order, and each element by its name. */
final class LoopReader {
  private static final int MAX_ELEMENTS = 40;

  private final In root;
  private final PieceNames names;
  private final PieceReader pieces;
  private final Hydraulics hydraulics;
  private int stretches;

  LoopReader(In root, Day day, Coolant coolant) {
    this.root = root;
    this.names = new PieceNames(root);
    this.hydraulics = hydraulics(root);
    this.pieces = new PieceReader(root, day, coolant, hydraulics, names);
  }

  /** Finds out, before anything is read, which keys of pressure count. */
  private static Hydraulics hydraulics(In root) {
    boolean divides = root.peek("loop").stream().anyMatch(item -> item instanceof Node.Section);
    if (!PumpReader.pushes(root.section("pump"))) {
      return divides ? Hydraulics.PIECES : Hydraulics.NONE;
    }
    return root.has("plumbing") && !divides ? Hydraulics.PLUMBING : Hydraulics.PIECES;
  }

  Loop read() {
    List<Node> items = root.items("loop");
    if (items.isEmpty()) {
      names.ignoreAll();
    }
    List<LoopElement> elements = new ArrayList<>();
    for (Node item : items.subList(0, Math.min(items.size(), MAX_ELEMENTS))) {
      if (item instanceof Node.Section section) {
        parallel(section).ifPresent(elements::add);
      } else {
        names.take(item).flatMap(name -> pieces.read(name, item)).ifPresent(elements::add);
      }
    }
    if (items.size() > MAX_ELEMENTS) {
      root.problem("loop", "has more than " + MAX_ELEMENTS + " pieces");
    }
    names.require("core", items);
    names.require("pump", items);
    Optional<Resistance.KnownPoint> plumbing = plumbing();
    if (root.context().hasProblems()) {
      return Fallbacks.loop();
    }
    Stacking.check(elements, root);
    return root.context().hasProblems() ? Fallbacks.loop() : new Loop(elements, plumbing);
  }

  /** Reads ways side by side: a list of lists of names. */
  private Optional<LoopElement> parallel(Node.Section section) {
    stretches++;
    In in = root.item("loop", section);
    List<Node> items = in.items("parallel");
    List<List<LoopElement>> ways = new ArrayList<>();
    for (Node way : items.subList(0, Math.min(items.size(), MAX_ELEMENTS))) {
      ways.add(way(way));
    }
    if (!items.isEmpty() && items.size() < 2) {
      in.problem("parallel", "takes two lists of pieces at least, side by side");
    }
    in.done();
    return root.context().hasProblems()
        ? Optional.empty()
        : Optional.of(new Branches("parallel " + stretches, ways));
  }

  private List<LoopElement> way(Node way) {
    List<LoopElement> elements = new ArrayList<>();
    if (!(way instanceof Node.Items list) || list.items().isEmpty()) {
      if (way instanceof Node.Scalar name) {
        root.ignore(name.text());
      }
      names.problem(way, "has " + way.kind() + " in parallel; it takes lists of names of pieces");
      return elements;
    }
    for (Node item : list.items().subList(0, Math.min(list.items().size(), MAX_ELEMENTS))) {
      Optional<String> name = names.take(item);
      if (name.isPresent() && PieceNames.isSingle(name.get())) {
        names.problem(item, "has the " + name.get() + " in parallel; name it outside");
        root.ignore(name.get());
      } else {
        name.flatMap(n -> pieces.read(n, item)).ifPresent(elements::add);
      }
    }
    return elements;
  }

  private Optional<Resistance.KnownPoint> plumbing() {
    if (hydraulics == Hydraulics.PLUMBING) {
      In in = root.section("plumbing");
      Resistance.KnownPoint loss =
          new Resistance.KnownPoint(
              in.number("pressure-loss"), in.number("at-flow"), in.number("exponent"));
      in.done();
      return Optional.of(loss);
    }
    root.refuse(
        "plumbing",
        PumpReader.pushes(root.section("pump"))
            ? "cannot say how the flow divides among ways in parallel; take it out, and the pieces'"
                + " own losses count"
            : "has no use: the pump's flow does not come from a curve or label; give pump.curve or"
                + " pump.label, or take this out");
    return Optional.empty();
  }
}
