package soakloop.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import soakloop.fit.Cars;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.SimulationException;
import soakloop.study.Workers;

/** Equally likely cars at the end of their session, to go from round to round. */
final class EveningFleet {
  private final EveningPlan plan;
  private final List<EveningCar> cars;
  private final int lost;
  private final int keys;
  private final int threads;

  /**
   * A round to be run by all cars.
   *
   * @param from what each car gave in the round before
   * @param round index of its interval
   * @param way of treating the car before it
   */
  record Step(List<CarRound> from, int round, Way way) {}

  private EveningFleet(EveningPlan plan, List<EveningCar> cars, int lost, int keys, int threads) {
    this.plan = plan;
    this.cars = List.copyOf(cars);
    this.lost = lost;
    this.keys = keys;
    this.threads = threads;
  }

  /**
   * Draws cars and lets each do its session.
   *
   * @throws InterruptedException if it is broken off
   */
  static EveningFleet of(EveningPlan plan, int threads) throws InterruptedException {
    Cars drawn = Cars.of(plan.question().scenario(), plan.question().draws());
    List<Callable<Optional<EveningCar>>> tasks = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      int draw = i;
      tasks.add(() -> car(plan, drawn, draw));
    }
    List<EveningCar> cars = new ArrayList<>();
    Workers.run(threads, tasks, one -> one.ifPresent(cars::add));
    return new EveningFleet(plan, cars, drawn.size() - cars.size(), drawn.keys(), threads);
  }

  private static Optional<EveningCar> car(EveningPlan plan, Cars cars, int draw) {
    try {
      return Optional.of(
          new EveningCar(
              cars.scenario(draw).setup().withoutLimit(),
              new WaitingCar.Errors(
                  cars.chargeError(draw), cars.bias(draw), cars.coolantReadingError(draw)),
              plan.question().iceBelow()));
    } catch (ScenarioException | SimulationException e) {
      return Optional.empty(); // a car that could not do the session says nothing
    }
  }

  /**
   * Returns the few cars that come nearest to the asked share in their session's pull: they decide
   * whether the limit is kept.
   */
  EveningFleet few(int most) {
    List<EveningCar> sorted = new ArrayList<>(cars);
    sorted.sort(Comparator.comparingDouble(car -> car.first().charge()));
    int start = start(most);
    List<EveningCar> few = sorted.subList(start, Math.min(start + most, sorted.size()));
    return new EveningFleet(plan, few, lost, keys, threads);
  }

  private int start(int most) {
    double place = plan.question().confidence() * cars.size();
    return (int) Math.max(0, Math.min(cars.size() - most, Math.round(place) - most / 2));
  }

  /** Returns how those few are read for all. */
  Sample sample(int most) {
    double place = plan.question().confidence() * cars.size() - start(most);
    return Sample.plain(place / Math.min(most, cars.size()), plan.intervals().size() + 1);
  }

  int size() {
    return cars.size();
  }

  int lost() {
    return lost;
  }

  int keys() {
    return keys;
  }

  /** Returns what every car gave in its session's last pull. */
  List<CarRound> first() {
    return cars.stream().map(EveningCar::first).toList();
  }

  /** Returns the power that the asked share of the cars' pumps draw at the most, W. */
  double pumpPower() {
    double[] powers = cars.stream().mapToDouble(EveningCar::pumpPower).toArray();
    return Shares.quantile(powers, plan.question().confidence());
  }

  /**
   * Runs rounds.
   *
   * @return by step, what every car gave
   * @throws InterruptedException if it is broken off
   */
  List<List<CarRound>> go(List<Step> steps) throws InterruptedException {
    List<Callable<List<CarRound>>> tasks = new ArrayList<>();
    for (int i = 0; i < cars.size(); i++) {
      int car = i;
      tasks.add(() -> steps.stream().map(step -> go(car, step)).toList());
    }
    List<List<CarRound>> byCar = new ArrayList<>();
    Workers.run(threads, tasks, byCar::add);
    List<List<CarRound>> byStep = new ArrayList<>();
    for (int s = 0; s < steps.size(); s++) {
      int step = s;
      byStep.add(byCar.stream().map(rounds -> rounds.get(step)).toList());
    }
    return byStep;
  }

  private CarRound go(int car, Step step) {
    return cars.get(car).go(step.from().get(car), step.way(), plan.pit(step.round()), plan.lanes());
  }
}
