package soakloop.fluid;

/**
 * A cubic in (t - base), with its exact antiderivative.
 *
 * @param base point the powers are taken about
 * @param c0 coefficient of power 0
 * @param c1 coefficient of power 1
 * @param c2 coefficient of power 2
 * @param c3 coefficient of power 3
 */
record Cubic(double base, double c0, double c1, double c2, double c3) {

  /** The value at {@code t}. */
  double at(double t) {
    double d = t - base;
    return c0 + d * (c1 + d * (c2 + d * c3));
  }

  /** The antiderivative that is zero at the base. */
  double antiderivative(double t) {
    double d = t - base;
    return d * (c0 + d * (c1 / 2 + d * (c2 / 3 + d * (c3 / 4))));
  }
}
