package soakloop.fit;

import soakloop.quantity.Estimate;

/**
 * What logs say of one key.
 *
 * @param key which
 * @param before what was believed, SI
 * @param after what is known now, SI
 * @param shift how far it moved, in standard deviations of what was believed [-]
 * @param left what is left of its standard deviation [-]: 1 is no news
 */
public record KeyNews(FitKey key, Band before, Band after, double shift, double left) {
  /** From here on a key's answer is just what was assumed [-]. */
  static final double NO_NEWS = 0.9;

  /** A key that moved further than this was believed wrongly, or the model lacks something [-]. */
  static final double SURPRISE = 2.5;

  /** Share of its distance from a bound that is left of a key that lies at it [-]. */
  private static final double AT_BOUND = 0.02;

  static KeyNews of(FitKey key, double place, double left) {
    double reach = FitKey.NINETY;
    return new KeyNews(
        key,
        ordered(key.value(-reach), key.value(0), key.value(reach)),
        ordered(key.value(place - reach * left), key.value(place), key.value(place + reach * left)),
        place,
        left);
  }

  /**
   * Returns what is known of a key that logs say nothing of: what was believed.
   *
   * @param key which
   */
  public static KeyNews untold(FitKey key) {
    return of(key, 0, 1);
  }

  private static Band ordered(double low, double middle, double high) {
    return low <= high ? new Band(low, middle, high) : new Band(high, middle, low);
  }

  /** Returns what is known of one of its values now: the value and its 90 % half width, SI. */
  Estimate estimate(FitKey.Part part) {
    double reach = FitKey.NINETY * left;
    double half = Math.abs(part.at(shift + reach) - part.at(shift - reach)) / 2;
    return new Estimate(part.at(shift), half);
  }

  /** Returns whether it came to rest at an end of the range that it may take. */
  public boolean isAtBound() {
    Scale scale = key.parts().get(0).scale();
    double found = after.middle();
    double believed = before.middle();
    return found - scale.low() < AT_BOUND * (believed - scale.low())
        || scale.high() - found < AT_BOUND * (scale.high() - believed);
  }

  /** Returns whether the logs decide it to any degree. */
  public boolean isNews() {
    return left < NO_NEWS;
  }

  /** Returns whether it moved further than was thought likely. */
  public boolean isSurprise() {
    return Math.abs(shift) > SURPRISE;
  }
}
