package soakloop.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * An evening up to some round: what was done and what every car gave in the last.
 *
 * @param plan the question
 * @param rounds so far
 * @param cars what they gave in the last
 * @param sample how they are read for all
 */
record Prefix(EveningPlan plan, List<EveningRound> rounds, List<CarRound> cars, Sample sample) {
  /** The better plan first: the later the first miss, the less missed, the fewer actions. */
  static final Comparator<Prefix> BETTER =
      Comparator.comparingInt((Prefix p) -> -p.firstMiss())
          .thenComparingDouble(Prefix::missed)
          .thenComparingInt(Prefix::actions)
          .thenComparingDouble(p -> -p.last().iceLeft())
          .thenComparingDouble(p -> -p.last().batteryLeft())
          .thenComparingDouble(Prefix::highest);

  /** Misses are told apart to this, K. */
  private static final double GRAIN = 0.1;

  Prefix {
    rounds = List.copyOf(rounds);
    cars = List.copyOf(cars);
  }

  /** Returns the evening up to the session's last pull. */
  static Prefix first(EveningPlan plan, List<CarRound> cars, Sample sample) {
    return new Prefix(plan, List.of(), cars, sample)
        .with(Optional.empty(), 0, plan.battery().orElse(Double.POSITIVE_INFINITY), cars);
  }

  /**
   * Returns whether a way can be gone next.
   *
   * @param pumpPower W
   */
  boolean allows(Way way, double pumpPower) {
    return way.ice() <= last().iceLeft()
        && last().batteryLeft() - drawn(way, pumpPower) >= 0
        && plan.pit(rounds.size() - 1) >= way.shortest();
  }

  private double drawn(Way way, double pumpPower) {
    double power = (way.pump() ? pumpPower : 0) + (way.fans() ? plan.fanPower() : 0);
    return way.idles() ? 0 : power * plan.pit(rounds.size() - 1);
  }

  /** Returns the next round. */
  EveningFleet.Step step(Way way) {
    return new EveningFleet.Step(cars, rounds.size() - 1, way);
  }

  /** Returns the evening with a further round. */
  Prefix then(Way way, double pumpPower, List<CarRound> next) {
    return with(
        Optional.of(way),
        plan.pit(rounds.size() - 1),
        last().batteryLeft() - drawn(way, pumpPower),
        next);
  }

  private Prefix with(Optional<Way> way, double pit, double battery, List<CarRound> next) {
    double used = way.map(Way::ice).orElse(0.0);
    double left = (rounds.isEmpty() ? plan.ice() : last().iceLeft()) - used;
    double limit = plan.question().limit();
    List<EveningRound> more = new ArrayList<>(rounds);
    more.add(
        new EveningRound(
            rounds.size() + 1,
            way,
            pit,
            used,
            left,
            battery,
            of(next, CarRound::iceStart, 0.5),
            of(next, CarRound::charge, sample.share()) + sample.above().get(rounds.size()),
            of(next, CarRound::charge, 0.5),
            (double) next.stream().filter(c -> c.charge() <= limit).count() / next.size()));
    return new Prefix(plan, more, next, sample);
  }

  private static double of(List<CarRound> cars, ToDoubleFunction<CarRound> of, double share) {
    return Shares.quantile(cars.stream().mapToDouble(of).toArray(), share);
  }

  EveningRound last() {
    return rounds.get(rounds.size() - 1);
  }

  int actions() {
    return rounds.stream().mapToInt(EveningRound::actions).sum();
  }

  /** Returns the number of the first further round that misses; one more than any if none does. */
  int firstMiss() {
    return misses().findFirst().map(EveningRound::number).orElse(Integer.MAX_VALUE);
  }

  private java.util.stream.Stream<EveningRound> misses() {
    // What the session's own pull did is past.
    return rounds.stream().skip(1).filter(r -> r.peak() > plan.question().limit());
  }

  /** Returns the largest miss, K, to a tenth. */
  double missed() {
    double most = misses().mapToDouble(r -> r.peak() - plan.question().limit()).max().orElse(0);
    return GRAIN * Math.rint(most / GRAIN);
  }

  private double highest() {
    return rounds.stream().skip(1).mapToDouble(EveningRound::peak).max().orElse(0);
  }

  /** Returns how warm the cars end: coolant that the asked share stays under, K. */
  double coolant() {
    return of(cars, CarRound::coolant, sample.share());
  }

  /** Returns whether another is no better in anything that counts later. */
  boolean dominates(Prefix other) {
    return actions() <= other.actions()
        && last().iceLeft() >= other.last().iceLeft()
        && last().batteryLeft() >= other.last().batteryLeft()
        && -firstMiss() <= -other.firstMiss()
        && missed() <= other.missed()
        && coolant() <= other.coolant()
        && plenum() <= other.plenum()
        && iceInTank() >= other.iceInTank();
  }

  private double plenum() {
    return of(cars, CarRound::plenum, sample.share());
  }

  private double iceInTank() {
    return of(cars, CarRound::iceEnd, 0.5);
  }
}
