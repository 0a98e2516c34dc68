package soakloop.validation;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import soakloop.exchange.CoupledFlow;
import soakloop.exchange.CoupledFlow.Side;
import soakloop.exchange.FlowArrangement;

/** The best coolant flow of a coupled pair, and what moves it. */
final class CoupledFlowChecks implements CheckSuite {
  private static final double REFERENCE = 1800; // W/K, about 28 L/min of half glycol
  private static final double DIFFERENCE = 120; // K

  private final CheckList list = new CheckList("Best coolant flow");

  @Override
  public List<Check> checks() {
    balanced();
    uneven();
    moved();
    return list.checks();
  }

  private void balanced() {
    CoupledFlow pair = fixed(1000, 800, 1000, 1200);
    list.from(
            Kind.ANALYTIC,
            "equal gas capacity rates: the liquid's should be the same (Kays and London,"
                + " liquid-coupled exchangers, from memory)")
        .add(
            "best flow by formula",
            1000,
            pair.bestAtFixedConductance(),
            Tolerance.relative(1e-12),
            "W/K")
        .add("best flow by search", 1000, best(pair), Tolerance.relative(1e-5), "W/K");
  }

  private void uneven() {
    CoupledFlow pair = fixed(500, 700, 1500, 900);
    double h = 1 / (1 / 700.0 + 1 / 1400.0);
    double c = 1 / (1 / 900.0 + 1 / 1800.0);
    double direct = 1 / (1 / h + 1 / c);
    double single =
        FlowArrangement.COUNTERFLOW.effectiveness(direct / 500, 500.0 / 1500) * 500 * DIFFERENCE;
    list.from(
            Kind.ANALYTIC,
            "the liquid that follows the wall of one counterflow exchanger between the gases:"
                + " derivation in CoupledFlow")
        .add(
            "uneven gases, best flow, search beside formula",
            pair.bestAtFixedConductance(),
            best(pair),
            Tolerance.relative(1e-5),
            "W/K")
        .add(
            "uneven gases, heat at the best flow beside one exchanger",
            single,
            pair.heat(pair.bestAtFixedConductance(), DIFFERENCE),
            Tolerance.relative(1e-12),
            "W");
  }

  /** A charge cooler loop: 0.5 kg/s charge, 2 kg/s through the heat exchanger. */
  private void moved() {
    list.from(
        Kind.ANALYTIC,
        "an invented loop, charge 505 W/K, front air 2000 W/K; conductances at 1800 W/K of coolant");
    report("fixed conductance, no pump heat", 0, 0);
    report("coolant side goes with flow^0.8, no pump heat (50000: the end of the search)", 0.8, 0);
    report("fixed conductance, pump 200 W going with flow cubed", 0, 200);
    report("coolant side goes with flow^0.8, pump 200 W", 0.8, 200);
  }

  private void report(String what, double exponent, double pumpHeat) {
    list.report("best flow, " + what, Rounded.to(1, best(loop(exponent, pumpHeat))), "W/K");
  }

  static CoupledFlow loop(double exponent, double pumpHeat) {
    return new CoupledFlow(
        new Side(505, 1000, 1300, exponent),
        new Side(2000, 1400, 2500, exponent),
        pumpHeat,
        REFERENCE);
  }

  private static CoupledFlow fixed(double ch, double uah, double cc, double uac) {
    return new CoupledFlow(
        new Side(ch, uah, 2 * uah, 0), new Side(cc, uac, 2 * uac, 0), 0, REFERENCE);
  }

  /** The flow at which most heat is taken from the charge, by golden section in log flow. */
  static double best(CoupledFlow pair) {
    DoubleUnaryOperator heat = logFlow -> pair.heat(Math.exp(logFlow), DIFFERENCE);
    double low = Math.log(50);
    double high = Math.log(50_000);
    double golden = (Math.sqrt(5) - 1) / 2;
    while (high - low > 1e-7) {
      double a = high - golden * (high - low);
      double b = low + golden * (high - low);
      if (heat.applyAsDouble(a) < heat.applyAsDouble(b)) {
        low = a;
      } else {
        high = b;
      }
    }
    return Math.exp((low + high) / 2);
  }
}
