package soakloop.study;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * What a key does to a result by itself, all others as the scenario has them.
 *
 * @param key which
 * @param low result with the key at its lower end
 * @param high result with the key at its upper end
 * @param swing how far the result goes from its lowest to its highest over both ends and the
 *     scenario as it is, SI; 0 if neither end ran
 * @param indices what it does together with other keys, for the first keys
 */
public record Moved(UncertainKey key, End low, End high, double swing, Optional<Together> indices) {
  /** What became of one end. */
  public sealed interface End {
    /** Returns the result's change from the scenario as it is, SI; empty if it did not run. */
    OptionalDouble change();
  }

  /**
   * An end that ran.
   *
   * @param value the result, SI
   * @param own the result of the scenario as it is, SI
   */
  public record Ran(double value, double own) implements End {
    @Override
    public OptionalDouble change() {
      return OptionalDouble.of(value - own);
    }
  }

  /**
   * An end that could not be run.
   *
   * @param reason why, in plain words
   */
  public record Failed(String reason) implements End {
    @Override
    public OptionalDouble change() {
      return OptionalDouble.empty();
    }
  }

  /**
   * Shares of the result's variance while the first keys move together.
   *
   * @param alone share that goes if this key becomes known, 0 to 1
   * @param total share that stays if all of the others become known, 0 or more
   */
  public record Together(double alone, double total) {}

  /** Makes one from its ends. */
  static Moved of(UncertainKey key, End low, End high) {
    double[] changes =
        DoubleStream.concat(DoubleStream.of(0), changes(low, high)).sorted().toArray();
    return new Moved(key, low, high, changes[changes.length - 1] - changes[0], Optional.empty());
  }

  /** Returns the same with what it does together with others. */
  Moved with(Together together) {
    return new Moved(key, low, high, swing, Optional.of(together));
  }

  private static DoubleStream changes(End low, End high) {
    return DoubleStream.concat(low.change().stream(), high.change().stream());
  }
}
