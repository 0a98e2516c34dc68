package soakloop.rig;

import java.util.List;
import soakloop.flow.Parallel;
import soakloop.flow.Resistance;

/**
 * Ways side by side: the flow divides so that all lose the same pressure, and mixes where they
 * join.
 *
 * @param name for messages
 * @param ways two or more, each with its pieces in order; none with core, pump or ways of its own
 */
public record Branches(String name, List<List<LoopElement>> ways) implements LoopElement {
  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if there are fewer than two ways, one is empty, or a piece may
   *     not stand there
   */
  public Branches {
    ways = ways.stream().map(List::copyOf).toList();
    if (ways.size() < 2 || ways.stream().anyMatch(List::isEmpty)) {
      throw new IllegalArgumentException("parallel takes two ways or more, none empty");
    }
    for (LoopElement e : ways.stream().flatMap(List::stream).toList()) {
      if (e instanceof Core || e instanceof Pump || e instanceof Branches) {
        throw new IllegalArgumentException("`" + e.name() + "` cannot stand in parallel");
      }
    }
  }

  @Override
  public double coolantVolume() {
    return ways.stream().flatMap(List::stream).mapToDouble(LoopElement::coolantVolume).sum();
  }

  @Override
  public Parallel resistance() {
    return new Parallel(
        ways.stream()
            .<Resistance>map(
                way -> new Resistance.Series(way.stream().map(LoopElement::resistance).toList()))
            .toList());
  }
}
