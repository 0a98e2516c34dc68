package soakloop.report;

import java.util.Locale;
import java.util.Map;
import soakloop.fit.Band;
import soakloop.quantity.Dimension;
import soakloop.versus.Difference;
import soakloop.versus.PullFigure;
import soakloop.versus.VersusResult;

/**
 * How a comparison's numbers are said.
 *
 * @param result what it gave
 * @param display how numbers are shown
 */
record VersusWords(VersusResult result, Display display) {
  private static final Band NONE = new Band(Double.NaN, Double.NaN, Double.NaN);

  /** Probabilities beyond this are not told apart. */
  private static final double SURE = 0.999;

  /** Half the width of a 90 % interval in standard deviations. */
  private static final double NINETY = 1.645;

  String label(int contender) {
    return result.plan().contenders().get(contender).label();
  }

  /** Returns what was swapped, such as "core". */
  String swapped() {
    return LogWords.listed(result.plan().swapped());
  }

  /** Returns a figure of a contender's pull with its interval; a dash if it is not modelled. */
  String figure(Map<PullFigure, Band> figures, PullFigure figure) {
    Band band = figures.getOrDefault(figure, NONE);
    if (!Double.isFinite(band.middle())) {
      return Display.NOTHING;
    }
    return band.half() == 0
        ? display.show(band.middle(), figure.dimension(), 1)
        : new FitWords(display).known(band, figure.dimension());
  }

  /** Returns a difference with its sign and interval; a dash if there is none. */
  String difference(Difference difference, PullFigure figure) {
    return difference.isKnown() ? signed(difference.by(), figure.dimension()) : Display.NOTHING;
  }

  /** Returns a difference of a dimension with its sign and half its interval. */
  String signed(Band band, Dimension dimension) {
    if (band.half() == 0) {
      String sign = band.middle() > 0 ? "+" : "";
      return sign + display.show(band.middle(), dimension.ofSpread(), 1);
    }
    String plain = new FitWords(display).known(band, dimension.ofSpread());
    return band.middle() > 0 && !plain.matches("[-0.]*0 .*") ? "+" + plain : plain;
  }

  /** Returns the size of a difference with half its interval. */
  String size(Band band, Dimension dimension) {
    Band turned = band.middle() < 0 ? new Band(-band.high(), -band.middle(), -band.low()) : band;
    return new FitWords(display).known(turned, dimension.ofSpread());
  }

  /** Returns a probability in words. */
  static String sure(double probability) {
    if (probability > SURE) {
      return ">99.9 %";
    }
    if (probability < 1 - SURE) {
      return "<0.1 %";
    }
    boolean fine = probability > 0.99 || probability < 0.01;
    return String.format(Locale.ROOT, fine ? "%.1f %%" : "%.0f %%", 100 * probability);
  }

  /** Returns a temperature difference in tenths. */
  String degrees(double kelvin) {
    return display.fineDifference(kelvin);
  }

  /** Returns half a 90 % interval of a temperature difference. */
  String half(double deviation) {
    return display.fineSize(NINETY * deviation);
  }

  /** Returns the name of other conditions as a sentence begins. */
  String conditions(VersusResult.Elsewhere there) {
    String name = display.plain() ? there.name() : there.name().replace("degF", "\u00b0F");
    return Display.sentenceStart(name);
  }

  /** Returns what decides, such as "charge at the counted end of pull 5". */
  String deciding() {
    PullFigure by = result.plan().by();
    String of = by == PullFigure.RISE ? " in " : " of ";
    return by.label() + of + lastPull();
  }

  String lastPull() {
    var pulls = result.contenders().get(0).pulls();
    return pulls.get(pulls.size() - 1);
  }
}
