package soakloop.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.QuantityException;
import soakloop.quantity.QuantityParser;

/**
 * Every key of a scenario: the one table that the reader obeys, and from which the printed table
 * and the JSON Schema are made.
 */
public final class KeyTable {
  private static final String RESOURCE = "keys.yaml";
  private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}-]+");
  private static final KeyTable INSTANCE = load();

  private final Map<String, KeySpec> specs;
  private final Map<String, List<String>> children;

  private KeyTable(Map<String, KeySpec> specs) {
    this.specs = specs;
    this.children = new LinkedHashMap<>();
    for (String key : specs.keySet()) {
      int dot = key.lastIndexOf('.');
      children
          .computeIfAbsent(dot < 0 ? "" : key.substring(0, dot), k -> new ArrayList<>())
          .add(key.substring(dot + 1));
    }
  }

  /** Returns the table. */
  public static KeyTable get() {
    return INSTANCE;
  }

  /** Returns all keys in the table's order. */
  public List<KeySpec> specs() {
    return List.copyOf(specs.values());
  }

  /**
   * Returns a key's entry.
   *
   * @param key dotted path as the table writes it
   * @throws IllegalStateException if the table lacks it: a fault of ours
   */
  KeySpec require(String key) {
    KeySpec spec = specs.get(key);
    if (spec == null) {
      throw new IllegalStateException("the key table lacks " + key);
    }
    return spec;
  }

  /**
   * Returns the last parts of the keys right below a section.
   *
   * @param section dotted path, empty for the top
   */
  List<String> below(String section) {
    return children.getOrDefault(section, List.of());
  }

  /**
   * Returns the table's key for a piece of the loop that may be there many times, such as {@code
   * *hose} for {@code supply-hose}.
   *
   * @param name its kind, or a name that ends in it
   */
  Optional<String> kindOf(String name) {
    if (!NAME.matcher(name).matches()) {
      return Optional.empty();
    }
    for (String key : below("")) {
      if (key.startsWith("*")
          && (name.equals(key.substring(1)) || name.endsWith("-" + key.substring(1)))) {
        return Optional.of(key);
      }
    }
    return Optional.empty();
  }

  /**
   * Returns the entry of a key that a person wrote: list numbers do not count, nor do steps within
   * steps, and a piece of the loop goes by its kind.
   *
   * @param key dotted path such as {@code session.2.wait.for}
   */
  public Optional<KeySpec> find(String key) {
    List<String> parts =
        Arrays.stream(key.split("\\.", -1)).filter(p -> !p.matches("\\d+")).toList();
    String first = parts.isEmpty() ? "" : parts.get(0);
    String path =
        parts.stream()
            .filter(p -> !(first.equals("session") && p.equals("steps")))
            .collect(Collectors.joining("."));
    return specs.values().stream().filter(s -> fits(s.key(), path)).findFirst();
  }

  private static boolean fits(String row, String path) {
    if (!row.startsWith("*")) {
      return row.equals(path);
    }
    String kind = row.substring(1);
    return path.equals(kind) || (path.endsWith("-" + kind) && headIs(path, kind));
  }

  /** Returns whether what the kind ends is the path's first part, not a later one. */
  private static boolean headIs(String path, String kind) {
    return !path.substring(0, path.length() - kind.length()).contains(".");
  }

  private static KeyTable load() {
    try (InputStream in = KeyTable.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("no " + RESOURCE);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      Map<String, KeySpec> specs = new LinkedHashMap<>();
      for (Node item : ((Node.Items) YamlText.parse(text, RESOURCE)).items()) {
        KeySpec spec = spec((Node.Section) item);
        if (specs.put(spec.key(), spec) != null) {
          throw new IllegalStateException("the key table has twice " + spec.key());
        }
      }
      return new KeyTable(specs);
    } catch (IOException | ScenarioException | QuantityException e) {
      throw new IllegalStateException("the key table cannot be read", e);
    }
  }

  private static KeySpec spec(Node.Section row) throws QuantityException {
    String key = text(row, "key").orElseThrow();
    String takes = text(row, "takes").orElseThrow();
    KeySpec.Takes kind = kind(takes);
    Optional<Dimension> dimension =
        switch (kind) {
          case QUANTITY -> Optional.of(dimension(takes));
          case QUANTITY_OR_CHOICE -> Optional.of(dimension(takes.replace("-or-choice", "")));
          case CURVE -> text(row, "of").map(KeyTable::dimension);
          case COUNT -> Optional.of(Dimension.NUMBER);
          default -> Optional.empty();
        };
    Optional<String> defaultText = text(row, "default");
    boolean quantity =
        kind == KeySpec.Takes.QUANTITY
            || kind == KeySpec.Takes.COUNT
            || (kind == KeySpec.Takes.CURVE && choices(row).isEmpty());
    return new KeySpec(
        key,
        kind,
        dimension,
        text(row, "over").map(KeyTable::dimension),
        choices(row),
        read(text(row, "from"), dimension),
        read(text(row, "to"), dimension),
        defaultText,
        quantity ? read(defaultText, dimension) : Optional.empty(),
        text(row, "because").orElse(""),
        flag(row, "quiet"),
        flag(row, "optional"),
        text(row, "means").orElseThrow());
  }

  private static KeySpec.Takes kind(String takes) {
    return switch (takes) {
      case "text" -> KeySpec.Takes.TEXT;
      case "count" -> KeySpec.Takes.COUNT;
      case "switch" -> KeySpec.Takes.SWITCH;
      case "choice" -> KeySpec.Takes.CHOICE;
      case "curve" -> KeySpec.Takes.CURVE;
      case "section" -> KeySpec.Takes.SECTION;
      case "list" -> KeySpec.Takes.LIST;
      default ->
          takes.endsWith("-or-choice") ? KeySpec.Takes.QUANTITY_OR_CHOICE : KeySpec.Takes.QUANTITY;
    };
  }

  private static Dimension dimension(String name) {
    return Dimension.valueOf(name.replace('-', '_').toUpperCase(Locale.ROOT));
  }

  private static List<String> choices(Node.Section row) {
    List<String> choices = new ArrayList<>();
    row.find("choices")
        .ifPresent(
            entry -> {
              for (Node item : ((Node.Items) entry.value()).items()) {
                choices.add(((Node.Scalar) item).text());
              }
            });
    return List.copyOf(choices);
  }

  private static Optional<Estimate> read(Optional<String> text, Optional<Dimension> dimension)
      throws QuantityException {
    return text.isPresent() && dimension.isPresent()
        ? Optional.of(QuantityParser.parse(text.get(), dimension.get()))
        : Optional.empty();
  }

  private static boolean flag(Node.Section row, String key) {
    return text(row, key).equals(Optional.of("true"));
  }

  private static Optional<String> text(Node.Section row, String key) {
    return row.find(key).map(entry -> ((Node.Scalar) entry.value()).text());
  }
}
