package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;

/** What a range means, and what is said of one that means nothing. */
@Tag("analytic")
class RangeReaderTest {
  private static Scenario scenario;

  @BeforeAll
  static void read() throws Exception {
    scenario = CoolMorning.pulls(2);
  }

  private static KeyRange range(String text) throws Exception {
    return RangeReader.read(scenario, text);
  }

  @Test
  void evenValuesEndWhereTheyAreSaidTo() throws Exception {
    KeyRange range = range("reservoir.volume=3 L..12 L/10");
    assertEquals(List.of(3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0), range.values());
    assertEquals("L", range.unit().symbol());
    assertEquals(5, range.own().orElseThrow(), 1e-12);
    assertTrue(range.coversOwn());
    assertEquals("3 L", range.written(3));
  }

  @ParameterizedTest
  @CsvSource({
    "reservoir.volumme, reservoir.volume",
    "resevoir.volume, reservoir.volume",
    "pump.flo, pump.flow",
    "limits.charge-temprature, limits.charge-temperature",
    "session.2.wait.fro, session.2.wait.for"
  })
  void mistypedKeysAreGuessed(String written, String meant) {
    StudyException e = assertThrows(StudyException.class, () -> range(written + "=1..2"));
    assertEquals(written + ": is not a key; did you mean `" + meant + "`?", e.getMessage());
  }

  @Test
  void slashesInUnitsAreNoCounts() throws Exception {
    assertEquals(9, range("plumbing.at-flow=10 L/min..30 L/min").size());
    assertEquals(
        List.of(10.0, 20.0, 30.0), range("plumbing.at-flow=10 L/min..30 L/min/3").values());
  }

  @Test
  void endsMayDifferInUnit() throws Exception {
    KeyRange range = range("reservoir.volume=1 gal..7.570823568 L/2");
    assertEquals("gal", range.unit().symbol());
    assertEquals(List.of(1.0, 2.0), range.values()); // a gallon is 3.785411784 L by definition
  }

  @Test
  void listsAreTakenAsTheyAre() throws Exception {
    assertEquals(List.of(3.0, 5.0, 8.5), range("reservoir.volume= 3 L, 5 L ,8.5 L").values());
  }

  @Test
  void multiplesAreOfTheScenariosValue() throws Exception {
    // The scenario shows US units; its tank holds 5 L.
    KeyRange times = range("reservoir.volume=x0.5..x2/4");
    assertEquals("gal", times.unit().symbol());
    assertEquals(2.5 / 3.785411784, times.first(), 1e-9);
    assertEquals(10 / 3.785411784, times.last(), 1e-9);
    assertEquals(times.values(), range("reservoir.volume=50 %..200 %/4").values());
    assertEquals(2.6, range("sensor.time-constant=x1,x1.3").last(), 1e-12);
  }

  @Test
  void perCentOfAShareAreValuesAndTimesAreMultiples() throws Exception {
    assertEquals(List.of(50.0, 70.0), range("blower.adiabatic-efficiency=50 %,70 %").values());
    assertEquals(List.of(31.0, 62.0), range("blower.adiabatic-efficiency=x0.5,x1").values());
  }

  @Test
  void wordsHaveTheSpeedTheyStandFor() throws Exception {
    assertEquals(1.5, range("airflow.shop-fan=1 m/s..2 m/s").own().orElseThrow(), 1e-12);
    assertEquals(0, range("airflow.car-fan=1 m/s..2 m/s").own().orElseThrow(), 0);
  }

  @Test
  void countsGoOneByOne() throws Exception {
    KeyRange range = range("session.2.pulls=1..4");
    assertEquals(List.of(1.0, 2.0, 3.0, 4.0), range.values());
    assertTrue(range.whole());
    assertEquals("3", range.written(3));
  }

  @Test
  void keysWithinStepsAndNamedPiecesAreFound() throws Exception {
    assertEquals(150, range("session.2.wait.for=60 s..300 s").own().orElseThrow(), 1e-9);
    assertEquals(1.8, range("supply-hose.length=1 m..3 m").own().orElseThrow(), 1e-9);
    assertTrue(KeyLookup.spec("session.1.steps.2.wait.for").isPresent());
    assertTrue(KeyLookup.spec("front-heat-exchanger.face.width").isPresent());
    assertTrue(KeyLookup.spec("core.front-hose.length").isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "reservoir.volume|is no key with a range",
        "=3 L..5 L|is no key with a range",
        "reservoir.volume=3..5|found `3`, which needs a unit",
        "reservoir.volume=3 L..12|found `12`, which needs a unit",
        "reservoir.volume=3 L..12 psi|has the unit `psi`",
        "reservoir.volume=5 L..3 L|from large to small",
        "reservoir.volume=5 L..5 L|from large to small, or nowhere",
        "reservoir.volume=5 L|one value only",
        "reservoir.volume=3 L..5 L/1|two values at least",
        "reservoir.volume=3 L,5 L,4 L|do not rise",
        "reservoir.volume=1 L..2 L/100001|more than 100000",
        "reservoir.volume=1 L..2 L/99999999999999999999|more than 100000",
        "reservoir.volume=3 L,x2|mixes values and multiples",
        "reservoir.volume=3 L +/- 1 L..5 L|takes no +/-",
        "core.cells.along=1..4/3|counts in whole numbers",
        "title=a,b|takes a text and cannot be varied",
        "loop=a,b|takes a list and cannot be varied",
        "core.size=1 mm,2 mm|takes keys of its own",
        "core.passes.arranged=depth,face|takes a word",
        "start.charge=50 %..120 %|is a temperature, of which multiples mean nothing",
        "start.charge=x0.5..x2|is a temperature, of which multiples mean nothing",
        "boost=x1..x2|is a curve",
        "heat-exchanger.mass=x0.5..x2|has no value in this scenario to take multiples of",
        "airflow.car-fan=x1..x2|is zero or less in this scenario",
      })
  void whatMeansNothingIsSaid(String text, String message) {
    StudyException e = assertThrows(StudyException.class, () -> range(text));
    assertTrue(String.valueOf(e.getMessage()).contains(message), e.getMessage());
  }

  @Test
  void unknownKeysAreTheReadersToRefuse() {
    ScenarioException e =
        assertThrows(ScenarioException.class, () -> range("horses.power=3 L..5 L"));
    assertTrue(String.valueOf(e.getMessage()).contains("horses: is not a key"), e.getMessage());
  }
}
