package soakloop.validation;

import java.util.List;
import soakloop.charge.AmbientCorrection;
import soakloop.charge.BuiltInRatio;
import soakloop.charge.Compression;
import soakloop.charge.DensityRule;
import soakloop.charge.SparkLoss;

/** Blower work, ambient correction, density rules, spark. */
final class ChargeChecks implements CheckSuite {
  private final CheckList list = new CheckList("Blower, power and spark");

  @Override
  public List<Check> checks() {
    outlet();
    limits();
    corrections();
    rules();
    return list.checks();
  }

  private void outlet() {
    list.from(Kind.ANALYTIC, "ideal gas, g = 1.4, from 25 degC");
    double[][] rows = {
      {2.4, 1, 382.8835},
      {2.4, 0.70, 419.1978},
      {2.4, 0.60, 439.3724},
      {1.8, 0.65, 382.0285},
      {2, 0.75, 385.2152}
    };
    for (double[] row : rows) {
      list.add(
          "blower outlet, pressure ratio "
              + Digits.of(row[0], 3)
              + ", efficiency "
              + Digits.of(row[1], 3),
          row[2],
          Compression.outletTemperature(298.15, row[0], row[1]),
          Tolerance.absolute(6e-5),
          "K");
    }
    list.from(
            Kind.COMPUTED_ELSEWHERE,
            "heat capacity after Lemmon et al. 2000, gas constant 287.117, computed in Python; the"
                + " program's gas constant is 287.05")
        .add(
            "blower outlet with varying heat capacity, pressure ratio 2.4, efficiency 0.7",
            418.610,
            Compression.outletOfRealAir(298.15, 2.4, 0.7),
            Tolerance.absolute(0.05),
            "K");
  }

  private void limits() {
    list.from(Kind.ANALYTIC, "work p1 v1 (PR - 1) of a blower without inner compression");
    double[][] rows = {
      {1.2, 0.935769},
      {1.5, 0.859770},
      {1.8, 0.800032},
      {2.0, 0.766548},
      {2.4, 0.710493},
      {3.0, 0.645292}
    };
    for (double[] row : rows) {
      list.add(
          "greatest efficiency at pressure ratio " + Digits.of(row[0], 3),
          row[1],
          BuiltInRatio.NONE.efficiencyLimit(row[0]),
          Tolerance.absolute(6e-7),
          "-");
    }
    list.from(Kind.ANALYTIC, "ideal compression to the built-in ratio, then at constant volume")
        .add(
            "greatest efficiency at pressure ratio 2.4, built-in 1.5",
            0.901331,
            new BuiltInRatio(1.5).efficiencyLimit(2.4),
            Tolerance.absolute(6e-7),
            "-");
  }

  private void corrections() {
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "SAE J1349 and ISO 1585 as remembered (the standards were not seen), computed in Python");
    double[][] rows = {
      {990, 25, 1, 1},
      {960, 35, 1.057124, 1.058370},
      {990, 35, 1.019635, 1.020001},
      {1000, 20, 0.978358, 0.978032},
      {850, 15, 1.171097, 1.176428}
    };
    for (double[] row : rows) {
      String state = ", dry " + Digits.of(row[0], 4) + " hPa, " + Digits.of(row[1], 3) + " degC";
      double p = 100 * row[0];
      double t = row[1] + 273.15;
      Tolerance digits = Tolerance.absolute(6e-7);
      list.add("SAE J1349" + state, row[2], AmbientCorrection.SAE_J1349.factor(p, t), digits, "-")
          .add("ISO 1585" + state, row[3], AmbientCorrection.ISO_1585.factor(p, t), digits, "-");
    }
  }

  private void rules() {
    list.from(Kind.ANALYTIC, "powers of temperature, charge 313 to 343 K");
    Tolerance digits = Tolerance.absolute(6e-6);
    rule(DensityRule.DENSITY, 0.91254, digits);
    rule(DensityRule.SQUARE_ROOT, 0.95527, digits);
    rule(DensityRule.ISO_EXPONENT, 0.94656, digits);
    list.from(Kind.TRADE, "rival rules of the trade: 1 % per 3 K, 1 % per 10 degF")
        .add(
            "density rule, loss for 3 K at 320 K",
            1,
            100 * (1 - DensityRule.DENSITY.powerRatio(323, 320)),
            Tolerance.absolute(0.1),
            "%")
        .add(
            "square-root rule, loss for 10 degF at 320 K",
            1,
            100 * (1 - DensityRule.SQUARE_ROOT.powerRatio(320 + 10 / 1.8, 320)),
            Tolerance.absolute(0.2),
            "%");
    list.from(Kind.ANALYTIC, "1 - k d^2, k = 5e-4 per square degree (from memory)");
    double[][] spark = {{3, 0.45}, {5, 1.25}, {8, 3.2}, {10, 5}, {15, 11.25}};
    for (double[] row : spark) {
      list.add(
          "torque lost by " + Digits.of(row[0], 3) + " degrees of spark",
          row[1],
          100 * SparkLoss.USUAL.share(row[0]),
          Tolerance.absolute(1e-9),
          "%");
    }
  }

  private void rule(DensityRule rule, double expected, Tolerance digits) {
    list.add(rule.label(), expected, rule.powerRatio(343, 313), digits, "-");
  }
}
