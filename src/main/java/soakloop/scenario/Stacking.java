package soakloop.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import soakloop.rig.Branches;
import soakloop.rig.HeatExchanger;
import soakloop.rig.LoopElement;

/** Checks that what stands behind a heat exchanger stands behind one of the loop's. */
final class Stacking {
  private Stacking() {}

  /** Notes a heat exchanger that stands behind nothing, or behind itself by some way round. */
  static void check(List<LoopElement> elements, In root) {
    Map<String, HeatExchanger> all = new HashMap<>();
    elements.stream()
        .flatMap(
            e -> e instanceof Branches b ? b.ways().stream().flatMap(List::stream) : Stream.of(e))
        .filter(HeatExchanger.class::isInstance)
        .map(HeatExchanger.class::cast)
        .forEach(x -> all.put(x.name(), x));
    for (HeatExchanger exchanger : all.values()) {
      Optional<String> front = exchanger.behind();
      if (front.isEmpty()) {
        continue;
      }
      In in = root.named(exchanger.name(), "*heat-exchanger");
      if (!all.containsKey(front.get()) || front.get().equals(exchanger.name())) {
        TreeSet<String> others = new TreeSet<>(all.keySet());
        others.remove(exchanger.name());
        in.problem(
            "behind",
            "found `"
                + Node.Scalar.shown(front.get())
                + "`; "
                + (others.isEmpty()
                    ? "there is no other heat exchanger in the loop"
                    : "allowed: " + Wanted.oneOf(List.copyOf(others))));
      } else if (goesRound(exchanger, all)) {
        in.problem("behind", "leads back to this heat exchanger; one must meet fresh air");
      }
    }
  }

  private static boolean goesRound(HeatExchanger from, Map<String, HeatExchanger> all) {
    Optional<HeatExchanger> next = Optional.of(from);
    for (int i = 0; i <= all.size() && next.isPresent(); i++) {
      next = next.flatMap(HeatExchanger::behind).map(all::get);
    }
    return next.isPresent();
  }
}
