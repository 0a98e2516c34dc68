package soakloop.fit;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import soakloop.log.Signal;

/**
 * What logs say of keys.
 *
 * @param model what was fitted
 * @param place likeliest place of each key, in standard deviations of what was believed before
 * @param covariance of the places about it
 * @param errors the model's own error of each signal
 * @param foretold what all points should read at the likeliest place
 * @param slopes what they change by there, a row for each point
 * @param misfit sum of squares of the independent residuals
 * @param rivals places at which other searches ended that are nearly as likely but apart
 * @param settled whether the search ended because nothing got better
 */
record Fitted(
    FitModel model,
    RealVector place,
    RealMatrix covariance,
    Map<Signal, CorrelatedError> errors,
    RealVector foretold,
    RealMatrix slopes,
    double misfit,
    List<RealVector> rivals,
    boolean settled) {
  Fitted {
    errors = Map.copyOf(errors);
    rivals = List.copyOf(rivals);
  }

  /**
   * Returns the same with what the logs say believed less: their say on the keys, over and above
   * what was believed before, is divided by a square, and the model's own error grows by as much.
   *
   * @param times at least 1
   */
  Fitted believedLess(double times) {
    int n = place.getDimension();
    RealMatrix before = MatrixUtils.createRealIdentityMatrix(n);
    RealMatrix news = Evidence.inverse(covariance).subtract(before);
    RealMatrix wider = Evidence.inverse(news.scalarMultiply(1 / (times * times)).add(before));
    Map<Signal, CorrelatedError> larger = new EnumMap<>(Signal.class);
    errors.forEach((s, e) -> larger.put(s, new CorrelatedError(e.deviation() * times, e.time())));
    return new Fitted(model, place, wider, larger, foretold, slopes, misfit, rivals, settled);
  }

  /** Returns a key's standard deviation in those of what was believed before: 1 is no news. */
  double deviation(int key) {
    return Math.sqrt(covariance.getEntry(key, key));
  }

  /** Returns how many keys the logs decide, each as far as they do [-]. */
  double effectiveKeys() {
    return place.getDimension() - covariance.getTrace();
  }
}
