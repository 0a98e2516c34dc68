package soakloop.plan;

import java.util.Optional;
import soakloop.simulate.CarState;
import soakloop.simulate.EnergyLedger;

/**
 * What one car gave in a round.
 *
 * @param end where it stands after it; empty if it could not be run
 * @param charge highest true charge temperature under load, K
 * @param iceIn put in before it, kg
 * @param iceBefore in the tank as the last round ended, kg
 * @param iceStart in the tank as the pull starts, kg
 * @param iceEnd in the tank as it ends, kg
 * @param coolant in the reservoir (else out of the core) at the end, K
 * @param plenum metal at the end, K
 * @param books of all that the car did so far
 */
record CarRound(
    Optional<CarState> end,
    double charge,
    double iceIn,
    double iceBefore,
    double iceStart,
    double iceEnd,
    double coolant,
    double plenum,
    EnergyLedger books) {
  /** A round that could not be run. */
  static final CarRound FAILED =
      new CarRound(
          Optional.empty(),
          Double.POSITIVE_INFINITY,
          0,
          0,
          0,
          0,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          new EnergyLedger(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
}
