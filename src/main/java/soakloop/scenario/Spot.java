package soakloop.scenario;

import java.util.List;
import java.util.Optional;

/** A piece of a scenario's text with its place in it, for changing the text where it stands. */
sealed interface Spot {
  /** Returns the index of its first character. */
  int start();

  /** Returns the index after its last character; white space after it does not count. */
  int end();

  /**
   * A single value.
   *
   * @param start index of its first character
   * @param end index after its last
   * @param text what it says, without quotes
   * @param quote {@code '} or {@code "}; empty if it stands bare or as a block
   */
  record Word(int start, int end, String text, String quote) implements Spot {}

  /**
   * A list.
   *
   * @param start index of its first character
   * @param end index after its last
   * @param items in order
   */
  record Row(int start, int end, List<Spot> items) implements Spot {
    public Row {
      items = List.copyOf(items);
    }
  }

  /**
   * Keys with values.
   *
   * @param start index of its first character
   * @param end index after its last
   * @param flow whether it stands in braces
   * @param entries in order
   */
  record Keys(int start, int end, boolean flow, List<Entry> entries) implements Spot {
    public Keys {
      entries = List.copyOf(entries);
    }

    Optional<Entry> find(String key) {
      return entries.stream().filter(e -> e.key().text().equals(key)).findFirst();
    }
  }

  /**
   * A key with its value.
   *
   * @param key the key
   * @param value its value
   */
  record Entry(Word key, Spot value) {}
}
