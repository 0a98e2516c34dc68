package soakloop.log;

/** How sure it is that a column means what it was taken for. */
public enum Confidence {
  /** The scenario says so, or the column's name and unit do. */
  SURE,
  /** Name or unit leave a choice that the values settle. */
  LIKELY,
  /** The values fit, but others could too: name the column in the scenario. */
  GUESSED
}
