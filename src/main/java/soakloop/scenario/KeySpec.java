package soakloop.scenario;

import java.util.List;
import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;

/**
 * What the key table says of one key.
 *
 * @param key dotted path; a star stands for any name before the kind
 * @param takes what it takes
 * @param dimension what a quantity, or a curve's values, measure
 * @param over what a curve's places measure
 * @param choices words allowed
 * @param low smallest value, SI
 * @param high largest value, SI
 * @param defaultText value used when left out, as the table writes it
 * @param defaultEstimate the same read, for quantities
 * @param because why that default
 * @param quiet whether the default goes without saying: it is not listed among what was assumed
 * @param optional whether it may be left out without a default
 * @param means what it is
 */
public record KeySpec(
    String key,
    Takes takes,
    Optional<Dimension> dimension,
    Optional<Dimension> over,
    List<String> choices,
    Optional<Estimate> low,
    Optional<Estimate> high,
    Optional<String> defaultText,
    Optional<Estimate> defaultEstimate,
    String because,
    boolean quiet,
    boolean optional,
    String means) {
  private static final String SPREAD = "+/-";

  /** What a key can take. */
  public enum Takes {
    /** A number with its unit. */
    QUANTITY,
    /** A number with its unit, or one of a few words. */
    QUANTITY_OR_CHOICE,
    /** One of a few words. */
    CHOICE,
    /** on or off. */
    SWITCH,
    /** A whole number. */
    COUNT,
    /** Any text. */
    TEXT,
    /** Points, or one value that holds everywhere. */
    CURVE,
    /** Keys. */
    SECTION,
    /** A list. */
    LIST
  }

  /** Returns the default's value without its spread, as the table writes it. */
  public String defaultValue() {
    String text = defaultText.orElse("");
    int spread = text.indexOf(SPREAD);
    return (spread < 0 ? text : text.substring(0, spread)).strip();
  }

  /** Returns the default's spread, as the table writes it; empty if none. */
  public String defaultSpread() {
    String text = defaultText.orElse("");
    int spread = text.indexOf(SPREAD);
    return spread < 0 ? "" : text.substring(spread).strip();
  }
}
