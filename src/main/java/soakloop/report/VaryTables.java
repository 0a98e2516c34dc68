package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.study.Evenly;
import soakloop.study.KeyRange;
import soakloop.study.Measure;
import soakloop.study.Variation;
import soakloop.study.VaryPoint;

/**
 * The tables of a plan's results; a large grid is shown by some of its values.
 *
 * @param variation the results
 * @param words how they are shown
 */
record VaryTables(Variation variation, VaryWords words) {
  private static final int MOST_ROWS = 41;
  private static final int MOST_DOWN = 12;
  private static final int MOST_HOLES = 20;

  /** Returns the values of one key, each with all results. */
  Table curve() {
    KeyRange range = variation.plan().keys().get(0);
    return curve(range, words.heading(range));
  }

  /** Returns the same with the key's last part only where the whole one makes it too wide. */
  Table curve(int columns) {
    Table whole = curve();
    KeyRange range = variation.plan().keys().get(0);
    return whole.lines().stream().allMatch(l -> l.length() <= columns)
        ? whole
        : curve(range, words.briefHeading(range));
  }

  private Table curve(KeyRange range, String heading) {
    List<String> head = new ArrayList<>(List.of(heading));
    for (Measure measure : variation.plan().measures()) {
      head.add(words.brief(measure));
    }
    List<List<String>> rows = new ArrayList<>();
    for (int i : Evenly.pick(range.size(), MOST_ROWS)) {
      List<String> row = new ArrayList<>(List.of(words.number(range.values().get(i))));
      for (Measure measure : variation.plan().measures()) {
        row.add(words.cell(measure, variation.value(i, measure)));
      }
      rows.add(row);
    }
    return new Table(head, rows, 0, head.size() - 1);
  }

  /**
   * Returns one result over two keys: the second down, the first across.
   *
   * @param measure which
   * @param most columns of results
   */
  Table map(Measure measure, int most) {
    KeyRange across = variation.plan().keys().get(0);
    KeyRange down = variation.plan().keys().get(1);
    List<Integer> columns = Evenly.pick(across.size(), most);
    List<String> head = new ArrayList<>(List.of(words.heading(down)));
    columns.forEach(c -> head.add(words.number(across.values().get(c))));
    List<List<String>> rows = new ArrayList<>();
    for (int r : Evenly.pick(down.size(), MOST_DOWN)) {
      List<String> row = new ArrayList<>(List.of(words.number(down.values().get(r))));
      for (int c : columns) {
        row.add(words.cell(measure, variation.value(c * down.size() + r, measure)));
      }
      rows.add(row);
    }
    return new Table(head, rows, 0, head.size() - 1);
  }

  /** Returns where runs failed, and why. */
  Table holes() {
    VarySentences say = new VarySentences(variation, words);
    List<List<String>> rows = new ArrayList<>();
    for (VaryPoint.Hole hole : variation.holes()) {
      if (rows.size() < MOST_HOLES) {
        rows.add(List.of(say.place(hole.index()), hole.reason()));
      }
    }
    return new Table(List.of("At", "Not run, because"), rows, 2, 1);
  }
}
