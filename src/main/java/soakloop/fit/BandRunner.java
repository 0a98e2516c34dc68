package soakloop.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import soakloop.log.Signal;
import soakloop.scenario.FitRecord;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.Channel;
import soakloop.simulate.Options;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;
import soakloop.study.PullResult;
import soakloop.study.PullResults;
import soakloop.study.Workers;

/** Runs equally likely cars and keeps of each only what bands are read off. */
final class BandRunner {
  /** Even steps over the session at which courses are kept. */
  private static final int STEPS = 600;

  /** Even steps over each pull, in both kinds of courses. */
  private static final int PULL_STEPS = 24;

  /** Most pulls that courses are kept closely in. */
  private static final int CLOSE_PULLS = 60;

  private static final Options OPTIONS = Options.STUDY.withMostWork(1e9);

  private final Outcome outcome;
  private final Cars cars;
  private final int threads;
  private final double[] times;
  private final CorrelatedError charge;
  private final CorrelatedError coolant;
  private final boolean ownError;

  /**
   * What is kept of one car.
   *
   * @param courses by channel, K at {@code times}
   * @param numbers by pull
   * @param pulls sensor by pull, K at even steps
   */
  private record Kept(
      List<double[]> courses, List<Map<PullNumber, Double>> numbers, List<double[]> pulls) {}

  BandRunner(Outcome outcome, Cars cars, int threads) {
    this.outcome = outcome;
    this.cars = cars;
    this.threads = threads;
    this.times = times(outcome.trace());
    Optional<FitRecord> fitted = outcome.scenario().fitted();
    this.charge = cars.charge();
    this.coolant = cars.coolant();
    this.ownError =
        fitted.filter(f -> f.errors().containsKey(Signal.CHARGE_TEMPERATURE)).isPresent();
  }

  /** Returns where courses are kept: evenly, and more closely in pulls. */
  private static double[] times(Trace trace) {
    double from = Math.max(0, trace.time(0));
    double to = trace.time(trace.size() - 1);
    TreeSet<Double> times = new TreeSet<>();
    for (int i = 0; i <= STEPS; i++) {
      times.add(from + (to - from) * i / STEPS);
    }
    List<Trace.Span> pulls = trace.pulls();
    for (Trace.Span pull : pulls.subList(0, Math.min(CLOSE_PULLS, pulls.size()))) {
      for (int i = 0; i <= PULL_STEPS; i++) {
        times.add(at(pull, i));
      }
    }
    return times.stream().mapToDouble(t -> t).toArray();
  }

  private static double at(Trace.Span pull, int step) {
    return pull.start() + (pull.end() - pull.start()) * step / PULL_STEPS;
  }

  Optional<RunBands> bands() {
    List<Callable<Optional<Kept>>> tasks = new ArrayList<>();
    for (int i = 0; i < cars.size(); i++) {
      int draw = i;
      tasks.add(() -> kept(draw));
    }
    List<Kept> all = new ArrayList<>();
    try {
      Workers.run(threads, tasks, kept -> kept.ifPresent(all::add));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    return all.size() < RunBands.FEWEST_DRAWS ? Optional.empty() : Optional.of(read(all));
  }

  @SuppressWarnings("EnumOrdinal") // rows hold all numbers in their order
  private RunBands read(List<Kept> all) {
    Map<Channel, List<Band>> courses = new EnumMap<>(Channel.class);
    for (int c = 0; c < RunBands.CHANNELS.size(); c++) {
      int channel = c;
      courses.put(
          RunBands.CHANNELS.get(c),
          bands(all.stream().map(k -> k.courses().get(channel)).toList()));
    }
    List<RunBands.OfPull> pulls = new ArrayList<>();
    for (int p = 0; p < outcome.pulls().size(); p++) {
      int pull = p;
      Map<PullNumber, Band> told = new EnumMap<>(PullNumber.class);
      for (PullNumber number : PullNumber.values()) {
        Band band =
            Band.of(
                all.stream()
                    .mapToDouble(k -> k.numbers().get(pull).getOrDefault(number, Double.NaN))
                    .toArray());
        if (Double.isFinite(band.middle())) {
          told.put(number, band);
        }
      }
      pulls.add(
          new RunBands.OfPull(told, bands(all.stream().map(k -> k.pulls().get(pull)).toList())));
    }
    return new RunBands(
        all.size(),
        cars.size() - all.size(),
        cars.keys(),
        outcome.scenario().fitted().isPresent(),
        ownError,
        Arrays.stream(times).boxed().toList(),
        courses,
        pulls);
  }

  private static List<Band> bands(List<double[]> rows) {
    List<Band> bands = new ArrayList<>();
    double[] values = new double[rows.size()];
    for (int i = 0; i < rows.get(0).length; i++) {
      for (int r = 0; r < values.length; r++) {
        values[r] = rows.get(r)[i];
      }
      bands.add(Band.of(values));
    }
    return bands;
  }

  /** Runs a car; empty if it cannot be or cannot run. */
  private Optional<Kept> kept(int draw) {
    try {
      Scenario scenario = cars.scenario(draw);
      Trace trace = Simulation.run(scenario.setup().withoutLimit(), OPTIONS);
      return Optional.of(
          new Kept(
              courses(trace, draw),
              numbers(trace, draw),
              trace.pulls().stream().map(p -> sensor(trace, p, draw)).toList()));
    } catch (ScenarioException | SimulationException e) {
      return Optional.empty();
    }
  }

  private List<double[]> courses(Trace trace, int draw) {
    double first = cars.error(draw, 0);
    double[] wrong = {
      cars.bias(draw) + charge.deviation() * first,
      charge.deviation() * first,
      coolant.deviation() * first
    };
    double end = trace.time(trace.size() - 1);
    List<double[]> courses = new ArrayList<>();
    for (int c = 0; c < wrong.length; c++) {
      double[] course = new double[times.length];
      for (int i = 0; i < times.length; i++) {
        course[i] =
            times[i] > end ? Double.NaN : trace.at(RunBands.CHANNELS.get(c), times[i]) + wrong[c];
      }
      courses.add(course);
    }
    return courses;
  }

  private double[] sensor(Trace trace, Trace.Span pull, int draw) {
    double wrong = cars.bias(draw) + charge.deviation() * cars.error(draw, 1);
    double[] course = new double[PULL_STEPS + 1];
    Arrays.setAll(course, i -> trace.at(Channel.SENSOR, at(pull, i)) + wrong);
    return course;
  }

  private List<Map<PullNumber, Double>> numbers(Trace trace, int draw) {
    OptionalDouble limit = outcome.scenario().limits().chargeTemperature();
    List<Map<PullNumber, Double>> numbers = new ArrayList<>();
    for (PullResult pull : PullResults.of(trace, limit, Optional.empty())) {
      double kept = Math.exp(-Math.max(0, pull.countedAt() - pull.startTime()) / charge.time());
      double start = charge.deviation() * cars.error(draw, 0);
      double end =
          kept * start + Math.sqrt(1 - kept * kept) * charge.deviation() * cars.error(draw, 1);
      Map<PullNumber, Double> told = new EnumMap<>(PullNumber.class);
      for (PullNumber number : PullNumber.values()) {
        told.put(number, number.of(pull) + wrong(number, start, end, draw));
      }
      numbers.add(told);
    }
    overLimit(numbers, trace, limit, draw);
    return numbers;
  }

  private double wrong(PullNumber number, double start, double end, int draw) {
    double bias = number.isOfSensor() ? cars.bias(draw) : 0;
    return switch (number.wrong()) {
      case NOT -> 0;
      case AT_START -> start + bias;
      case AT_END -> end + bias;
      case OF_RISE -> end - start;
      case OF_COOLANT -> coolant.deviation() * cars.error(draw, 0);
    };
  }

  /** Times over the limit, as if what reads wrong lowered the limit throughout. */
  private void overLimit(
      List<Map<PullNumber, Double>> numbers, Trace trace, OptionalDouble limit, int draw) {
    double wrong = charge.deviation() * cars.error(draw, 1);
    List<PullResult> ofCharge = shifted(trace, limit, wrong);
    List<PullResult> ofSensor = shifted(trace, limit, wrong + cars.bias(draw));
    boolean limited = limit.isPresent();
    for (int p = 0; p < numbers.size(); p++) {
      Map<PullNumber, Double> told = numbers.get(p);
      told.put(
          PullNumber.CHARGE_OVER_LIMIT,
          limited ? ofCharge.get(p).charge().overLimit() : Double.NaN);
      told.put(
          PullNumber.SENSOR_OVER_LIMIT,
          limited ? ofSensor.get(p).sensor().overLimit() : Double.NaN);
    }
  }

  private static List<PullResult> shifted(Trace trace, OptionalDouble limit, double wrong) {
    return limit.isEmpty()
        ? List.of()
        : PullResults.of(trace, OptionalDouble.of(limit.getAsDouble() - wrong), Optional.empty());
  }
}
