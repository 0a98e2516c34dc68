package soakloop.rig;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import soakloop.flow.Resistance;

/**
 * The coolant loop: its pieces in the order that the coolant meets them, closed from the last to
 * the first, and what the loop costs in pressure.
 *
 * @param elements one core and one pump among them, names all different
 * @param plumbing loss around the whole loop if that is known; otherwise the pieces' losses count
 */
public record Loop(List<LoopElement> elements, Optional<Resistance.KnownPoint> plumbing) {
  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if there is not just one core and one pump, or a name repeats
   */
  public Loop {
    elements = List.copyOf(elements);
    Set<String> names = new HashSet<>();
    for (LoopElement e : flat(elements)) {
      if (!names.add(e.name())) {
        throw new IllegalArgumentException("the loop has `" + e.name() + "` twice");
      }
    }
    only(elements, Core.class, "core");
    only(elements, Pump.class, "pump");
  }

  /** Returns the core. */
  public Core core() {
    return only(elements, Core.class, "core");
  }

  /** Returns the pump. */
  public Pump pump() {
    return only(elements, Pump.class, "pump");
  }

  /** Returns every piece, those in parallel one way after the other. */
  public List<LoopElement> pieces() {
    return flat(elements);
  }

  /** Returns the coolant in the whole loop, m3. */
  public double coolantVolume() {
    return elements.stream().mapToDouble(LoopElement::coolantVolume).sum();
  }

  /** Returns what the pump works against. */
  public Resistance resistance() {
    return plumbing.isPresent()
        ? plumbing.get()
        : new Resistance.Series(elements.stream().map(LoopElement::resistance).toList());
  }

  private static List<LoopElement> flat(List<LoopElement> elements) {
    return elements.stream()
        .flatMap(
            e -> e instanceof Branches b ? b.ways().stream().flatMap(List::stream) : Stream.of(e))
        .toList();
  }

  private static <T extends LoopElement> T only(
      List<LoopElement> elements, Class<T> kind, String what) {
    List<T> found = elements.stream().filter(kind::isInstance).map(kind::cast).toList();
    if (found.size() != 1) {
      throw new IllegalArgumentException("the loop needs one " + what + ", not " + found.size());
    }
    return found.get(0);
  }
}
