package soakloop.study;

import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.scenario.KeySpec;
import soakloop.scenario.KeyTable;
import soakloop.scenario.Scenario;
import soakloop.scenario.Stated;

/** Finds what the key table and a scenario say of a key that a person wrote. */
public final class KeyLookup {
  private KeyLookup() {}

  /**
   * Returns a key's entry in the table: list numbers do not count, nor do steps within steps, and a
   * piece of the loop goes by its kind.
   *
   * @param key dotted path such as {@code session.2.wait.for}
   */
  public static Optional<KeySpec> spec(String key) {
    return KeyTable.get().find(key);
  }

  /**
   * Returns the value that a scenario has for a key, SI: stated, assumed, or what a word such as
   * {@code weak} stands for.
   */
  static OptionalDouble own(Scenario scenario, String key, KeySpec spec) {
    OptionalDouble own = value(scenario, key);
    if (own.isPresent() || spec.takes() != KeySpec.Takes.QUANTITY_OR_CHOICE) {
      return own;
    }
    String section = key.substring(0, key.lastIndexOf('.') + 1);
    for (String word : spec.choices()) {
      OptionalDouble meant = value(scenario, section + word);
      if (meant.isPresent()) {
        return meant;
      }
    }
    return spec.choices().contains("none") ? OptionalDouble.of(0) : OptionalDouble.empty();
  }

  private static OptionalDouble value(Scenario scenario, String key) {
    return scenario.values().stream()
        .filter(s -> s.key().equals(key))
        .mapToDouble(KeyLookup::value)
        .findFirst();
  }

  private static double value(Stated stated) {
    return stated.estimate().value();
  }
}
