package soakloop.plan;

import java.util.Optional;

/**
 * One round of a planned evening.
 *
 * @param number from 1, the session's last pull
 * @param way the car is treated in the pit before it; empty for the first, which is as the session
 *     has it
 * @param pit time there, s
 * @param iceUsed kg
 * @param iceLeft still there after it, not in the tank, kg
 * @param batteryLeft J; infinite if it is not counted
 * @param iceInTank of the middle car as the pull starts, kg
 * @param peak charge temperature that the asked share of the cars stays under, K
 * @param middle the middle car's, K
 * @param keeps share of the cars that keep the limit
 */
public record EveningRound(
    int number,
    Optional<Way> way,
    double pit,
    double iceUsed,
    double iceLeft,
    double batteryLeft,
    double iceInTank,
    double peak,
    double middle,
    double keeps) {
  /** Returns how many things are done before it. */
  public int actions() {
    return way.map(EveningPlan::actions).orElse(0);
  }
}
