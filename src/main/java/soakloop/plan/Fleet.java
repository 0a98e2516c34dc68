package soakloop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import soakloop.fit.Cars;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.simulate.SimulationException;
import soakloop.study.Workers;

/** Equally likely cars that have done the session and wait: the same for every way and wait. */
final class Fleet {
  private final List<WaitingCar> cars;
  private final List<List<List<Go>>> scanned;
  private final int lost;
  private final int keys;
  private final int threads;

  /** One car and what it gave in the scan, by way and wait. */
  private record Scanned(WaitingCar car, List<List<Go>> goes) {}

  private Fleet(List<Scanned> all, int lost, int keys, int threads) {
    this.cars = all.stream().map(Scanned::car).toList();
    this.scanned = all.stream().map(Scanned::goes).toList();
    this.lost = lost;
    this.keys = keys;
    this.threads = threads;
  }

  /**
   * Draws cars, lets each do its session, wait in every way and go after every wait of a scan.
   *
   * @param scans waits by way, s, rising
   * @throws InterruptedException if it is broken off
   */
  static Fleet of(WaitPlan plan, List<double[]> scans, int threads) throws InterruptedException {
    Cars cars = Cars.of(plan.scenario(), plan.draws());
    List<Callable<Optional<Scanned>>> tasks = new ArrayList<>();
    for (int i = 0; i < cars.size(); i++) {
      int draw = i;
      tasks.add(() -> scanned(plan, scans, cars, draw));
    }
    List<Scanned> all = new ArrayList<>();
    Workers.run(threads, tasks, one -> one.ifPresent(all::add));
    return new Fleet(all, cars.size() - all.size(), cars.keys(), threads);
  }

  private static Optional<Scanned> scanned(
      WaitPlan plan, List<double[]> scans, Cars cars, int draw) {
    try {
      Scenario scenario = cars.scenario(draw);
      WaitingCar car =
          new WaitingCar(
              scenario.setup().withoutLimit(),
              new WaitingCar.Errors(
                  cars.chargeError(draw), cars.bias(draw), cars.coolantReadingError(draw)),
              plan.iceBelow());
      return Optional.of(new Scanned(car, goes(plan.ways(), scans, car)));
    } catch (ScenarioException | SimulationException e) {
      return Optional.empty(); // a car that could not do the session says nothing
    }
  }

  /** Lets a car wait and go; a way that it cannot wait in fails throughout. */
  static List<List<Go>> goes(List<Way> ways, List<double[]> scans, WaitingCar car) {
    List<List<Go>> goes = new ArrayList<>();
    for (int w = 0; w < ways.size(); w++) {
      Way way = ways.get(w);
      List<Go> ofWay = new ArrayList<>();
      try {
        car.waitIn(way, scans.get(w));
      } catch (SimulationException e) {
        // Nothing was kept of this wait, so every pull after it fails.
        ofWay.clear();
      }
      for (double wait : scans.get(w)) {
        ofWay.add(car.go(way, wait));
      }
      goes.add(ofWay);
    }
    return goes;
  }

  int size() {
    return cars.size();
  }

  /** Returns how many cars could not do the session. */
  int lost() {
    return lost;
  }

  /** Returns how many keys move. */
  int keys() {
    return keys;
  }

  /** Returns what every car gave in the scan. */
  List<Go> scanned(int way, int wait) {
    return scanned.stream().map(s -> s.get(way).get(wait)).toList();
  }

  /**
   * Lets every car go after a wait.
   *
   * @throws InterruptedException if it is broken off
   */
  List<Go> go(Way way, double wait) throws InterruptedException {
    List<Callable<Go>> tasks = new ArrayList<>();
    cars.forEach(car -> tasks.add(() -> car.go(way, wait)));
    List<Go> goes = new ArrayList<>();
    Workers.run(threads, tasks, goes::add);
    return goes;
  }

  /** Returns when ice went in, s, for those cars in which it did. */
  double[] icedAt(Way way) {
    return cars.stream().flatMapToDouble(car -> car.icedAt(way).stream()).toArray();
  }
}
