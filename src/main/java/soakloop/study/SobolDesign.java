package soakloop.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * The places at which a function is asked for its sensitivity indices: two samples A and B of the
 * unit cube, and for every input i the sample AB(i), which is A with input i taken from B.
 *
 * <p>A and B are the two halves of the coordinates of one Sobol sequence with twice as many
 * dimensions. Its first point, which is zero in all of them, is left out.
 *
 * <p>Source: A. Saltelli, P. Annoni, I. Azzini, F. Campolongo, M. Ratto, S. Tarantola, "Variance
 * based sensitivity analysis of model output", Computer Physics Communications 181 (2010) 259-270,
 * sections 2 and 4; from memory.
 */
final class SobolDesign {
  private final int inputs;
  private final double[][] sequence;

  /**
   * Makes a design.
   *
   * @param inputs number of inputs, 1 to 500
   * @param points of each sample, at least 2; a power of two is best
   * @throws IllegalArgumentException if they are out of range
   */
  SobolDesign(int inputs, int points) {
    if (!(inputs >= 1 && inputs <= 500)) {
      throw new IllegalArgumentException("inputs must be 1 to 500, not " + inputs);
    }
    if (!(points >= 2)) {
      throw new IllegalArgumentException("points must be two or more, not " + points);
    }
    this.inputs = inputs;
    SobolSequenceGenerator generator = new SobolSequenceGenerator(2 * inputs);
    generator.skipTo(1);
    this.sequence = new double[points][];
    for (int j = 0; j < points; j++) {
      sequence[j] = generator.nextVector();
    }
  }

  /** Returns the number of points of each sample. */
  int points() {
    return sequence.length;
  }

  /** Returns the number of places that belong to each point: A, B and AB(1) to AB(inputs). */
  int width() {
    return inputs + 2;
  }

  /**
   * Returns a point in all samples.
   *
   * @param point from 0
   * @return places in the unit cube: A, B, then AB(i) for each input
   */
  List<double[]> places(int point) {
    double[] a = Arrays.copyOfRange(sequence[point], 0, inputs);
    double[] b = Arrays.copyOfRange(sequence[point], inputs, 2 * inputs);
    List<double[]> places = new ArrayList<>(List.of(a, b));
    for (int i = 0; i < inputs; i++) {
      double[] mixed = a.clone();
      mixed[i] = b[i];
      places.add(mixed);
    }
    return places;
  }
}
