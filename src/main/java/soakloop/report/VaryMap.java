package soakloop.report;

import java.awt.Color;
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
        "Lines are of equal " + lower(words.brief(measure)) + words.unit(measure) + ".";
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
    double[] levels = bands.levels();
    for (int i = 0; i < levels.length; i++) {
      contour(panel, Contours.of(x, y, z, levels[i]), levels[i], (i + 1.0) / (levels.length + 1));
    }
    if (split.isPresent()) {
      limit(panel, Contours.of(x, y, z, split.getAsDouble()), limit.getAsDouble());
    }
    if (across().coversOwn() && up().coversOwn()) {
      double ownX = across().own().getAsDouble();
      double ownY = up().own().getAsDouble();
      panel.rings(new double[][] {{ownX}, {ownY}}, Palette.INK);
      panel.label(ownX, ownY, "scenario" + value(variation.own(measure), " "), Palette.INK);
    }
    return new Figure(
        style,
        title(),
        variation.plan().scenario().title(),
        level,
        List.of(panel.exactly(up().first(), up().last())));
  }

  private void contour(PanelBuilder panel, List<double[][]> lines, double level, double where) {
    Color color = Palette.QUIET;
    lines.forEach(line -> panel.line("", line, color, 1f));
    if (!lines.isEmpty()) {
      double[][] longest = lines.get(0);
      int at = (int) (where * (longest[0].length - 1));
      panel.label(longest[0][at], longest[1][at], words.number(level), Palette.INK);
    }
  }

  private void limit(PanelBuilder panel, List<double[][]> lines, double limit) {
    lines.forEach(line -> panel.line("", line, Palette.LIMIT, 3.2f));
    if (!lines.isEmpty()) {
      double[][] longest = lines.get(0);
      int at = longest[0].length / 2;
      panel.label(
          longest[0][at], longest[1][at], "limit " + words.show(measure, limit), Palette.LIMIT);
    }
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
