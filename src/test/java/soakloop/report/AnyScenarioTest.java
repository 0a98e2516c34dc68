package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soakloop.rig.HeatExchanger;
import soakloop.rig.LoopElement;
import soakloop.rig.Reservoir;
import soakloop.scenario.KeysSeen;
import soakloop.scenario.RandomScenario;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.Options;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;
import soakloop.study.Run;

/**
 * Scenarios over the whole documented range of every key: each is read; it runs to its end, with an
 * energy balance that closes and no number missing, or says in known words why it cannot; and what
 * ran can be reported.
 */
@Tag("analytic")
class AnyScenarioTest {
  /** A loop that boils away or freezes solid, told by the properties that end there. */
  private static final Pattern BROKEN_OFF =
      Pattern.compile(
          ".* \\(from .* s\\): the integration broke off: (liquid water|temperature) must be .*");

  /** Displacements and a drive that no engine has together. */
  private static final Pattern TOO_MUCH_BLOWER =
      Pattern.compile(
          ".* \\(from .* s\\): the integration broke off: the blower would make more than 20 times"
              + " .*");

  /** Everything that a run may say instead of running. */
  private static final List<Pattern> REASONS =
      List.of(
          Pattern.compile("loop: its cells and layers make \\d+ states; allowed: 20000; .*"),
          Pattern.compile(
              "start\\.loop-coolant: the coolant would start at .*, but it freezes at .*"),
          Pattern.compile(
              "start\\.charge: no (loop|plenum) temperature.* makes the sensor read .*"),
          Pattern.compile(
              ".* \\(from .* s\\): given up, this would take too long to compute with \\d+ states;.*"),
          Pattern.compile(".*\\.ice \\(.*\\): the tank would run over: .*"),
          TOO_MUCH_BLOWER,
          BROKEN_OFF);

  /**
   * Ends that come up or not: flows and temperatures of one measured point keep one another from
   * them.
   */
  private static final Pattern RARE =
      Pattern.compile(".*\\.measured\\.(effectiveness|air-.*|coolant-.*) (from|to)");

  /**
   * Ends that another key keeps from being reached: a pull rises, a replay lies in its log, free
   * height is at least the thickness, and no face has room for so many layers.
   */
  private static final Set<String> BOUND =
      Set.of(
          "*chiller.coldest from",
          "core.free-height from",
          "core.geometry.layers to",
          "*heat-exchanger.geometry.layers to",
          "session.pull.counted-to from",
          "session.pull.counted-to to",
          "session.pull.from to",
          "session.pull.to from",
          "session.replay.from to",
          "session.replay.to from",
          "session.replay.pulls.counted-to from",
          "session.replay.pulls.counted-to to",
          "session.replay.pulls.from from",
          "session.replay.pulls.from to",
          "session.replay.pulls.to from",
          "session.replay.pulls.to to");

  /** One in so many is also drawn and written. */
  private static final int REPORTED = 60;

  @TempDir private Path folder;

  private final KeysSeen seen = new KeysSeen();
  private final Map<String, Integer> reasons = new TreeMap<>();
  private int ran;

  @BeforeEach
  void logs() throws Exception {
    RandomScenario.writeLogs(folder);
  }

  @Test
  void everyScenarioEndsOrSaysWhyNot() throws Exception {
    check(1, 1000, 60, 5e6);
    read(1001, 4000);
    assertEquals(Set.of(), seen.missingKeys());
    Set<String> missing = new TreeSet<>(seen.missingEnds());
    missing.removeIf(end -> RARE.matcher(end).matches());
    assertEquals(new TreeSet<>(BOUND), missing);
    assertTrue(ran > 700, () -> ran + " ran; " + reasons);
    assertTrue(reasons.getOrDefault(BROKEN_OFF.pattern(), 0) < 5, reasons::toString);
  }

  /** Longer sessions, and fewer that are given up. */
  @Tag("long")
  @Test
  void longSessionsToo() throws Exception {
    check(1001, 2000, 600, 1e9);
    assertTrue(ran > 700, () -> ran + " ran; " + reasons);
    assertTrue(reasons.getOrDefault(BROKEN_OFF.pattern(), 0) < 10, reasons::toString);
  }

  /** Reads more than are run, so that every end of every key comes up. */
  private void read(long first, long last) {
    for (long seed = first; seed <= last; seed++) {
      String text = RandomScenario.text(seed, 60);
      try {
        ScenarioReader.parse("random", text, folder);
        seen.add(text);
      } catch (Exception e) {
        throw new AssertionError(e + "\nseed " + seed + ":\n" + text, e);
      }
    }
  }

  private void check(long first, long last, double seconds, double work) throws Exception {
    for (long seed = first; seed <= last; seed++) {
      String text = RandomScenario.text(seed, seconds);
      try {
        Scenario scenario = ScenarioReader.parse("random", text, folder);
        seen.add(text);
        Outcome outcome = Run.of(scenario, Options.DEFAULT.withMostWork(work));
        sound(outcome);
        ran++;
        if (ran % REPORTED == 0) {
          Map<String, byte[]> files =
              Rendering.of(new RunFiles(outcome, "test", OptionalInt.empty()));
          assertFalse(files.isEmpty());
        }
      } catch (SimulationException e) {
        String said = String.valueOf(e.getMessage());
        int reason = 0;
        while (reason < REASONS.size() && !REASONS.get(reason).matcher(said).matches()) {
          reason++;
        }
        assertTrue(reason < REASONS.size(), said + "\nseed " + seed + ":\n" + text);
        reasons.merge(REASONS.get(reason).pattern(), 1, Integer::sum);
      } catch (Exception | AssertionError e) {
        throw new AssertionError(e + "\nseed " + seed + ":\n" + text, e);
      }
    }
  }

  private static void sound(Outcome outcome) {
    Trace trace = outcome.trace();
    double end = outcome.scenario().session().endTime();
    assertEquals(end, trace.time(trace.size() - 1), 1e-9 * Math.max(1, end));
    assertTrue(trace.energy().residualFraction() < 1e-6, () -> trace.energy().toString());
    List<LoopElement> loop = outcome.scenario().rig().loop().pieces();
    boolean tank = loop.stream().anyMatch(Reservoir.class::isInstance);
    boolean iced = loop.stream().anyMatch(e -> e instanceof Reservoir r && r.ice().isPresent());
    boolean exchanger = loop.stream().anyMatch(HeatExchanger.class::isInstance);
    boolean geometry =
        outcome.scenario().rig().loop().core().exchanger().conductance().geometry().isPresent();
    for (Channel channel : Channel.values()) {
      boolean there =
          switch (channel) {
            case CORE_LOSS, BOOST_BEFORE_CORE -> geometry;
            case RESERVOIR -> tank;
            case ICE_LEFT -> iced;
            case EXCHANGER_COOLANT_IN, EXCHANGER_COOLANT_OUT -> exchanger;
            default -> true;
          };
      for (double value : trace.values(channel)) {
        assertEquals(there, Double.isFinite(value), () -> channel + " is " + value);
      }
    }
  }
}
