package soakloop.scenario;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;

/**
 * Prints the key table as a JSON Schema, so that editors complete, explain and check. What a schema
 * cannot say, such as the range of a value with its unit, is left to the reader.
 */
final class SchemaPage {
  private static final String PREFIX = "^([A-Za-z0-9-]+-)?";

  private SchemaPage() {}

  static String render() {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "Soakloop scenario");
    schema.put(
        "description", "Made from the table of keys; see KEYS.md beside this file for all of it.");
    schema.putAll(section("", KeyTable.get().below("")));
    schema.put("$defs", definitions());
    Gson gson = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();
    return gson.toJson(schema) + "\n";
  }

  private static Map<String, Object> definitions() {
    Map<String, Object> definitions = new LinkedHashMap<>();
    for (Dimension dimension : Dimension.values()) {
      definitions.put(name(dimension), SchemaQuantity.of(dimension));
    }
    definitions.put("step", step());
    return definitions;
  }

  private static Map<String, Object> section(String path, List<String> keys) {
    Map<String, Object> properties = new LinkedHashMap<>();
    Map<String, Object> patterns = new LinkedHashMap<>();
    List<String> required = new ArrayList<>();
    for (String key : keys) {
      KeySpec spec = KeyTable.get().require(path.isEmpty() ? key : path + "." + key);
      if (key.startsWith("*")) {
        patterns.put(PREFIX + key.substring(1) + "$", described(spec));
      } else {
        properties.put(key, described(spec));
      }
      if (!spec.optional() && spec.defaultText().isEmpty()) {
        required.add(key);
      }
    }
    Map<String, Object> section = new LinkedHashMap<>();
    section.put("type", "object");
    section.put("properties", properties);
    if (!patterns.isEmpty()) {
      section.put("patternProperties", patterns);
    }
    section.put("additionalProperties", false);
    if (!required.isEmpty()) {
      section.put("required", required);
    }
    return section;
  }

  private static Map<String, Object> described(KeySpec spec) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("description", description(spec));
    schema.putAll(value(spec));
    return schema;
  }

  private static String description(KeySpec spec) {
    StringBuilder text = new StringBuilder(spec.means()).append('.');
    String range = Ranges.of(spec);
    if (!range.isEmpty()) {
      text.append(" From ").append(range).append('.');
    }
    spec.defaultText()
        .ifPresent(
            value ->
                text.append(" If left out: ")
                    .append(value)
                    .append(" (")
                    .append(spec.because())
                    .append(")."));
    return text.toString();
  }

  private static Map<String, Object> value(KeySpec spec) {
    return switch (spec.takes()) {
      case QUANTITY -> ref(spec.dimension().orElseThrow());
      case QUANTITY_OR_CHOICE ->
          Map.of("anyOf", List.of(words(spec.choices()), ref(spec.dimension().orElseThrow())));
      case CHOICE -> words(spec.choices());
      case SWITCH -> words(List.of("on", "off"));
      case COUNT -> SchemaQuantity.count(spec);
      case TEXT -> Map.of("type", List.of("string", "number"));
      case CURVE -> curve(spec);
      case SECTION ->
          spec.key().equals("log.columns")
              ? columns()
              : section(spec.key(), KeyTable.get().below(spec.key()));
      case LIST -> list(spec);
    };
  }

  private static Map<String, Object> list(KeySpec spec) {
    return switch (spec.key()) {
      case "loop" -> loop();
      case "vehicle.gears" -> array(Map.of("type", List.of("string", "number")));
      case "fitted.keys.values" -> array(Map.of("type", "string"));
      case "fitted.correlation" -> array(array(Map.of("type", List.of("string", "number"))));
      case "variants" -> array(variant());
      case "session", "session.steps" -> array(Map.of("$ref", "#/$defs/step"));
      default -> array(section(spec.key(), KeyTable.get().below(spec.key())));
    };
  }

  /** A name, and sections that an editor checks where they stand at the top. */
  private static Map<String, Object> variant() {
    Map<String, Object> variant = new LinkedHashMap<>();
    variant.put("type", "object");
    variant.put("properties", Map.of("name", described(KeyTable.get().require("variants.name"))));
    variant.put("required", List.of("name"));
    variant.put("minProperties", 2);
    return variant;
  }

  private static Map<String, Object> array(Map<String, Object> items) {
    Map<String, Object> array = new LinkedHashMap<>();
    array.put("type", "array");
    array.put("minItems", 1);
    array.put("items", items);
    return array;
  }

  private static Map<String, Object> loop() {
    String kinds =
        KeyTable.get().below("").stream()
            .filter(key -> key.startsWith("*"))
            .map(key -> key.substring(1))
            .collect(Collectors.joining("|"));
    Map<String, Object> piece = SchemaQuantity.text("^([A-Za-z0-9-]+-)?(" + kinds + ")$");
    Map<String, Object> ways = array(array(piece));
    ways.put("minItems", 2);
    Map<String, Object> parallel = new LinkedHashMap<>();
    parallel.put("type", "object");
    parallel.put("properties", Map.of("parallel", ways));
    parallel.put("additionalProperties", false);
    parallel.put("required", List.of("parallel"));
    Map<String, Object> loop =
        array(Map.of("anyOf", List.of(words(List.of("core", "pump")), piece, parallel)));
    loop.put("uniqueItems", true);
    loop.put(
        "allOf",
        List.of(
            Map.of("contains", Map.of("const", "core")),
            Map.of("contains", Map.of("const", "pump"))));
    return loop;
  }

  /** A step is one thing, or pulls with the pull and wait they count, or steps to repeat. */
  private static Map<String, Object> step() {
    List<Map<String, Object>> kinds = new ArrayList<>();
    kinds.add(step(List.of("pulls", "pull"), List.of("wait")));
    kinds.add(step(List.of("repeat", "steps"), List.of()));
    for (String kind : KeyTable.get().below("session")) {
      KeySpec spec = KeyTable.get().require("session." + kind);
      if (spec.takes() == KeySpec.Takes.SECTION) {
        kinds.add(step(List.of(kind), List.of()));
      }
    }
    return Map.of("oneOf", kinds);
  }

  private static Map<String, Object> step(List<String> needed, List<String> more) {
    List<String> keys = Stream.concat(needed.stream(), more.stream()).toList();
    Map<String, Object> step = section("session", keys);
    step.put("required", needed);
    return step;
  }

  private static Map<String, Object> curve(KeySpec spec) {
    Map<String, Object> point = new LinkedHashMap<>();
    point.put("type", "array");
    point.put(
        "prefixItems",
        List.of(ref(spec.over().orElseThrow()), ref(spec.dimension().orElseThrow())));
    point.put("items", false);
    point.put("minItems", 2);
    List<Object> ways = new ArrayList<>(List.of(ref(spec.dimension().orElseThrow()), array(point)));
    if (!spec.choices().isEmpty()) {
      ways.add(0, words(spec.choices()));
    }
    return Map.of("anyOf", ways);
  }

  private static Map<String, Object> columns() {
    Map<String, Object> properties = new LinkedHashMap<>();
    for (Signal signal : Signal.values()) {
      Map<String, Object> parts = new LinkedHashMap<>();
      parts.put("name", Map.of("type", "string"));
      parts.put("unit", SchemaQuantity.unit(signal.dimension()));
      Map<String, Object> both = new LinkedHashMap<>();
      both.put("type", "object");
      both.put("properties", parts);
      both.put("additionalProperties", false);
      both.put("required", List.of("name"));
      Map<String, Object> column = new LinkedHashMap<>();
      String what = signal.key().replace('-', ' ');
      column.put("description", "Header of the log's column for the " + what + ".");
      column.put("anyOf", List.of(Map.of("type", "string"), both));
      properties.put(signal.key(), column);
    }
    Map<String, Object> columns = new LinkedHashMap<>();
    columns.put("type", "object");
    columns.put("properties", properties);
    columns.put("additionalProperties", false);
    return columns;
  }

  private static Map<String, Object> words(List<String> words) {
    return Map.of("enum", words);
  }

  private static Map<String, Object> ref(Dimension dimension) {
    return Map.of("$ref", "#/$defs/" + name(dimension));
  }

  private static String name(Dimension dimension) {
    return dimension.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
