package soakloop.fluid;

/** Argument checks of this package: every message carries the value that was found. */
final class Require {
  private Require() {}

  /** Returns {@code t} if it is an absolute temperature: finite and above zero [K]. */
  static double temperature(double t) {
    if (!(t > 0 && t < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("temperature must be finite and above 0 K, not " + t);
    }
    return t;
  }

  /** Returns {@code p} if it is a pressure: finite and above zero [Pa]. */
  static double pressure(double p) {
    if (!(p > 0 && p < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("pressure must be finite and above 0 Pa, not " + p);
    }
    return p;
  }

  /** Returns {@code value} if it lies in the closed range {@code low} to {@code high}. */
  static double within(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " must lie in " + low + " to " + high + ", not " + value);
    }
    return value;
  }
}
