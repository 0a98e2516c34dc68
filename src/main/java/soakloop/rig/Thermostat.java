package soakloop.rig;

import soakloop.quantity.Require;

/**
 * A fan switch that feels the coolant entering the heat exchanger.
 *
 * @param on switches on above, K
 * @param off switches off below, K
 */
public record Thermostat(double on, double off) {
  /** Checks the parts. */
  public Thermostat {
    Require.positive("thermostat on", on);
    Require.positive("thermostat off", off);
    if (!(off < on)) {
      throw new IllegalArgumentException("a fan switches off below where it switches on");
    }
  }
}
