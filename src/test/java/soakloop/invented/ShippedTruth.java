package soakloop.invented;

import java.util.List;
import java.util.stream.IntStream;
import soakloop.invented.Outing.TruePull;

/** The true pulls of the shipped logs, as their sessions ask for them. */
public final class ShippedTruth {
  private ShippedTruth() {}

  /** Returns the true pulls of a log. */
  public static List<TruePull> pulls(String fileName) {
    for (InventedLog log : InventedLog.values()) {
      if (log.fileName().equals(fileName)) {
        return pulls(log.duty());
      }
    }
    throw new IllegalArgumentException("not shipped: " + fileName);
  }

  private static List<TruePull> pulls(Duty duty) {
    if (duty instanceof DynoDay day) {
      return IntStream.range(0, day.pulls())
          .mapToDouble(DynoDay::pullStart)
          .mapToObj(s -> new TruePull(s, s + DynoDay.PULL, DynoDay.FROM, DynoDay.TO, false))
          .toList();
    }
    double start = RoadHome.PULL_START;
    return List.of(new TruePull(start, start + RoadHome.PULL, RoadHome.FROM, RoadHome.TO, false));
  }
}
