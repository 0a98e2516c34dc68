package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;

/** The key table against the reader that obeys it. */
@Tag("regression")
class KeyTableTest {
  static final List<String> RICH =
      List.of(
          Scenarios.BY_SIZE,
          Scenarios.STATED,
          Scenarios.BY_PRESSURE,
          Scenarios.ICED,
          Scenarios.PASSED,
          Scenarios.PASSED_TOO,
          Scenarios.BY_GEOMETRY,
          Scenarios.BY_GEOMETRY_TOO,
          Scenarios.MEASURED,
          Scenarios.MEASURED_TOO);

  /**
   * Cannot be changed alone, or only bounds another: the curve's end must stay at no pressure, free
   * height refuses a thicker core.
   */
  private static final Set<String> BOUND = Set.of("pump.curve.3.2", "core.free-height");

  @Test
  void theReaderAsksForEveryKeyAndForNoOther() throws ScenarioException {
    Set<String> asked = new TreeSet<>();
    for (String text : Scenarios.ALL) {
      Source source = Source.of("test", "test", BadCase.FOLDER, YamlText.sections(text, "test"));
      Context context = new Context("test", source.quantities(), source.problems());
      ScenarioReader.read(source, context);
      asked.addAll(context.asked());
    }
    Set<String> table = new TreeSet<>();
    KeyTable.get().specs().forEach(spec -> table.add(spec.key()));
    // Read by its own names, which are a log's signals and not keys.
    assertTrue(table.contains("log.columns"));
    assertEquals(table, asked);
  }

  @Test
  void everyDefaultLiesInItsRangeAndHasItsReason() {
    for (KeySpec spec : KeyTable.get().specs()) {
      String key = spec.key();
      assertEquals(spec.defaultText().isPresent(), !spec.because().isEmpty(), key);
      assertFalse(spec.optional() && spec.defaultText().isPresent() && !isSection(spec), key);
      spec.defaultEstimate().ifPresent(e -> assertFalse(Ranges.outside(e.value(), spec), key));
      if (spec.takes() == KeySpec.Takes.CHOICE
          || spec.takes() == KeySpec.Takes.QUANTITY_OR_CHOICE) {
        spec.defaultText().ifPresent(word -> assertTrue(spec.choices().contains(word), key));
      }
      if (spec.low().isPresent() && spec.high().isPresent()) {
        assertTrue(spec.low().get().value() < spec.high().get().value(), key);
      }
      assertTrue(Character.isUpperCase(spec.means().charAt(0)), key);
    }
  }

  /** A physical value without a range would let nonsense in. */
  @Test
  void everyQuantityHasARange() {
    for (KeySpec spec : KeyTable.get().specs()) {
      if (spec.dimension().isPresent()) {
        assertTrue(spec.low().isPresent() && spec.high().isPresent(), spec.key());
      }
    }
  }

  /**
   * A default that is no reference and no gear is a guess, and says how good a guess; what is
   * planned, such as how long the car stages, is no guess.
   */
  @Test
  void everyGuessHasASpread() {
    Set<String> exact = new TreeSet<>();
    for (KeySpec spec : KeyTable.get().specs()) {
      boolean guess =
          spec.takes() == KeySpec.Takes.QUANTITY && !spec.because().equals("reference only");
      if (guess && spec.defaultEstimate().map(Estimate::spread).equals(Optional.of(0.0))) {
        exact.add(spec.key());
      }
    }
    assertEquals(
        Set.of(
            "blower.pulleys.step-up",
            "log.starts-at",
            "pump.coolant",
            "session.settle.for",
            "session.pass.distance",
            "session.pass.burnout.for",
            "session.pass.staging.for",
            "session.pass.shutdown.for",
            "session.pass.shutdown.to",
            "session.pass.return-road.for"),
        exact);
  }

  /** A key whose value can be changed without a trace would be a lie. */
  @ParameterizedTest
  @FieldSource("RICH")
  void everyValueChangesWhatIsMade(String text) throws ScenarioException {
    Scenario scenario = Scenarios.read(text);
    assertEquals(Scenarios.made(scenario), Scenarios.made(Scenarios.read(text)));
    assertTrue(scenario.values().size() > 20);
    for (Stated stated : scenario.values()) {
      boolean wholeLayers = text.contains("geometry:") && stated.key().equals("core.size.width");
      if (BOUND.contains(stated.key()) || wholeLayers || stated.assumed()) {
        continue;
      }
      Scenario changed = scenario.with(stated.key(), nudged(stated));
      assertNotEquals(Scenarios.made(scenario), Scenarios.made(changed), stated.key());
    }
  }

  private static String nudged(Stated stated) {
    Dimension dimension = stated.dimension();
    double value = stated.estimate().value();
    boolean count =
        dimension == Dimension.NUMBER
            && value == Math.rint(value)
            && !stated.key().endsWith(".step-up");
    double other = count ? value + 1 : value == 0 ? 0.01 : value * 1.001;
    return dimension == Dimension.FRACTION
        ? other * 100 + " %"
        : (count ? String.valueOf((int) other) : other + " " + dimension.si().symbol());
  }

  private static boolean isSection(KeySpec spec) {
    return spec.takes() == KeySpec.Takes.SECTION;
  }
}
