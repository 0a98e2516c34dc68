package soakloop.scenario;

import java.util.List;
import java.util.SplittableRandom;

/** Draws by a seed, with the turns of phrase that the random scenarios need. */
final class Draw {
  private final SplittableRandom random;

  Draw(long seed) {
    random = new SplittableRandom(seed);
  }

  /** Returns true so often, 0 to 1. */
  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** Returns a number between two, evenly spread. */
  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Returns a number between two above zero, evenly spread over their logarithm. */
  double across(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  /** Returns a whole number from one to another, both possible. */
  int count(int low, int high) {
    return random.nextInt(low, high + 1);
  }

  /** Returns one of them. */
  <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
