package soakloop.fit;

/**
 * A problem in which what the logs say is believed less: its residuals are divided, those of what
 * was believed before are not.
 *
 * @param whole the problem
 * @param points how many of its residuals are of logs, the first ones
 * @param times by what they are divided, at least 1
 */
record BelievedLess(LeastSquares.Residuals whole, int points, double times)
    implements LeastSquares.Residuals {
  @Override
  public double[] at(double[] point) {
    double[] all = whole.at(point);
    for (int i = 0; i < points; i++) {
      all[i] /= times;
    }
    return all;
  }

  @Override
  public double[][] slopes(double[] point) {
    double[][] all = whole.slopes(point);
    for (int i = 0; i < points; i++) {
      for (int k = 0; k < all[i].length; k++) {
        all[i][k] /= times;
      }
    }
    return all;
  }
}
