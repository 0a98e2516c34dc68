package soakloop.study;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one pull gave, SI units.
 *
 * @param name such as "pull 2"
 * @param startTime s
 * @param endTime s
 * @param countedAt time at which it is counted, s
 * @param countedTo engine speed at which it is counted, rev/s
 * @param charge true charge temperature
 * @param sensor what the sensor shows
 * @param coolant coolant at the core
 * @param airMassFlowPeak kg/s
 * @param heatToCoolant heat from the charge air to the core during the pull, J
 * @param boostPeak highest manifold gauge pressure after the core, Pa
 * @param chargeLoss what the core takes of the boost, where its geometry is known
 * @param logged the same from the log's charge temperature, where there is one
 */
public record PullResult(
    String name,
    double startTime,
    double endTime,
    double countedAt,
    double countedTo,
    Readings charge,
    Readings sensor,
    CoolantReadings coolant,
    double airMassFlowPeak,
    double heatToCoolant,
    double boostPeak,
    Optional<ChargeLoss> chargeLoss,
    Optional<Logged> logged) {
  /**
   * Pressure that the charge air loses in the core during the pull, Pa.
   *
   * @param peak highest loss
   * @param boostBefore highest gauge pressure before the core
   */
  public record ChargeLoss(double peak, double boostBefore) {}

  /**
   * Coolant at the core over one pull, K.
   *
   * @param coreInletStart entering at the pull's start
   * @param coreInletPeak highest entering from the start to the next pull
   * @param coreOutletPeak highest leaving from the start to the next pull
   */
  public record CoolantReadings(
      double coreInletStart, double coreInletPeak, double coreOutletPeak) {}

  /**
   * The log beside the pull. Its highest values and its time over the limit count from the pull's
   * start to {@code coveredTo}: a log that stops before the next pull may have missed a later peak.
   *
   * @param countedAt session time at which the logged pull is counted, s
   * @param coveredTo session time to which the log goes, at most the next pull's start, s
   * @param sensor the logged charge temperature
   * @param coreInletPeak logged coolant entering the core, K, if logged
   * @param fit how far the modelled sensor is from it during the pull
   */
  public record Logged(
      double countedAt,
      double coveredTo,
      Readings sensor,
      OptionalDouble coreInletPeak,
      Misfit fit) {}
}
