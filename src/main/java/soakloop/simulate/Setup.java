package soakloop.simulate;

import java.util.OptionalDouble;
import soakloop.rig.Day;
import soakloop.rig.Rig;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * All that a simulation needs.
 *
 * @param day the day's air
 * @param rig the hardware
 * @param start temperatures at the start
 * @param session what the car does
 * @param chargeLimit charge temperature whose crossings by the sensor are located, K
 */
public record Setup(Day day, Rig rig, Start start, Session session, OptionalDouble chargeLimit) {
  /** Returns the same without a limit whose crossings are located. */
  public Setup withoutLimit() {
    return new Setup(day, rig, start, session, OptionalDouble.empty());
  }
}
