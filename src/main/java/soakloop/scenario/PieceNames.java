package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The names that a loop has called its pieces by, and what is wrong with them. */
final class PieceNames {
  private static final List<String> KINDS =
      List.of("core", "pump", "reservoir", "hose", "heat-exchanger", "chiller");

  private final In root;
  private final List<String> taken = new ArrayList<>();

  PieceNames(In root) {
    this.root = root;
  }

  /** Returns whether a loop has just one of it. */
  static boolean isSingle(String name) {
    return name.equals("core") || name.equals("pump");
  }

  /** Takes a name from the list; notes what is no name, or was there before. */
  Optional<String> take(Node item) {
    if (!(item instanceof Node.Scalar scalar)) {
      problem(item, "has " + item.kind() + " where the name of a piece should be");
      return Optional.empty();
    }
    if (taken.contains(scalar.text())) {
      problem(
          item,
          "names `"
              + scalar.shown()
              + "` twice; "
              + (isSingle(scalar.text())
                  ? "a loop has one"
                  : "a second one needs a name of its own"));
      return Optional.empty();
    }
    taken.add(scalar.text());
    return Optional.of(scalar.text());
  }

  /** Notes that a piece is missing, unless nothing could be read. */
  void require(String kind, List<Node> items) {
    if (taken.contains(kind)) {
      return;
    }
    root.ignore(kind);
    if (!items.isEmpty()) {
      root.problem("loop", "has no " + kind + "; name it where the coolant meets it");
    }
  }

  /** Lets all pieces be where there is no loop to be read. */
  void ignoreAll() {
    for (Node.Entry entry : root.entries()) {
      KeyTable.get().kindOf(entry.key()).ifPresent(kind -> root.ignore(entry.key()));
    }
  }

  void problem(Node item, String message) {
    root.context().problem(item.mark(), "loop", message);
  }

  /** Says what was found in place of a piece. */
  void unknown(String name, Node item) {
    String allowed =
        "allowed: core, pump, and names that end in reservoir, hose, heat-exchanger or chiller";
    problem(
        item,
        "found `"
            + Node.Scalar.shown(name)
            + "`; "
            + Nearest.to(name, KINDS).map(n -> "did you mean `" + n + "`? ").orElse("")
            + allowed);
  }
}
