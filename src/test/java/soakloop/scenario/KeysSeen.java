package soakloop.scenario;

import java.util.Set;
import java.util.TreeSet;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;

/** Which keys of the table scenario texts have used, and which ends of their ranges. */
public final class KeysSeen {
  private static final double NEAR = 1e-9;

  private final Set<String> keys = new TreeSet<>();
  private final Set<String> ends = new TreeSet<>();

  /**
   * Takes in a text.
   *
   * @param text of a scenario that was read without errors
   */
  public void add(String text) throws ScenarioException {
    add(YamlText.sections(text, "seen").root(), "");
  }

  /** Returns the keys of the table that no text had. */
  public Set<String> missingKeys() {
    Set<String> missing = new TreeSet<>();
    KeyTable.get().specs().forEach(spec -> missing.add(spec.key()));
    missing.removeAll(keys);
    return missing;
  }

  /** Returns the ends of ranges that no text had, such as {@code core.mass from}. */
  public Set<String> missingEnds() {
    Set<String> missing = new TreeSet<>();
    for (KeySpec spec : KeyTable.get().specs()) {
      if (spec.low().isPresent() && spec.takes() != KeySpec.Takes.CURVE) {
        missing.add(spec.key() + " from");
        missing.add(spec.key() + " to");
      }
    }
    missing.removeAll(ends);
    return missing;
  }

  private void add(Node.Section section, String table) {
    for (Node.Entry entry : section.entries()) {
      String key =
          table.isEmpty()
              ? KeyTable.get().kindOf(entry.key()).orElse(entry.key())
              : table + "." + entry.key();
      keys.add(key);
      if (key.equals("log.columns")) {
        continue;
      }
      if (key.equals("variants")) {
        // Whole sections of a scenario, which are seen where they stand at its top.
        keys.add("variants.name");
        continue;
      }
      if (entry.value() instanceof Node.Section below) {
        add(below, key);
      } else if (entry.value() instanceof Node.Items items) {
        items(items, key.equals("session.steps") ? "session" : key);
      } else if (entry.value() instanceof Node.Scalar scalar) {
        end(KeyTable.get().require(key), scalar.text());
      }
    }
  }

  private void items(Node.Items items, String table) {
    for (Node item : items.items()) {
      if (item instanceof Node.Section below) {
        add(below, table);
      }
    }
  }

  private void end(KeySpec spec, String text) {
    if (spec.low().isEmpty() || spec.choices().contains(text)) {
      return;
    }
    double value = value(spec, text);
    double low = RandomValue.low(spec);
    double high = RandomValue.high(spec);
    double near = NEAR * Math.max(Math.abs(low), Math.abs(high));
    if (Math.abs(value - low) < near) {
      ends.add(spec.key() + " from");
    }
    if (Math.abs(value - high) < near) {
      ends.add(spec.key() + " to");
    }
  }

  private static double value(KeySpec spec, String text) {
    try {
      Estimate read = QuantityParser.parse(text, spec.dimension().orElseThrow());
      return read.value();
    } catch (QuantityException e) {
      throw new AssertionError(spec.key() + ": " + text, e);
    }
  }
}
