package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A gauge pressure made from the absolute one and the barometer, or the other way round, where a
 * log has only one of them.
 *
 * @param signal what was made
 * @param values Pa
 * @param column how it is told among the columns
 */
record DerivedPressure(Signal signal, Series values, Log.Column column) {
  private record Pair(Signal absolute, Signal gauge) {}

  private static final List<Pair> PAIRS =
      List.of(
          new Pair(Signal.MANIFOLD_PRESSURE, Signal.BOOST),
          new Pair(Signal.PRESSURE_BEFORE_CORE, Signal.BOOST_BEFORE_CORE));

  /** A pressure on the other scale. */
  record Moved(Series pressure, double by) implements Series {
    @Override
    public int size() {
      return pressure.size();
    }

    @Override
    public double at(int row) {
      return pressure.at(row) + by;
    }
  }

  /** Makes every pressure that lacks and can be made. */
  static List<DerivedPressure> of(Map<Signal, Series> values, Barometer barometer) {
    List<DerivedPressure> made = new ArrayList<>();
    for (Pair pair : PAIRS) {
      Series absolute = values.get(pair.absolute());
      Series gauge = values.get(pair.gauge());
      if (absolute != null && gauge == null) {
        Series moved = new Moved(absolute, -barometer.pascal());
        made.add(made(pair.absolute(), pair.gauge(), "less", moved, barometer));
      } else if (gauge != null && absolute == null) {
        Series moved = new Moved(gauge, barometer.pascal());
        made.add(made(pair.gauge(), pair.absolute(), "plus", moved, barometer));
      }
    }
    return made;
  }

  private static DerivedPressure made(
      Signal from, Signal to, String sign, Series values, Barometer barometer) {
    String reason =
        String.format(
            Locale.ROOT,
            "made from %s %s %.1f kPa, %s",
            from.key(),
            sign,
            barometer.pascal() / 1e3,
            barometer.from());
    String name = from.key() + " " + sign + " barometer";
    return new DerivedPressure(
        to, values, new Log.Column(name, Optional.of(to), "Pa", reason, barometer.confidence()));
  }

  /** Says that it was made. */
  Remark remark() {
    return new Remark(Remark.Kind.BAROMETER, 0, 0, signal.key() + " is " + column.remark());
  }
}
