package soakloop.plan;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What all cars give that go after one wait.
 *
 * @param seconds from pull to pull
 * @param goes one for each car, in the same order at every wait
 */
public record AfterWait(double seconds, List<Go> goes) {
  /** Copies the list. */
  public AfterWait {
    goes = List.copyOf(goes);
  }

  /**
   * Returns the value under which a share of the cars lies; infinite where cars failed.
   *
   * @param of which value
   * @param share 0 to 1
   */
  public double quantile(ToDoubleFunction<Go> of, double share) {
    return Shares.quantile(goes, of, share);
  }

  /**
   * Returns the highest charge that a share of the cars keeps under, K.
   *
   * @param share 0 to 1
   */
  public double charge(double share) {
    return quantile(Go::charge, share);
  }
}
