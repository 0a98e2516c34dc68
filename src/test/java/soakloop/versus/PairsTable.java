package soakloop.versus;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How reliable stated probabilities and verdicts were.
 *
 * @param cases compared pairs
 */
record PairsTable(List<PairCase> cases) {
  /** Bins of stated probability. */
  static final int BINS = 5;

  /** Chance of a bin's share lying outside its limits when all is as stated. */
  private static final double OUTSIDE = 0.01;

  private static final double MOST_FALSE = 0.10;
  private static final double LEAST_RIGHT = 0.80;

  PairsTable {
    cases = List.copyOf(cases);
  }

  /**
   * Pairs by stated probability.
   *
   * @param from least probability
   * @param to most
   * @param count pairs
   * @param stated mean of what was said
   * @param better how many were really better
   */
  record Bin(double from, double to, int count, double stated, int better) {
    /** Returns whether the count is what the stated probability allows (binomial). */
    boolean isReliable() {
      if (count == 0) {
        return true;
      }
      BinomialDistribution law = new BinomialDistribution(count, stated);
      return law.cumulativeProbability(better) >= OUTSIDE / 2
          && 1 - law.cumulativeProbability(better - 1) >= OUTSIDE / 2;
    }
  }

  /** Pairs whose cores differ: only of them can one be better. */
  List<PairCase> unequal() {
    return cases.stream().filter(c -> !c.isEqual()).toList();
  }

  List<Bin> bins() {
    List<Bin> bins = new ArrayList<>();
    for (int b = 0; b < BINS; b++) {
      double from = b / (double) BINS;
      double to = (b + 1) / (double) BINS;
      boolean last = b == BINS - 1;
      List<PairCase> in =
          unequal().stream().filter(c -> c.better() >= from && (c.better() < to || last)).toList();
      bins.add(
          new Bin(
              from,
              to,
              in.size(),
              in.stream().mapToDouble(PairCase::better).average().orElse(Double.NaN),
              (int) in.stream().filter(c -> c.truth() < 0).count()));
    }
    return bins;
  }

  /** Mean square of what was said less what was so. */
  double brier() {
    return unequal().stream()
        .mapToDouble(c -> Math.pow(c.better() - (c.truth() < 0 ? 1 : 0), 2))
        .average()
        .orElse(Double.NaN);
  }

  /** The same of saying the share of better ones each time. */
  double brierOfBaseRate() {
    double rate =
        unequal().stream().mapToDouble(c -> c.truth() < 0 ? 1 : 0).average().orElse(Double.NaN);
    return rate * (1 - rate);
  }

  /** Share of equal pairs of which one was called better. */
  double falseVerdicts() {
    return share(
        cases.stream()
            .filter(PairCase::isEqual)
            .map(c -> c.verdict() != VersusResult.Verdict.OPEN)
            .toList());
  }

  /** Share of pairs 20 % apart whose better core was called so. */
  double rightVerdicts(String style) {
    return share(
        cases.stream()
            .filter(c -> c.ratio() == 1.2 && (style.isEmpty() || c.style().equals(style)))
            .map(c -> c.verdict() == VersusResult.Verdict.BETTER)
            .toList());
  }

  /** Share of intervals that hold the true difference. */
  double coverage() {
    return share(cases.stream().map(PairCase::covers).toList());
  }

  /** Says what is not as it should be; nothing if all is. */
  List<String> shortfalls() {
    List<String> shortfalls = new ArrayList<>();
    for (Bin bin : bins()) {
      if (!bin.isReliable()) {
        shortfalls.add(
            String.format(
                Locale.ROOT,
                "bin %.1f to %.1f: %d of %d were better, said %.3f",
                bin.from(),
                bin.to(),
                bin.better(),
                bin.count(),
                bin.stated()));
      }
    }
    if (!(brier() < brierOfBaseRate())) {
      shortfalls.add(
          String.format(
              Locale.ROOT, "Brier score %.3f, base rate %.3f", brier(), brierOfBaseRate()));
    }
    if (!(falseVerdicts() <= MOST_FALSE)) {
      shortfalls.add(
          String.format(Locale.ROOT, "equal cores: %.1f %% false", 100 * falseVerdicts()));
    }
    if (!(rightVerdicts("") >= LEAST_RIGHT)) {
      shortfalls.add(
          String.format(Locale.ROOT, "20 %% better: %.1f %% right", 100 * rightVerdicts("")));
    }
    return shortfalls;
  }

  private static double share(List<Boolean> of) {
    return of.isEmpty() ? Double.NaN : of.stream().filter(b -> b).count() / (double) of.size();
  }
}
