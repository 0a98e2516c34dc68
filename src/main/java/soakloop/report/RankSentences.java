package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import soakloop.study.Moved;
import soakloop.study.Ranking;

/**
 * What a ranking says, in sentences made from its numbers.
 *
 * @param ranking the results
 * @param words how they are shown
 */
record RankSentences(Ranking ranking, RankWords words) {
  /** A key is little if it moves the result by less than this part of what the first one does. */
  private static final double LITTLE = 0.05;

  /** A key works together with others if its total exceeds what it does alone by this share. */
  private static final double JOINT = 0.1;

  private static final int FIRST = 5;

  Answer answer() {
    Moved first = ranking.keys().get(0);
    List<String> sentences = new ArrayList<>();
    if (!(first.swing() > 0)) {
      sentences.add("No key with a spread moves the " + words.name() + ".");
    } else {
      sentences.add(
          first.key().key()
              + " moves the "
              + words.name()
              + " most, by "
              + words.size(first.swing())
              + " "
              + words.symbol()
              + ": "
              + words.range(first.key())
              + " makes "
              + words.changes(first)
              + ".");
      next(sentences);
      assumed(sentences);
      little(first, sentences);
      together(sentences);
    }
    failures(sentences);
    return new Answer(words.size(first.swing()), words.symbol(), sentences);
  }

  private void next(List<String> sentences) {
    List<String> next =
        ranking.keys().stream()
            .filter(m -> m.swing() > 0)
            .skip(1)
            .limit(2)
            .map(m -> m.key().key() + " (" + words.changes(m) + ")")
            .toList();
    if (!next.isEmpty()) {
      sentences.add("Next: " + String.join(", then ", next) + ".");
    }
  }

  private void assumed(List<String> sentences) {
    String assumed =
        ranking.keys().stream()
            .limit(FIRST)
            .filter(m -> m.swing() > 0 && m.key().assumed())
            .map(m -> m.key().key())
            .collect(Collectors.joining(", "));
    if (!assumed.isEmpty()) {
      sentences.add(
          "Assumed, not stated, among the first five: " + assumed + ". Measure or look up those.");
    }
  }

  private void little(Moved first, List<String> sentences) {
    long little = ranking.keys().stream().filter(m -> m.swing() < LITTLE * first.swing()).count();
    if (little > 0) {
      sentences.add(
          String.format(
              "By themselves, %d of %d keys move it by less than %s of what the first one does.",
              little, ranking.keys().size(), words.share(LITTLE)));
    }
  }

  private void together(List<String> sentences) {
    List<Moved> together = ranking.together();
    if (together.isEmpty()) {
      return;
    }
    String joint =
        together.stream()
            .filter(m -> total(m) - alone(m) >= JOINT)
            .map(m -> m.key().key() + " (" + shares(m) + ")")
            .collect(Collectors.joining(", "));
    sentences.add(
        joint.isEmpty()
            ? "Moved together, the first "
                + together.size()
                + " keys add up: none does much more beside others than alone."
            : "Moved together, these do more than they do alone, so settle them together: "
                + joint
                + ".");
  }

  /** Returns a key's shares, such as 31 % alone, 45 % with others. */
  String shares(Moved moved) {
    return words.share(alone(moved)) + " alone, " + words.share(total(moved)) + " with others";
  }

  private static double alone(Moved moved) {
    return moved.indices().map(Moved.Together::alone).orElse(0.0);
  }

  private static double total(Moved moved) {
    return moved.indices().map(Moved.Together::total).orElse(0.0);
  }

  private void failures(List<String> sentences) {
    int broken = ranking.broken().size();
    if (broken > 0) {
      sentences.add(
          (broken == 1 ? "One key" : broken + " keys")
              + " could not be run at an end; the reasons are listed.");
    }
    Ranking.Design design = ranking.design();
    if (design.failed() > 0) {
      sentences.add(
          String.format(
              "Of %d runs with keys moved together, %d could not finish (%s); %d of the sample's"
                  + " places are whole.",
              design.runs(), design.failed(), design.reason(), design.points()));
    }
  }

  /** Says what the shares mean and what they rest on; empty without shares. */
  String method() {
    if (ranking.together().isEmpty()) {
      return "";
    }
    return String.format(
        "Shares of the result's variance while the first %d keys move together, each evenly over"
            + " its interval. Alone: how much of the variance would go if this key were known. With"
            + " others: how much would stay if all of the others were known and this one were not;"
            + " the difference is what the key does only beside others. Estimated from %d places of"
            + " a Sobol sequence (%d runs). As many places came within 6 per cent of the whole of the exact"
            + " shares of a hard test function, so small differences mean nothing.",
        ranking.together().size(), ranking.design().points(), ranking.design().runs());
  }
}
