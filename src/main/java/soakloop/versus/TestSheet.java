package soakloop.versus;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What a day of testing would settle, before it is driven.
 *
 * @param power how often a real difference is to be found, 0.5 to 1
 * @param rows by number of pulls, from 1 on
 * @param windows what ought to be alike and how far apart it may be; {@code one} and {@code other}
 *     are as the scenarios state them
 */
public record TestSheet(double power, List<Row> rows, List<VersusResult.Condition> windows) {
  /** How often a real difference is to be found on such a day. */
  static final double USUAL_POWER = 0.8;

  /** Copies the lists. */
  public TestSheet {
    rows = List.copyOf(rows);
    windows = List.copyOf(windows);
  }

  /**
   * The smallest difference that is told apart, K.
   *
   * @param pulls of each core, in each of its sessions
   * @param plain first one, then the other, logged by the charge sensor
   * @param thereAndBack the first again after the other
   * @param withProbe as plain, with a coolant probe at the core's inlet
   */
  public record Row(int pulls, double plain, double thereAndBack, double withProbe) {}

  /** Returns how many standard deviations a probability is above a half. */
  static double quantile(double probability) {
    return new NormalDistribution().inverseCumulativeProbability(probability);
  }

  /**
   * Returns the smallest difference that is found as often as is wanted, where something is said
   * only with a confidence.
   *
   * @param deviation of the difference after the day
   * @param confidence asked for
   * @param power how often it is to be found
   */
  static double smallest(double deviation, double confidence, double power) {
    return (quantile(confidence) + quantile(power)) * deviation;
  }
}
