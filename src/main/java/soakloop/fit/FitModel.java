package soakloop.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.Workers;

/**
 * What the model foretells of all logs' points at a place: one number for each keys' place in, one
 * for each point out.
 *
 * @param cases scenarios with their logs
 * @param keys what moves
 * @param threads runs at a time
 */
record FitModel(List<FitCase> cases, List<FitKey> keys, int threads) {
  /** Sampled closely enough that lines between samples are true to some hundredths of a degree. */
  static final Options OPTIONS = new Options(0.01, 0, 0.25, 1, false, 1e9);

  /** Stands for a run that cannot be: so far off that no search goes there. */
  private static final double NOWHERE = 1e4;

  /** How far a key is moved to see what it does, in standard deviations. */
  private static final double STEP = 0.05;

  FitModel {
    cases = List.copyOf(cases);
    keys = List.copyOf(keys);
  }

  int size() {
    return cases.stream().mapToInt(FitCase::size).sum();
  }

  /** Returns the scenario of a case at a place. */
  Scenario scenario(int inCase, double[] place) throws ScenarioException {
    Map<String, String> changes = new LinkedHashMap<>();
    for (int k = 0; k < place.length; k++) {
      if (place[k] != 0) {
        keys.get(k).write(inCase, place[k], changes);
      }
    }
    Scenario scenario = cases.get(inCase).scenario();
    return changes.isEmpty() ? scenario : scenario.with(changes);
  }

  /** Runs a case at a place. */
  Trace run(int inCase, double[] place) throws ScenarioException, SimulationException {
    return Simulation.run(scenario(inCase, place).setup().withoutLimit(), OPTIONS);
  }

  /** Returns what a case's signal should read at its points, its sensor's error included, SI. */
  double[] foretold(int inCase, SignalData data, Trace trace, double[] place) {
    double shift = of(inCase, new Role.Bias(data.signal()), place);
    double lag = of(inCase, new Role.Lag(data.signal()), place);
    double[] values = SensorLag.of(trace, data, lag);
    for (int i = 0; i < values.length; i++) {
      values[i] += shift;
    }
    return values;
  }

  /** Returns a thing of a case's own sensor at a place; 0 if no key moves it. */
  double of(int inCase, Role what, double[] place) {
    for (int k = 0; k < keys.size(); k++) {
      if (keys.get(k).moves(inCase, what)) {
        return keys.get(k).value(k < place.length ? place[k] : 0);
      }
    }
    return 0;
  }

  /** Returns what all points should read at a place, one case after the other. */
  double[] at(double[] place) {
    double[] all = new double[size()];
    int from = 0;
    for (int i = 0; i < cases.size(); i++) {
      from = into(i, place, all, from);
    }
    return all;
  }

  private int into(int inCase, double[] place, double[] all, int from) {
    int next = from;
    try {
      Trace trace = run(inCase, place);
      for (SignalData data : cases.get(inCase).data()) {
        double[] values = foretold(inCase, data, trace, place);
        for (double value : values) {
          all[next++] = Double.isFinite(value) ? value : NOWHERE;
        }
      }
    } catch (ScenarioException | SimulationException e) {
      int end = from + cases.get(inCase).size();
      Arrays.fill(all, from, end, NOWHERE);
      next = end;
    }
    return next;
  }

  /**
   * Returns what each point changes by for each key.
   *
   * @param place where
   * @param own what all points read there
   * @param both whether to move each key both ways, which is truer and takes twice as long
   * @return a row for each point, a column for each key
   */
  double[][] slopes(double[] place, double[] own, boolean both) {
    List<Callable<double[]>> tasks = new ArrayList<>();
    for (int k = 0; k < place.length; k++) {
      int key = k;
      tasks.add(() -> slope(place, own, key, both));
    }
    double[][] slopes = new double[own.length][place.length];
    try {
      int[] next = {0};
      Workers.run(
          threads,
          tasks,
          column -> {
            int k = next[0]++;
            for (int i = 0; i < column.length; i++) {
              slopes[i][k] = column[i];
            }
          });
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    return slopes;
  }

  private double[] slope(double[] place, double[] own, int key, boolean both) {
    double[] above = moved(place, own, key, STEP);
    boolean isOnlyDown = isNowhere(above);
    if (!both && !isOnlyDown) {
      return slope(above, own, STEP);
    }
    double[] below = moved(place, own, key, -STEP);
    if (isNowhere(below)) {
      return isOnlyDown ? new double[own.length] : slope(above, own, STEP);
    }
    return isOnlyDown ? slope(own, below, STEP) : slope(above, below, 2 * STEP);
  }

  /** Returns what all points should read with a key moved; cases that it is not part of stay. */
  private double[] moved(double[] place, double[] own, int key, double step) {
    double[] there = place.clone();
    there[key] += step;
    double[] all = own.clone();
    int from = 0;
    for (int i = 0; i < cases.size(); i++) {
      int next = from + cases.get(i).size();
      if (keys.get(key).isOf(i)) {
        into(i, there, all, from);
      }
      from = next;
    }
    return all;
  }

  private static double[] slope(double[] above, double[] below, double width) {
    double[] slope = new double[above.length];
    Arrays.setAll(slope, i -> (above[i] - below[i]) / width);
    return slope;
  }

  private static boolean isNowhere(double[] values) {
    for (double value : values) {
      if (value == NOWHERE) {
        return true;
      }
    }
    return false;
  }
}
