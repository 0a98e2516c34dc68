package soakloop.log;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The columns that the scenario names.
 *
 * @param indices of the column, by signal
 */
record ChosenColumns(Map<Signal, Integer> indices) {
  /** Finds them; one that is not there or named twice is a problem. */
  static ChosenColumns of(Layout layout, LogColumns columns, Problems problems) {
    Map<Signal, Integer> indices = new EnumMap<>(Signal.class);
    Map<Integer, Signal> taken = new HashMap<>();
    for (Signal signal : Signal.values()) {
      LogColumns.Choice choice = columns.chosen().get(signal);
      if (choice == null) {
        continue;
      }
      Optional<Integer> found = find(layout, choice.header(), signal, problems);
      if (found.isEmpty()) {
        continue;
      }
      Signal before = taken.put(found.get(), signal);
      if (before != null) {
        problems.addColumn(
            layout.headers().get(found.get()).text(),
            "is named for both " + before.key() + " and " + signal.key());
      } else {
        indices.put(signal, found.get());
      }
    }
    return new ChosenColumns(indices);
  }

  private static Optional<Integer> find(
      Layout layout, String wanted, Signal signal, Problems problems) {
    List<Header> headers = layout.headers();
    List<Integer> found = indices(headers, h -> h.text().equals(wanted.strip()));
    if (found.isEmpty()) {
      found = indices(headers, h -> loose(h.text()).equals(loose(wanted)));
    }
    if (found.size() == 1) {
      return Optional.of(found.get(0));
    }
    problems.add(
        found.isEmpty()
            ? "has no column `"
                + wanted
                + "` for "
                + signal.key()
                + "; its columns are "
                + layout.list()
            : "has "
                + found.size()
                + " columns `"
                + wanted
                + "` for "
                + signal.key()
                + "; give each a name of its own");
    return Optional.empty();
  }

  private static List<Integer> indices(List<Header> headers, Predicate<Header> test) {
    return IntStream.range(0, headers.size())
        .filter(i -> test.test(headers.get(i)))
        .boxed()
        .toList();
  }

  private static String loose(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
  }

  /** Returns the signal that a column is named for. */
  Optional<Signal> signal(int index) {
    return indices.entrySet().stream()
        .filter(e -> e.getValue() == index)
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
