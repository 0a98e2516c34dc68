package soakloop.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import soakloop.log.Signal;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.Workers;

/**
 * What is known of numbers when keys are known so far: runs at equally likely places of the keys.
 * What the charge sensor would show carries its own error and the model's too.
 *
 * @param model whose cases are run
 * @param draws places of the model's keys
 * @param error the model's own error of the charge sensor
 */
record Prediction(FitModel model, Draws draws, CorrelatedError error) {
  /** What is believed before any log. */
  static Prediction before(FitModel model, int count) {
    int keys = model.keys().size();
    RealVector middle = new ArrayRealVector(keys);
    RealMatrix even = MatrixUtils.createRealIdentityMatrix(keys);
    return new Prediction(model, Draws.of(middle, even, count, 1), Evidence.USUAL);
  }

  /** What is known after a fit. */
  static Prediction after(Fitted fitted, int count) {
    CorrelatedError error = fitted.errors().getOrDefault(Signal.CHARGE_TEMPERATURE, Evidence.USUAL);
    return new Prediction(
        fitted.model(), Draws.of(fitted.place(), fitted.covariance(), count, 1), error);
  }

  /** A reading of a run at a place. */
  interface Reader {
    double of(Trace trace, double[] place, double modelError);
  }

  /** Returns what is known of the quantities of a case's next pull; none without a pull. */
  Map<Quantity, Band> nextPull(int inCase) {
    if (NextPull.of(model.cases().get(inCase).scenario().setup()).isEmpty()) {
      return Map.of();
    }
    Quantity[] quantities = Quantity.values();
    List<Reader> readers = new ArrayList<>();
    for (Quantity quantity : quantities) {
      readers.add(
          (trace, place, wrong) ->
              quantity.of(trace) + (quantity.isOfSensor() ? bias(inCase, place) + wrong : 0));
    }
    List<Band> read = bands(place -> NextPull.of(setup(inCase, place)).orElseThrow(), readers);
    Map<Quantity, Band> bands = new EnumMap<>(Quantity.class);
    for (int i = 0; i < quantities.length; i++) {
      bands.put(quantities[i], read.get(i));
    }
    return bands;
  }

  /** Returns what is known of a number of a case's own session. */
  Band ofSession(int inCase, Reader reader) {
    return bands(place -> setup(inCase, place), List.of(reader)).get(0);
  }

  /** Returns by how much the charge sensor reads high at a place, K. */
  double bias(int inCase, double[] place) {
    return model.of(inCase, new Role.Bias(Signal.CHARGE_TEMPERATURE), place);
  }

  /** Makes the setup of a place. */
  private interface Maker {
    Setup at(double[] place) throws ScenarioException;
  }

  private Setup setup(int inCase, double[] place) throws ScenarioException {
    return model.scenario(inCase, place).setup().withoutLimit();
  }

  /** Runs all draws and reads each; a run that cannot be reads NaN. */
  private List<Band> bands(Maker maker, List<Reader> readers) {
    List<Callable<double[]>> tasks = new ArrayList<>();
    for (int i = 0; i < draws.size(); i++) {
      int draw = i;
      tasks.add(() -> read(maker, readers, draw));
    }
    double[][] values = new double[readers.size()][draws.size()];
    try {
      int[] next = {0};
      Workers.run(
          model.threads(),
          tasks,
          read -> {
            for (int r = 0; r < read.length; r++) {
              values[r][next[0]] = read[r];
            }
            next[0]++;
          });
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    return Arrays.stream(values).map(Band::of).toList();
  }

  private double[] read(Maker maker, List<Reader> readers, int draw) {
    double[] read = new double[readers.size()];
    Arrays.fill(read, Double.NaN);
    double[] place = draws.place(draw);
    try {
      Trace trace = Simulation.run(maker.at(place), FitModel.OPTIONS);
      double wrong = error.deviation() * draws.other(draw, 0);
      for (int r = 0; r < read.length; r++) {
        read[r] = readers.get(r).of(trace, place, wrong);
      }
    } catch (ScenarioException | SimulationException e) {
      // A place that the car cannot be at says nothing.
      return read;
    }
    return read;
  }
}
