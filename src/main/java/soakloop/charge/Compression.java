package soakloop.charge;

import soakloop.fluid.Air;
import soakloop.quantity.Require;

/**
 * Work and heat of compressing air, without heat to the case.
 *
 * <p>Equation: T2 = T1 [1 + (PR^((g-1)/g) - 1) / eta], eta the adiabatic (isentropic) efficiency.
 * Source: thermodynamics of an ideal gas, e.g. J. B. Heywood, Internal Combustion Engine
 * Fundamentals, 1988, chapter 6 (not seen for this project).
 */
public final class Compression {
  /** Ratio of heat capacities of air near room temperature. */
  public static final double GAMMA = 1.4;

  private Compression() {}

  /**
   * Outlet temperature with constant heat capacity, g = 1.4.
   *
   * @param inlet K
   * @param pressureRatio outlet over inlet absolute pressure, 1 or more
   * @param efficiency adiabatic efficiency, above 0 to 1
   * @return K; exactly {@code inlet} at pressure ratio 1
   */
  public static double outletTemperature(double inlet, double pressureRatio, double efficiency) {
    Require.positive("inlet temperature", inlet);
    double rise = Math.pow(ratio(pressureRatio), (GAMMA - 1) / GAMMA) - 1;
    return inlet * (1 + rise / efficiency(efficiency));
  }

  /**
   * Outlet temperature with the heat capacity of {@link Air} varying, about 1 K less than {@link
   * #outletTemperature} at common boost.
   *
   * @param inlet K
   * @param pressureRatio 1 or more
   * @param efficiency adiabatic efficiency, above 0 to 1
   * @return K; exactly {@code inlet} at pressure ratio 1
   */
  public static double outletOfRealAir(double inlet, double pressureRatio, double efficiency) {
    return ratio(pressureRatio) == 1
        ? inlet
        : Air.temperatureAtEnthalpy(
            Air.enthalpy(inlet) + specificWork(inlet, pressureRatio, efficiency));
  }

  /**
   * Work per mass of air, heat capacity varying.
   *
   * @param inlet K
   * @param pressureRatio 1 or more
   * @param efficiency adiabatic efficiency, above 0 to 1
   * @return J/kg; exactly 0 at pressure ratio 1
   */
  public static double specificWork(double inlet, double pressureRatio, double efficiency) {
    if (ratio(pressureRatio) == 1) {
      return 0;
    }
    double ideal = Air.isentropicTemperature(inlet, pressureRatio);
    return (Air.enthalpy(ideal) - Air.enthalpy(inlet)) / efficiency(efficiency);
  }

  /**
   * Adiabatic efficiency from temperatures, g = 1.4, the inverse of {@link #outletTemperature}.
   *
   * @param inlet K
   * @param outlet K, above the inlet
   * @param pressureRatio above 1
   * @return efficiency [-]; above 1 if the temperatures cannot be true without cooling
   */
  public static double efficiency(double inlet, double outlet, double pressureRatio) {
    Require.positive("inlet temperature", inlet);
    Require.positive("temperature rise", outlet - inlet);
    return inlet * (Math.pow(ratio(pressureRatio), (GAMMA - 1) / GAMMA) - 1) / (outlet - inlet);
  }

  private static double ratio(double pressureRatio) {
    Require.within("pressure ratio", pressureRatio, 1, 100);
    return pressureRatio;
  }

  private static double efficiency(double value) {
    Require.positive("adiabatic efficiency", value);
    return Require.within("adiabatic efficiency", value, 0, 1);
  }
}
