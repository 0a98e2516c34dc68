package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.quantity.Dimension;
import soakloop.simulate.LoopPoint;
import soakloop.study.LoopHydraulics;

/** What each piece of the loop takes of the pump's pressure, cold and running. */
final class LoopTable {
  private LoopTable() {}

  static Table of(LoopHydraulics hydraulics, Display display) {
    LoopPoint cold = hydraulics.cold();
    LoopPoint running = hydraulics.running();
    List<List<String>> rows = new ArrayList<>();
    for (LoopPoint.Part part : running.parts()) {
      rows.add(
          List.of(
              part.name(),
              pressure(part.loss(), display),
              share(part.loss(), running, display),
              pressure(loss(cold, part.name()), display),
              share(loss(cold, part.name()), cold, display)));
    }
    rows.add(
        List.of(
            "all, at "
                + display.show(running.flow(), Dimension.VOLUME_FLOW, 1)
                + " and "
                + display.show(cold.flow(), Dimension.VOLUME_FLOW, 1)
                + " cold",
            pressure(running.loss(), display),
            "",
            pressure(cold.loss(), display),
            ""));
    String unit = " [" + display.symbol(Dimension.PRESSURE_DIFFERENCE) + "]";
    return new Table(
        List.of(
            "Piece",
            "At " + display.temperature(running.temperature()) + unit,
            "Share",
            "At " + display.temperature(cold.temperature()) + unit,
            "Share"),
        rows,
        1,
        4);
  }

  private static double loss(LoopPoint point, String name) {
    return point.parts().stream()
        .filter(part -> part.name().equals(name))
        .mapToDouble(LoopPoint.Part::loss)
        .sum();
  }

  private static String pressure(double loss, Display display) {
    return display.number(loss, Dimension.PRESSURE_DIFFERENCE, 1);
  }

  private static String share(double loss, LoopPoint point, Display display) {
    return point.loss() > 0 ? display.show(loss / point.loss(), Dimension.FRACTION, 0) : "";
  }
}
