package soakloop.reading;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Lays the points of one engine speed over the course of another, by Gauss-Newton steps: the offset
 * in time and the ratio of speeds that leave the least squares. Points that lie far off, as around
 * a lift of the throttle, are then left out and it is repeated.
 *
 * @param offset s
 * @param scale [-]
 * @param misfit root mean square of what is left, rev/s
 * @param offsetError standard error of the offset, s, with what is left taken as correlated
 * @param scaleError standard error of the scale [-]
 */
record Alignment(
    double offset, double scale, double misfit, double offsetError, double scaleError) {
  private static final int STEPS = 20;
  private static final double CLOSE = 1e-7;

  /** The longest step in time, s. */
  private static final double LONGEST = 0.5;

  /** Robust standard deviations beyond which a point is left out. */
  private static final double FAR = 4;

  private static final int FEWEST = 6;

  /**
   * Aligns points.
   *
   * @param course what they are laid over
   * @param points of the other log, in its time
   * @param from first guess of the offset, s
   */
  static Optional<Alignment> of(Updates course, Updates points, double from) {
    return align(course, points, from, 1)
        .flatMap(
            first -> {
              Updates near = near(course, points, first);
              return align(course, near, first.offset, first.scale);
            });
  }

  private static Updates near(Updates course, Updates points, Alignment first) {
    double[] left = left(course, points, first.offset, first.scale);
    double[] sizes =
        IntStream.range(0, left.length)
            .filter(i -> Double.isFinite(left[i]))
            .mapToDouble(i -> Math.abs(left[i]))
            .toArray();
    double limit = Math.max(FAR * 1.4826 * Numbers.median(sizes), 10.0 / 60);
    return points.where(i -> Math.abs(left[i]) <= limit);
  }

  private static double[] left(Updates course, Updates points, double offset, double scale) {
    double[] left = new double[points.size()];
    for (int i = 0; i < left.length; i++) {
      left[i] = course.at(points.time(i) + offset) - scale * points.value(i);
    }
    return left;
  }

  private static Optional<Alignment> align(
      Updates course, Updates points, double from, double fromScale) {
    double h = Math.max(course.spacing(), 0.05);
    double offset = from;
    double scale = fromScale;
    for (int step = 0; step < STEPS; step++) {
      Sums sums = new Sums(course, points, offset, scale, h);
      if (sums.count < FEWEST || !(sums.determinant() > 0)) {
        return Optional.empty();
      }
      double move = Math.max(-LONGEST, Math.min(LONGEST, sums.offsetStep()));
      offset += move;
      scale += sums.scaleStep();
      if (Math.abs(move) < CLOSE) {
        break;
      }
    }
    Sums sums = new Sums(course, points, offset, scale, h);
    return sums.count < FEWEST || !(sums.determinant() > 0)
        ? Optional.empty()
        : Optional.of(sums.alignment(offset, scale));
  }

  /** The sums of the normal equations. */
  private static final class Sums {
    private int count;
    private double slopes;
    private double mixed;
    private double speeds;
    private double slopeLeft;
    private double speedLeft;
    private double squares;
    private double neighbours;

    Sums(Updates course, Updates points, double offset, double scale, double h) {
      double before = 0;
      for (int i = 0; i < points.size(); i++) {
        double t = points.time(i) + offset;
        double slope = (course.at(t + h) - course.at(t - h)) / (2 * h);
        double left = course.at(t) - scale * points.value(i);
        if (!Double.isFinite(slope) || !Double.isFinite(left)) {
          continue;
        }
        count++;
        slopes += slope * slope;
        mixed -= slope * points.value(i);
        speeds += points.value(i) * points.value(i);
        slopeLeft += slope * left;
        speedLeft -= points.value(i) * left;
        squares += left * left;
        neighbours += left * before;
        before = left;
      }
    }

    double determinant() {
      return slopes * speeds - mixed * mixed;
    }

    double offsetStep() {
      return -(speeds * slopeLeft - mixed * speedLeft) / determinant();
    }

    double scaleStep() {
      return -(slopes * speedLeft - mixed * slopeLeft) / determinant();
    }

    Alignment alignment(double offset, double scale) {
      double variance = squares / Math.max(1, count - 2);
      double correlation = squares > 0 ? Math.min(0.95, Math.max(0, neighbours / squares)) : 0;
      double inflated = variance * (1 + correlation) / (1 - correlation);
      return new Alignment(
          offset,
          scale,
          Math.sqrt(squares / count),
          Math.sqrt(inflated * speeds / determinant()),
          Math.sqrt(inflated * slopes / determinant()));
    }
  }
}
