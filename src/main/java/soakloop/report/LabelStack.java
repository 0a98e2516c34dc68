package soakloop.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Finds places for labels that would lie over each other, each as near as can be to its own. */
final class LabelStack {
  private LabelStack() {}

  /**
   * Places labels along a line.
   *
   * @param wanted where each would like its middle
   * @param size room that each takes
   * @param low where the first may begin
   * @param high where the last must end; overstepped only if there is no room for all
   * @return the middle of each, in the order given
   */
  static double[] place(double[] wanted, double size, double low, double high) {
    List<Integer> order =
        IntStream.range(0, wanted.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> wanted[i]))
            .toList();
    List<Pile> piles = new ArrayList<>();
    for (int i : order) {
      piles.add(new Pile(wanted[i], 1));
      settle(piles, size, low, high);
    }
    double[] placed = new double[wanted.length];
    int next = 0;
    for (Pile pile : piles) {
      double at = pile.first(size, low, high);
      for (int k = 0; k < pile.count; k++) {
        placed[order.get(next++)] = at + k * size;
      }
    }
    return placed;
  }

  /** Joins the last piles for as long as they touch. */
  private static void settle(List<Pile> piles, double size, double low, double high) {
    while (piles.size() > 1) {
      Pile last = piles.get(piles.size() - 1);
      Pile before = piles.get(piles.size() - 2);
      double end = before.first(size, low, high) + before.count * size;
      if (end <= last.first(size, low, high)) {
        return;
      }
      piles.remove(piles.size() - 1);
      piles.set(piles.size() - 1, before.joined(last));
    }
  }

  /**
   * Labels that touch.
   *
   * @param middle mean of where they would like to be
   * @param count how many
   */
  private record Pile(double middle, int count) {
    Pile joined(Pile other) {
      int all = count + other.count;
      return new Pile((middle * count + other.middle * other.count) / all, all);
    }

    double first(double size, double low, double high) {
      double half = (count - 1) * size / 2;
      double at = Math.min(middle - half, high - size / 2 - 2 * half);
      return Math.max(at, low + size / 2);
    }
  }
}
