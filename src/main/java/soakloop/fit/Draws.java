package soakloop.fit;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Equally likely places of keys, spread evenly by a Sobol sequence and the same on every call.
 *
 * <p>Source of the sequence's direction numbers: S. Joe, F. Y. Kuo (2008), as Hipparchus has them.
 */
final class Draws {
  /** How many are usual: a power of two, as the sequence likes. */
  static final int USUAL = 256;

  private final List<RealVector> places;
  private final double[][] others;

  private Draws(List<RealVector> places, double[][] others) {
    this.places = places;
    this.others = others;
  }

  /**
   * Draws.
   *
   * @param mean of the places
   * @param covariance of the places
   * @param count how many
   * @param more further independent standard normal numbers beside each place
   */
  static Draws of(RealVector mean, RealMatrix covariance, int count, int more) {
    int keys = mean.getDimension();
    RealMatrix spread = new CholeskyDecomposition(covariance, 1e-6, 1e-14).getL();
    NormalDistribution normal = new NormalDistribution();
    SobolSequenceGenerator sequence = new SobolSequenceGenerator(Math.max(1, keys + more));
    sequence.skipTo(1);
    List<RealVector> places = new ArrayList<>();
    double[][] others = new double[count][more];
    for (int i = 0; i < count; i++) {
      double[] unit = sequence.nextVector();
      RealVector even = new ArrayRealVector(keys);
      for (int k = 0; k < keys; k++) {
        even.setEntry(k, normal.inverseCumulativeProbability(unit[k]));
      }
      for (int k = 0; k < more; k++) {
        others[i][k] = normal.inverseCumulativeProbability(unit[keys + k]);
      }
      places.add(mean.add(spread.operate(even)));
    }
    return new Draws(places, others);
  }

  int size() {
    return places.size();
  }

  /** Returns the places of the keys in a draw. */
  double[] place(int draw) {
    return places.get(draw).toArray();
  }

  /** Returns a further number of a draw. */
  double other(int draw, int which) {
    return others[draw][which];
  }
}
