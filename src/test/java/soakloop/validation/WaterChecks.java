package soakloop.validation;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Water;

/** Water, and the glycol polynomials at zero strength, against the IAPWS formulations. */
final class WaterChecks implements CheckSuite {
  private static final String IAPWS =
      "IAPWS-95, R12-08 (viscosity), R15-11 (conductivity) at 0.101325 MPa, iapws 1.5.2";
  private static final double ZERO_CELSIUS = 273.15;

  /** Temperature [degC], density, heat capacity, conductivity, viscosity [mPa s]. */
  private static final double[][] TABLE = {
    {0.1, 999.850, 4219.1, 0.5559, 1.7855},
    {20, 998.207, 4184.1, 0.5980, 1.0016},
    {40, 992.216, 4179.4, 0.6285, 0.6527},
    {60, 983.196, 4185.0, 0.6510, 0.4660},
    {80, 971.790, 4196.8, 0.6670, 0.3541},
    {95, 961.888, 4210.2, 0.6752, 0.2971}
  };

  private final CheckList list = new CheckList("Water");

  @Override
  public List<Check> checks() {
    Water water = Water.INSTANCE;
    list.from(Kind.LIBRARY, IAPWS);
    for (double[] row : TABLE) {
      double t = row[0] + ZERO_CELSIUS;
      String at = ", " + Digits.of(row[0], 4) + " degC";
      list.add("density" + at, row[1], water.density(t), Tolerance.percent(0.01), "kg/m3")
          .add(
              "heat capacity" + at,
              row[2],
              water.heatCapacity(t),
              Tolerance.percent(0.01),
              "J/(kg K)")
          .add(
              "conductivity" + at,
              row[3],
              water.conductivity(t),
              Tolerance.percent(0.02),
              "W/(m K)")
          .add(
              "viscosity" + at, row[4] * 1e-3, water.viscosity(t), Tolerance.percent(0.03), "Pa s");
    }
    list.from(Kind.LIBRARY, "IAPWS SR6-08(2011), iapws 1.5.2")
        .add(
            "viscosity, 298.15 K",
            889.996e-6,
            water.viscosity(298.15),
            Tolerance.relative(2e-6),
            "Pa s")
        .add(
            "conductivity, 298.15 K",
            0.6065,
            water.conductivity(298.15),
            Tolerance.absolute(5e-5),
            "W/(m K)");
    list.from(Kind.LIBRARY, "IAPWS SR6-08(2011), example in the documentation of iapws (0733de3)")
        .add(
            "density, 260 K",
            997.0683602710492,
            water.density(260),
            Tolerance.relative(1e-12),
            "kg/m3");
    atZeroStrength(Glycol.ETHYLENE, 0.09, 0.21, 1.0, 1.5);
    atZeroStrength(Glycol.PROPYLENE, 0.04, 0.14, 1.0, 0.9);
    return list.checks();
  }

  private void atZeroStrength(Glycol glycol, double rho, double cp, double k, double mu) {
    Coolant mix = GlycolMix.ofMass(glycol, 0);
    String of =
        " of the "
            + (glycol == Glycol.ETHYLENE ? "ethylene" : "propylene")
            + " glycol polynomials at no glycol: largest error from 0.1 to 95 degC";
    list.from(Kind.LIBRARY, IAPWS)
        .add("density" + of, 0, largestError(mix::density, 1, 1), Tolerance.absolute(rho), "%")
        .add(
            "heat capacity" + of,
            0,
            largestError(mix::heatCapacity, 2, 1),
            Tolerance.absolute(cp),
            "%")
        .add(
            "conductivity" + of,
            0,
            largestError(mix::conductivity, 3, 1),
            Tolerance.absolute(k),
            "%")
        .add(
            "viscosity" + of,
            0,
            largestError(mix::viscosity, 4, 1e-3),
            Tolerance.absolute(mu),
            "%");
  }

  private static double largestError(DoubleUnaryOperator property, int column, double unit) {
    double largest = 0;
    for (double[] row : TABLE) {
      double computed = property.applyAsDouble(row[0] + ZERO_CELSIUS);
      largest = Math.max(largest, Math.abs(100 * (computed / (row[column] * unit) - 1)));
    }
    return largest;
  }
}
