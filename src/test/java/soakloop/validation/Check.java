package soakloop.validation;

/**
 * One number of the project beside the number it should be.
 *
 * @param group heading of the table it belongs to
 * @param what the quantity and the state it is taken at, in words
 * @param kind where the expected value comes from
 * @param source the very source: author, year, table, or library and version
 * @param expected the expected value; NaN only where the tolerance is {@link Tolerance.Reported}
 * @param computed the project's value
 * @param tolerance how far the two may differ
 * @param unit unit of both values, "-" for none
 */
record Check(
    String group,
    String what,
    Kind kind,
    String source,
    double expected,
    double computed,
    Tolerance tolerance,
    String unit) {
  Check {
    if (!Double.isFinite(expected) && !(tolerance instanceof Tolerance.Reported)) {
      throw new IllegalArgumentException(what + ": a check needs a value to expect");
    }
    if (tolerance instanceof Tolerance.Relative && expected == 0) {
      throw new IllegalArgumentException(what + ": no relative tolerance about zero");
    }
    if (source.isBlank()) {
      throw new IllegalArgumentException(what + ": a check needs a source");
    }
  }

  boolean passes() {
    return tolerance.accepts(expected, computed);
  }

  double deviation() {
    return tolerance.deviation(expected, computed);
  }
}
