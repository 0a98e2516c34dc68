package soakloop.validation;

/** How far a computed value may lie from the expected one. */
sealed interface Tolerance {
  /** In the unit of the value. */
  record Absolute(double limit) implements Tolerance {
    public Absolute {
      positive(limit);
    }

    @Override
    public double deviation(double expected, double computed) {
      return computed - expected;
    }

    @Override
    public boolean accepts(double expected, double computed) {
      return Math.abs(deviation(expected, computed)) <= limit;
    }
  }

  /** As a fraction of the expected value. */
  record Relative(double limit) implements Tolerance {
    public Relative {
      positive(limit);
    }

    @Override
    public double deviation(double expected, double computed) {
      return (computed - expected) / Math.abs(expected);
    }

    @Override
    public boolean accepts(double expected, double computed) {
      return Math.abs(deviation(expected, computed)) <= limit;
    }
  }

  /** The number is reported; it only has to be a number. */
  record Reported() implements Tolerance {
    @Override
    public double deviation(double expected, double computed) {
      return computed - expected;
    }

    @Override
    public boolean accepts(double expected, double computed) {
      return Double.isFinite(computed);
    }
  }

  /** Deviation of the computed value, in the measure of this tolerance. */
  double deviation(double expected, double computed);

  /** Whether the computed value passes; NaN never does. */
  boolean accepts(double expected, double computed);

  static Tolerance absolute(double limit) {
    return new Absolute(limit);
  }

  static Tolerance relative(double limit) {
    return new Relative(limit);
  }

  static Tolerance percent(double limit) {
    return new Relative(limit / 100);
  }

  static Tolerance reported() {
    return new Reported();
  }

  private static void positive(double limit) {
    if (!(limit > 0 && limit < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("tolerance must be above 0, not " + limit);
    }
  }
}
