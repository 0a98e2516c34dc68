package soakloop.plan;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import soakloop.quantity.Dimension;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;
import soakloop.study.StudyException;

/** Reads a way of waiting as a person writes it: {@code off, pump, fans, ice 3 kg}. */
public final class WayReader {
  private static final String ALLOWED =
      "idle or off, then any of pump, fans, hood (open) and ice with its mass, as in 'off, pump, ice 3 kg'";

  private WayReader() {}

  /**
   * Reads a way.
   *
   * @param text words apart by commas
   * @throws StudyException if it is none
   */
  public static Way read(String text) throws StudyException {
    Set<String> words = new TreeSet<>();
    double ice = 0;
    for (String part : text.split(",")) {
      String word = part.strip().toLowerCase(Locale.ROOT);
      if (word.startsWith("ice")) {
        ice = mass(part.strip().substring("ice".length()).strip());
        word = "ice";
      }
      if (!Set.of("idle", "off", "pump", "fans", "hood", "ice").contains(word)) {
        throw new StudyException("--way: `" + part.strip() + "` is not known; write " + ALLOWED);
      }
      if (!words.add(word)) {
        throw new StudyException("--way: `" + word + "` is there twice");
      }
    }
    boolean idles = words.contains("idle");
    if (idles == words.contains("off")) {
      throw new StudyException("--way: `" + text + "` must say idle or off; write " + ALLOWED);
    }
    if (idles && ice > 0) {
      throw new StudyException("--way: ice goes in with the engine off only: off, pump, ice 3 kg");
    }
    return new Way(
        idles, words.contains("pump"), words.contains("fans"), words.contains("hood"), ice);
  }

  /**
   * Reads a mass of ice.
   *
   * @param text such as {@code 3 kg}
   * @return kg
   * @throws StudyException if it is none, or more than any tank takes
   */
  public static double mass(String text) throws StudyException {
    try {
      double mass = QuantityParser.parse(text, Dimension.MASS).value();
      if (!(mass > 0 && mass <= 200)) {
        throw new StudyException("ice: `" + text + "` must be above 0 and up to 200 kg (441 lb)");
      }
      return mass;
    } catch (QuantityException e) {
      throw new StudyException("ice: `" + text + "` " + e.getMessage());
    }
  }
}
