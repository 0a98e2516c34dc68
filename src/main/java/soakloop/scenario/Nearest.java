package soakloop.scenario;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds what somebody meant. */
final class Nearest {
  private Nearest() {}

  /**
   * Returns the known word nearest to a written one, if it is near enough to be meant.
   *
   * @param written as written
   * @param known words it could be
   */
  static Optional<String> to(String written, Collection<String> known) {
    int near = Math.max(2, written.length() / 3);
    return known.stream()
        .filter(word -> distance(written, word) <= near)
        .min(
            Comparator.<String>comparingInt(word -> distance(written, word)).thenComparing(w -> w));
  }

  /** Edits from one word to the other: insert, delete, replace (V. I. Levenshtein, 1966). */
  private static int distance(String from, String to) {
    String a = from.toLowerCase(Locale.ROOT);
    String b = to.toLowerCase(Locale.ROOT);
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replace = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replace, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
