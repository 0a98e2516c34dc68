package soakloop.reading;

import soakloop.quantity.Estimate;

/** Heat that the charge air leaves in the core. */
public interface AirHeat {
  /**
   * Returns the heat over a stretch of log time, J, with its 90 % interval.
   *
   * @param from s
   * @param to s, after it
   */
  Estimate over(double from, double to);
}
