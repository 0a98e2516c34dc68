package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.log.LogColumns;
import soakloop.log.LogException;
import soakloop.log.LogReader;
import soakloop.log.Signal;
import soakloop.quantity.Correlation;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.reading.LogOptions;
import soakloop.reading.LogReading;
import soakloop.reading.LogStudy;

/** What a fit writes into a scenario reads back as it was found, and leaves all else alone. */
@Tag("analytic")
class FittedTextTest {
  private static final String SHA = "ab".repeat(32);
  private static final Pattern COMMENT = Pattern.compile("(^|\\s)(#.*)$", Pattern.MULTILINE);

  private static final LogReading LOG = log();

  @TempDir private Path folder;

  private static LogReading log() {
    try {
      Path file = GeneratedPagesTest.SCENARIOS.resolve("logs/cool-morning.csv");
      return LogStudy.of(LogReader.read(file, LogColumns.NONE), LogOptions.DEFAULTS);
    } catch (LogException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void shippedScenariosComeBackAsFitted() throws Exception {
    for (Path file : GeneratedPagesTest.shipped()) {
      String text = Files.readString(file);
      assertTrue(comesBack(text, GeneratedPagesTest.SCENARIOS, 7), file.toString());
      assertTrue(
          comesBack(text.replace("\n", "\r\n"), GeneratedPagesTest.SCENARIOS, 8), file.toString());
    }
  }

  @Test
  void scenariosOfEveryKindComeBackAsFitted() throws Exception {
    RandomScenario.writeLogs(folder);
    int written = 0;
    for (long seed = 1; seed <= 300; seed++) {
      String text = RandomScenario.text(seed, 60);
      boolean back = comesBack(text, folder, seed);
      // The same all in braces.
      String braces = "{" + text.strip().replace("\n", ",\n  ") + "}\n";
      assertEquals(back, comesBack(braces, folder, seed), braces);
      written += back ? 1 : 0;
    }
    assertTrue(written > 250, "only " + written);
  }

  @Test
  void styleCommentsAndQuotesStay() throws Exception {
    String text =
        """
        # yaml-language-server: $schema=soakloop.schema.json
        # my car \uD83D\uDE97
        title: "Tuesday: first \uD83D\uDE97 try" # keep
        day:
          temperature: '68 degF +/- 2 degF'   # by the door
        engine: {displacement: 4 L} # swept
        blower: {displacement: 1.7 L/rev, # on the plate
          drive-ratio: 2.35, # counted
          # nothing more
          }
        boost: [[2000 rpm, 12 psi +/- 1 psi],
                [6500 rpm, "13 psi +/- 1 psi"]] # from the sheet
        core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
        loop: [pump, core]
        coolant: {glycol: none}
        session:
          # first
          - wait:
              for: >-
                90 s +/- 10 s
          - idle: {for: 10 s} # then
        # the end
        """;
    Path log = GeneratedPagesTest.SCENARIOS.resolve("logs/cool-morning.csv").toAbsolutePath();
    Scenario scenario = ScenarioReader.parse("car", text, folder).with("log.file", log.toString());
    List<FitNews.FittedValue> found =
        List.of(
            value("day.temperature", Dimension.TEMPERATURE, "day.temperature", 293.5, 0.51),
            new FitNews.FittedValue(
                "boost",
                Dimension.GAUGE_PRESSURE,
                List.of(
                    new FitNews.Part("boost.1.2", new Estimate(84e3, 2e3)),
                    new FitNews.Part("boost.2.2", new Estimate(91e3, 2e3)))),
            value("session.1.wait.for", Dimension.TIME, "session.1.wait.for", 95.123, 3.3),
            value("blower.case.mass", Dimension.MASS, "blower.case.mass", 8.2, 1.1),
            value(
                "core.conductance.air-exponent",
                Dimension.NUMBER,
                "core.conductance.air-exponent",
                0.5234,
                0.081),
            value(
                "engine.volumetric-efficiency",
                Dimension.FRACTION,
                "engine.volumetric-efficiency",
                0.9312,
                0.0213),
            value("sensor.time-constant", Dimension.TIME, "sensor.time-constant", 2.0, 0.4),
            value("bias.charge-temperature", Dimension.TEMPERATURE_DIFFERENCE, "", -0.4, 1.2));
    String written = FittedText.of(text, scenario, news("logs/a car.csv", found));
    String expected =
        """
        # yaml-language-server: $schema=soakloop.schema.json
        # Fitted: values and spreads are those that a log leaves likely, found by `fit` on 2026-03-14;
        # Fitted: see `fitted` at the end. The scenario it was made from is as it was.
        # my car \uD83D\uDE97
        title: "Tuesday: first \uD83D\uDE97 try" # keep
        day:
          temperature: '68.63 degF +/- 0.92 degF'   # by the door
        engine: {displacement: 4 L,
            # from the fit:
            volumetric-efficiency: 93.1 % +/- 2.1 points} # swept
        blower: {displacement: 1.7 L/rev, # on the plate
          drive-ratio: 2.35, # counted
          # nothing more
          \n\
            # from the fit:
            case: {mass: 8.2 kg +/- 1.1 kg}
            }
        boost: [[2000 rpm, 12.18 psi +/- 0.29 psi],
                [6500 rpm, "13.20 psi +/- 0.29 psi"]] # from the sheet
        core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm},
            # from the fit:
            conductance: {air-exponent: 0.523 +/- 0.081}}
        loop: [pump, core]
        coolant: {glycol: none}
        session:
          # first
          - wait:
              for: 95.1 s +/- 3.3 s
          - idle: {for: 10 s} # then
        log: {file: 'logs/a car.csv'}  # from the fit
        sensor: {time-constant: 2.00 s +/- 0.40 s}  # from the fit
        # the end

        # What the fit found: the cars that the log leaves possible. Leave it as it is: a key whose
        # value is changed above no longer equals the one here and is then taken as independent.
        fitted:
          log: 'a car.csv'
        """;
    assertEquals(
        expected.lines().sorted().toList(),
        written.lines().limit(expected.lines().count()).sorted().toList());
    assertTrue(written.indexOf("# the end") < written.indexOf("fitted:\n"));
  }

  @Test
  void anEditedKeyIsTold() throws Exception {
    Scenario scenario = Scenarios.read(Scenarios.FITTED);
    FitRecord fitted = scenario.fitted().orElseThrow();
    assertEquals(List.of("sensor.boss-share"), fitted.edited());
    assertEquals(0.25, fitted.correlation().at(0, 1));
    assertEquals(-0.4, fitted.bias(Signal.CHARGE_TEMPERATURE).orElseThrow().value());
    Scenario edited = scenario.with("day.temperature", "21 degC +/- 2 K");
    assertEquals(
        List.of("day.temperature", "sensor.boss-share"), edited.fitted().orElseThrow().edited());
    Scenario wider = scenario.with("boost.1.2", "80 kPa +/- 5 kPa");
    assertEquals(List.of("sensor.boss-share", "boost"), wider.fitted().orElseThrow().edited());
    Scenario otherUnit = scenario.with("day.temperature", "68 degF +/- 3.6 degF");
    assertEquals(List.of("sensor.boss-share"), otherUnit.fitted().orElseThrow().edited());
  }

  @Test
  void whatCannotHangTogetherIsAnError() {
    String numbers = "fitted.correlation: row 2 must have 2 numbers, up to its own 1";
    problem("  - [0.25, 1]\n", "  - [0.25, 0.1, 1]\n", numbers);
    problem(
        "  - [0.25, 1]\n",
        "  - [1.25, 1]\n",
        "fitted.correlation: row 2 must have numbers from -1 to 1, the last one 1");
    problem("    - [0.25, 1]\n", "", "fitted.correlation: has 4 rows for 5 keys");
    problem(
        "  - [0.1, -0.5, 0, 1]\n",
        "  - [0.9, -0.9, 0, 1]\n",
        "fitted.correlation: these cannot be correlations: no values hang together so (the matrix"
            + " is not positive definite, by more than rounding)");
    problem("2 % +/- 1 point}", "2 %}", "fitted.keys.3: found `2 %`, which needs its spread (+/-)");
    problem(
        "key: sensor.boss-share",
        "key: sensor.boss",
        "fitted.keys.3.key: found `sensor.boss`, which is no key with a number");
    problem(
        "signal: charge-temperature",
        "signal: charge-temperatur",
        "fitted.model-error.1.signal: found `charge-temperatur`, which is no signal; did you mean"
            + " `charge-temperature`?");
    problem(
        "sha-256: 01",
        "sha-256: x1",
        "fitted.sha-256: is no SHA-256: it has 64 of the characters 0-9 and a-f");
  }

  private static void problem(String good, String bad, String said) {
    String text = Scenarios.FITTED.replace(good, bad);
    assertFalse(text.equals(Scenarios.FITTED), good);
    ScenarioException e = assertThrows(ScenarioException.class, () -> Scenarios.read(text));
    assertEquals(1, e.problems().size(), e.problems()::toString);
    assertTrue(e.problems().get(0).toString().endsWith(said), e.problems()::toString);
  }

  private static FitNews.FittedValue value(
      String key, Dimension dimension, String path, double value, double spread) {
    return new FitNews.FittedValue(
        key, dimension, List.of(new FitNews.Part(path, new Estimate(value, spread))));
  }

  private static FitNews news(String log, List<FitNews.FittedValue> found) {
    double[][] lower = new double[found.size()][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = new double[i + 1];
      lower[i][i] = 1;
      if (i > 0) {
        lower[i][i - 1] = 0.4567;
      }
    }
    return new FitNews(
        log,
        SHA,
        "2026-03-14",
        "1.2.3",
        found,
        Correlation.ofLower(lower),
        Map.of(Signal.CHARGE_TEMPERATURE, new FitRecord.ModelError(0.71, 24)));
  }

  /** Returns false if what was drawn cannot be together. */
  private static boolean comesBack(String text, Path folder, long seed) throws Exception {
    Scenario scenario = logged(ScenarioReader.parse("any", text, folder), text);
    Map<String, FitNews.FittedValue> drawn = drawn(scenario, new SplittableRandom(seed));
    FitNews news = news("x/y.csv", List.copyOf(drawn.values()));
    String written;
    try {
      written = FittedText.of(text, scenario, news);
    } catch (ScenarioException e) {
      return false;
    }
    Scenario back = beside(scenario.logged().orElseThrow().reading(), written);
    Map<String, Stated> now = new LinkedHashMap<>();
    back.values().forEach(s -> now.put(s.key(), s));
    Map<String, Estimate> found = new LinkedHashMap<>();
    drawn.values().forEach(v -> v.parts().forEach(p -> found.put(p.path(), p.estimate())));
    assertEquals(scenario.values().size(), now.size(), text);
    for (Stated stated : scenario.values()) {
      Stated other = Optional.ofNullable(now.get(stated.key())).orElseThrow();
      Estimate read = other.estimate();
      Estimate told = found.get(stated.key());
      if (told == null) {
        assertEquals(stated, other);
      } else {
        assertEquals(told.value(), read.value(), 0.0501 * told.spread(), stated.key());
        assertEquals(told.spread(), read.spread(), 0.0501 * told.spread(), stated.key());
        assertFalse(other.assumed());
      }
    }
    assertEquals(List.of(), back.fitted().orElseThrow().edited(), written);
    List<String> lost = new ArrayList<>(comments(text));
    comments(written).forEach(lost::remove);
    assertEquals(List.of(), lost, written);
    // Fitted again with the same news, nothing moves.
    assertEquals(written, FittedText.of(written, back, news));
    return true;
  }

  /** Gives a scenario without a log one. */
  private static Scenario logged(Scenario scenario, String text) throws ScenarioException {
    if (scenario.logged().isPresent()) {
      return scenario;
    }
    Source source = source(LOG, text).with("log.file", "z.csv");
    return ScenarioReader.read(source);
  }

  private static Scenario beside(LogReading reading, String text) throws ScenarioException {
    return ScenarioReader.read(source(reading, text));
  }

  private static Source source(LogReading reading, String text) throws ScenarioException {
    return Source.beside(reading, "any", Path.of(""), YamlText.sections(text, "any"));
  }

  private static List<String> comments(String text) {
    Matcher m = COMMENT.matcher(text.replace("\r", ""));
    return m.results().map(r -> r.group(2)).collect(Collectors.toList());
  }

  private static Map<String, FitNews.FittedValue> drawn(
      Scenario scenario, SplittableRandom random) {
    Map<String, FitNews.FittedValue> drawn = new LinkedHashMap<>();
    Map<String, Double> moves = new LinkedHashMap<>();
    for (Stated stated : scenario.values()) {
      if (!(stated.estimate().spread() > 0)) {
        continue;
      }
      KeySpec spec = KeyTable.get().find(stated.key()).orElseThrow();
      boolean curve = spec.takes() == KeySpec.Takes.CURVE;
      String name = curve ? stated.key().replaceFirst("\\.\\d+\\.2$", "") : stated.key();
      double move = moves.computeIfAbsent(name, n -> random.nextDouble(-0.5, 0.5));
      double low = spec.low().orElseThrow().value();
      double high = spec.high().orElseThrow().value();
      double value = stated.estimate().value() + move * stated.estimate().spread();
      value = Math.max(low, Math.min(high, value));
      Estimate found =
          new Estimate(value, stated.estimate().spread() * random.nextDouble(0.05, 0.9));
      List<FitNews.Part> parts = new ArrayList<>();
      FitNews.FittedValue before = drawn.get(name);
      if (before != null) {
        parts.addAll(before.parts());
      }
      parts.add(new FitNews.Part(stated.key(), found));
      drawn.put(name, new FitNews.FittedValue(name, stated.dimension(), parts));
    }
    return drawn;
  }
}
