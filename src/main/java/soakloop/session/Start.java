package soakloop.session;

import java.util.OptionalDouble;
import soakloop.quantity.Require;

/**
 * Temperatures at the start of a session, the engine idling (or off, if the session starts so).
 *
 * @param charge reading of the charge temperature sensor, K, if known
 * @param loopCoolant coolant and metal of the loop, K, if known
 * @param engineCoolant engine coolant, K
 */
public record Start(OptionalDouble charge, OptionalDouble loopCoolant, double engineCoolant) {
  /** Checks the parts. */
  public Start {
    charge.ifPresent(t -> Require.within("start charge temperature", t, 200, 450));
    loopCoolant.ifPresent(t -> Require.within("start loop coolant temperature", t, 200, 400));
    Require.within("start engine coolant temperature", engineCoolant, 200, 420);
  }
}
