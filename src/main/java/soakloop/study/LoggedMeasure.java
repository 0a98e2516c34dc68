package soakloop.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import soakloop.log.Signal;

/** Reads of a log what a {@link Measure} reads of a run. */
final class LoggedMeasure {
  private LoggedMeasure() {}

  /** Highest reading over all pulls, K. */
  static OptionalDouble peakCharge(Outcome outcome) {
    return all(outcome, pulls -> pulls.stream().mapToDouble(Readings::peakToNextPull).max());
  }

  /** Reading where the last pull is counted, K. */
  static OptionalDouble endCharge(Outcome outcome) {
    Optional<PullResult.Logged> logged = Measured.of(outcome).last().logged();
    return logged.isPresent()
        ? OptionalDouble.of(logged.get().sensor().end())
        : OptionalDouble.empty();
  }

  /** Coolant entering the core as the last pull starts, K. */
  static OptionalDouble coolant(Outcome outcome) {
    double start = Measured.of(outcome).last().startTime();
    return outcome
        .scenario()
        .logged()
        .flatMap(l -> Polyline.of(l, Signal.CORE_COOLANT_IN))
        .filter(line -> line.startTime() <= start && line.endTime() >= start)
        .map(line -> OptionalDouble.of(line.between(start, start).first()))
        .orElse(OptionalDouble.empty());
  }

  /** Time over the limit, s. */
  static OptionalDouble overLimit(Outcome outcome) {
    return all(
        outcome, pulls -> OptionalDouble.of(pulls.stream().mapToDouble(Readings::overLimit).sum()));
  }

  private static OptionalDouble all(Outcome outcome, Function<List<Readings>, OptionalDouble> sum) {
    List<Readings> logged =
        outcome.pulls().stream().flatMap(p -> p.logged().stream()).map(l -> l.sensor()).toList();
    return logged.isEmpty() || logged.size() < outcome.pulls().size()
        ? OptionalDouble.empty()
        : sum.apply(logged);
  }
}
