package soakloop.validation;

import static soakloop.exchange.FlowArrangement.CROSS_CMAX_MIXED;
import static soakloop.exchange.FlowArrangement.CROSS_UNMIXED;

import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import soakloop.exchange.LiquidCoupledPair;

/** Worked examples of textbooks, and two exchangers coupled by a loop. */
final class ExchangerExampleChecks implements CheckSuite {
  private static final String READ_WITH = "Incropera and DeWitt, worked example ";
  private static final String CHART = " (chart reading; 6th edition inferred from a companion)";
  private static final double WATER = 4197; // J/(kg K), as the book takes it
  private static final double ZERO_CELSIUS = 273.15;

  private final CheckList list = new CheckList("Exchanger examples");

  @Override
  public List<Check> checks() {
    sizing();
    rating();
    oilHeater();
    coupledPair();
    return list.checks();
  }

  /** 1 kg/s water from 35 to 125 degC by gas cooled from 300 to 100 degC; U = 100 W/(m2 K). */
  private void sizing() {
    double heat = WATER * (125 - 35);
    double gasRate = heat / (300 - 100);
    double ratio = gasRate / WATER;
    double effectiveness = (300 - 100) / (300.0 - 35);
    double ntu =
        new BrentSolver(1e-12, 1e-12)
            .solve(200, n -> CROSS_UNMIXED.effectiveness(n, ratio) - effectiveness, 0.1, 10);
    double area = ntu * gasRate / 100;
    list.from(Kind.PUBLISHED, READ_WITH + "11.3" + CHART)
        .add("capacity ratio, gas heating water", 0.45, ratio, Tolerance.absolute(0.005), "-")
        .add(
            "effectiveness at N 2.1",
            0.75,
            CROSS_UNMIXED.effectiveness(2.1, ratio),
            Tolerance.absolute(0.02),
            "-")
        .add("transfer units for 100 degC gas outlet", 2.1, ntu, Tolerance.percent(2), "-")
        .add("area for 100 degC gas outlet", 39.7, area, Tolerance.percent(2), "m2");
    list.from(Kind.COMPUTED_ELSEWHERE, "the same example with the exact series, mpmath 1.2.1")
        .add("transfer units for 100 degC gas outlet", 2.08084, ntu, Tolerance.absolute(1e-5), "-")
        .add("area for 100 degC gas outlet", 39.300, area, Tolerance.absolute(1e-3), "m2");
  }

  /** The same exchanger of 40 m2, gas 1.5 kg/s of 1000 J/(kg K) at 250 degC. */
  private void rating() {
    double gasRate = 1500;
    double ntu = 100 * 40 / gasRate;
    double ratio = gasRate / WATER;
    double effectiveness = CROSS_UNMIXED.effectiveness(ntu, ratio);
    double span = 250 - 35;
    double heat = effectiveness * gasRate * span;
    double gasOut = 250 - heat / gasRate;
    double waterOut = 35 + heat / WATER;
    double reading = 0.02; // of effectiveness, on the chart
    list.from(Kind.PUBLISHED, READ_WITH + "11.4" + CHART)
        .add("effectiveness", 0.82, effectiveness, Tolerance.absolute(reading), "-")
        .add("heat", 2.64e5, heat, Tolerance.absolute(reading * gasRate * span), "W")
        .add("gas outlet", 73.7, gasOut, Tolerance.absolute(reading * span), "degC")
        .add("water outlet", 98.0, waterOut, Tolerance.absolute(reading * span * ratio), "degC");
    list.from(Kind.COMPUTED_ELSEWHERE, "example 11.4 with the exact series, mpmath 1.2.1")
        .add("effectiveness", 0.835787, effectiveness, Tolerance.absolute(1e-6), "-")
        .add("heat", 269_541, heat, Tolerance.absolute(1), "W")
        .add("gas outlet", 70.306, gasOut, Tolerance.absolute(1e-3), "degC")
        .add("water outlet", 99.222, waterOut, Tolerance.absolute(1e-3), "degC");
  }

  /** Oil 0.725 kg/s heated by steam 5.2 kg/s (mixed, the larger rate), U A = 275 x 10.82. */
  private void oilHeater() {
    double steam = 5.2 * 1860;
    double oil = 0.725 * 1900;
    double ntu = 275 * 10.82 / oil;
    double effectiveness = CROSS_CMAX_MIXED.effectiveness(ntu, oil / steam);
    double heat = effectiveness * oil * (130 - 15);
    list.from(
            Kind.LIBRARY,
            "Holman, Heat Transfer, 10th ed., example 10-9, digits as worked in the documentation of"
                + " ht 1.0.7")
        .add("transfer units, oil heater", 2.160073, ntu, Tolerance.absolute(1e-6), "-")
        .add("effectiveness, oil heater", 0.831218, effectiveness, Tolerance.absolute(1e-6), "-")
        .add("heat, oil heater", 131_675.3, heat, Tolerance.absolute(0.1), "W")
        .add("oil outlet, oil heater", 110.590, 15 + heat / oil, Tolerance.absolute(1e-3), "degC")
        .add(
            "steam outlet, oil heater",
            116.386,
            130 - heat / steam,
            Tolerance.absolute(1e-3),
            "degC");
  }

  private void coupledPair() {
    LiquidCoupledPair pair =
        new LiquidCoupledPair(150 + ZERO_CELSIUS, 900, 0.75, 25 + ZERO_CELSIUS, 3000, 0.6, 1900);
    Tolerance microkelvin = Tolerance.absolute(1e-6);
    list.from(
            Kind.COMPUTED_ELSEWHERE,
            "energy balances of a liquid-coupled pair (theory: Kays and London) solved in Python")
        .add("heat, coupled pair", 68_218.085, pair.heat(), Tolerance.absolute(1e-3), "W")
        .add(
            "liquid into the hot exchanger, coupled pair",
            48.936170,
            pair.coldLiquid() - ZERO_CELSIUS,
            microkelvin,
            "degC")
        .add(
            "liquid out of the hot exchanger, coupled pair",
            84.840426,
            pair.hotLiquid() - ZERO_CELSIUS,
            microkelvin,
            "degC")
        .add(
            "hot air outlet, coupled pair",
            74.202128,
            pair.hotOutlet() - ZERO_CELSIUS,
            microkelvin,
            "degC")
        .add(
            "cold air outlet, coupled pair",
            47.739362,
            pair.coldOutlet() - ZERO_CELSIUS,
            microkelvin,
            "degC");
  }
}
