package soakloop.invented;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import soakloop.invented.TruthLoop.Truth;
import soakloop.log.Signal;

/** Writes a session down row by row and keeps what a reader should have of it. */
final class DressWriter {
  private static final double OFF_UNTIL = 4;

  /** Where a header stands again, or a quote is broken. */
  private static final int ODD_ROW = 700;

  private final LogDress dress;
  private final DressSession session;
  private final List<DressChannel> channels;
  private final List<Truth> rows;
  private final DressTime time;
  private final DressPage page;
  private final DressHead head;
  private final List<Double> times = new ArrayList<>();
  private final Map<Signal, List<Double>> values = new EnumMap<>(Signal.class);
  private final Map<Signal, String> held = new EnumMap<>(Signal.class);
  private final Map<Signal, Double> heldValue = new EnumMap<>(Signal.class);

  DressWriter(LogDress dress) {
    this.dress = dress;
    this.session = dress.road() ? DressSession.ROAD : DressSession.DYNO;
    this.channels = DressChannel.all(dress.names());
    List<Truth> all = new ArrayList<>(session.truths());
    this.time = new DressTime(dress, all.get(0).time());
    if (dress.time() == LogDress.Time.GAP) {
      all.removeIf(t -> t.time() > 60 && t.time() < 130);
    }
    if (dress.time() == LogDress.Time.REVERSED) {
      Collections.reverse(all);
    }
    this.rows = all;
    this.page = new DressPage(dress);
    this.head = new DressHead(dress, time, channels, page);
    channels.forEach(c -> values.put(c.signal(), new ArrayList<>()));
  }

  DressedLog write() {
    head.write();
    for (int i = 0; i < rows.size(); i++) {
      row(i);
    }
    if (dress.time() == LogDress.Time.REVERSED) {
      Collections.reverse(times);
      values.values().forEach(Collections::reverse);
    }
    Map<Signal, double[]> expected = new EnumMap<>(Signal.class);
    values.forEach((s, list) -> expected.put(s, plain(list)));
    Map<Signal, Double> grain = new EnumMap<>(Signal.class);
    channels.forEach(c -> grain.put(c.signal(), c.grain(dress)));
    List<double[]> pulls =
        session.pulls().stream()
            .map(p -> new double[] {time.read(p[0]), time.read(p[0]) + p[1] - p[0]})
            .toList();
    return new DressedLog(
        page.bytes(), plain(times), expected, grain, time.grain(), pulls, session.barometer());
  }

  private static double[] plain(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void row(int i) {
    Truth truth = rows.get(i);
    times.add(time.read(truth.time()));
    if (dress.extra() == LogDress.Extra.LONG) {
      for (DressChannel c : channels) {
        page.line(List.of(time.cell(truth.time()), c.name(), cell(c, i, truth), c.symbol(dress)));
      }
      return;
    }
    List<String> cells = new ArrayList<>();
    if (dress.extra() == LogDress.Extra.INDEX) {
      cells.add(Integer.toString(i));
    }
    if (dress.time() != LogDress.Time.ABSENT) {
      cells.add(time.cell(truth.time()));
    }
    channels.forEach(c -> cells.add(cell(c, i, truth)));
    switch (dress.extra()) {
      case TRAILING -> Collections.addAll(cells, "", "", "");
      case DUPLICATES -> Collections.addAll(cells, "1", "2");
      case NAMELESS -> cells.add("7");
      case TEXTS -> Collections.addAll(cells, i % 3 == 0 ? "idle" : "load", "on");
      case BROKEN_QUOTE -> {
        if (i == ODD_ROW) {
          cells.set(2, "\"" + cells.get(2));
        }
      }
      default -> {}
    }
    page.line(cells);
    if (dress.time() == LogDress.Time.REPEATS && i % 50 == 0) {
      page.line(cells);
    }
    if (dress.extra() == LogDress.Extra.REPEATED_HEADER && i == ODD_ROW) {
      head.names();
    }
  }

  /** Writes a channel's cell and keeps what a reader should have of it. */
  private String cell(DressChannel c, int i, Truth truth) {
    double si = si(c, truth);
    boolean left = dress.missing().length() > 0 && (i + c.name().length()) % 17 == 0;
    boolean polled = dress.extra() == LogDress.Extra.POLLED || dress.extra() == LogDress.Extra.HELD;
    boolean turn = !polled || i % channels.size() == channels.indexOf(c);
    if (turn && !left) {
      held.put(c.signal(), shown(c, si));
      heldValue.put(c.signal(), si);
    }
    boolean says = (turn && !left) || dress.extra() == LogDress.Extra.HELD;
    values
        .computeIfAbsent(c.signal(), s -> new ArrayList<>())
        .add(says ? heldValue.getOrDefault(c.signal(), Double.NaN) : Double.NaN);
    return says ? held.getOrDefault(c.signal(), "") : left ? dress.missing() : "";
  }

  private String shown(DressChannel c, double si) {
    if (c.decimals() == DressChannel.STATE) {
      return si > 0.5 ? "on" : "off";
    }
    String symbol = c.symbol(dress);
    String suffix =
        symbol.isEmpty()
            ? ""
            : switch (dress.units()) {
              case CELLS -> symbol.replaceFirst("deg(?=.)", "");
              case SPACED_CELLS -> " " + symbol;
              default -> "";
            };
    return dress.number(c.unit(dress).fromSi(si), c.decimals()) + suffix;
  }

  private double si(DressChannel c, Truth truth) {
    if (dress.extra() == LogDress.Extra.ENGINE_OFF && truth.time() < OFF_UNTIL) {
      switch (c.signal()) {
        case ENGINE_SPEED, BOOST -> {
          return 0;
        }
        case MANIFOLD_PRESSURE -> {
          return session.barometer();
        }
        default -> {}
      }
    }
    return c.si().at(session, truth);
  }
}
