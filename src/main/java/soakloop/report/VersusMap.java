package soakloop.report;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.jfree.chart.axis.NumberAxis;
import soakloop.quantity.Dimension;
import soakloop.versus.VersusResult;

/**
 * The difference of two over ambient and boost, with what cannot be told apart marked.
 *
 * @param result what is drawn
 * @param pairing index of the pairing
 * @param display how numbers are shown
 */
record VersusMap(VersusResult result, int pairing, Display display) implements Chart {
  @Override
  public String name() {
    return "versus-map" + (pairing == 0 ? "" : "-" + (pairing + 1));
  }

  private VersusResult.Pairing pair() {
    return result.pairings().get(pairing);
  }

  @Override
  public String title() {
    VersusWords words = new VersusWords(result, display);
    return words.label(pair().other())
        + " less "
        + words.label(pair().one())
        + " over ambient and boost";
  }

  @Override
  public String caption() {
    long open = pair().grid().stream().filter(this::isOpen).count();
    String marks =
        open == 0
            ? " At every point that was run the two are told apart."
            : open == pair().grid().size()
                ? " Rings: at none of the points that were run can the two be told apart."
                : " Rings mark points at which the two cannot be told apart.";
    return "Thin lines join equal differences, in "
        + display.symbol(Dimension.TEMPERATURE_DIFFERENCE)
        + "; blue: "
        + new VersusWords(result, display).label(pair().other())
        + " is cooler."
        + marks;
  }

  /** Returns whether the grid is whole, so that a map can be drawn. */
  boolean hasSomething() {
    return axis(true).length > 1
        && axis(false).length > 1
        && pair().grid().size() == axis(true).length * axis(false).length;
  }

  private boolean isOpen(VersusResult.Elsewhere there) {
    double better = there.difference().better();
    return Math.max(better, 1 - better) < result.plan().confidence();
  }

  private double[] axis(boolean ambient) {
    TreeSet<Double> values = new TreeSet<>();
    pair().grid().forEach(g -> values.add(ambient ? g.ambient() : shownBoost(g)));
    // What differs by rounding alone is one value.
    List<Double> apart = new ArrayList<>();
    for (double value : values) {
      if (apart.isEmpty() || value - apart.get(apart.size() - 1) > 1e-6 * Math.abs(value)) {
        apart.add(value);
      }
    }
    return apart.stream().mapToDouble(v -> ambient ? shown(v, Dimension.TEMPERATURE) : v).toArray();
  }

  private double shownBoost(VersusResult.Elsewhere there) {
    return shown(there.boost(), Dimension.GAUGE_PRESSURE);
  }

  private double shown(double si, Dimension dimension) {
    return display.units().unit(dimension).fromSi(si);
  }

  @Override
  public Figure figure(ChartStyle plain) {
    ChartStyle style = plain.narrow() ? plain : plain.tall(1.1);
    double[] x = axis(true);
    double[] y = axis(false);
    double[][] z = new double[x.length][y.length];
    double[][] rings = new double[2][];
    List<double[]> open = new ArrayList<>();
    for (int i = 0; i < pair().grid().size(); i++) {
      VersusResult.Elsewhere there = pair().grid().get(i);
      z[i / y.length][i % y.length] =
          shown(there.difference().by().middle(), Dimension.TEMPERATURE_DIFFERENCE);
      if (isOpen(there)) {
        open.add(new double[] {x[i / y.length], y[i % y.length]});
      }
    }
    rings[0] = open.stream().mapToDouble(p -> p[0]).toArray();
    rings[1] = open.stream().mapToDouble(p -> p[1]).toArray();
    NumberAxis level = Axes.plain(style, "Day [" + display.symbol(Dimension.TEMPERATURE) + "]");
    level.setRange(x[0], x[x.length - 1]);
    PanelBuilder panel =
        new PanelBuilder(style, level, "Boost [" + display.symbol(Dimension.GAUGE_PRESSURE) + "]");
    Bands bands = Bands.of(z, OptionalDouble.of(0));
    panel.backdrop(bands.image(x, y, z));
    for (double contour : bands.levels()) {
      List<double[][]> lines = Contours.of(x, y, z, contour);
      lines.forEach(line -> panel.line("", line, Palette.QUIET, 1f));
      if (!lines.isEmpty()) {
        double[][] line = lines.get(0);
        int middle = line[0].length / 2;
        panel.on(
            line[0][middle],
            line[1][middle],
            new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT))
                .format(contour),
            Palette.INK);
      }
    }
    Contours.of(x, y, z, 0).forEach(line -> panel.line("", line, Palette.LIMIT, 3.2f));
    if (!open.isEmpty()) {
      panel.rings(rings, Palette.INK);
    }
    return new Figure(
        style,
        title(),
        new VersusWords(result, display).deciding(),
        level,
        List.of(panel.exactly(y[0], y[y.length - 1])));
  }
}
