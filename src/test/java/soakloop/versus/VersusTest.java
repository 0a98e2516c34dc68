package soakloop.versus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.fit.FitCase;
import soakloop.fit.FitPlan;
import soakloop.fit.Place;
import soakloop.fit.Posterior;
import soakloop.fit.Quantity;
import soakloop.scenario.Scenario;
import soakloop.scenario.ScenarioReader;

/** What must hold of any comparison, whoever is named first. */
@Tag("analytic")
class VersusTest {
  private static final double ROUNDING = 1e-9;

  private static Versus.Judgement judged(VersusPlan plan) throws Exception {
    return Versus.judged(plan).get(0);
  }

  /** Not a digit depends on who is named first or how many threads run. */
  @Test
  void orderAndThreadsChangeNothing() throws Exception {
    Contender a =
        TwoShortSessions.contender("a", TwoShortSessions.scenario("a", 700, 24, 17, 12, 60));
    Contender b =
        TwoShortSessions.contender("b", TwoShortSessions.scenario("b", 760, 29, 19, 11, 60));
    Versus.Judgement one = judged(TwoShortSessions.plan(1, a, b));
    Versus.Judgement other = judged(TwoShortSessions.plan(3, b, a));
    assertEquals(one.difference().by().middle(), -other.difference().by().middle(), ROUNDING);
    assertEquals(one.difference().by().low(), -other.difference().by().high(), ROUNDING);
    assertEquals(one.difference().better(), other.worse());
    assertEquals(one.worse(), other.difference().better());
    assertTrue(one.difference().by().middle() < 0, "the larger core is not the cooler one");
  }

  /** A core against itself, under swapped labels: no verdict, and exactly opposite signs. */
  @Test
  void theSameTwiceIsNotDistinguishable() throws Exception {
    Scenario same = TwoShortSessions.scenario("same", 700, 24, 17, 12, 60);
    Contender first = TwoShortSessions.contender("first", same);
    Contender second = TwoShortSessions.contender("second", same);
    Versus.Judgement one = judged(TwoShortSessions.plan(2, first, second));
    Versus.Judgement other = judged(TwoShortSessions.plan(2, second, first));
    assertEquals(VersusResult.Verdict.OPEN, one.verdict());
    assertTrue(one.difference().by().holds(0));
    assertEquals(0.5, one.difference().better(), 0.05);
    assertEquals(one, other);
  }

  /** Bands of a third contender do not depend on which pair is asked for. */
  @Test
  void allAreHeldAgainstTheFirst() throws Exception {
    Contender a =
        TwoShortSessions.contender("a", TwoShortSessions.scenario("a", 700, 24, 17, 12, 60));
    Contender b =
        TwoShortSessions.contender("b", TwoShortSessions.scenario("b", 900, 24, 17, 12, 60));
    Contender c =
        TwoShortSessions.contender("c", TwoShortSessions.scenario("c", 550, 24, 17, 12, 60));
    List<Versus.Judgement> judged = Versus.judged(TwoShortSessions.plan(2, a, b, c));
    assertEquals(VersusResult.Verdict.BETTER, judged.get(0).verdict());
    assertEquals(VersusResult.Verdict.WORSE, judged.get(1).verdict());
  }

  /** What is asked for in kelvins must be reached: nothing is better by 30 K. */
  @Test
  void betterByTooMuchIsNotBetter() throws Exception {
    VersusPlan plan =
        TwoShortSessions.plan(
            2,
            TwoShortSessions.contender("a", TwoShortSessions.scenario("a", 600, 24, 17, 12, 60)),
            TwoShortSessions.contender("b", TwoShortSessions.scenario("b", 900, 24, 17, 12, 60)));
    assertEquals(VersusResult.Verdict.BETTER, judged(plan).verdict());
    VersusPlan much =
        new VersusPlan(
            plan.contenders(),
            plan.swapped(),
            plan.like(),
            plan.by(),
            30,
            plan.confidence(),
            plan.draws(),
            plan.threads());
    assertEquals(VersusResult.Verdict.OPEN, judged(much).verdict());
    assertTrue(judged(much).difference().better() < 0.001);
  }

  /** The parts of the modelled difference sum to it on random pairs, and turn with the two. */
  @Test
  void partsSumToTheDifference() throws Exception {
    Random random = new Random(3);
    for (int i = 0; i < 12; i++) {
      List<FitCase> cases =
          List.of(
              FitCase.unlogged("a", TwoShortSessions.drawn("a", random)),
              FitCase.unlogged("b", TwoShortSessions.drawn("b", random)));
      Runner runner = new Runner(new Mixer(cases, List.of("core")), 2);
      Place place = Posterior.believed(plan(cases)).likeliest();
      List<Origin> things = List.of(Origin.SWAPPED, Origin.START, Origin.DAY, Origin.SESSION);
      double[] there = rises(runner, place, things, 0, 1);
      double[] back = rises(runner, place, things, 1, 0);
      double whole = there[there.length - 1] - there[0];
      double sum = Shapley.of(things, there).values().stream().mapToDouble(s -> s).sum();
      assertEquals(whole, sum, ROUNDING);
      assertEquals(there[0], back[back.length - 1], ROUNDING);
      for (Origin thing : things) {
        assertEquals(
            Shapley.of(things, there).getOrDefault(thing, Double.NaN),
            -Shapley.of(things, back).getOrDefault(thing, Double.NaN),
            ROUNDING);
      }
    }
  }

  private static double[] rises(
      Runner runner, Place place, List<Origin> things, int one, int other) {
    return Shapley.sets(things).stream()
        .mapToDouble(
            set -> {
              Mix mix = Mix.all(one);
              for (Origin origin : set) {
                mix = mix.with(origin, other);
              }
              return runner
                  .run(new Runner.Asked(mix, place, Setting.same()))
                  .orElseThrow()
                  .sensorRise()
                  .get(1);
            })
        .toArray();
  }

  private static FitPlan plan(List<FitCase> cases) {
    return new FitPlan(
        cases, List.of(), List.of("core"), List.of(0, 1), List.of(), Quantity.NEXT_END, 200, 2);
  }

  /** With logs: parts and rest make the raw difference of both shipped logs, pull by pull. */
  @Test
  void logsAreTakenApartWithoutRest() throws Exception {
    List<FitCase> cases =
        List.of(
            FitCase.of("a", ScenarioReader.read(Path.of("scenarios/cool-morning.yaml"))),
            FitCase.of("b", ScenarioReader.read(Path.of("scenarios/denser-core.yaml"))));
    Posterior believed = Posterior.believed(plan(cases));
    Runner runner = new Runner(new Mixer(cases, List.of("core")), 2);
    Breakdown breakdown = new Breakdown(runner, believed.likeliest(), believed.draws(4, 0));
    List<VersusResult.Raw> there = breakdown.of(0, 1);
    List<VersusResult.Raw> back = breakdown.of(1, 0);
    assertEquals(5, there.size());
    for (int i = 0; i < there.size(); i++) {
      VersusResult.Raw raw = there.get(i);
      double parts = raw.parts().values().stream().mapToDouble(b -> b.middle()).sum();
      assertEquals(raw.difference(), parts + raw.rest(), ROUNDING);
      assertEquals(raw.difference(), -back.get(i).difference(), ROUNDING);
      assertEquals(raw.rest(), -back.get(i).rest(), 1e-6);
      assertEquals(
          raw.difference(),
          raw.other().end() - raw.other().start() - raw.one().end() + raw.one().start(),
          ROUNDING);
    }
  }

  /**
   * Glove game: one owns a left glove, two own a right one each, a pair is worth 1; the shares are
   * 4/6, 1/6 and 1/6 (a textbook example of Shapley's; from memory).
   */
  @Test
  void sharesOfTheGloveGame() {
    List<Origin> things = List.of(Origin.SWAPPED, Origin.START, Origin.DAY);
    double[] values = new double[8];
    for (int set = 0; set < 8; set++) {
      values[set] = (set & 1) == 1 && set > 1 ? 1 : 0;
    }
    var shares = Shapley.of(things, values);
    assertEquals(4.0 / 6, shares.getOrDefault(Origin.SWAPPED, Double.NaN), ROUNDING);
    assertEquals(1.0 / 6, shares.getOrDefault(Origin.START, Double.NaN), ROUNDING);
    assertEquals(1.0 / 6, shares.getOrDefault(Origin.DAY, Double.NaN), ROUNDING);
  }

  /** Every other condition moves the charge the way it must. */
  @Test
  void otherConditionsMoveTheChargeAsTheyMust() throws Exception {
    List<FitCase> cases =
        List.of(FitCase.unlogged("a", TwoShortSessions.scenario("a", 700, 24, 17, 12, 60)));
    Runner runner = new Runner(new Mixer(cases, List.of("core")), 2);
    FitPlan one = new FitPlan(cases, List.of(), List.of("core"), 200, 2);
    Place place = Posterior.believed(one).likeliest();
    double here = end(runner, place, Setting.same());
    assertTrue(end(runner, place, Setting.warmer("", 10)) > here + 5);
    assertTrue(end(runner, place, Setting.warmer("", -10)) < here - 5);
    assertTrue(end(runner, place, Setting.warmerStart("", 10)) > here + 1);
    assertTrue(end(runner, place, Setting.boost("", 1.2)) > here + 1);
    assertTrue(end(runner, place, Setting.road("", 45)) < here);
    assertTrue(end(runner, place, Setting.waits("", 3)) < here);
    assertFalse(Double.isNaN(here));
  }

  private static double end(Runner runner, Place place, Setting setting) {
    return runner
        .run(new Runner.Asked(Mix.all(0), place, setting))
        .orElseThrow()
        .of(1, PullFigure.END);
  }

  /** A planned day tells more with more pulls, and with the first core tried again. */
  @Test
  void testSheetSaysWhatHelps() throws Exception {
    VersusPlan plan =
        TwoShortSessions.plan(
            2,
            TwoShortSessions.contender("a", TwoShortSessions.scenario("a", 700, 24, 17, 12, 60)),
            TwoShortSessions.contender("b", TwoShortSessions.scenario("b", 760, 24, 17, 12, 60)));
    VersusResult result = Versus.of(plan);
    TestSheet sheet = result.sheet().orElseThrow();
    for (int i = 0; i < sheet.rows().size(); i++) {
      TestSheet.Row row = sheet.rows().get(i);
      assertEquals(i + 1, row.pulls());
      assertTrue(row.thereAndBack() <= row.plain() + ROUNDING, sheet.toString());
      assertTrue(row.withProbe() <= row.plain() + ROUNDING, sheet.toString());
      // An error of the model that comes back in every pull keeps more pulls from telling much.
      assertTrue(i == 0 || row.plain() <= 1.02 * sheet.rows().get(i - 1).plain(), sheet.toString());
    }
    assertEquals(ConditionKind.values().length, sheet.windows().size());
    assertEquals(7, result.pairings().get(0).elsewhere().size());
    assertEquals(20, result.pairings().get(0).grid().size());
  }
}
