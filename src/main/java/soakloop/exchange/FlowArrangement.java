package soakloop.exchange;

/**
 * How the two streams of an exchanger run, with the effectiveness that follows from it.
 *
 * <p>Effectiveness is the heat transferred over the most any exchanger could transfer between the
 * two inlet temperatures. Number of transfer units: conductance over the smaller capacity rate.
 * Capacity ratio: smaller over larger capacity rate.
 *
 * <p>Source of the closed forms: R. K. Shah, D. P. Sekulic, Fundamentals of Heat Exchanger Design,
 * Wiley, 2003, table 3.4; F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer,
 * table 11.3. The forms are written here so that they keep full relative accuracy for few transfer
 * units and for capacity ratios close to 0 and 1.
 */
public enum FlowArrangement {
  /** Streams opposed: (1 - e) / (1 - C e) with e = exp(-N (1 - C)); N / (1 + N) at C = 1. */
  COUNTERFLOW {
    @Override
    double checkedEffectiveness(double ntu, double ratio) {
      double unbalance = 1 - ratio;
      if (unbalance == 0) {
        return ntu / (1 + ntu);
      }
      double spent = -Math.expm1(-ntu * unbalance);
      return spent / (unbalance + ratio * spent);
    }
  },

  /** Streams side by side in the same direction: (1 - exp(-N (1 + C))) / (1 + C). */
  PARALLEL {
    @Override
    double checkedEffectiveness(double ntu, double ratio) {
      return -Math.expm1(-ntu * (1 + ratio)) / (1 + ratio);
    }
  },

  /** Crossflow, both streams unmixed, exact: see {@link UnmixedCrossflow}. */
  CROSS_UNMIXED {
    @Override
    double checkedEffectiveness(double ntu, double ratio) {
      return UnmixedCrossflow.effectiveness(ntu, ratio);
    }
  },

  /**
   * Crossflow, both streams unmixed, the usual approximation: 1 - exp(N^0.22 / C (exp(-C N^0.78) -
   * 1)). Against the exact series it errs by up to 3.8 % of the value (near N = 0.3, C = 1) and
   * 0.011 absolute for N from 0.1 to 7.
   */
  CROSS_UNMIXED_APPROXIMATE {
    @Override
    double checkedEffectiveness(double ntu, double ratio) {
      return -Math.expm1(Math.pow(ntu, 0.22) / ratio * Math.expm1(-ratio * Math.pow(ntu, 0.78)));
    }
  },

  /** Crossflow, the stream of larger capacity rate mixed: (1 - exp(-C (1 - exp(-N)))) / C. */
  CROSS_CMAX_MIXED {
    @Override
    double checkedEffectiveness(double ntu, double ratio) {
      return -Math.expm1(ratio * Math.expm1(-ntu)) / ratio;
    }
  },

  /** Crossflow, the stream of smaller capacity rate mixed: 1 - exp(-(1 - exp(-C N)) / C). */
  CROSS_CMIN_MIXED {
    @Override
    double checkedEffectiveness(double ntu, double ratio) {
      return -Math.expm1(Math.expm1(-ratio * ntu) / ratio);
    }
  },

  /**
   * Crossflow, both streams mixed: 1 / (1 / (1 - exp(-N)) + C / (1 - exp(-C N)) - 1 / N). This one
   * passes through a maximum: beyond it more transfer units lower the effectiveness.
   */
  CROSS_BOTH_MIXED {
    @Override
    double checkedEffectiveness(double ntu, double ratio) {
      return 1 / (-1 / Math.expm1(-ntu) - ratio / Math.expm1(-ratio * ntu) - 1 / ntu);
    }
  };

  /**
   * Below this the product of ratio and ntu changes no digit of any result, and the limit of zero
   * capacity ratio is the answer.
   */
  private static final double NEGLIGIBLE = 1e-17;

  /** Below this the effectiveness is the number of transfer units to the last digit. */
  private static final double FEW_UNITS = 1e-25;

  /**
   * Effectiveness of one pass.
   *
   * <p>Valid: any finite {@code ntu} of 0 or more, 0 &lt;= {@code capacityRatio} &lt;= 1. At zero
   * capacity ratio every arrangement gives 1 - exp(-ntu). Accuracy: relative error below 1e-12;
   * {@link #CROSS_UNMIXED} beyond 500 transfer units: absolute error below 2e-9. Allocates nothing.
   *
   * @param ntu number of transfer units, UA / Cmin [-], 0 or more
   * @param capacityRatio Cmin / Cmax [-], 0 to 1
   * @return effectiveness [-], 0 to 1
   * @throws IllegalArgumentException if {@code ntu} is NaN, infinite or negative, or {@code
   *     capacityRatio} is NaN or outside 0 to 1
   */
  public double effectiveness(double ntu, double capacityRatio) {
    if (!(ntu >= 0 && ntu < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "number of transfer units must be finite and 0 or more, not " + ntu);
    }
    if (!(capacityRatio >= 0 && capacityRatio <= 1)) {
      throw new IllegalArgumentException("capacity ratio must lie in 0 to 1, not " + capacityRatio);
    }
    if (ntu < FEW_UNITS) {
      return ntu;
    }
    if (capacityRatio * Math.max(ntu, 1) < NEGLIGIBLE) {
      return -Math.expm1(-ntu);
    }
    return checkedEffectiveness(ntu, capacityRatio);
  }

  /** Effectiveness for ntu &gt; 0 and a capacity ratio that is not negligible. */
  abstract double checkedEffectiveness(double ntu, double ratio);
}
