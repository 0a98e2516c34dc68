package soakloop.study;

import java.util.List;
import java.util.stream.IntStream;

/** Picks a few of many, with both ends. */
public final class Evenly {
  private Evenly() {}

  /**
   * Returns indices spread over a row.
   *
   * @param size how many there are, at least one
   * @param most how many to pick at most, at least two
   * @return rising, each once, the first and the last among them
   */
  public static List<Integer> pick(int size, int most) {
    int count = Math.min(size, most);
    return IntStream.range(0, count)
        .map(i -> count == 1 ? 0 : (int) Math.rint((double) i * (size - 1) / (count - 1)))
        .distinct()
        .boxed()
        .toList();
  }
}
