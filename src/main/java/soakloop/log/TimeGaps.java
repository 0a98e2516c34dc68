package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds stretches of time without rows. */
final class TimeGaps {
  /** A gap is so many usual steps, and at least as long as the next. */
  private static final double STEPS = 5;

  /** Shortest gap worth a word, s. */
  private static final double SHORTEST = 1;

  private static final int MOST_REMARKS = 20;

  private TimeGaps() {}

  /**
   * Finds the gaps but for those between two runs of one file.
   *
   * @param lines the file's line of each of its rows
   * @param step usual step, s
   */
  static List<Remark> of(TimeAxis axis, Series lines, double step) {
    Set<Long> restarts =
        axis.remarks().stream()
            .filter(r -> r.kind() == Remark.Kind.TIME_RESTARTS)
            .map(Remark::firstRow)
            .collect(Collectors.toSet());
    List<Remark> gaps = new ArrayList<>();
    Series time = axis.time();
    for (int i = 1; i < time.size() && gaps.size() < MOST_REMARKS; i++) {
      double gap = time.at(i) - time.at(i - 1);
      if (gap > SHORTEST && gap > STEPS * step) {
        long before = (long) lines.at(axis.row(i - 1));
        long after = (long) lines.at(axis.row(i));
        if (!restarts.contains(after)) {
          gaps.add(
              new Remark(
                  Remark.Kind.TIME_GAP,
                  before,
                  after,
                  String.format(
                      Locale.ROOT,
                      "%.1f s without rows between rows %d and %d",
                      gap,
                      before,
                      after)));
        }
      }
    }
    return gaps;
  }
}
