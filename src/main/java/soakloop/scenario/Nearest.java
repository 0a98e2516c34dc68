package soakloop.scenario;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds what somebody meant. */
final class Nearest {
  private static final int LONGEST = 60;

  private Nearest() {}

  /**
   * Returns the known word nearest to a written one, if it is near enough to be meant: one slip in
   * three letters.
   *
   * @param written as written
   * @param known words it could be
   */
  static Optional<String> to(String written, Collection<String> known) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    int near = Math.max(1, written.length() / 3);
    return known.stream()
        .filter(word -> distance(written, word) <= near)
        .min(
            Comparator.<String>comparingInt(word -> distance(written, word)).thenComparing(w -> w));
  }

  /**
   * Slips from one word to the other: a letter too many, too few, wrong, or two swapped (F. J.
   * Damerau, 1964; restricted form).
   */
  private static int distance(String from, String to) {
    String a = from.toLowerCase(Locale.ROOT);
    String b = to.toLowerCase(Locale.ROOT);
    int[][] slips = new int[a.length() + 1][b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      slips[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      slips[i][0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(slips[i - 1][j], slips[i][j - 1]) + 1;
        least = Math.min(least, slips[i - 1][j - 1] + wrong);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          least = Math.min(least, slips[i - 2][j - 2] + 1);
        }
        slips[i][j] = least;
      }
    }
    return slips[a.length()][b.length()];
  }
}
