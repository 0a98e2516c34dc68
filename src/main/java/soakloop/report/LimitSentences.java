package soakloop.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import soakloop.study.KeyRange;
import soakloop.study.LimitLine;
import soakloop.study.Measure;
import soakloop.study.Variation;

/**
 * Says where measures keep to their limits.
 *
 * @param variation the results
 * @param words how they are shown
 */
record LimitSentences(Variation variation, VaryWords words) {
  private List<KeyRange> keys() {
    return variation.plan().keys();
  }

  /**
   * Returns a measure's lines along the key that has more crossings to tell of.
   *
   * @param measure which
   */
  private List<LimitLine> lines(Measure measure) {
    List<LimitLine> all =
        variation.lines().stream().filter(line -> line.measure() == measure).toList();
    List<LimitLine> first = all.stream().filter(line -> line.along() == 0).toList();
    List<LimitLine> second = all.stream().filter(line -> line.along() == 1).toList();
    return crossings(second) > crossings(first) ? second : first;
  }

  private static long crossings(List<LimitLine> lines) {
    return lines.stream().filter(line -> !line.crossings().isEmpty()).count();
  }

  /** Returns the only line of a measure or, with two keys, the one nearest to the scenario. */
  Optional<LimitLine> leading(Measure measure) {
    return lines(measure).stream().min(Comparator.comparingDouble(this::distance));
  }

  private double distance(LimitLine line) {
    if (line.beside().isEmpty()) {
      return 0;
    }
    KeyRange other = other(line);
    return Math.abs(besides(line) - other.own().orElse((other.first() + other.last()) / 2));
  }

  private KeyRange other(LimitLine line) {
    return keys().get(1 - line.along());
  }

  private double besides(LimitLine line) {
    return other(line).values().get(line.beside().orElse(0));
  }

  /** Says where a measure keeps to its limit along a line. */
  String sentence(LimitLine line) {
    KeyRange range = keys().get(line.along());
    String all = words.value(range, range.first()) + " to " + words.value(range, range.last());
    String place =
        line.beside().isPresent()
            ? "with " + other(line).key() + " " + words.value(other(line), besides(line)) + ", "
            : "";
    String text;
    if (!line.crossings().isEmpty()) {
      text =
          words.under(line.measure(), line.limit())
              + " with "
              + range.key()
              + " "
              + stretches(line);
    } else if (line.startsOver()) {
      text = words.over(line.measure(), line.limit()) + " with any " + range.key() + " from " + all;
    } else {
      text =
          words.under(line.measure(), line.limit()) + " with any " + range.key() + " from " + all;
    }
    return Display.sentenceStart(place + text + ".");
  }

  /** Says where the limit lies for other values of the second key; empty with one key. */
  Optional<String> elsewhere(Measure measure) {
    List<LimitLine> lines = lines(measure);
    if (lines.isEmpty() || lines.get(0).beside().isEmpty()) {
      return Optional.empty();
    }
    KeyRange other = other(lines.get(0));
    List<String> places =
        lines.stream()
            .map(line -> stretches(line) + " at " + words.value(other, besides(line)))
            .toList();
    return Optional.of(
        "By "
            + other.key()
            + ", that takes "
            + keys().get(lines.get(0).along()).key()
            + " "
            + String.join("; ", places)
            + ".");
  }

  /** Returns where a measure is not over its limit, such as "from 7.83 L up". */
  String stretches(LimitLine line) {
    if (line.crossings().isEmpty()) {
      return line.startsOver() ? "nowhere in its range" : "anywhere in its range";
    }
    List<String> stretches = new ArrayList<>();
    String from = "";
    for (LimitLine.Crossing crossing : line.crossings()) {
      String at = place(keys().get(line.along()), crossing);
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

  private String place(KeyRange range, LimitLine.Crossing crossing) {
    if (crossing.found() || range.whole()) {
      return words.foundValue(range, crossing.under());
    }
    return "somewhere between "
        + words.value(range, Math.min(crossing.under(), crossing.over()))
        + " and "
        + words.value(range, Math.max(crossing.under(), crossing.over()));
  }
}
