package soakloop.versus;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Shares out a difference to what it comes from: each thing gets what it adds, averaged over all
 * orders in which things can be changed from one's to the other's. The shares sum to the whole, and
 * turn their signs where the two change places.
 *
 * <p>Source: L. S. Shapley, "A value for n-person games" (1953); from memory.
 */
final class Shapley {
  private Shapley() {}

  /** Returns all sets of some things: the one numbered by bits has those whose bits are set. */
  static List<List<Origin>> sets(List<Origin> things) {
    List<List<Origin>> sets = new ArrayList<>();
    for (int set = 0; set < 1 << things.size(); set++) {
      List<Origin> own = new ArrayList<>();
      for (int i = 0; i < things.size(); i++) {
        if ((set >> i & 1) == 1) {
          own.add(things.get(i));
        }
      }
      sets.add(own);
    }
    return sets;
  }

  /**
   * Shares out.
   *
   * @param things what can change
   * @param values the number with each set of them changed, as {@link #sets} has them
   */
  static Map<Origin, Double> of(List<Origin> things, double[] values) {
    int n = things.size();
    Map<Origin, Double> shares = new EnumMap<>(Origin.class);
    for (int i = 0; i < n; i++) {
      double share = 0;
      for (int set = 0; set < values.length; set++) {
        if ((set >> i & 1) == 0) {
          int size = Integer.bitCount(set);
          share += weight(size, n) * (values[set | 1 << i] - values[set]);
        }
      }
      shares.put(things.get(i), share);
    }
    return shares;
  }

  /** Share of the orders in which just a given set of so many comes before a given thing. */
  private static double weight(int size, int n) {
    double weight = 1.0 / n;
    for (int k = 1; k <= size; k++) {
      weight *= k / (double) (n - k);
    }
    return weight;
  }
}
