package soakloop.plan;

/**
 * What a car's next pull gives when it goes after a wait; infinite where it could not be run.
 *
 * @param charge highest true charge temperature under load, K
 * @param sensor highest reading in the second half of the pull and just after it, K
 * @param reading what the gauge of the coolant into the core shows as the pull starts, K
 */
public record Go(double charge, double sensor, double reading) {
  /** A pull that could not be run. */
  static final Go FAILED = new Go(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NaN);
}
