package soakloop.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
  /** Returns the answer, the number to take away first. */
  Answer answer() {
    List<String> sentences = new ArrayList<>();
    List<LimitLine> leading = leading();
    leading.forEach(line -> sentences.add(sentence(line)));
    if (keys().size() == 2) {
      sentences.addAll(elsewhere());
    }
    for (Measure measure : variation.plan().measures()) {
      sentences.add(span(measure));
    }
    if (variation.plan().limits().isEmpty()) {
      sentences.add(
          "No result has a limit to cross: state limits.charge-temperature in the scenario, or ask"
              + " with --limit.");
    }
    if (!variation.holes().isEmpty()) {
      int count = variation.holes().size();
      sentences.add(
          count
              + (count == 1 ? " run" : " runs")
              + " of "
              + variation.points().size()
              + " could not finish; the table says why.");
    }
    return headline(leading, sentences);
  }

  private Answer headline(List<LimitLine> leading, List<String> sentences) {
    KeyRange range = keys().get(0);
    for (LimitLine line : leading) {
      if (line.crossings().size() == 1 && line.crossings().get(0).found()) {
        double at = line.crossings().get(0).under();
        List<String> ordered = new ArrayList<>(sentences);
        ordered.remove(sentence(line));
        ordered.add(0, sentence(line));
        return new Answer(words.found(at), words.symbol(range), ordered);
      }
    }
    Measure measure = variation.plan().measures().get(0);
    List<String> ordered = new ArrayList<>(sentences);
    ordered.remove(span(measure));
    ordered.add(0, span(measure));
    return new Answer(
        words.display().number(variation.value(lowest(measure), measure), measure.dimension(), 0),
        words.display().symbol(measure.dimension()),
        ordered);
  }

  private List<KeyRange> keys() {
    return variation.plan().keys();
  }

  /** Returns one line for each measure: with two keys the one nearest to the scenario's value. */
  private List<LimitLine> leading() {
    if (keys().size() == 1) {
      return variation.lines();
    }
    KeyRange beside = keys().get(1);
    double near = beside.own().orElse((beside.first() + beside.last()) / 2);
    return variation.plan().measures().stream()
        .flatMap(
            m ->
                variation.lines().stream()
                    .filter(l -> l.measure() == m)
                    .min(Comparator.comparingDouble(l -> Math.abs(besides(l) - near)))
                    .stream())
        .toList();
  }

  private double besides(LimitLine line) {
    return keys().get(1).values().get(line.beside().orElse(0));
  }

  /** Says where a measure keeps to its limit. */
  String sentence(LimitLine line) {
    KeyRange range = keys().get(0);
    String place =
        keys().size() == 2
            ? "At " + keys().get(1).key() + " " + words.value(keys().get(1), besides(line)) + ", "
            : "";
    String all = words.value(range, range.first()) + " to " + words.value(range, range.last());
    String text;
    if (line.crossings().isEmpty()) {
      text =
          line.startsOver()
              ? words.over(line.measure(), line.limit())
                  + " whatever the "
                  + range.key()
                  + " from "
                  + all
              : words.under(line.measure(), line.limit())
                  + " at any "
                  + range.key()
                  + " from "
                  + all;
    } else {
      text =
          words.under(line.measure(), line.limit())
              + " with "
              + range.key()
              + " "
              + stretches(line);
    }
    return Display.sentenceStart(place + text + ".");
  }

  /** Returns where a measure is not over its limit, such as "from 7.83 L up". */
  String stretches(LimitLine line) {
    if (line.crossings().isEmpty()) {
      return line.startsOver() ? "nowhere" : "everywhere";
    }
    List<String> stretches = new ArrayList<>();
    String from = "";
    for (LimitLine.Crossing crossing : line.crossings()) {
      String at = place(crossing);
      if (!crossing.rises()) {
        from = at;
      } else {
        stretches.add(from.isEmpty() ? "up to " + at : "from " + from + " to " + at);
        from = "";
      }
    }
    if (!from.isEmpty()) {
      stretches.add("from " + from + " up");
    }
    return String.join(" and ", stretches);
  }

  private String place(LimitLine.Crossing crossing) {
    KeyRange range = keys().get(0);
    if (crossing.found() || range.whole()) {
      return words.foundValue(range, crossing.under());
    }
    return "somewhere between "
        + words.value(range, Math.min(crossing.under(), crossing.over()))
        + " and "
        + words.value(range, Math.max(crossing.under(), crossing.over()));
  }

  /** Says where the limits lie for other values of the second key. */
  private List<String> elsewhere() {
    List<String> sentences = new ArrayList<>();
    for (Measure measure : variation.plan().measures()) {
      List<String> places =
          variation.lines().stream()
              .filter(l -> l.measure() == measure)
              .map(l -> words.value(keys().get(1), besides(l)) + ": " + stretches(l))
              .toList();
      if (!places.isEmpty()) {
        double limit = variation.plan().limit(measure).orElse(Double.NaN);
        sentences.add(
            Display.sentenceStart(
                words.under(measure, limit)
                    + " with "
                    + keys().get(0).key()
                    + ", by "
                    + keys().get(1).key()
                    + " - "
                    + String.join("; ", places)
                    + "."));
      }
    }
    return sentences;
  }

  private int lowest(Measure measure) {
    return extreme(measure, 1);
  }

  private int extreme(Measure measure, int sign) {
    return IntStream.range(0, variation.points().size())
        .filter(i -> !Double.isNaN(variation.value(i, measure)))
        .boxed()
        .min(Comparator.comparingDouble(i -> sign * variation.value(i, measure)))
        .orElse(0);
  }

  /** Says how far a measure moves over all that was run, and where the scenario stands. */
  private String span(Measure measure) {
    int low = lowest(measure);
    int high = extreme(measure, -1);
    String text =
        words.brief(measure)
            + " lies between "
            + words.show(measure, variation.value(low, measure))
            + " ("
            + place(low)
            + ") and "
            + words.show(measure, variation.value(high, measure))
            + " ("
            + place(high)
            + ")";
    OptionalDouble own = variation.own(measure);
    OptionalDouble logged = variation.logged(measure);
    return text
        + (own.isPresent()
            ? "; the scenario as it is gives " + words.show(measure, own.getAsDouble())
            : "")
        + (logged.isPresent() ? ", its log " + words.show(measure, logged.getAsDouble()) : "")
        + ".";
  }

  /** Returns the keys' values at a point. */
  String place(int index) {
    List<Double> values = variation.plan().values(index);
    return String.join(
        ", ",
        IntStream.range(0, values.size())
            .mapToObj(k -> words.value(keys().get(k), values.get(k)))
            .toList());
  }
}
