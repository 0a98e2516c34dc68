package soakloop.report;

import java.awt.Color;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.ui.RectangleInsets;

/** Makes axes that all look the same. */
final class Axes {
  static final Color CLEAR = new Color(255, 255, 255, 0);

  private static final double[] MINUTES = {0.5, 1, 2, 5, 10, 15, 20, 30, 60, 120, 240};

  private Axes() {}

  /** Returns an axis with integer or decimal steps as needed. */
  static NumberAxis plain(ChartStyle style, String label) {
    NumberAxis axis = new NumberAxis(label);
    axis.setAutoRangeIncludesZero(false);
    axis.setLabelFont(style.font());
    axis.setLabelPaint(Palette.INK);
    axis.setTickLabelFont(style.font());
    axis.setTickLabelPaint(Palette.INK);
    axis.setTickLabelInsets(new RectangleInsets(6, 4, 6, 4));
    axis.setNumberFormatOverride(
        new DecimalFormat("0.####", DecimalFormatSymbols.getInstance(Locale.ROOT)));
    axis.setAxisLinePaint(Palette.QUIET);
    axis.setTickMarkPaint(Palette.QUIET);
    return axis;
  }

  /** Returns the axis of a session's time. */
  static NumberAxis time(ChartStyle style, TimeScale scale) {
    NumberAxis axis = plain(style, "Time [" + scale.symbol() + "]");
    axis.setRange(scale.of(scale.from()), scale.of(scale.to()));
    if (scale.minutes()) {
      double span = (scale.to() - scale.from()) / 60;
      int most = style.narrow() ? 7 : 14;
      for (double step : MINUTES) {
        if (span / step <= most) {
          axis.setTickUnit(new NumberTickUnit(step));
          break;
        }
      }
    }
    return axis;
  }
}
