package soakloop.fluid;

/** The coefficient tables behind {@link Glycol}, where equation, range and source are stated. */
final class MelinderFit {
  /** Aqueous ethylene glycol. */
  static final MelinderFit ETHYLENE =
      new MelinderFit(
          304.8780,
          0.308462,
          new double[][] {
            {1034, 131.1, 0.749, -106.2, -96.23, 489.1},
            {-0.4781, -0.6876, 0.7855, 1.229, -7.211},
            {-0.002692, 0.004805, -0.003995, -0.01153},
            {4.725e-06, 1.69e-06, 4.982e-05}
          },
          new double[][] {
            {3737, -1799, -993.3, 2610, 1537, -16180},
            {2.93, 10.46, 3.516, -1.189, -42.72},
            {-0.004675, -0.04147, 0.05109, -0.1643},
            {-1.389e-05, 1.847e-05, -0.0007138}
          },
          new double[][] {
            {0.472, -0.4286, 0.1747, 0.03017, -0.1322, 0.2678},
            {0.0008903, -0.001473, 0.0006814, -0.002412, 0.002555},
            {-1.058e-06, 1.059e-05, -3.612e-05, 4.004e-05},
            {-2.789e-09, -1.142e-08, 2.365e-08}
          },
          new double[][] {
            {-6.437255, 2.471, 0.03328, 1.659, 3.089, -18.65},
            {-0.0255, -0.01171, 0.01086, 0.003157, 0.01831},
            {0.0001782, 0.0001052, 0.0001051, 0.0004063},
            {-7.669e-07, -1.634e-06, -6.475e-06}
          },
          new double[] {257.9, -80.8, -133.4, -72.93, 100.6, 11.4});

  /** Aqueous propylene glycol. */
  static final MelinderFit PROPYLENE =
      new MelinderFit(
          305.8583,
          0.307031,
          new double[][] {
            {1018, 76.04, -24.98, -155, -113.1, 234.2},
            {-0.5406, -0.945, 0.27, 2.829, -2.221},
            {-0.002666, 0.005541, -0.004018, -0.007175},
            {1.347e-05, -1.343e-05, 3.376e-05}
          },
          new double[][] {
            {3882, -1304, -1598, 353.9, 5000, -4959},
            {2.699, 5.07, 0.9534, 31.02, -71.35},
            {-0.001659, -0.004752, 0.1167, -0.295},
            {-1.032e-05, 0.0001522, -0.000487}
          },
          new double[][] {
            {0.4513, -0.4795, 0.2076, -0.09083, -0.05952, 0.2104},
            {0.0007955, -0.001678, 0.001563, -0.002518, -0.003605},
            {3.482e-08, 8.941e-06, -4.615e-05, 6.543e-05},
            {-5.966e-09, 1.493e-08, 9.897e-08}
          },
          new double[][] {
            {-6.224055, 3.328, 0.5453, -3.9, -1.587, 35.64},
            {-0.03045, -0.03984, -0.00086, 0.1054, 0.04475},
            {0.0002525, 0.0004332, -0.0001593, -0.001589},
            {-1.399e-06, -1.86e-06, -4.465e-07}
          },
          new double[] {259.9, -66.31, -109.4, -228.3, -340.9, 146.5});

  private final double baseTemperature;
  private final double baseFraction;
  private final double[][] density;
  private final double[][] heatCapacity;
  private final double[][] conductivity;
  private final double[][] logViscosity;
  private final double[] freezing;

  private MelinderFit(
      double baseTemperature,
      double baseFraction,
      double[][] density,
      double[][] heatCapacity,
      double[][] conductivity,
      double[][] logViscosity,
      double[] freezing) {
    this.baseTemperature = baseTemperature;
    this.baseFraction = baseFraction;
    this.density = density;
    this.heatCapacity = heatCapacity;
    this.conductivity = conductivity;
    this.logViscosity = logViscosity;
    this.freezing = freezing;
  }

  Cubic density(double massFraction) {
    return collapse(density, massFraction);
  }

  Cubic heatCapacity(double massFraction) {
    return collapse(heatCapacity, massFraction);
  }

  Cubic conductivity(double massFraction) {
    return collapse(conductivity, massFraction);
  }

  Cubic logViscosity(double massFraction) {
    return collapse(logViscosity, massFraction);
  }

  double freezingTemperature(double massFraction) {
    return polynomial(freezing, massFraction - baseFraction);
  }

  private Cubic collapse(double[][] rows, double massFraction) {
    double x = massFraction - baseFraction;
    return new Cubic(
        baseTemperature,
        polynomial(rows[0], x),
        polynomial(rows[1], x),
        polynomial(rows[2], x),
        polynomial(rows[3], x));
  }

  private static double polynomial(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }
}
