package soakloop.fit;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The 90 % interval of one key without taking the model for a straight line: from the likeliest
 * place the key is moved outwards, all others being searched anew at each place, until the logs and
 * what was believed together are less likely by as much as a normal law is at the ends of its
 * interval, 1.645 squared on the scale of -2 ln.
 *
 * <p>Source: D. M. Bates, D. G. Watts, "Nonlinear Regression Analysis and Its Applications" (1988),
 * section 6.1, profile t; from memory.
 */
final class Profile {
  private static final LeastSquares.Patience PATIENCE = new LeastSquares.Patience(1e-5, 1e-4, 6);

  /** How near to the ends of the interval is near enough, in standard deviations. */
  private static final double CLOSE = 0.02;

  private static final int TRIES = 6;

  private final LeastSquares.Residuals problem;
  private final RealVector best;
  private final RealMatrix covariance;
  private final double least;

  /**
   * Sets out.
   *
   * @param problem residuals, those of what was believed among them
   * @param best the likeliest place
   * @param covariance about it, taking the model for a straight line
   */
  Profile(LeastSquares.Residuals problem, RealVector best, RealMatrix covariance) {
    this.problem = problem;
    this.best = best;
    this.covariance = covariance;
    this.least = cost(problem.at(best.toArray()));
  }

  private static double cost(double[] residuals) {
    return new ArrayRealVector(residuals, false).dotProduct(new ArrayRealVector(residuals, false));
  }

  /** Returns the places of a key at the ends of its interval, the lower one first. */
  double[] of(int key) {
    return new double[] {end(key, -1), end(key, 1)};
  }

  private double end(int key, int way) {
    double deviation = Math.sqrt(covariance.getEntry(key, key));
    // How unlikely a place is, in standard deviations, grows nearly in proportion to how far it is.
    DoubleUnaryOperator unlikely = away -> Math.sqrt(Math.max(0, above(key, way * away)));
    double away = FitKey.NINETY * deviation;
    for (int i = 0; i < TRIES; i++) {
      double reached = unlikely.applyAsDouble(away);
      if (Math.abs(reached - FitKey.NINETY) < CLOSE || !(reached > 0)) {
        break;
      }
      away *= Math.max(0.5, Math.min(2, FitKey.NINETY / reached));
    }
    return best.getEntry(key) + way * away;
  }

  /** Returns by how much -2 ln is above its least where a key is held so far away. */
  private double above(int key, double away) {
    double[] start = new double[best.getDimension() - 1];
    for (int k = 0; k < start.length; k++) {
      int whole = k < key ? k : k + 1;
      double follows = covariance.getEntry(whole, key) / covariance.getEntry(key, key);
      start[k] = best.getEntry(whole) + follows * away;
    }
    Held held = new Held(problem, key, best.getEntry(key) + away);
    return start.length == 0
        ? cost(held.at(start)) - least
        : LeastSquares.search(held, start, PATIENCE).cost() - least;
  }

  /** The same problem with one key held at a place. */
  private record Held(LeastSquares.Residuals whole, int key, double place)
      implements LeastSquares.Residuals {
    private double[] with(double[] others) {
      double[] all = new double[others.length + 1];
      System.arraycopy(others, 0, all, 0, key);
      all[key] = place;
      System.arraycopy(others, key, all, key + 1, others.length - key);
      return all;
    }

    @Override
    public double[] at(double[] others) {
      return whole.at(with(others));
    }

    @Override
    public double[][] slopes(double[] others) {
      double[][] all = whole.slopes(with(others));
      double[][] left = new double[all.length][others.length];
      for (int i = 0; i < all.length; i++) {
        System.arraycopy(all[i], 0, left[i], 0, key);
        System.arraycopy(all[i], key + 1, left[i], key, others.length - key);
      }
      return left;
    }
  }
}
