package soakloop.scenario;

import java.util.List;
import java.util.Optional;

/** A piece of a scenario's text, as written: scalars keep their spelling. */
sealed interface Node {
  /** Returns where it starts. */
  Mark mark();

  /** Returns what it is, for messages. */
  String kind();

  /**
   * A single value.
   *
   * @param text as written
   * @param mark where
   */
  record Scalar(String text, Mark mark) implements Node {
    private static final int LONGEST_SHOWN = 60;

    @Override
    public String kind() {
      return text.isBlank() ? "empty" : "a single value";
    }

    /** Returns the text as a message shows it: on one line, and not too long. */
    String shown() {
      return shown(text);
    }

    static String shown(String text) {
      String line = text.strip().replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}]", "?");
      return line.length() > LONGEST_SHOWN ? line.substring(0, LONGEST_SHOWN) + "..." : line;
    }
  }

  /**
   * A list.
   *
   * @param items in order
   * @param mark where
   */
  record Items(List<Node> items, Mark mark) implements Node {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return items.isEmpty() ? "an empty list" : "a list";
    }
  }

  /**
   * Keys with values.
   *
   * @param entries in order, keys all different
   * @param mark where
   */
  record Section(List<Entry> entries, Mark mark) implements Node {
    /** A section with nothing in it. */
    static final Section EMPTY = new Section(List.of(), Mark.NONE);

    public Section {
      entries = List.copyOf(entries);
    }

    @Override
    public String kind() {
      return "a section of keys";
    }

    Optional<Entry> find(String key) {
      for (Entry entry : entries) {
        if (entry.key().equals(key)) {
          return Optional.of(entry);
        }
      }
      return Optional.empty();
    }
  }

  /**
   * A key with its value.
   *
   * @param key as written
   * @param mark where the key stands
   * @param value its value
   */
  record Entry(String key, Mark mark, Node value) {}
}
