package soakloop.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A key is the handle: setting one gives what editing the file gives. */
@Tag("regression")
class ScenarioWithTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "reservoir.volume | 8 L | volume: 5 L | volume: 8 L",
        "reservoir.volume | 8 L +/- 10 % | volume: 5 L | volume: 8 L +/- 10 %",
        "day.humidity | 55 % | humidity: 40 % | humidity: 55 %",
        "title | Another: day | By size | \"Another: day\"",
        "boost.1.2 | 70 kPa | 80 kPa | 70 kPa",
        "boost | 70 kPa | [[2500 rpm, 80 kPa], [6500 rpm, 90 kPa +/- 5 kPa]] | 70 kPa",
        "boost | [[0 rpm, 1 psi], [6000 rpm, 9 psi]] | [[2500 rpm, 80 kPa], [6500 rpm, 90 kPa +/- 5"
            + " kPa]] | [[0 rpm, 1 psi], [6000 rpm, 9 psi]]",
        "session.4.wait.for | 3 min | for: 150 s | for: 3 min",
        "session.4.pulls | 1 | pulls: 3 | pulls: 1",
        "session.3.steps.2.cruise.road-speed | 80 km/h | road-speed: 50 km/h | road-speed: 80 km/h",
        "airflow.shop-fan | 3 m/s | shop-fan: strong | shop-fan: 3 m/s",
        "coolant | {glycol: none} | {glycol: ethylene, by-volume: 30 %} | {glycol: none}",
        "core.size.thickness | 70 mm | thickness: 55 mm | thickness: 70 mm",
      })
  void equalsEditingTheFile(String key, String value, String from, String to)
      throws ScenarioException {
    String edited = Scenarios.BY_SIZE.replace(from, to);
    Scenario changed = Scenarios.read(Scenarios.BY_SIZE).with(key, value);
    Scenario written = Scenarios.read(edited);
    assertEquals(Scenarios.made(written), Scenarios.made(changed));
    assertEquals(written.values(), changed.values());
    assertEquals(written.title(), changed.title());
  }

  @Test
  void addsWhatWasLeftOut() throws ScenarioException {
    Scenario scenario = Scenarios.read(Scenarios.SHORT).with("sensor.time-constant", "1 s");
    assertEquals(1, scenario.rig().sensor().timeConstant());
  }

  @Test
  void leavesTheFirstAsItWas() throws ScenarioException {
    Scenario scenario = Scenarios.read(Scenarios.BY_SIZE);
    scenario.with("reservoir.volume", "8 L");
    assertEquals(Scenarios.made(Scenarios.read(Scenarios.BY_SIZE)), Scenarios.made(scenario));
  }

  @Test
  void changesAddUp() throws ScenarioException {
    Scenario scenario =
        Scenarios.read(Scenarios.BY_SIZE)
            .with("reservoir.volume", "8 L")
            .with("pump.power", "70 W")
            .with("reservoir.volume", "5 L")
            .with("pump.power", "50 W");
    assertEquals(Scenarios.made(Scenarios.read(Scenarios.BY_SIZE)), Scenarios.made(scenario));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "reservoir.volume | 8 | test: reservoir.volume: found `8`, which needs a unit: m3, L,"
            + " mL, gal, qt or in3",
        "reservoir.volume | 800 L | found `800 L`; allowed: 0.1 to 200 L",
        "resevoir.volume | 8 L | test: resevoir: is not a key; known here: ",
        "reservoir.size | 8 L | reservoir.size: is not a key; known here: capacity, enters,"
            + " ice, layers, port,"
            + " surroundings-conductance, volume",
        "title.x | 8 L | test: title.x: leads nowhere: there is no `x` in a single value",
        "session.9.wait.for | 3 min | test: session.9.wait.for: leads nowhere: there is no `9` in a"
            + " list of 4",
        "session.0.wait.for | 3 min | there is no `0` in a list of 4",
        "session.wait.for | 3 min | there is no `wait` in a list of 4",
        "boost | [[1 rpm | value of boost:1:2: has a `[` that is not closed",
        "boost | {a: 1, a: 2} | value of boost:1:8: `a` stands here twice; first on line 1",
        ". | 1 | is not a key",
        "'' | 1 | is not a key",
      })
  void saysWhatCannotBeSet(String key, String value, String part) throws ScenarioException {
    Scenario scenario = Scenarios.read(Scenarios.BY_SIZE);
    ScenarioException e = assertThrows(ScenarioException.class, () -> scenario.with(key, value));
    String said = String.valueOf(e.getMessage());
    assertEquals(part, said.contains(part) ? part : said);
  }
}
