package soakloop.charge;

import java.util.Locale;
import soakloop.quantity.Require;

/**
 * Correction of full-load power to a reference day, spark ignition. Equations, reference days and
 * limits are from memory: the standards were not seen.
 *
 * <p>They act on the air of the day, not on the air in the manifold.
 */
public enum AmbientCorrection {
  /** SAE J1349: 1.180 (990 hPa / p)(T / 298 K)^0.5 - 0.18, 85 % mechanical efficiency. */
  SAE_J1349 {
    @Override
    public double factor(double dryPressure, double temperature) {
      return 1.180 * (99e3 / dry(dryPressure)) * Math.sqrt(ratio(temperature)) - 0.18;
    }
  },
  /** ISO 1585: (99 kPa / p)^1.2 (T / 298 K)^0.6. */
  ISO_1585 {
    @Override
    public double factor(double dryPressure, double temperature) {
      return Math.pow(99e3 / dry(dryPressure), 1.2) * Math.pow(ratio(temperature), 0.6);
    }
  };

  private static final double REFERENCE = 298; // K, as the standards write it
  private static final double ZERO = 273; // K, with that reference
  private static final double COLDEST = 15; // degC
  private static final double HOTTEST = 35; // degC
  private static final double LEAST = 0.93;
  private static final double GREATEST = 1.07;

  /** A correction, or why there is none. */
  public sealed interface Outcome {}

  /**
   * Multiply observed power by this.
   *
   * @param factor [-]
   */
  public record Applied(double factor) implements Outcome {}

  /**
   * No correction may be applied.
   *
   * @param reason in plain words
   */
  public record Refused(String reason) implements Outcome {}

  /**
   * The bare factor, wherever it may lead.
   *
   * @param dryPressure barometer less vapour pressure, Pa
   * @param temperature of the air drawn in, K
   * @return corrected over observed power [-]
   */
  public abstract double factor(double dryPressure, double temperature);

  /**
   * The factor where it may be applied: 15 to 35 degC, factor 0.93 to 1.07 (both from memory), and
   * an engine whose boost follows the day.
   *
   * @param dryPressure barometer less vapour pressure, Pa
   * @param temperature of the air drawn in, K
   * @param boostHeld whether a control holds manifold pressure, whatever the day
   * @return the factor or the reason for none
   */
  public Outcome correct(double dryPressure, double temperature, boolean boostHeld) {
    double factor = factor(dryPressure, temperature);
    double celsius = temperature - 273.15;
    if (boostHeld) {
      return new Refused("the manifold pressure is held whatever the day, so the day is not in it");
    }
    if (!(celsius >= COLDEST - 1e-9 && celsius <= HOTTEST + 1e-9)) {
      return new Refused(String.format(Locale.ROOT, "%.1f degC is outside 15 to 35 degC", celsius));
    }
    if (!(factor >= LEAST && factor <= GREATEST)) {
      return new Refused(
          String.format(Locale.ROOT, "a factor of %.3f is outside 0.93 to 1.07", factor));
    }
    return new Applied(factor);
  }

  private static double dry(double pressure) {
    return Require.positive("dry pressure", pressure);
  }

  /** Temperature over the reference, both counted from 273 K at 0 degC. */
  private static double ratio(double temperature) {
    return (Require.positive("temperature", temperature) - 273.15 + ZERO) / REFERENCE;
  }
}
