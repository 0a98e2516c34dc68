package soakloop.simulate;

/**
 * A stiff problem with a known answer: {@code y0 = cos t} whatever lambda, {@code y1} follows with
 * a nonlinear part, and a quadrature of {@code y0}. The Jacobian given may be wrong on purpose.
 */
final class ShiftedDecay implements LinearlyImplicitEquation {
  /** What stands for the Jacobian. */
  enum Given {
    EXACT,
    HALF,
    NOTHING
  }

  private final double lambda;
  private final Given given;

  ShiftedDecay(double lambda, Given given) {
    this.lambda = lambda;
    this.given = given;
  }

  static double[] start() {
    return new double[] {1, 0.5, 0};
  }

  @Override
  public int getDimension() {
    return 3;
  }

  @Override
  public int dynamicStates() {
    return 2;
  }

  @Override
  public void derivatives(double t, double[] y, double[] dy) {
    dy[0] = -lambda * (y[0] - Math.cos(t)) - Math.sin(t);
    dy[1] = y[0] * y[1] - y[1] * y[1];
    dy[2] = y[0];
  }

  @Override
  public void jacobian(double[] y, JacobianEntries entries) {
    double share = given == Given.EXACT ? 1 : given == Given.HALF ? 0.5 : 0;
    entries.add(0, 0, -share * lambda);
    entries.add(1, 0, share * y[1]);
    entries.add(1, 1, share * (y[0] - 2 * y[1]));
    entries.add(2, 0, share);
  }
}
