package soakloop.fit;

/**
 * A stretched scale on which a key may move freely without ever leaving its range: {@code ln((x -
 * low) / (high - x))}, or what is left of it where a bound is infinite. Near the middle of its
 * range a key moves on it as on its own, near an end as on a logarithm.
 *
 * @param low lower bound, SI, may be infinite
 * @param high upper bound, SI, may be infinite
 */
record Scale(double low, double high) {
  /** How far from a bound a value must stay, as a share of its distance from the other. */
  private static final double EDGE = 1e-9;

  Scale {
    if (!(low < high)) {
      throw new IllegalArgumentException("no range from " + low + " to " + high);
    }
  }

  /** Returns where a value lies on the scale; a value at a bound counts as just inside it. */
  double of(double x) {
    double below = Math.max(x - low, EDGE * Math.max(1, Math.abs(x)));
    double above = Math.max(high - x, EDGE * Math.max(1, Math.abs(x)));
    if (Double.isInfinite(low) && Double.isInfinite(high)) {
      return x;
    }
    if (Double.isInfinite(high)) {
      return Math.log(below);
    }
    return Double.isInfinite(low) ? -Math.log(above) : Math.log(below / above);
  }

  /** Returns the value at a place of the scale, always within its bounds. */
  double at(double u) {
    if (Double.isInfinite(low) && Double.isInfinite(high)) {
      return u;
    }
    if (Double.isInfinite(high)) {
      return low + Math.exp(u);
    }
    if (Double.isInfinite(low)) {
      return high - Math.exp(-u);
    }
    return u > 0
        ? high - (high - low) * Math.exp(-u) / (1 + Math.exp(-u))
        : low + (high - low) * Math.exp(u) / (1 + Math.exp(u));
  }
}
