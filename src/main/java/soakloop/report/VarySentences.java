package soakloop.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import soakloop.study.KeyRange;
import soakloop.study.LimitLine;
import soakloop.study.Measure;
import soakloop.study.Variation;

/**
 * What a plan's results say, in sentences made from their numbers.
 *
 * @param variation the results
 * @param words how they are shown
 */
record VarySentences(Variation variation, VaryWords words) {
  /** Difference below which two values are told to a tenth, in K. */
  private static final double LITTLE = 3;

  /** Returns the answer, the number to take away first. */
  Answer answer() {
    LimitSentences limits = new LimitSentences(variation, words);
    List<String> sentences = new ArrayList<>();
    for (Measure measure : variation.plan().measures()) {
      limits.leading(measure).ifPresent(line -> sentences.add(limits.sentence(line)));
      limits.elsewhere(measure).ifPresent(sentences::add);
    }
    variation.plan().measures().forEach(measure -> sentences.add(span(measure)));
    if (variation.plan().limits().isEmpty()) {
      sentences.add(
          "No result has a limit to cross: state limits.charge-temperature in the scenario, or ask"
              + " with --limit.");
    }
    failures().ifPresent(sentences::add);
    return headline(limits, sentences);
  }

  /** Leads with a crossing if there is one, else with how far the first measure moves. */
  private Answer headline(LimitSentences limits, List<String> sentences) {
    for (Measure measure : variation.plan().measures()) {
      Optional<LimitLine> line = limits.leading(measure);
      if (line.isPresent() && line.get().crossings().size() == 1) {
        KeyRange range = variation.plan().keys().get(line.get().along());
        return new Answer(
            words.found(line.get().crossings().get(0).under()),
            words.symbol(range),
            first(limits.sentence(line.get()), sentences));
      }
    }
    Measure measure = variation.plan().measures().get(0);
    double moves =
        variation.value(extreme(measure, -1), measure)
            - variation.value(extreme(measure, 1), measure);
    return new Answer(
        words.differenceNumber(measure, moves),
        words.differenceSymbol(measure),
        first(span(measure), sentences));
  }

  private static List<String> first(String sentence, List<String> all) {
    List<String> ordered = new ArrayList<>(all);
    ordered.remove(sentence);
    ordered.add(0, sentence);
    return ordered;
  }

  private Optional<String> failures() {
    int count = variation.holes().size();
    return count == 0
        ? Optional.empty()
        : Optional.of(
            (count == 1 ? "1 run" : count + " runs")
                + " of "
                + variation.points().size()
                + " could not finish; the table says why.");
  }

  /** Returns the index of the lowest value (sign 1) or the highest (-1). */
  private int extreme(Measure measure, int sign) {
    return IntStream.range(0, variation.points().size())
        .filter(i -> !Double.isNaN(variation.value(i, measure)))
        .boxed()
        .min(Comparator.comparingDouble(i -> sign * variation.value(i, measure)))
        .orElse(0);
  }

  /** Says how far a measure moves over all that was run, and where scenario and log stand. */
  private String span(Measure measure) {
    int at = extreme(measure, 1);
    double low = variation.value(at, measure);
    int end = extreme(measure, -1);
    double high = variation.value(end, measure);
    boolean fine = high - low < LITTLE;
    String text =
        high > low
            ? words.brief(measure)
                + " moves by "
                + words.differenceNumber(measure, high - low)
                + " "
                + words.differenceSymbol(measure)
                + ", from "
                + words.show(measure, low, fine)
                + " at "
                + place(at)
                + " to "
                + words.show(measure, high, fine)
                + " at "
                + place(end)
            : words.brief(measure) + " is " + words.show(measure, low, fine) + " throughout";
    OptionalDouble own = variation.own(measure);
    OptionalDouble logged = variation.logged(measure);
    if (own.isPresent()) {
      text += "; the scenario as it is gives " + words.show(measure, own.getAsDouble(), fine);
    }
    if (logged.isPresent()) {
      text += ", its log " + words.show(measure, logged.getAsDouble(), fine);
    }
    return text + ".";
  }

  /** Returns the keys' values at a point. */
  String place(int index) {
    List<Double> values = variation.plan().values(index);
    return String.join(
        ", ",
        IntStream.range(0, values.size())
            .mapToObj(k -> words.value(variation.plan().keys().get(k), values.get(k)))
            .toList());
  }
}
