package soakloop.scenario;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import soakloop.quantity.Dimension;

/** Says in words what a key takes. */
final class Wanted {
  private Wanted() {}

  /** Returns what a key takes, such as "a value in mm, in or ft". */
  static String by(KeySpec spec) {
    return switch (spec.takes()) {
      case QUANTITY -> value(spec.dimension().orElseThrow());
      case QUANTITY_OR_CHOICE ->
          value(spec.dimension().orElseThrow()) + "; or " + oneOf(spec.choices());
      case CHOICE -> oneOf(spec.choices());
      case SWITCH -> "on or off";
      case COUNT -> "a whole number";
      case TEXT -> "a text";
      case CURVE ->
          value(spec.dimension().orElseThrow())
              + ", or points like "
              + pointsExample(spec)
              + (spec.choices().isEmpty() ? "" : "; or " + oneOf(spec.choices()));
      case SECTION -> "a section of keys" + keys(spec.key());
      case LIST -> "a list" + (spec.key().equals("loop") ? "" : keys(spec.key()));
    };
  }

  /** Returns what is wrong with leaving a key out. */
  static String missing(KeySpec spec) {
    String means = spec.means();
    boolean acronym = means.length() > 1 && Character.isUpperCase(means.charAt(1));
    String first = means.substring(0, 1);
    return "is missing: "
        + (acronym ? first : first.toLowerCase(Locale.ROOT))
        + means.substring(1)
        + "; it takes "
        + by(spec);
  }

  /** Returns words as a choice, such as "on, off or auto". */
  static String oneOf(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  /** Returns an example of a curve's points in the units that people write. */
  static String pointsExample(KeySpec spec) {
    return "[[0 "
        + Ranges.unit(spec.over().orElseThrow()).symbol()
        + ", 10 "
        + Ranges.unit(spec.dimension().orElseThrow()).symbol()
        + "], ...]";
  }

  /** Returns a time to the millisecond. */
  static String seconds(double time) {
    return BigDecimal.valueOf(Math.round(time * 1000), 3).stripTrailingZeros().toPlainString()
        + " s";
  }

  private static String value(Dimension dimension) {
    return dimension.isPlainNumber() ? "a plain number" : "a value in " + dimension.allowed();
  }

  private static String keys(String section) {
    List<String> keys = KeyTable.get().below(section);
    return keys.isEmpty() ? "" : ": " + String.join(", ", keys);
  }
}
