package soakloop.report;

import java.util.List;
import java.util.OptionalDouble;
import org.jfree.chart.axis.NumberAxis;
import soakloop.study.KeyRange;
import soakloop.study.Measure;
import soakloop.study.Variation;

/**
 * One result over two keys: a map in bands, the limit drawn through it, the scenario marked.
 *
 * @param variation the results
 * @param measure which of them
 * @param words how they are shown
 */
record VaryMap(Variation variation, Measure measure, VaryWords words) implements Chart {
  @Override
  public String name() {
    return VaryFiles.chart(measure);
  }

  @Override
  public String title() {
    return measure.label() + " over " + across().key() + " and " + up().key();
  }

  @Override
  public String caption() {
    String caption =
        "Each thin line joins places of equal "
            + lower(words.brief(measure))
            + ", in "
            + words.display().symbol(measure.dimension())
            + ".";
    if (variation.plan().limit(measure).isPresent()) {
      caption +=
          " The heavy line is the limit of "
              + words.show(measure, variation.plan().limit(measure).getAsDouble())
              + ": blue is under it, orange over it.";
    }
    if (across().coversOwn() && up().coversOwn()) {
      caption += " The ring is the scenario as it is";
      caption +=
          value(variation.own(measure), ", ") + value(variation.logged(measure), "; logged ");
      caption += ".";
    }
    if (!variation.holes().isEmpty()) {
      caption += " Where it is grey a run could not finish.";
    }
    return caption;
  }

  private String value(OptionalDouble value, String before) {
    return value.isPresent() ? before + words.show(measure, value.getAsDouble()) : "";
  }

  private static String lower(String text) {
    return text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
  }

  private KeyRange across() {
    return variation.plan().keys().get(0);
  }

  private KeyRange up() {
    return variation.plan().keys().get(1);
  }

  @Override
  public Figure figure(ChartStyle plain) {
    ChartStyle style = plain.narrow() ? plain.tall(1.1) : plain.tall(1.15);
    NumberAxis level = Axes.plain(style, words.axis(across(), style.narrow()));
    level.setRange(across().first(), across().last());
    PanelBuilder panel = new PanelBuilder(style, level, words.axis(up(), style.narrow()));
    double[] x = array(across());
    double[] y = array(up());
    double[][] z = grid();
    OptionalDouble limit = variation.plan().limit(measure);
    OptionalDouble split =
        limit.isPresent() ? OptionalDouble.of(words.shown(measure, limit.getAsDouble())) : limit;
    Bands bands = Bands.of(z, split);
    panel.backdrop(bands.image(x, y, z));
    MapLabels labels = new MapLabels(across(), up());
    for (double contour : bands.levels()) {
      Contours.of(x, y, z, contour).forEach(line -> panel.line("", line, Palette.QUIET, 1f));
    }
    if (split.isPresent()) {
      double at = split.getAsDouble();
      List<double[][]> lines = Contours.of(x, y, z, at);
      lines.forEach(line -> panel.line("", line, Palette.LIMIT, 3.2f));
      String text = "limit " + words.show(measure, limit.orElseThrow());
      labels.place(lines, text, style).ifPresent(p -> panel.on(p[0], p[1], text, Palette.LIMIT));
    }
    if (across().coversOwn() && up().coversOwn()) {
      double ownX = across().own().getAsDouble();
      double ownY = up().own().getAsDouble();
      String text = "scenario" + value(variation.own(measure), " ");
      panel.rings(new double[][] {{ownX}, {ownY}}, Palette.INK);
      panel.label(ownX, ownY, text, Palette.INK);
      labels.take(ownX, ownY, text, style);
    }
    for (double contour : bands.levels()) {
      String text = words.number(contour);
      labels
          .place(Contours.of(x, y, z, contour), text, style)
          .ifPresent(p -> panel.on(p[0], p[1], text, Palette.INK));
    }
    return new Figure(
        style,
        title(),
        variation.plan().scenario().title(),
        level,
        List.of(panel.exactly(up().first(), up().last())));
  }

  private static double[] array(KeyRange range) {
    return range.values().stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Returns the results in shown units at {@code [first key][second key]}. */
  double[][] grid() {
    double[][] z = new double[across().size()][up().size()];
    for (int i = 0; i < variation.points().size(); i++) {
      z[i / up().size()][i % up().size()] = words.shown(measure, variation.value(i, measure));
    }
    return z;
  }
}
