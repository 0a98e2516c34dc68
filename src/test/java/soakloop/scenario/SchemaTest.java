package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.quantity.Dimension;
import soakloop.quantity.QuantityParser;
import soakloop.quantity.Unit;

/**
 * The schema against the reader, judged by a validator of JSON Schema 2020-12 (networknt 3.0.9).
 */
@Tag("library")
class SchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(SchemaPage.render());
  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]+(\\.[0-9]+)?");

  @TempDir Path folder;

  @Test
  void acceptsTheShippedScenarios() throws Exception {
    for (Path file : GeneratedPagesTest.shipped()) {
      assertEquals(List.of(), errors(Files.readString(file), false), file.toString());
    }
  }

  /** Editors read bare numbers as numbers, not as texts. */
  @Test
  void acceptsThemWithNumbersAsNumbersToo() throws Exception {
    for (Path file : GeneratedPagesTest.shipped()) {
      assertEquals(List.of(), errors(Files.readString(file), true), file.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bare number where a unit is needed",
        "wrong unit",
        "no number at all",
        "decimal comma",
        "spread without a number",
        "spread in a unit of something else",
        "spread of a temperature in per cent",
        "boost in absolute pressure",
        "barometer in gauge pressure",
        "unit where a plain number is needed",
        "misspelt section",
        "misspelt key",
        "key at the top that belongs in a section",
        "section missing",
        "key missing",
        "session missing",
        "value where a section is needed",
        "list where a value is needed",
        "section where a list is needed",
        "word that is none of the choices",
        "curve point of three values",
        "loop without a core",
        "loop with two pumps",
        "loop with a second pump by another name",
        "loop element that does not exist",
        "empty loop",
        "half a pass",
        "fan that is no speed and no word",
        "pulls without a pull",
        "pulls that are not a whole number, with a spread",
        "step with two kinds",
        "another step beside pulls",
        "repeat without steps",
        "empty session",
        "yes for on",
        "log without a file",
        "log column for an unknown signal",
        "log column in a unit of something else",
        "log column as a list",
      })
  void refusesWhatTheReaderRefuses(String what) throws Exception {
    BadCase bad =
        BadCase.all().stream().filter(c -> c.what().equals(what)).findFirst().orElseThrow();
    assertFalse(errors(Files.readString(bad.write(folder)), false).isEmpty(), what);
  }

  /** Whatever the schema lets a quantity be, the parser reads. */
  @Test
  void everyUnitWithItsSpreadsMeansTheSameToBoth() throws Exception {
    for (Dimension dimension : Dimension.values()) {
      Pattern pattern = Pattern.compile(pattern(dimension));
      for (Unit unit : dimension.units()) {
        if (unit.symbol().isEmpty() != dimension.isPlainNumber()) {
          continue;
        }
        for (Unit spread : dimension.ofSpread().units()) {
          String value = "-12.5 " + unit.symbol();
          String of = dimension == Dimension.FRACTION ? "points" : spread.symbol();
          for (String text : List.of(value, value + " +/- 1.5 " + of, value + "\u00b12" + of)) {
            assertTrue(pattern.matcher(text.strip()).find(), text);
            assertEquals(
                unit.toSi(-12.5), QuantityParser.parse(text, dimension).value(), 1e-9, text);
          }
        }
      }
      assertFalse(pattern.matcher("12 furlongs").find());
      assertFalse(pattern.matcher("").find());
    }
  }

  @Test
  void everyDefaultIsWhatItsOwnKeyTakes() {
    for (KeySpec spec : KeyTable.get().specs()) {
      if (spec.defaultEstimate().isPresent() && spec.takes() == KeySpec.Takes.QUANTITY) {
        Pattern pattern = Pattern.compile(pattern(spec.dimension().orElseThrow()));
        assertTrue(pattern.matcher(spec.defaultText().orElseThrow()).find(), spec.key());
      }
    }
  }

  private static String pattern(Dimension dimension) {
    Object schema = SchemaQuantity.of(dimension);
    JsonObject json = new com.google.gson.Gson().toJsonTree(schema).getAsJsonObject();
    JsonObject text =
        json.has("anyOf") ? json.getAsJsonArray("anyOf").get(1).getAsJsonObject() : json;
    return text.get("pattern").getAsString();
  }

  private static List<Error> errors(String yaml, boolean numbers) throws ScenarioException {
    JsonElement json = json(YamlText.parse(yaml, "scenario"), numbers);
    return SCHEMA.validate(json.toString(), InputFormat.JSON);
  }

  private static JsonElement json(Node node, boolean numbers) {
    if (node instanceof Node.Section section) {
      JsonObject object = new JsonObject();
      section.entries().forEach(e -> object.add(e.key(), json(e.value(), numbers)));
      return object;
    }
    if (node instanceof Node.Items items) {
      JsonArray array = new JsonArray();
      items.items().forEach(item -> array.add(json(item, numbers)));
      return array;
    }
    String text = ((Node.Scalar) node).text();
    return numbers && NUMBER.matcher(text).matches()
        ? new JsonPrimitive(new java.math.BigDecimal(text))
        : new JsonPrimitive(text);
  }
}
