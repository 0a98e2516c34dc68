package soakloop.versus;

import soakloop.quantity.Dimension;

/** A number that is told of each pull of each contender; SI. The charge is the true one. */
public enum PullFigure {
  /** Charge as the pull starts; K. */
  START("start", "charge at the start", Dimension.TEMPERATURE, 1, true),
  /** Charge where the pull is counted; K. */
  END("end", "charge at the counted end", Dimension.TEMPERATURE, 1, true),
  /** Highest charge until the next pull; K. */
  PEAK("peak", "highest charge", Dimension.TEMPERATURE, 1, true),
  /** Charge at the counted end less that at the start; K. */
  RISE("rise", "rise to the counted end", Dimension.TEMPERATURE_DIFFERENCE, Math.sqrt(2), true),
  /** Time over the limit; s. */
  OVER_LIMIT("overLimit", "time over the limit", Dimension.TIME, 0, true),
  /** Coolant entering the core as the pull starts; K. */
  COOLANT("coolantAtStart", "coolant into the core at the start", Dimension.TEMPERATURE, 0, true),
  /** Boost after the core, highest; Pa. */
  BOOST("boost", "boost after the core", Dimension.GAUGE_PRESSURE, 0, false),
  /** What the core takes of the boost, highest; Pa. */
  LOSS("coreLoss", "pressure loss of the core", Dimension.PRESSURE_DIFFERENCE, 0, true),
  /** Spark taken out at the counted end; rad. */
  SPARK("sparkOut", "spark taken out", Dimension.ANGLE, 0, true),
  /** Power at the crank at the counted end, spark taken out as the table says; W. */
  POWER("crankPower", "power at the crank", Dimension.POWER, 0, false);

  private final String key;
  private final String label;
  private final Dimension dimension;
  private final double errors;
  private final boolean lessIsBetter;

  PullFigure(String key, String label, Dimension dimension, double errors, boolean lessIsBetter) {
    this.key = key;
    this.label = label;
    this.dimension = dimension;
    this.errors = errors;
    this.lessIsBetter = lessIsBetter;
  }

  /** Returns its name in files. */
  public String key() {
    return key;
  }

  /** Returns what it is, in words. */
  public String label() {
    return label;
  }

  /** Returns what it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Returns whether the smaller one is the better. */
  public boolean lessIsBetter() {
    return lessIsBetter;
  }

  /** Returns its standard deviation from the model's own error, in those of a charge. */
  double errors() {
    return errors;
  }
}
