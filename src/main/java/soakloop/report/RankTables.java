package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.study.Moved;
import soakloop.study.Ranking;

/**
 * A ranking in tables.
 *
 * @param ranking the results
 * @param words how they are shown
 */
record RankTables(Ranking ranking, RankWords words) {
  /** Returns every key; each cell can stand alone, as it must on a phone. */
  Table all() {
    List<List<String>> rows = new ArrayList<>();
    for (Moved moved : ranking.keys()) {
      String cut = moved.key().clipped() ? ", cut" : "";
      String assumed = moved.key().assumed() ? ", assumed" : "";
      rows.add(
          List.of(
              rows.size() + 1 + " " + moved.key().key(),
              words.changes(moved),
              words.range(moved.key()) + cut + assumed,
              moved.key().means()));
    }
    List<String> head =
        List.of("Key", "Result with low / high value", "90\u00a0% interval", "What it is");
    return new Table(head, rows, 4, 3);
  }

  /** Returns the keys that moved together, with their shares. */
  Table together() {
    List<List<String>> rows = new ArrayList<>();
    for (Moved moved : ranking.together()) {
      Moved.Together shares = moved.indices().orElseThrow();
      rows.add(
          List.of(
              moved.key().key(),
              words.share(shares.alone()) + " alone",
              words.share(shares.total()) + " with others"));
    }
    return new Table(List.of("Key", "Share of variance", ""), rows, 3, 2);
  }

  /** Returns the first keys for a console; a star marks what is assumed. */
  Table first(int most) {
    List<List<String>> rows = new ArrayList<>();
    for (Moved moved : ranking.keys().stream().limit(most).toList()) {
      String total = moved.indices().map(t -> words.share(t.total())).orElse(Display.NOTHING);
      String star = moved.key().assumed() ? " *" : "";
      rows.add(
          List.of(
              moved.key().key() + star,
              words.changeNumbers(moved),
              total,
              words.range(moved.key())));
    }
    return new Table(List.of("key", "low / high", "share", "90 % interval"), rows, 1, 2);
  }

  /** Returns the ends that could not be run. */
  Table broken() {
    List<List<String>> rows = new ArrayList<>();
    for (Moved moved : ranking.broken()) {
      if (moved.low() instanceof Moved.Failed failed) {
        rows.add(List.of(moved.key().key() + ", low end", failed.reason()));
      }
      if (moved.high() instanceof Moved.Failed failed) {
        rows.add(List.of(moved.key().key() + ", high end", failed.reason()));
      }
    }
    return new Table(List.of("At", "Not run, because"), rows, 2, 1);
  }
}
