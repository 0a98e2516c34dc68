package soakloop.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import soakloop.log.Log;
import soakloop.log.LogException;
import soakloop.log.Remark;
import soakloop.log.Signal;

/**
 * Joins two logs of one session, such as an engine's log and a dyno's file, by their engine speeds.
 * Remarks of both stay, with their file's name; their rows are that file's.
 *
 * @param log all rows of both in the first log's time; a signal that both have is the first's
 * @param match how they were laid over each other
 */
public record LogJoin(Log log, RpmMatch match) {
  /** Misfit, of the climb, over which two logs are not of one session [-]. */
  private static final double STRANGERS = 0.05;

  /** Rows closer than this are one, s. */
  private static final double SAME_ROW = 1e-6;

  /**
   * Joins two logs.
   *
   * @param first whose time counts; it must cover the second's climbs of engine speed
   * @param second the other
   * @param about what is roughly added to the second's time, s, if known: it chooses among pulls
   *     that are alike
   * @throws LogException if one lacks engine speed, or no stretch of the first follows the second's
   */
  public static LogJoin of(Log first, Log second, OptionalDouble about) throws LogException {
    Updates course = speed(first);
    Updates other = speed(second);
    double rows = Math.hypot(rowSpacing(first), rowSpacing(second)) / Math.sqrt(12);
    RpmMatcher matcher = new RpmMatcher(course, other, rows);
    if (!matcher.climbs()) {
      throw problem(second.name() + ": engine speed never climbs by 800 rpm; it holds no pull");
    }
    if (!matcher.fits()) {
      throw problem(
          second.name()
              + ": its pulls do not fit into the time of "
              + first.name()
              + ", which must cover them");
    }
    RpmMatch match =
        matcher
            .find(about)
            .filter(m -> m.misfit() <= STRANGERS * matcher.range())
            .orElseThrow(
                () ->
                    problem(
                        second.name()
                            + ": its engine speed follows that of "
                            + first.name()
                            + " nowhere. Are both of one session? A file whose clock stops"
                            + " between pulls must be joined pull by pull"));
    return new LogJoin(merged(first, second, match), match);
  }

  private static LogException problem(String what) {
    return new LogException(List.of(what));
  }

  private static Updates speed(Log log) throws LogException {
    Updates speed = Channels.of(log).updates(Signal.ENGINE_SPEED);
    if (speed.size() < 3) {
      throw problem(log.name() + ": has no engine speed, by which two logs are joined");
    }
    return speed;
  }

  private static double rowSpacing(Log log) {
    double[] steps = new double[log.size() - 1];
    Arrays.setAll(steps, i -> log.time(i + 1) - log.time(i));
    return Numbers.median(steps);
  }

  private static Log merged(Log first, Log second, RpmMatch match) {
    TreeMap<Double, int[]> rows = new TreeMap<>();
    for (int i = 0; i < first.size(); i++) {
      rows.put(first.time(i), new int[] {i, -1});
    }
    for (int i = 0; i < second.size(); i++) {
      double time = match.toFirst(second.time(i));
      Double near = rows.floorKey(time + SAME_ROW);
      if (near != null && time - near < SAME_ROW) {
        rows.put(near, new int[] {rows.getOrDefault(near, new int[] {-1, -1})[0], i});
      } else {
        rows.put(time, new int[] {-1, i});
      }
    }
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    for (Signal signal : Signal.values()) {
      if (first.has(signal)) {
        values.put(signal, column(rows, first, signal, 0));
      } else if (second.has(signal)) {
        values.put(signal, column(rows, second, signal, 1));
      }
    }
    List<Log.Column> columns = new ArrayList<>(first.columns());
    second.columns().stream()
        .filter(c -> c.signal().filter(s -> s != Signal.TIME && !first.has(s)).isPresent())
        .forEach(columns::add);
    List<String> notes = new ArrayList<>(first.notes());
    notes.addAll(second.notes());
    double[] time = rows.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    List<Remark> remarks = new ArrayList<>();
    first.remarks().forEach(r -> remarks.add(r.of(first.name())));
    second.remarks().forEach(r -> remarks.add(r.of(second.name())));
    return new Log(first.name() + " + " + second.name(), time, values, columns, notes)
        .withRemarks(remarks);
  }

  private static double[] column(TreeMap<Double, int[]> rows, Log log, Signal signal, int place) {
    return rows.values().stream()
        .mapToDouble(pair -> pair[place] < 0 ? Double.NaN : log.value(signal, pair[place]))
        .toArray();
  }
}
