package soakloop.invented;

/**
 * A pump against its loop: a parabola of head over flow, moved by speed, against a loss growing
 * with flow to the 1.8 and viscosity to the 0.2.
 *
 * @param shutOff head without flow at nominal speed [Pa]
 * @param linear fall of head with flow [Pa s/m3]
 * @param square fall of head with flow squared [Pa s2/m6]
 * @param speed true speed over nominal speed [-]
 * @param designFlow flow in this loop at nominal speed and reference viscosity [m3/s]
 */
record TruePump(double shutOff, double linear, double square, double speed, double designFlow) {

  /** Efficiency from shaft to water [-]; the lost power ends as heat in the coolant. */
  private static final double EFFICIENCY = 0.4;

  /**
   * The parabola through three points given in the units of a data sheet.
   *
   * @param shutOff head at no flow [kPa]
   * @param midFlow flow at the middle point [L/min]
   * @param midHead head there [kPa]
   * @param openFlow flow without head [L/min]
   * @param designFlow flow in this loop at nominal speed [L/min]
   * @param speed true speed over nominal speed [-]
   */
  static TruePump through(
      double shutOff,
      double midFlow,
      double midHead,
      double openFlow,
      double designFlow,
      double speed) {
    double a = (shutOff - midHead) / midFlow;
    double b = shutOff / openFlow;
    double square = (b - a) / (openFlow - midFlow);
    double linear = a - square * midFlow;
    double perFlow = 60000;
    return new TruePump(
        shutOff * 1000,
        linear * 1000 * perFlow,
        square * 1000 * perFlow * perFlow,
        speed,
        designFlow / perFlow);
  }

  private double head(double flow, double atSpeed) {
    return atSpeed * atSpeed * shutOff - atSpeed * linear * flow - square * flow * flow;
  }

  private double loss(double flow, double viscosityRatio) {
    return head(designFlow, 1)
        * StrictMath.pow(flow / designFlow, 1.8)
        * StrictMath.pow(viscosityRatio, 0.2);
  }

  /**
   * Flow at which head and loss agree, by bisection.
   *
   * @param viscosityRatio viscosity over reference viscosity [-]
   * @return flow [m3/s]
   */
  double flow(double viscosityRatio) {
    double low = 0;
    double high = 3 * designFlow;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (head(middle, speed) > loss(middle, viscosityRatio)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Heat the pump puts into the coolant at a flow [W]. */
  double heat(double flow) {
    return head(flow, speed) * flow / EFFICIENCY;
  }
}
