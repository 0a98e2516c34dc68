package soakloop.fit;

import java.util.List;
import java.util.Map;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;

/**
 * Something that is fitted: a key of one or more scenarios, or what a sensor does to its reading.
 *
 * <p>Its place is counted in standard deviations of what was believed before, so that before any
 * log every place is normally distributed about 0 with deviation 1.
 *
 * @param name dotted path, or {@code bias} or {@code lag} and the signal; ends in the case's number
 *     if it is one case's own and there are several
 * @param means what it is, in words
 * @param dimension what it measures
 * @param assumed whether the scenario does not state it
 * @param before what was believed before, SI, with its 90 % interval
 * @param parts where it goes
 * @param role what it moves
 */
public record FitKey(
    String name,
    String means,
    Dimension dimension,
    boolean assumed,
    Estimate before,
    List<Part> parts,
    Role role) {
  /** Half the width of a 90 % interval in standard deviations. */
  static final double NINETY = 1.6448536269514722;

  /**
   * A value that moves.
   *
   * @param inCase index of the case whose scenario or sensor it belongs to
   * @param path at which the scenario takes it; empty for a sensor's bias
   * @param value its own, SI
   * @param scale on which it moves
   * @param deviation standard deviation on that scale
   */
  record Part(int inCase, String path, double value, Scale scale, double deviation) {
    double at(double place) {
      return place == 0 ? value : scale.at(scale.of(value) + place * deviation);
    }
  }

  /** Copies the list. */
  public FitKey {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException(name + ": nothing to move");
    }
  }

  /**
   * Makes the part of a value that is known to within its spread.
   *
   * @param inCase index of its case
   * @param path at which the scenario takes it
   * @param estimate value and 90 % half width, SI, above zero
   * @param low smallest value it may take
   * @param high largest
   */
  static Part part(int inCase, String path, Estimate estimate, double low, double high) {
    Scale scale = new Scale(low, high);
    double value = estimate.value();
    double room = estimate.spread() / 3;
    if (!(value > low)) {
      value = Math.min(low + room, (low + high) / 2);
    } else if (!(value < high)) {
      value = Math.max(high - room, (low + high) / 2);
    }
    double up = value + estimate.spread();
    double down = value - estimate.spread();
    double deviation;
    if (up < high && down > low) {
      deviation = (scale.of(up) - scale.of(down)) / (2 * NINETY);
    } else if (up < high) {
      deviation = (scale.of(up) - scale.of(value)) / NINETY;
    } else if (down > low) {
      deviation = (scale.of(value) - scale.of(down)) / NINETY;
    } else {
      deviation = 1.0;
    }
    return new Part(inCase, path, value, scale, deviation);
  }

  /** Returns the value at a place: of a curve, that of its first point; SI. */
  public double value(double place) {
    return parts.get(0).at(place);
  }

  /** Adds what the scenario of a case is given for a place. */
  void write(int inCase, double place, Map<String, String> changes) {
    for (Part part : parts) {
      if (part.inCase() == inCase && role instanceof Role.OfScenario) {
        changes.put(part.path(), Written.of(part.at(place), dimension));
      }
    }
  }

  /** Returns whether it is part of a case. */
  boolean isOf(int inCase) {
    return parts.stream().anyMatch(p -> p.inCase() == inCase);
  }

  /** Returns whether it moves a thing of a case's own sensor. */
  boolean moves(int inCase, Role what) {
    return role.equals(what) && isOf(inCase);
  }
}
