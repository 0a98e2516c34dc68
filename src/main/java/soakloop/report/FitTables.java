package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.fit.FitResult;
import soakloop.fit.KeyNews;
import soakloop.quantity.Dimension;

/**
 * A fit in tables.
 *
 * @param result what it gave
 * @param words how its numbers are shown
 */
record FitTables(FitResult result, FitWords words) {
  /** Returns keys with what was believed, what is known, and what is left of the spread. */
  Table keys(List<KeyNews> keys) {
    List<List<String>> rows = new ArrayList<>();
    for (KeyNews news : keys) {
      Dimension dimension = news.key().dimension();
      rows.add(
          List.of(
              news.key().name() + (news.isSurprise() ? " (!)" : ""),
              words.known(news.before(), dimension),
              words.known(news.after(), dimension),
              FitWords.percent(news.left())));
    }
    return new Table(List.of("Key", "Before", "Now", "Spread left"), rows, 1, 3);
  }

  /**
   * Returns the same for a console: what is known now, and what was believed without its spread.
   */
  Table short80(List<KeyNews> keys) {
    List<List<String>> rows = new ArrayList<>();
    for (KeyNews news : keys) {
      rows.add(
          List.of(
              news.key().name() + (news.isSurprise() ? " (!)" : ""),
              words.known(news.after(), news.key().dimension()),
              FitWords.percent(news.left())));
    }
    return new Table(List.of("Key", "Now", "Left"), rows, 1, 2);
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
              difference(fit.error())));
    }
    return new Table(List.of("Signal", "Points", "Off before", "Off now", "Own error"), rows, 1, 4);
  }

  private String difference(double kelvin) {
    return words.display().number(kelvin, Dimension.TEMPERATURE_DIFFERENCE, 1);
  }
}
