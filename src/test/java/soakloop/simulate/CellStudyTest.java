package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/**
 * How many cells: prints what coarser cells do to a shipped scenario's temperatures against fine
 * ones, one thing at a time, the numbers of the decision record on cells. Takes minutes, so that it
 * is left out of the build.
 */
@Tag("long")
class CellStudyTest {
  private static final String CORE = "core.cells";
  private static final String COOLER = "heat-exchanger.cells";
  private static final String HOSE = "hose cells";
  private static final String LAYERS = "hose layers";
  private static final Map<String, String> FINE =
      Map.of(CORE, grid(12, 12), COOLER, grid(12, 4), HOSE, "40", LAYERS, "8");
  private static final Map<String, String> USUAL =
      Map.of(CORE, grid(4, 4), COOLER, grid(6, 2), HOSE, "3", LAYERS, "3");

  /** Largest differences to the fine run, K. */
  private record Errors(double sensorAtEnds, double sensorEver, double coreInAtEnds) {}

  @Test
  void usualCellsKeepTheSensorWithinATenthOfAKelvin()
      throws ScenarioException, SimulationException {
    for (String name : List.of("cool-morning", "traffic-recovery")) {
      Scenario scenario = ScenarioReader.read(Path.of("scenarios", name + ".yaml"));
      Trace fine = run(scenario, FINE);
      StringBuilder table = new StringBuilder("\n" + name + "\n");
      row(table, "usual", scenario, USUAL, fine);
      for (String cells : List.of("2", "3", "5", "8", "16")) {
        row(table, "hose cells " + cells, scenario, with(FINE, HOSE, cells), fine);
      }
      for (String layers : List.of("1", "2", "3", "4")) {
        row(table, "hose layers " + layers, scenario, with(FINE, LAYERS, layers), fine);
      }
      for (int[] g : new int[][] {{2, 2}, {3, 3}, {4, 2}, {4, 4}, {6, 6}}) {
        String grid = grid(g[0], g[1]);
        row(table, "core " + grid, scenario, with(FINE, CORE, grid), fine);
      }
      for (int[] g : new int[][] {{2, 1}, {3, 1}, {4, 1}, {4, 2}, {6, 1}, {8, 1}}) {
        String grid = grid(g[0], g[1]);
        row(table, "heat exchanger " + grid, scenario, with(FINE, COOLER, grid), fine);
      }
      for (String cells : List.of("5", "8", "12")) {
        row(table, "usual, hose cells " + cells, scenario, with(USUAL, HOSE, cells), fine);
      }
      for (int[] g : new int[][] {{2, 2}, {3, 3}, {4, 6}, {6, 4}}) {
        String grid = grid(g[0], g[1]);
        row(table, "usual, core " + grid, scenario, with(USUAL, CORE, grid), fine);
      }
      row(table, "usual, hose layers 2", scenario, with(USUAL, LAYERS, "2"), fine);
      for (int[] g : new int[][] {{3, 1}, {4, 1}, {6, 1}, {8, 1}}) {
        String grid = grid(g[0], g[1]);
        row(table, "usual, heat exchanger " + grid, scenario, with(USUAL, COOLER, grid), fine);
      }
      System.out.println(table);
      Errors errors = errors(run(scenario, USUAL), fine);
      assertTrue(errors.sensorAtEnds() < 0.1, name + ": " + errors);
    }
  }

  private static void row(
      StringBuilder table, String what, Scenario scenario, Map<String, String> cells, Trace fine)
      throws ScenarioException, SimulationException {
    Trace trace = run(scenario, cells);
    Errors e = errors(trace, fine);
    table.append(
        String.format(
            Locale.ROOT,
            "| %s | %d | %d | %.3f | %.3f | %.3f |%n",
            what,
            trace.effort().states(),
            trace.effort().evaluations(),
            e.sensorAtEnds(),
            e.sensorEver(),
            e.coreInAtEnds()));
  }

  private static Errors errors(Trace trace, Trace fine) {
    double sensorEver = 0;
    for (int i = 0; i < fine.size(); i++) {
      sensorEver =
          Math.max(
              sensorEver, Math.abs(trace.value(Channel.SENSOR, i) - fine.value(Channel.SENSOR, i)));
    }
    double sensor = 0;
    double coreIn = 0;
    for (Trace.Span pull : fine.pulls()) {
      int at = fine.firstFrom(pull.countedAt());
      sensor =
          Math.max(
              sensor, Math.abs(trace.value(Channel.SENSOR, at) - fine.value(Channel.SENSOR, at)));
      sensor = Math.max(sensor, Math.abs(peak(trace, pull) - peak(fine, pull)));
      coreIn =
          Math.max(
              coreIn,
              Math.abs(
                  trace.value(Channel.CORE_COOLANT_IN, at)
                      - fine.value(Channel.CORE_COOLANT_IN, at)));
    }
    return new Errors(sensor, sensorEver, coreIn);
  }

  private static double peak(Trace trace, Trace.Span pull) {
    double peak = 0;
    for (int i = trace.firstFrom(pull.start()); i < trace.firstFrom(pull.end()); i++) {
      peak = Math.max(peak, trace.value(Channel.SENSOR, i));
    }
    return peak;
  }

  private static Map<String, String> with(Map<String, String> cells, String key, String value) {
    Map<String, String> other = new LinkedHashMap<>(cells);
    other.put(key, value);
    return other;
  }

  private static Trace run(Scenario scenario, Map<String, String> cells)
      throws ScenarioException, SimulationException {
    Scenario changed = scenario;
    for (Map.Entry<String, String> cell : cells.entrySet()) {
      for (String key : keys(cell.getKey())) {
        changed = changed.with(key, cell.getValue());
      }
    }
    return Simulation.run(changed.setup());
  }

  private static List<String> keys(String what) {
    return switch (what) {
      case HOSE -> List.of("supply-hose.cells", "return-hose.cells");
      case LAYERS -> List.of("supply-hose.layers", "return-hose.layers");
      default -> List.of(what);
    };
  }

  private static String grid(int along, int depth) {
    return "{along: " + along + ", depth: " + depth + "}";
  }
}
