package soakloop.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.scenario.Scenario;

/** A single number that a run with pulls gives, and by which runs are held against each other. */
public enum Measure {
  /** Highest reading of the charge sensor over all pulls, each to the next pull's start; K. */
  PEAK_CHARGE("peak-charge", "Highest charge sensor reading", Dimension.TEMPERATURE) {
    @Override
    double of(List<PullResult> pulls) {
      return pulls.stream().mapToDouble(p -> p.sensor().peakToNextPull()).max().orElse(Double.NaN);
    }

    @Override
    public OptionalDouble logged(Outcome outcome) {
      return all(outcome, pulls -> pulls.stream().mapToDouble(Readings::peakToNextPull).max());
    }
  },
  /** Reading of the charge sensor where the last pull is counted; K. */
  END_CHARGE("end-charge", "Charge sensor at the last pull's counted end", Dimension.TEMPERATURE) {
    @Override
    double of(List<PullResult> pulls) {
      return last(pulls).sensor().end();
    }

    @Override
    public OptionalDouble logged(Outcome outcome) {
      Optional<PullResult.Logged> logged = last(outcome.pulls()).logged();
      return logged.isPresent()
          ? OptionalDouble.of(logged.get().sensor().end())
          : OptionalDouble.empty();
    }
  },
  /** Coolant entering the core as the last pull starts; K. */
  COOLANT("coolant", "Coolant into the core as the last pull starts", Dimension.TEMPERATURE) {
    @Override
    double of(List<PullResult> pulls) {
      return last(pulls).coolant().coreInletStart();
    }

    @Override
    public OptionalDouble logged(Outcome outcome) {
      double start = last(outcome.pulls()).startTime();
      return outcome
          .scenario()
          .logged()
          .flatMap(l -> Polyline.of(l, Signal.CORE_COOLANT_IN))
          .filter(line -> line.startTime() <= start && line.endTime() >= start)
          .map(line -> OptionalDouble.of(line.between(start, start).first()))
          .orElse(OptionalDouble.empty());
    }
  },
  /** Time that the charge sensor is over the scenario's limit, each pull to the next; s. */
  OVER_LIMIT("over-limit", "Time over the charge limit", Dimension.TIME) {
    @Override
    double of(List<PullResult> pulls) {
      return pulls.stream().mapToDouble(p -> p.sensor().overLimit()).sum();
    }

    @Override
    public OptionalDouble logged(Outcome outcome) {
      return all(
          outcome,
          pulls -> OptionalDouble.of(pulls.stream().mapToDouble(Readings::overLimit).sum()));
    }
  };

  private final String key;
  private final String label;
  private final Dimension dimension;

  Measure(String key, String label, Dimension dimension) {
    this.key = key;
    this.label = label;
    this.dimension = dimension;
  }

  /** Returns the word by which it is asked for. */
  public String key() {
    return key;
  }

  /** Returns what it is, in words. */
  public String label() {
    return label;
  }

  /** Returns what it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Returns its value, SI, from at least one pull. */
  abstract double of(List<PullResult> pulls);

  /**
   * Returns what the log says of the same, SI; empty if it does not cover the pulls.
   *
   * @param outcome a run with at least one pull
   */
  public abstract OptionalDouble logged(Outcome outcome);

  /**
   * Returns what a scenario says it must not pass, SI: the charge limit for charge temperatures.
   *
   * @param scenario which
   */
  public OptionalDouble limit(Scenario scenario) {
    return switch (this) {
      case PEAK_CHARGE, END_CHARGE -> scenario.limits().chargeTemperature();
      case COOLANT, OVER_LIMIT -> OptionalDouble.empty();
    };
  }

  /** Returns all words, such as "peak-charge, coolant". */
  public static String keys() {
    return String.join(", ", Arrays.stream(values()).map(Measure::key).toList());
  }

  /**
   * Finds one by its word.
   *
   * @param key such as {@code peak-charge}
   */
  public static Optional<Measure> named(String key) {
    return Arrays.stream(values()).filter(m -> m.key.equals(key.strip())).findFirst();
  }

  private static PullResult last(List<PullResult> pulls) {
    return pulls.get(pulls.size() - 1);
  }

  /** What is made of the logged readings of all pulls. */
  private interface Sum {
    OptionalDouble of(List<Readings> pulls);
  }

  private static OptionalDouble all(Outcome outcome, Sum sum) {
    List<Readings> logged =
        outcome.pulls().stream().flatMap(p -> p.logged().stream()).map(l -> l.sensor()).toList();
    return logged.isEmpty() || logged.size() < outcome.pulls().size()
        ? OptionalDouble.empty()
        : sum.of(logged);
  }
}
