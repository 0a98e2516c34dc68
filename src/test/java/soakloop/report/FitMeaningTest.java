package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soakloop.fit.Band;
import soakloop.quantity.UnitSystem;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/** Core, loop and soak are told from what a reading is made of. */
@Tag("analytic")
class FitMeaningTest {
  private static final SoakParts FIRST = new SoakParts(290, 5, 25, 1, 0.75);
  private static final Display METRIC = new Display(UnitSystem.METRIC, true);

  @ParameterizedTest
  @CsvSource({
    "8, 1, 0, 1, So the loop behind the core sets pull 3.",
    "1, 8, 0, 1, 'So the air around the car sets pull 3, not core or loop.'",
    "1, 0, 8, 0, So the core sets pull 3.",
    "1, 1, 0, 8, 'So soaked metal sets pull 3, not core or loop.'",
    "4, 4, 1, 1, So warmer air and the loop behind the core set pull 3 together.",
    "3, 0, 4, 3, No part sets pull 3 by itself.",
    "0.2, 0.2, 0.2, 0.2, nothing soaks",
    "-8, -1, 0, -1, So the loop behind the core sets pull 3."
  })
  void whatGrewSetsThePull(double coolant, double air, double core, double rest, String verdict) {
    SoakParts last = new SoakParts(290 + air, 5 + coolant, 25 + core, 1 + rest, 0.75);
    String said = meaning(last).sentences().get(0);
    assertTrue(said.contains(verdict), said);
  }

  private static FitMeaning meaning(SoakParts last) {
    return new FitMeaning(last, Optional.of(FIRST), "pull 3", "pull 1", METRIC);
  }

  /** A core that takes three quarters passes on three quarters of what its coolant is colder. */
  @Test
  void limitsOfCoreAndLoop() {
    String said = meaning(new SoakParts(290, 20, 30, 1, 0.75)).sentences().get(1);
    assertTrue(said.contains("another 30 K"), said);
    assertTrue(said.contains("by 15 K"), said);
  }

  @Test
  void partsAddUpToTheReading() {
    Outcome outcome = SampleOutcome.standard().make();
    PullResult pull = outcome.pulls().get(0);
    double bias = 0.7;
    SoakParts parts = SoakParts.of(outcome, pull, bias);
    assertEquals(pull.sensor().end() + bias, parts.reading(), 1e-9);
  }

  @Test
  void placesAreCountedInHalvesOfTheIntervalBefore() {
    Band before = new Band(1, 2, 4);
    FitIntervals.Row row = FitIntervals.Row.of("it", "", before, new Band(4.5, 5, 99));
    assertEquals(-1, row.place(1), 1e-12);
    assertEquals(0, row.place(2), 1e-12);
    assertEquals(1, row.place(4), 1e-12);
    assertEquals(5, row.place(99), 1e-12);
    assertTrue(row.far(), "nothing of the interval before is left");
  }
}
