package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.study.KeyRange;

/** Finds places on the lines of a map where their names do not lie over each other. */
final class MapLabels {
  private static final double[] TRIED = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};

  /** Width of a letter and height of a line, over the font's size. */
  private static final double LETTER = 0.62;

  private static final double LINE = 1.5;

  private final KeyRange across;
  private final KeyRange up;
  private final List<double[]> taken = new ArrayList<>();

  MapLabels(KeyRange across, KeyRange up) {
    this.across = across;
    this.up = up;
  }

  /** Notes a name that stands to the right of a place, or to its left near the right edge. */
  void take(double x, double y, String text, ChartStyle style) {
    double width = width(text, style);
    double share = share(across, x);
    taken.add(new double[] {share + (share < 0.75 ? width : -width) / 2, share(up, y), width});
  }

  /**
   * Finds a place for a name on the longest of a level's lines, and takes it.
   *
   * @param lines the longest first
   * @param text the name
   * @param style what it is drawn for
   * @return x and y; empty if there is no room
   */
  Optional<double[]> place(List<double[][]> lines, String text, ChartStyle style) {
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    double[][] line = lines.get(0);
    double width = width(text, style);
    for (double where : TRIED) {
      int i = (int) Math.rint(where * (line[0].length - 1));
      double[] box = {share(across, line[0][i]), share(up, line[1][i]), width};
      double edge = height(style) / 2;
      boolean inside =
          box[0] >= width / 2 && box[0] <= 1 - width / 2 && box[1] >= edge && box[1] <= 1 - edge;
      if (inside && taken.stream().noneMatch(other -> touch(box, other, height(style)))) {
        taken.add(box);
        return Optional.of(new double[] {line[0][i], line[1][i]});
      }
    }
    return Optional.empty();
  }

  private static boolean touch(double[] a, double[] b, double height) {
    return Math.abs(a[0] - b[0]) < (a[2] + b[2]) / 2 && Math.abs(a[1] - b[1]) < height;
  }

  private static double width(String text, ChartStyle style) {
    return (text.length() + 1) * LETTER * style.fontSize() / style.width();
  }

  private static double height(ChartStyle style) {
    return LINE * style.fontSize() / style.height();
  }

  private static double share(KeyRange range, double value) {
    return (value - range.first()) / (range.last() - range.first());
  }
}
