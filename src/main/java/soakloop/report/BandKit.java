package soakloop.report;

import java.awt.Color;
import java.util.List;
import java.util.function.ToDoubleFunction;
import soakloop.fit.Band;
import soakloop.fit.RunBands;
import soakloop.simulate.Channel;

/** Lays bands behind the lines of a panel. */
final class BandKit {
  private BandKit() {}

  /** Lays the band of a channel over the session's time. */
  static void lay(PanelBuilder panel, ChartKit kit, RunBands bands, Channel channel, Color color) {
    List<Band> course = bands.courses().getOrDefault(channel, List.of());
    lay(
        panel,
        line(kit, bands, course, channel, Band::high),
        line(kit, bands, course, channel, Band::low),
        color);
  }

  private static double[][] line(
      ChartKit kit,
      RunBands bands,
      List<Band> course,
      Channel channel,
      ToDoubleFunction<Band> side) {
    double[] x = bands.times().stream().mapToDouble(kit.time()::of).toArray();
    double[] y =
        course.stream()
            .mapToDouble(b -> kit.shown(side.applyAsDouble(b), channel.dimension()))
            .toArray();
    return new double[][] {x, y};
  }

  /** Lays a band, piece by piece where it is broken. */
  static void lay(PanelBuilder panel, double[][] upper, double[][] lower, Color color) {
    int from = 0;
    while (from < upper[0].length) {
      int to = from;
      while (to < upper[0].length
          && Double.isFinite(upper[1][to])
          && Double.isFinite(lower[1][to])) {
        to++;
      }
      if (to - from > 1) {
        panel.between(piece(upper, from, to), piece(lower, from, to), color);
      }
      from = to + 1;
    }
  }

  private static double[][] piece(double[][] line, int from, int to) {
    double[][] piece = new double[2][];
    for (int k = 0; k < 2; k++) {
      piece[k] = java.util.Arrays.copyOfRange(line[k], from, to);
    }
    return piece;
  }
}
