package soakloop.session;

import soakloop.quantity.Require;

/**
 * Ice put into the tank as a phase begins.
 *
 * @param mass kg
 * @param drains whether the water of earlier ice is drained off first
 */
public record IceAdded(double mass, boolean drains) {
  /** Checks the mass. */
  public IceAdded {
    Require.notNegative("added ice", mass);
  }
}
