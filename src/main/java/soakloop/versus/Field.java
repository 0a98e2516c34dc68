package soakloop.versus;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soakloop.fit.Band;
import soakloop.fit.Place;

/**
 * All contenders under the same conditions, over equally likely cars: each car is run with each of
 * them.
 */
final class Field {
  private final List<List<Figures>> cars;
  private final double[][] errors;
  private final double error;

  /**
   * Makes it.
   *
   * @param cars by car, then by contender
   * @param errors standard normal numbers by contender, then by car
   * @param error standard deviation of the model's own error of the charge, K
   */
  private Field(List<List<Figures>> cars, double[][] errors, double error) {
    this.cars = cars;
    this.errors = errors;
    this.error = error;
  }

  /**
   * Runs.
   *
   * @param runner who runs
   * @param mixes of the contenders
   * @param setting what is changed of the conditions
   * @param places equally likely cars, with a standard normal number for each contender
   * @param error standard deviation of the model's own error of the charge, K
   * @return those that can be run with every contender; empty if none can
   */
  static Optional<Field> of(
      Runner runner, List<Mix> mixes, Setting setting, List<Place> places, double error) {
    List<Runner.Asked> asked = new ArrayList<>();
    places.forEach(p -> mixes.forEach(m -> asked.add(new Runner.Asked(m, p, setting))));
    List<Optional<Figures>> ran = runner.run(asked);
    List<List<Figures>> cars = new ArrayList<>();
    List<Place> able = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      List<Optional<Figures>> one = ran.subList(i * mixes.size(), (i + 1) * mixes.size());
      if (one.stream().allMatch(Optional::isPresent)) {
        cars.add(one.stream().map(Optional::orElseThrow).toList());
        able.add(places.get(i));
      }
    }
    double[][] errors = new double[mixes.size()][able.size()];
    for (int c = 0; c < errors.length; c++) {
      int contender = c;
      Arrays.setAll(errors[c], i -> able.get(i).other(contender));
    }
    return cars.isEmpty() ? Optional.empty() : Optional.of(new Field(cars, errors, error));
  }

  /** Returns how many cars were run. */
  int size() {
    return cars.size();
  }

  /** Returns how many pulls each has. */
  int pulls() {
    return cars.get(0).get(0).pulls().size();
  }

  String pull(int pull) {
    return cars.get(0).get(0).names().get(pull);
  }

  private double[] values(int contender, int pull, PullFigure figure) {
    return cars.stream().mapToDouble(c -> c.get(contender).of(pull, figure)).toArray();
  }

  /**
   * Returns where each figure of a contender's pull lies; those that are not modelled are absent.
   */
  Map<PullFigure, Band> bands(int contender, int pull) {
    Map<PullFigure, Band> bands = new EnumMap<>(PullFigure.class);
    for (PullFigure figure : PullFigure.values()) {
      double[] values = values(contender, pull, figure);
      for (int i = 0; i < values.length; i++) {
        values[i] += error * figure.errors() * errors[contender][i];
      }
      Band band = Band.of(values);
      if (Double.isFinite(band.middle())) {
        bands.put(figure, band);
      }
    }
    return bands;
  }

  /** Returns how far one contender's figure of a pull is from another's. */
  Difference difference(int one, int other, int pull, PullFigure figure, double atLeast) {
    double[] news = new double[cars.size()];
    Arrays.setAll(news, i -> (errors[other][i] - errors[one][i]) / Math.sqrt(2));
    return Difference.of(
        values(one, pull, figure),
        values(other, pull, figure),
        error * figure.errors() * Math.sqrt(2),
        news,
        figure,
        atLeast);
  }

  /** Returns the charge over engine speed in a contender's last pull. */
  VersusResult.Course course(int contender) {
    List<Double> speeds = cars.get(0).get(contender).speeds();
    List<Band> charge = new ArrayList<>();
    for (int i = 0; i < speeds.size(); i++) {
      int step = i;
      charge.add(
          Band.of(
              cars.stream()
                  .map(c -> c.get(contender).course())
                  .mapToDouble(c -> step < c.size() ? c.get(step) : Double.NaN)
                  .toArray()));
    }
    return new VersusResult.Course(speeds, charge);
  }
}
