package soakloop.validation;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.exchange.FlowArrangement;
import soakloop.exchange.LouvredFin;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Water;

/**
 * Slips of the pen that go about in public copies of the equations. Each is written out here beside
 * the right form and must fail the very check that the right form passes: the checks are sharp
 * enough to tell.
 *
 * <p>Where copies differ and the original was not seen, this does not say which one is right, only
 * that the project uses the one it says.
 */
@Tag("analytic")
class WrongVariantTest {
  private static final Tolerance LAST_DIGIT = Tolerance.absolute(FinChecks.LAST_DIGIT);

  @Test
  void offsetStripFrictionTellsItsLastExponent() {
    assertTrue(passesStrip(-0.2659));
    assertFalse(passesStrip(-0.2656), "a digit changed");
    assertFalse(passesStrip(+0.2659), "a sign lost");
  }

  private static boolean passesStrip(double exponent) {
    double a = 1.6 / 8;
    double d = 0.1 / 3;
    double g = 0.1 / 1.6;
    return passes(
        FinChecks.STRIP_ROWS,
        re ->
            9.6243
                * Math.pow(re, -0.7422)
                * Math.pow(a, -0.1856)
                * Math.pow(d, 0.3053)
                * Math.pow(g, exponent)
                * Math.pow(
                    1
                        + 7.669e-8
                            * Math.pow(re, 4.429)
                            * Math.pow(a, 0.920)
                            * Math.pow(d, 3.767)
                            * Math.pow(g, 0.236),
                    0.1));
  }

  @Test
  void louvreFrictionTellsTheDroppedExponent() {
    assertTrue(highLouvre(1.4, 230));
    assertTrue(highLouvre(1.4, 1000));
    assertFalse(highLouvre(1, 230), "the 1.4 dropped, as in one printed copy");
    assertFalse(highLouvre(1, 1000), "the 1.4 dropped, as in one printed copy");
  }

  /** The branch from Re 230, written out a second time. */
  private static boolean highLouvre(double exponent, double re) {
    LouvredFin fin = FinChecks.LOUVRED;
    double lp = 1.2;
    double th = 27;
    double f1 =
        4.97
            * Math.pow(re, 0.6049 - 1.064 / Math.pow(th, 0.2))
            * Math.pow(Math.log(Math.sqrt(0.1 / 1.5) + 0.9), -0.527);
    double f2 =
        Math.pow(1e3 * fin.hydraulicDiameter() / lp * Math.log(0.3 * re), -2.966)
            * Math.pow(1.5 / 6.8, -0.7931 * 10 / 8);
    double f3 =
        Math.pow(10 / 2.0, -0.0446)
            * Math.pow(Math.log(1.2 + Math.pow(lp / 1.5, exponent)), -3.553)
            * Math.pow(th, -0.477);
    double expected = re == 230 ? 0.1268264 : 0.0567805;
    return LAST_DIGIT.accepts(expected, f1 * f2 * f3);
  }

  @Test
  void crossflowApproximationTellsItsSign() {
    // The usual approximation at N 2, C 0.5; the slip has the sign of the inner exponent turned.
    Tolerance tolerance = Tolerance.absolute(6e-9);
    assertTrue(tolerance.accepts(0.73875846, approximate(2, 0.5, -1)));
    assertFalse(tolerance.accepts(0.73875846, approximate(2, 0.5, +1)));
    assertTrue(
        tolerance.accepts(
            approximate(2, 0.5, -1),
            FlowArrangement.CROSS_UNMIXED_APPROXIMATE.effectiveness(2, 0.5)));
  }

  private static double approximate(double n, double c, double sign) {
    return 1 - Math.exp(Math.pow(n, 0.22) / c * (Math.exp(sign * c * Math.pow(n, 0.78)) - 1));
  }

  @Test
  void glycolViscosityTellsTheSignsOfItsSquares() {
    // At no glycol the fit must come out at the viscosity of water: the other signs do not.
    double worstHere = 0;
    double worstOther = 0;
    GlycolMix water = GlycolMix.ofMass(Glycol.ETHYLENE, 0);
    for (double t = 273.65; t < 372.2; t += 1) {
      double truth = Water.INSTANCE.viscosity(t);
      double here = water.viscosity(t);
      double d = t - 304.8780;
      double x = -0.308462;
      // Terms T x^2 and T^2 x^2 with their signs turned.
      double other = here * Math.exp(-2 * x * x * (0.01086 * d + 0.0001051 * d * d));
      worstHere = Math.max(worstHere, Math.abs(here / truth - 1));
      worstOther = Math.max(worstOther, Math.abs(other / truth - 1));
    }
    assertTrue(worstHere < 0.017, "here " + worstHere);
    assertTrue(worstOther > 0.15, "other " + worstOther);
  }

  private static boolean passes(double[][] rows, DoubleUnaryOperator friction) {
    for (double[] row : rows) {
      if (!LAST_DIGIT.accepts(row[2], friction.applyAsDouble(row[0]))) {
        return false;
      }
    }
    return true;
  }
}
