package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import soakloop.fit.FitResult;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * What a fitted car's pulls say of core, loop and soak.
 *
 * @param last what its last pull's reading is made of
 * @param first the same of its first; empty if there is one pull only
 * @param lastName the last pull's name
 * @param firstName the first one's
 * @param display how numbers are shown
 */
record FitMeaning(
    SoakParts last, Optional<SoakParts> first, String lastName, String firstName, Display display) {
  /** Change that is not worth a cause, K. */
  private static final double SMALL = 1;

  /** Share of a change above which something sets it. */
  private static final double MOST = 0.65;

  /**
   * Reads a case; empty without a pull.
   *
   * @param result what a fit gave
   * @param index of the case
   * @param display how numbers are shown
   */
  static Optional<FitMeaning> of(FitResult result, int index, Display display) {
    Outcome outcome = result.after().get(index);
    List<PullResult> pulls = outcome.pulls();
    if (pulls.isEmpty()) {
      return Optional.empty();
    }
    double bias = result.bias(index, Signal.CHARGE_TEMPERATURE);
    PullResult first = pulls.get(0);
    PullResult last = pulls.get(pulls.size() - 1);
    SoakParts parts = SoakParts.of(outcome, last, bias);
    return Double.isFinite(parts.reading())
        ? Optional.of(
            new FitMeaning(
                parts,
                pulls.size() > 1
                    ? Optional.of(SoakParts.of(outcome, first, bias))
                    : Optional.empty(),
                last.name(),
                first.name(),
                display))
        : Optional.empty();
  }

  /** Says it, whole sentences. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    first.ifPresent(f -> sentences.add(growth(last.since(f))));
    sentences.add(
        "At the counted end of "
            + lastName
            + " a core that took all there is to take would cool the charge by another "
            + display.difference(Math.max(0, last.core()))
            + "; a loop that sent its coolant in as cold as the air around the car, by "
            + display.difference(Math.max(0, last.coldestLoop()))
            + ". Beyond that only ice helps.");
    return sentences;
  }

  private String growth(SoakParts more) {
    double all = more.reading();
    String from = "From " + firstName + " to " + lastName + " the sensor's counted reading ";
    if (!(Math.abs(all) >= SMALL)) {
      return from + "hardly moves (" + display.signedDifference(all) + "): nothing soaks.";
    }
    return from
        + "moves by "
        + display.signedDifference(all)
        + ": "
        + display.signedDifference(more.coolant())
        + " from coolant entering the core further above the air around the car, "
        + display.signedDifference(more.air())
        + " from that air, "
        + display.signedDifference(more.core())
        + " from what the core leaves, "
        + display.signedDifference(more.rest())
        + " from plenum metal and sensor. "
        + verdict(more, all);
  }

  private String verdict(SoakParts more, double all) {
    if (more.coolant() / all >= MOST) {
      return "So the loop behind the core sets " + lastName + ".";
    }
    if (more.air() / all >= MOST) {
      return "So the air around the car sets " + lastName + ", not core or loop.";
    }
    if (more.core() / all >= MOST) {
      return "So the core sets " + lastName + ".";
    }
    if (more.rest() / all >= MOST) {
      return "So soaked metal sets " + lastName + ", not core or loop.";
    }
    if ((more.coolant() + more.air()) / all >= MOST) {
      return "So warmer air and the loop behind the core set " + lastName + " together.";
    }
    return "No part sets " + lastName + " by itself.";
  }

  /** Returns what the readings are made of. */
  Table table() {
    List<List<String>> rows = new ArrayList<>();
    row(rows, "air around the car", SoakParts::air, Dimension.TEMPERATURE);
    row(rows, "+ coolant into the core above it", SoakParts::coolant, DIFFERENCE);
    row(rows, "+ left over by the core", SoakParts::core, DIFFERENCE);
    row(rows, "+ plenum metal and sensor", SoakParts::rest, DIFFERENCE);
    row(rows, "= charge sensor, counted end", SoakParts::reading, Dimension.TEMPERATURE);
    row(rows, "core takes of what it could", SoakParts::taken, Dimension.FRACTION);
    List<String> head = new ArrayList<>(List.of("Made of"));
    first.ifPresent(f -> head.add(Display.sentenceStart(firstName)));
    head.add(Display.sentenceStart(lastName));
    first.ifPresent(f -> head.add("Change"));
    return new Table(head, rows, 1, head.size() - 1);
  }

  private static final Dimension DIFFERENCE = Dimension.TEMPERATURE_DIFFERENCE;

  private void row(
      List<List<String>> rows, String name, ToDoubleFunction<SoakParts> part, Dimension dimension) {
    List<String> row = new ArrayList<>(List.of(name));
    int decimals = dimension == Dimension.FRACTION ? 0 : 1;
    double now = part.applyAsDouble(last);
    first.ifPresent(f -> row.add(display.show(part.applyAsDouble(f), dimension, decimals)));
    row.add(display.show(now, dimension, decimals));
    first.ifPresent(
        f -> {
          double more = now - part.applyAsDouble(f);
          row.add(
              dimension == Dimension.FRACTION
                  ? display.signed(more, dimension, decimals) + " points"
                  : display.fineDifference(more));
        });
    rows.add(row);
  }
}
