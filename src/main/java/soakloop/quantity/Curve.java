package soakloop.quantity;

import java.util.Arrays;

/**
 * A curve through points, straight between them and level beyond its ends.
 *
 * <p>Used on the hot path: {@link #at} allocates nothing.
 */
public final class Curve {
  private final double[] x;
  private final double[] y;

  private Curve(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  /**
   * Makes a curve.
   *
   * @param x places, strictly rising, at least one
   * @param y values, as many
   * @throws IllegalArgumentException if the lengths differ, a number is not finite, or x does not
   *     rise
   */
  public static Curve of(double[] x, double[] y) {
    if (x.length == 0 || x.length != y.length) {
      throw new IllegalArgumentException(
          "a curve needs as many places as values: " + x.length + " and " + y.length);
    }
    for (int i = 0; i < x.length; i++) {
      Require.finite("a curve's place", x[i]);
      Require.finite("a curve's value", y[i]);
      if (i > 0 && !(x[i] > x[i - 1])) {
        throw new IllegalArgumentException("a curve's places must rise: " + x[i - 1] + ", " + x[i]);
      }
    }
    return new Curve(x.clone(), y.clone());
  }

  /**
   * Makes a curve that is level everywhere.
   *
   * @param value its value
   */
  public static Curve constant(double value) {
    return of(new double[] {0}, new double[] {value});
  }

  /**
   * Returns the value at a place.
   *
   * @param place where; NaN gives NaN
   */
  public double at(double place) {
    int last = x.length - 1;
    if (!(place > x[0])) {
      return Double.isNaN(place) ? Double.NaN : y[0];
    }
    if (place >= x[last]) {
      return y[last];
    }
    int low = 0;
    int high = last;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (x[middle] <= place) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double share = (place - x[low]) / (x[high] - x[low]);
    return y[low] + share * (y[high] - y[low]);
  }

  /**
   * Returns the same curve with every place moved down.
   *
   * @param by how far
   */
  public Curve earlier(double by) {
    return of(Arrays.stream(x).map(place -> place - by).toArray(), y);
  }

  /** Returns the number of points. */
  public int size() {
    return x.length;
  }

  /**
   * Returns the place of a point.
   *
   * @param i index of the point
   */
  public double place(int i) {
    return x[i];
  }

  /**
   * Returns the value of a point.
   *
   * @param i index of the point
   */
  public double value(int i) {
    return y[i];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Curve c && Arrays.equals(x, c.x) && Arrays.equals(y, c.y);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
  }

  @Override
  public String toString() {
    return "Curve[" + x.length + " points]";
  }
}
