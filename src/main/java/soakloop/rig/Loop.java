package soakloop.rig;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The coolant loop: its pieces in the order that the coolant meets them, closed from the last to
 * the first, and what the loop costs in pressure.
 *
 * @param elements one core and one pump among them, names all different
 * @param resistance loss around the loop, met by a pump that is described by its curve
 */
public record Loop(List<LoopElement> elements, PressureLoss resistance) {
  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if there is not just one core and one pump, or a name repeats
   */
  public Loop {
    elements = List.copyOf(elements);
    Set<String> names = new HashSet<>();
    for (LoopElement e : elements) {
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

  /** Returns the coolant in the whole loop, m3. */
  public double coolantVolume() {
    return elements.stream().mapToDouble(LoopElement::coolantVolume).sum();
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
