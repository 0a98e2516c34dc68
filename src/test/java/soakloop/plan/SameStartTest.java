package soakloop.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;
import soakloop.study.StudyException;

/** Pulls that must start alike: windows hold with the same cars, and give way to laxer wishes. */
@Tag("analytic")
class SameStartTest {
  private static final Way IDLING = new Way(true, true, true, 0);

  private static Scenario scenario() throws Exception {
    return ScenarioReader.read(Path.of("scenarios/small-pulley.yaml"));
  }

  private static SameStartPlan plan(int pulls, int warmUps, double within) throws Exception {
    return new SameStartPlan(
            scenario(), List.of(IDLING), pulls, warmUps, within, 0.9, 1500, WaitPlan.FEWEST_DRAWS)
        .checked();
  }

  @Test
  void windowsHoldWithTheSameCars() throws Exception {
    SameStartRunner runner = new SameStartRunner(plan(3, 1, 2), 2);
    SameStartAnswer.OfWay way = runner.answer().ways().get(0);
    Window window = way.windows().get(0);
    assertTrue(window.from() > 40 && window.open(), window.toString());
    assertTrue(runner.apart(IDLING, window.from()).start() <= 2);
    assertTrue(runner.apart(IDLING, window.from() - 5).start() > 2);
    assertTrue(runner.apart(IDLING, 0.5 * (window.from() + window.to())).start() <= 2);
    assertEquals(window.from(), way.first().orElseThrow().seconds());
    assertTrue(way.first().orElseThrow().power() > 0 && way.first().orElseThrow().power() < 0.05);
  }

  @Test
  void laxerWishesAreMetSooner() throws Exception {
    double strict = first(plan(3, 1, 1.5));
    double lax = first(plan(3, 1, 4));
    assertTrue(lax < strict, lax + " and " + strict);
  }

  /** More pulls cannot be less apart, nor can counting the first one too. */
  @Test
  void morePullsAreFurtherApart() throws Exception {
    double two = new SameStartRunner(plan(2, 1, 2), 2).apart(IDLING, 300).coolant();
    double four = new SameStartRunner(plan(4, 1, 2), 2).apart(IDLING, 300).coolant();
    double five = new SameStartRunner(plan(5, 0, 2), 2).apart(IDLING, 300).coolant();
    assertTrue(two <= four && four <= five, two + ", " + four + ", " + five);
  }

  private static double first(SameStartPlan plan) throws Exception {
    return new SameStartRunner(plan, 2).answer().best().orElseThrow().windows().get(0).from();
  }

  @Test
  void wrongQuestionsAreToldWhatIsAllowed() {
    assertThrows(StudyException.class, () -> plan(1, 0, 2));
    assertThrows(StudyException.class, () -> plan(3, 9, 2));
    assertThrows(StudyException.class, () -> plan(3, 0, 0.1));
    StudyException passes =
        assertThrows(
            StudyException.class,
            () ->
                new SameStartPlan(
                        ScenarioReader.read(Path.of("scenarios/evening-rounds.yaml")),
                        List.of(IDLING),
                        3,
                        0,
                        2,
                        0.9,
                        1500,
                        32)
                    .checked());
    assertTrue(String.valueOf(passes.getMessage()).contains("no pull on a dyno"));
  }
}
