package soakloop.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import soakloop.fit.Advice;
import soakloop.fit.Band;
import soakloop.fit.FitKey;
import soakloop.fit.FitResult;
import soakloop.fit.HeldOut;
import soakloop.fit.KeyNews;
import soakloop.fit.Quantity;
import soakloop.quantity.Dimension;

/**
 * A fit in tables.
 *
 * @param result what it gave
 * @param words how its numbers are shown
 */
record FitTables(FitResult result, FitWords words) {
  /** Correlation from which on two keys are said to hang together [-]. */
  private static final double TOGETHER = 0.5;

  /** Most pairs of keys listed. */
  private static final int PAIRS = 10;

  /** Returns keys with what was believed, what is known, and what is left of the spread. */
  Table keys(List<KeyNews> keys) {
    List<List<String>> rows = new ArrayList<>();
    for (KeyNews news : keys) {
      Dimension dimension = news.key().dimension();
      rows.add(
          List.of(
              marked(news),
              words.known(news.before(), dimension),
              words.known(news.after(), dimension),
              FitWords.percent(news.left()),
              news.key().means()));
    }
    return new Table(List.of("Key", "Before", "Now", "Spread left", "What it is"), rows, 1, 3);
  }

  private static String marked(KeyNews news) {
    return news.key().name() + (news.isSurprise() ? " (!)" : "");
  }

  /**
   * Returns the same for a console: what is known now, and what was believed without its spread.
   */
  Table short80(List<KeyNews> keys) {
    List<List<String>> rows = new ArrayList<>();
    for (KeyNews news : keys) {
      rows.add(
          List.of(
              marked(news),
              words.known(news.after(), news.key().dimension()),
              FitWords.percent(news.left())));
    }
    return new Table(List.of("Key", "Now", "Left"), rows, 1, 2);
  }

  /** Returns intervals found by profile beside those that take the model for a straight line. */
  Table profiles() {
    List<List<String>> rows = new ArrayList<>();
    for (FitResult.Profiled profiled : result.profiles()) {
      FitKey key = profiled.news().key();
      Band straight = profiled.news().after();
      Band followed =
          new Band(
              Math.min(profiled.low(), straight.middle()),
              straight.middle(),
              Math.max(profiled.high(), straight.middle()));
      rows.add(
          List.of(
              key.name(),
              words.interval(straight, key.dimension()),
              words.interval(followed, key.dimension())));
    }
    return new Table(List.of("Key", "Straight line", "Followed out"), rows, 1, 2);
  }

  /** Returns the keys of which the logs say nothing. */
  Table untold() {
    List<List<String>> rows = new ArrayList<>();
    for (FitKey key : result.untold()) {
      String believed = words.known(KeyNews.untold(key).before(), key.dimension());
      rows.add(List.of(key.name(), believed, key.means()));
    }
    return new Table(List.of("Key", "Before and now", "What it is"), rows, 1, 1);
  }

  /** Returns what is known of the next pull. */
  Table next() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < result.quantities().size(); i++) {
      FitResult.Quantities known = result.quantities().get(i);
      String of = FitFiles.of(result, i);
      for (Quantity quantity : Quantity.values()) {
        if (words.isOpen(known, quantity)) {
          Band before = known.before().getOrDefault(quantity, FitSentences.NONE);
          Band after = known.after().getOrDefault(quantity, FitSentences.NONE);
          rows.add(
              List.of(
                  words.name(quantity) + of,
                  words.known(before, quantity.dimension()),
                  words.known(after, quantity.dimension())));
        }
      }
    }
    return new Table(List.of("", "Before", "Now"), rows, 1, 2);
  }

  /** Returns what else could be measured, the most telling first. */
  Table advice() {
    FitSentences say = new FitSentences(result, words);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < result.advice().size(); i++) {
      String of = FitFiles.of(result, i);
      for (Advice advice : result.advice().get(i)) {
        rows.add(
            List.of(
                Display.sentenceStart(advice.what()) + of,
                advice.isTest() ? "test" : "sensor",
                "\u00b1\u00a0" + say.spread(advice.now()),
                "\u00b1\u00a0" + say.spread(advice.then()),
                FitWords.percent(advice.gain())));
      }
    }
    return new Table(List.of("", "Kind", "Now", "With it", "Narrower by"), rows, 2, 4);
  }

  /** Returns the pulls that were held out. */
  Table heldOut() {
    List<List<String>> rows = new ArrayList<>();
    Display display = words.display();
    for (HeldOut held : result.heldOut()) {
      String of = result.plan().cases().size() > 1 ? ", " + held.label() : "";
      rows.add(
          List.of(
              Display.sentenceStart(held.pull() + of),
              words.interval(held.without(), Dimension.TEMPERATURE),
              words.interval(held.foretold(), Dimension.TEMPERATURE),
              display.show(held.logged(), Dimension.TEMPERATURE, 0),
              display.fineDifference(held.error()),
              held.inside() ? "inside" : "outside"));
    }
    List<String> head = List.of("Pull", "Without the log", "Foretold", "Logged", "Off by", "Band");
    return new Table(head, rows, 1, 4);
  }

  /** Returns the pairs of keys that hang together most. */
  Table together() {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < result.keys().size(); i++) {
      for (int j = 0; j < i; j++) {
        if (Math.abs(result.together(i, j)) > TOGETHER) {
          pairs.add(new Pair(name(j), name(i), result.together(i, j)));
        }
      }
    }
    pairs.sort(Comparator.comparingDouble(p -> -Math.abs(p.share())));
    List<List<String>> rows =
        pairs.stream().limit(PAIRS).map(p -> List.of(p.names(), p.says(), p.number())).toList();
    return new Table(List.of("Keys", "How", "Correlation"), rows, 2, 2);
  }

  private String name(int key) {
    return result.keys().get(key).key().name();
  }

  /** Two keys and their correlation [-]. */
  private record Pair(String one, String other, double share) {
    String names() {
      return one + " and " + other;
    }

    String says() {
      return share > 0 ? "up together" : "one up, the other down";
    }

    String number() {
      return String.format(Locale.ROOT, "%+.2f", share);
    }
  }

  /** Returns how far the model is from each signal. */
  Table signals() {
    boolean several = result.plan().cases().size() > 1;
    List<List<String>> rows = new ArrayList<>();
    for (FitResult.SignalFit fit : result.signals()) {
      rows.add(
          List.of(
              (several ? fit.label() + ": " : "") + fit.signal().label(),
              String.valueOf(fit.points()),
              difference(fit.before()),
              difference(fit.after()),
              difference(fit.error()),
              String.format(Locale.ROOT, "%.0f s", fit.errorTime())));
    }
    String in = ", " + words.display().symbol(Dimension.TEMPERATURE_DIFFERENCE);
    return new Table(
        List.of("Signal", "Points", "Off before" + in, "Now", "Own error", "Lasts"), rows, 1, 5);
  }

  private String difference(double kelvin) {
    return words.display().number(kelvin, Dimension.TEMPERATURE_DIFFERENCE, 1);
  }
}
