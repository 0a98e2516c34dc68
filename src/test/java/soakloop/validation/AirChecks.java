package soakloop.validation;

import java.util.List;
import soakloop.fluid.Air;
import soakloop.fluid.MoistAir;
import soakloop.fluid.StandardAtmosphere;

/** Dry and humid air, its compression, and the standard atmosphere. */
final class AirChecks implements CheckSuite {
  private static final double ZERO_CELSIUS = 273.15;

  /**
   * t [K]; then cp, mu [uPa s], k [mW/(m K)] of the references; then cp, mu, k, Pr of the handbook.
   */
  private static final double[][] TABLE = {
    {200, 1002.6, 13.316, 18.45, 1007, 13.25, 18.1, 0.737},
    {250, 1003.3, 16.022, 22.53, 1006, 15.96, 22.3, 0.720},
    {300, 1005.0, 18.523, 26.35, 1007, 18.46, 26.3, 0.707},
    {350, 1008.3, 20.854, 29.98, 1009, 20.82, 30.0, 0.700},
    {400, 1013.6, 23.044, 33.43, 1014, 23.01, 33.8, 0.690},
    {450, 1020.7, 25.113, 36.74, 1021, 25.07, 37.3, 0.686},
    {500, 1029.6, 27.080, 39.93, 1030, 27.01, 40.7, 0.684}
  };

  private final CheckList list = new CheckList("Air");

  @Override
  public List<Check> checks() {
    transport();
    references();
    handbook();
    humid();
    compression();
    atmosphere();
    return list.checks();
  }

  private void transport() {
    Tolerance tight = Tolerance.relative(1e-5);
    list.from(
            Kind.PUBLISHED,
            "Lemmon and Jacobsen, Int. J. Thermophys. 25 (2004) 21, check values of the dilute gas (as"
                + " in CoolProp's tests)")
        .add("viscosity, 100 K", 7.09559e-6, Air.viscosity(100), tight, "Pa s")
        .add("conductivity, 100 K", 9.35902e-3, Air.conductivity(100), tight, "W/(m K)")
        .add("viscosity, 300 K", 18.5230e-6, Air.viscosity(300), tight, "Pa s")
        .add("conductivity, 300 K", 26.3529e-3, Air.conductivity(300), tight, "W/(m K)");
    list.from(Kind.PUBLISHED, "U.S. Standard Atmosphere 1976, Sutherland's formula")
        .add("viscosity, 300 K", 18.46e-6, Air.viscosity(300), Tolerance.percent(0.5), "Pa s");
  }

  private void references() {
    for (double[] row : TABLE) {
      double t = row[0];
      String at = ", " + Digits.of(t, 3) + " K";
      list.from(
              Kind.COMPUTED_ELSEWHERE,
              "ideal-gas heat capacity of Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331,"
                  + " evaluated in Python")
          .add(
              "heat capacity" + at,
              row[1],
              Air.heatCapacity(t),
              Tolerance.absolute(0.25),
              "J/(kg K)");
      list.from(Kind.COMPUTED_ELSEWHERE, "Lemmon and Jacobsen 2004 evaluated in Python")
          .add("viscosity" + at, row[2] * 1e-6, Air.viscosity(t), Tolerance.relative(5e-5), "Pa s")
          .add(
              "conductivity" + at,
              row[3] * 1e-3,
              Air.conductivity(t),
              Tolerance.relative(3e-4),
              "W/(m K)");
    }
  }

  private void handbook() {
    list.from(
        Kind.PUBLISHED,
        "Incropera et al., Fundamentals of Heat and Mass Transfer, table A.4 (two public copies;"
            + " edition not stated)");
    for (double[] row : TABLE) {
      double t = row[0];
      String at = ", " + Digits.of(t, 3) + " K";
      double prandtl = Air.heatCapacity(t) * Air.viscosity(t) / Air.conductivity(t);
      list.add(
              "heat capacity" + at, row[4], Air.heatCapacity(t), Tolerance.percent(0.5), "J/(kg K)")
          .add("viscosity" + at, row[5] * 1e-6, Air.viscosity(t), Tolerance.percent(0.6), "Pa s")
          .add(
              "conductivity" + at,
              row[6] * 1e-3,
              Air.conductivity(t),
              Tolerance.percent(2),
              "W/(m K)")
          .add("Prandtl number" + at, row[7], prandtl, Tolerance.percent(3), "-");
    }
  }

  private void humid() {
    list.from(Kind.LIBRARY, "IAPWS-IF97 saturation pressure, iapws 1.5.2")
        .add(
            "saturation pressure, 20 degC",
            2339.2,
            MoistAir.saturationPressure(20 + ZERO_CELSIUS),
            Tolerance.percent(0.05),
            "Pa")
        .add(
            "saturation pressure, 40 degC",
            7384.4,
            MoistAir.saturationPressure(40 + ZERO_CELSIUS),
            Tolerance.percent(0.05),
            "Pa");
    double t = 25 + ZERO_CELSIUS;
    MoistAir air = MoistAir.of(t, 101_325, 0.5);
    list.from(
            Kind.COMPUTED_ELSEWHERE,
            "equation of Buck (1996, coefficients from memory) evaluated in Python")
        .add(
            "saturation pressure, 20 degC",
            2338.3,
            MoistAir.saturationPressure(20 + ZERO_CELSIUS),
            Tolerance.relative(3e-5),
            "Pa")
        .add(
            "saturation pressure, 40 degC",
            7382.4,
            MoistAir.saturationPressure(40 + ZERO_CELSIUS),
            Tolerance.relative(3e-5),
            "Pa");
    list.from(Kind.COMPUTED_ELSEWHERE, "ideal mixture of air and vapour evaluated in Python")
        .add(
            "humidity ratio, 25 degC, 50 %, 101325 Pa",
            0.0098827, air.humidityRatio(), Tolerance.percent(0.05), "-")
        .add(
            "density, 25 degC, 50 %, 101325 Pa",
            1.17696, air.density(t, 101_325), Tolerance.percent(0.01), "kg/m3")
        .add(
            "heat capacity, 25 degC, 50 %, 101325 Pa",
            1014.36, air.heatCapacity(), Tolerance.percent(0.001), "J/(kg K)")
        .add(
            "dew point of 25 degC, 60 % air compressed 2.4 times",
            31.26,
            MoistAir.of(t, 101_325, 0.6).dewPoint(2.4 * 101_325) - ZERO_CELSIUS,
            Tolerance.absolute(0.01),
            "degC");
  }

  private void compression() {
    double t1 = 298.15;
    double ideal = Air.isentropicTemperature(t1, 2.4, 287.117);
    double h1 = Air.enthalpy(t1);
    double real = Air.temperatureAtEnthalpy(h1 + (Air.enthalpy(ideal) - h1) / 0.70);
    list.from(
            Kind.COMPUTED_ELSEWHERE,
            "entropy and enthalpy of the same heat capacity in Python, gas constant 287.117 J/(kg K)")
        .add(
            "isentropic outlet, 298.15 K, pressure ratio 2.4",
            382.6185,
            ideal,
            Tolerance.absolute(1e-4),
            "K")
        .add(
            "outlet at 70 % adiabatic efficiency, 298.15 K, pressure ratio 2.4",
            418.610, real, Tolerance.absolute(1e-3), "K");
  }

  private void atmosphere() {
    list.from(Kind.LIBRARY, "U.S. Standard Atmosphere 1976, fluids 1.0.22");
    altitude(0, 288.15, 101_325, 1.2250);
    altitude(1000, 281.651, 89_876.3, 1.11166);
    altitude(2000, 275.154, 79_501.4, 1.00655);
  }

  private void altitude(double altitude, double t, double p, double rho) {
    String at = ", standard atmosphere, " + Digits.of(altitude, 6) + " m";
    list.add(
            "temperature" + at,
            t,
            StandardAtmosphere.temperature(altitude),
            Tolerance.absolute(1e-3),
            "K")
        .add(
            "pressure" + at,
            p,
            StandardAtmosphere.pressure(altitude),
            Tolerance.relative(1e-6),
            "Pa")
        .add(
            "density" + at,
            rho,
            StandardAtmosphere.density(altitude),
            Tolerance.relative(1e-5),
            "kg/m3");
  }
}
