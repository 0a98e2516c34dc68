package soakloop.report;

import java.awt.Color;

/**
 * The colours of the charts. The five hues are taken from the set of Okabe and Ito, "Color
 * Universal Design" (2008), which readers with a colour vision deficiency can tell apart; values
 * from memory.
 */
final class Palette {
  static final Color INK = new Color(0x1d2329);
  static final Color QUIET = new Color(0x5b6570);
  static final Color GRID = new Color(0xe3e7ea);
  static final Color STONE = new Color(0xb3bac1);
  static final Color STILL = new Color(0xeceff2);
  static final Color SHADE = new Color(0xf0ece2);
  static final Color LOAM = new Color(0xdfe3e7);
  static final Color STORED = new Color(0xf7dfcb);
  static final Color PAPER = Color.WHITE;

  /** Behind lines in {@link #HOT} and {@link #BLUE}; light enough that shading shows through. */
  static final Color HOT_BAND = new Color(0xd5, 0x5e, 0x00, 46);

  static final Color BLUE_BAND = new Color(0x00, 0x72, 0xb2, 40);

  /** Paper that lets a little through, behind words on top of lines. */
  static final Color VEIL = new Color(255, 255, 255, 190);

  /** Paper that lets next to nothing through, behind words on lines. */
  static final Color GROUND = new Color(255, 255, 255, 225);

  static final Color WARM = new Color(0xe69f00);
  static final Color HOT = new Color(0xd55e00);
  static final Color BLUE = new Color(0x0072b2);
  static final Color SKY = new Color(0x56b4e9);
  static final Color GREEN = new Color(0x009e73);
  static final Color PINK = new Color(0xcc79a7);
  static final Color EMBER = new Color(0x7a2a05);
  static final Color LIMIT = new Color(0x8b0f2f);

  private static final Color[] RAMP = {
    new Color(0xeaa12a), new Color(0xd55e00), new Color(0x8c2d04), new Color(0x33110a)
  };

  private static final Color[] HUES = {BLUE, HOT, GREEN, PINK, INK, WARM};

  private Palette() {}

  /**
   * Returns the colour of one of several logs.
   *
   * @param index from 0, below {@link LogSet#MOST}
   */
  static Color hue(int index) {
    return HUES[index];
  }

  /**
   * Returns a colour in an ordered row, pale first and full last.
   *
   * @param color the full one
   * @param index from 0
   * @param count how many there are
   */
  static Color growing(Color color, int index, int count) {
    double pale = count < 2 ? 0 : 0.6 * (count - 1 - index) / (count - 1);
    return mix(color, PAPER, pale);
  }

  /**
   * Returns one of an ordered row of colours that darken evenly, so that their order is seen
   * without telling hues apart.
   *
   * @param index from 0
   * @param count how many there are
   */
  static Color step(int index, int count) {
    double place = count < 2 ? 0.4 * (RAMP.length - 1) : (RAMP.length - 1.0) * index / (count - 1);
    int low = Math.min((int) place, RAMP.length - 2);
    return mix(RAMP[low], RAMP[low + 1], place - low);
  }

  /** Returns a colour dark enough to read words in on white. */
  static Color readable(Color color) {
    double luminance =
        0.2126 * color.getRed() + 0.7152 * color.getGreen() + 0.0722 * color.getBlue();
    return luminance < 100 ? color : mix(color, Color.BLACK, 1 - 100 / luminance);
  }

  private static Color mix(Color a, Color b, double share) {
    return new Color(
        between(a.getRed(), b.getRed(), share),
        between(a.getGreen(), b.getGreen(), share),
        between(a.getBlue(), b.getBlue(), share));
  }

  private static int between(int a, int b, double share) {
    return (int) Math.round(a + share * (b - a));
  }
}
