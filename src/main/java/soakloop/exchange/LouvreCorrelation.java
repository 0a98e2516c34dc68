package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * Heat transfer and friction of a louvred fin between flat tubes, over the Reynolds number on the
 * louvre pitch.
 *
 * <p>Heat transfer, with th the louvre angle in degrees, Fp fin pitch, Lp louvre pitch, Fl fin
 * length, Td depth, Ll louvre length, Tp tube pitch, d thickness:
 *
 * <pre>
 * j = Re^-0.49 (th/90)^0.27 (Fp/Lp)^-0.14 (Fl/Lp)^-0.29 (Td/Lp)^-0.23 (Ll/Lp)^0.68
 *     (Tp/Lp)^-0.28 (d/Lp)^-0.05
 * </pre>
 *
 * <p>Friction f = f1 f2 f3 (Fanning), with Dm tube height, Dh hydraulic diameter, Th = Tp - Dm:
 *
 * <pre>
 * Re &lt;= 130: f1 = 14.39 Re^(-0.805 Fp/Fl) [ln(1 + Fp/Lp)]^3.04
 *   f2 = [ln((d/Fp)^0.48 + 0.9)]^-1.435 (Dh/Lp)^-3.01 [ln(0.5 Re)]^-3.01
 *   f3 = (Fp/Ll)^-0.308 (Td/Ll)^-0.308 exp(-0.1167 Tp/Dm) th^0.35
 * Re &gt;= 230: f1 = 4.97 Re^(0.6049 - 1.064/th^0.2) [ln((d/Fp)^0.5 + 0.9)]^-0.527
 *   f2 = [(Dh/Lp) ln(0.3 Re)]^-2.966 (Fp/Ll)^(-0.7931 Tp/Th)
 *   f3 = (Tp/Dm)^-0.0446 [ln(1.2 + (Lp/Fp)^1.4)]^-3.553 th^-0.477
 * between: f = sqrt{[(1 + w) f(130)^2 + (1 - w) f(230)^2] / 2}, w = 3.6 - 0.02 Re
 * </pre>
 *
 * <p>The low branch runs into a pole at Re 2. Below Re {@value #FRICTION_FLOOR} f goes on as 1/Re,
 * as in laminar flow: an assumption of this project, far outside the published range.
 *
 * <p>Range (from memory): see {@link LouvredFin#checkRange}. Accuracy (from memory): about 90 % of
 * the data within 15 %.
 *
 * <p>Source: Y.-J. Chang, C.-C. Wang, Int. J. Heat Mass Transfer 40 (1997) 533 (j); Y.-J. Chang,
 * K.-C. Hsu, Y.-T. Lin, C.-C. Wang, ibid. 43 (2000) 2237 and the amendment by Y.-J. Chang, W.-J.
 * Chang, M.-C. Li, C.-C. Wang, ibid. 49 (2006) 4250 (f). Read in public transcriptions, which
 * agree; the papers were not seen.
 */
public final class LouvreCorrelation {
  static final double FRICTION_FLOOR = 30;
  private static final double LOW_END = 130;
  private static final double HIGH_START = 230;

  private final double colburnFactor;
  private final double lowFactor;
  private final double lowExponent;
  private final double highFactor;
  private final double highExponent;

  LouvreCorrelation(LouvredFin fin, double depth) {
    Require.positive("depth", depth);
    double lp = fin.louvres().pitch();
    double ll = fin.louvres().length();
    double th = Math.toDegrees(fin.louvres().angle());
    double fp = fin.pitch();
    double fl = fin.height();
    double dm = fin.louvres().tubeHeight();
    double tp = fl + dm;
    double d = fin.thickness();
    double dh = fin.hydraulicDiameter();
    colburnFactor =
        Math.pow(th / 90, 0.27)
            * Math.pow(fp / lp, -0.14)
            * Math.pow(fl / lp, -0.29)
            * Math.pow(depth / lp, -0.23)
            * Math.pow(ll / lp, 0.68)
            * Math.pow(tp / lp, -0.28)
            * Math.pow(d / lp, -0.05);
    lowExponent = -0.805 * fp / fl;
    lowFactor =
        14.39
            * Math.pow(Math.log1p(fp / lp), 3.04)
            * Math.pow(Math.log(Math.pow(d / fp, 0.48) + 0.9), -1.435)
            * Math.pow(dh / lp, -3.01)
            * Math.pow(fp / ll, -0.308)
            * Math.pow(depth / ll, -0.308)
            * Math.exp(-0.1167 * tp / dm)
            * Math.pow(th, 0.35);
    highExponent = 0.6049 - 1.064 / Math.pow(th, 0.2);
    highFactor =
        4.97
            * Math.pow(Math.log(Math.sqrt(d / fp) + 0.9), -0.527)
            * Math.pow(dh / lp, -2.966)
            * Math.pow(fp / ll, -0.7931 * tp / fl)
            * Math.pow(tp / dm, -0.0446)
            * Math.pow(Math.log(1.2 + Math.pow(lp / fp, 1.4)), -3.553)
            * Math.pow(th, -0.477);
    if (!(lowFactor > 0 && highFactor > 0)) {
      throw new IllegalArgumentException(
          "louvre friction has no value for a sheet of " + d + " m at a pitch of " + fp + " m");
    }
  }

  /**
   * Colburn factor, j = St Pr^(2/3).
   *
   * @param re Reynolds number on the louvre pitch, above 0
   * @return j [-]
   */
  public double colburn(double re) {
    return colburnFactor * Math.pow(Require.positive("Reynolds number", re), -0.49);
  }

  /**
   * Friction factor (Fanning) on the hydraulic diameter.
   *
   * @param re Reynolds number on the louvre pitch, above 0
   * @return f [-]
   */
  public double friction(double re) {
    Require.positive("Reynolds number", re);
    if (re < FRICTION_FLOOR) {
      return low(FRICTION_FLOOR) * FRICTION_FLOOR / re;
    }
    if (re <= LOW_END) {
      return low(re);
    }
    if (re >= HIGH_START) {
      return high(re);
    }
    double w = 3.6 - 0.02 * re;
    double low = low(LOW_END);
    double high = high(HIGH_START);
    return Math.sqrt(((1 + w) * low * low + (1 - w) * high * high) / 2);
  }

  private double low(double re) {
    return lowFactor * Math.pow(re, lowExponent) * Math.pow(Math.log(0.5 * re), -3.01);
  }

  private double high(double re) {
    return highFactor * Math.pow(re, highExponent) * Math.pow(Math.log(0.3 * re), -2.966);
  }
}
