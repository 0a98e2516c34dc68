package soakloop.report;

import java.awt.Font;

/**
 * What a chart is drawn for.
 *
 * @param id short name, unique among the styles on one page
 * @param width in the units of the drawing, CSS pixels on the page
 * @param height likewise
 * @param fontSize of axis numbers and labels
 * @param narrow whether line names stand in a key above, for want of room at the line ends
 * @param titled whether the picture carries its own title, to be passed on by itself
 */
record ChartStyle(
    String id, int width, int height, float fontSize, boolean narrow, boolean titled) {
  /** On the page of a desk screen, and in print. */
  static final ChartStyle PAGE = new ChartStyle("w", 920, 430, 14, false, false);

  /** On the page of a phone. */
  static final ChartStyle PHONE = new ChartStyle("n", 366, 340, 12.5f, true, false);

  /** A picture file of its own. */
  static final ChartStyle PICTURE = new ChartStyle("p", 920, 500, 14, false, true);

  private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

  Font font() {
    return PLAIN.deriveFont(fontSize);
  }

  Font small() {
    return PLAIN.deriveFont(fontSize - 1);
  }

  Font bold() {
    return PLAIN.deriveFont(Font.BOLD, fontSize + 3);
  }

  /** Returns the same style with another height. */
  ChartStyle tall(double factor) {
    return new ChartStyle(id, width, (int) (height * factor), fontSize, narrow, titled);
  }
}
