package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.quantity.Dimension;
import soakloop.quantity.UnitSystem;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/** The sentences must say what the numbers say. */
@Tag("analytic")
class AnswerTest {
  private static final Display METRIC = new Display(UnitSystem.METRIC, false);

  private static final Display PLAIN = new Display(UnitSystem.METRIC, true);

  private static List<String> sentences(SampleOutcome sample) {
    Outcome outcome = sample.make();
    return Answer.of(outcome, new Display(outcome.scenario().units(), false)).sentences().stream()
        .map(AnswerTest::breakable)
        .toList();
  }

  private static String breakable(String text) {
    return text.replace('\u00a0', ' ');
  }

  @Test
  void severalPullsSayHowFarTheLastIsAboveTheFirst() {
    Outcome outcome = SampleOutcome.standard().make();
    PullResult first = outcome.pulls().get(0);
    PullResult last = outcome.pulls().get(4);
    long creep = Math.round(last.sensor().end() - first.sensor().end());
    long end = Math.round(last.sensor().end() - 273.15);
    Answer answer = Answer.of(outcome, METRIC);
    assertEquals(String.valueOf(end), answer.number());
    assertEquals("\u00b0C", answer.unit());
    assertEquals(
        "Pull 5 ends at "
            + end
            + " \u00b0C on the sensor (6500 rpm), "
            + creep
            + " K above pull 1.",
        breakable(answer.sentences().get(0)));
  }

  @Test
  void limitIsSaidToBePassedOrNot() {
    String passed = sentences(SampleOutcome.standard()).get(2);
    assertTrue(passed.startsWith("The limit of 54 \u00b0C is first passed in pull 1;"), passed);
    String never = sentences(SampleOutcome.standard().limit(OptionalDouble.of(90))).get(2);
    assertTrue(never.startsWith("The limit of 90 \u00b0C is not passed in any pull:"), never);
    List<String> none = sentences(SampleOutcome.standard().limit(OptionalDouble.empty()));
    assertFalse(String.join(" ", none).contains("limit"), none.toString());
  }

  @Test
  void timeOverTheLimitOutsideThePullsIsSaidApart() {
    Outcome outcome = SampleOutcome.standard().limit(OptionalDouble.of(28)).make();
    double inPulls = outcome.pulls().stream().mapToDouble(p -> p.sensor().overLimit()).sum();
    double all = OverLimit.of(outcome.trace(), 28 + 273.15).seconds();
    String said = sentences(SampleOutcome.standard().limit(OptionalDouble.of(28))).get(2);
    assertTrue(said.contains("is above it for " + Display.duration(inPulls) + " in all"), said);
    assertTrue(
        said.endsWith(
            "Outside the pulls it is above it for another "
                + Display.duration(all - inPulls)
                + "."),
        said);
    String cooling =
        sentences(SampleOutcome.standard().pulls(0).limit(OptionalDouble.of(28))).get(1);
    assertTrue(
        cooling.startsWith("The limit of 28 \u00b0C is first passed at the start;"), cooling);
  }

  @Test
  void logThatPassesTheLimitIsNotHushedUp() {
    Outcome outcome = SampleOutcome.standard().make();
    double peak = OverLimit.of(outcome.trace(), 1000).peak() - 273.15;
    String said = sentences(SampleOutcome.standard().limit(OptionalDouble.of(peak + 0.1))).get(2);
    assertTrue(said.contains("is not passed in any pull"), said);
    assertTrue(said.contains("The log does pass it, first in pull 5."), said);
  }

  @Test
  void onePullSaysStartEndAndDistanceToTheCoolant() {
    String said = sentences(SampleOutcome.standard().pulls(1)).get(0);
    assertTrue(
        said.matches(
            "Pull 1 starts at \\d+ \u00b0C on the sensor and ends at \\d+ \u00b0C \\(6500 rpm\\),"
                + " \\d+ K above the coolant entering the core\\."),
        said);
  }

  @Test
  void sessionWithoutPullsSaysHowItCooled() {
    String said = sentences(SampleOutcome.standard().pulls(0)).get(0);
    assertTrue(said.startsWith("In 15 min 20 s the charge sensor goes from 29 \u00b0C to "), said);
  }

  @Test
  void logIsSpokenOfOnlyWhereThereIsOne() {
    String with = String.join(" ", sentences(SampleOutcome.standard()));
    assertTrue(with.contains("The model follows the logged sensor closely"), with);
    assertTrue(with.contains("from pull 1 to pull 5 the log moves +"), with);
    String without = String.join(" ", sentences(SampleOutcome.standard().withoutLog()));
    assertFalse(without.contains("log"), without);
  }

  @Test
  void unitsAreTheScenarios() {
    List<String> said = sentences(SampleOutcome.standard().in(UnitSystem.US));
    assertTrue(said.get(2).startsWith("The limit of 129 \u00b0F"), said.get(2));
    assertFalse(String.join(" ", said).contains("\u00b0C"), said.toString());
  }

  @Test
  void causeIsTheCoolantOnlyIfMostOfTheChangeIs() {
    assertEquals(
        "Mostly because the coolant entering the core is warmer by then (+9 K); the charge stands"
            + " 2 K further above it.",
        breakable(new Cause(11, 9, 1).sentence(METRIC)));
    assertEquals(
        "Mostly because the coolant entering the core is cooler by then (-9 K); the charge stands as"
            + " far above it as before.",
        breakable(new Cause(-9.2, -9, 1).sentence(METRIC)));
    assertEquals(
        "Mostly not the coolant (at the core +1 K): the charge stands 8 K further above it, with"
            + " plenum metal at +12 K.",
        breakable(new Cause(9, 1, 12).sentence(METRIC)));
    assertEquals(
        "Part of it is warmer coolant entering the core (+5 K), and the charge stands 5 K further"
            + " above it, with plenum metal at +4 K.",
        breakable(new Cause(10, 5, 4).sentence(METRIC)));
    assertEquals(
        "By then the coolant enters the core as warm as it did before (0 K).",
        breakable(new Cause(0.3, 0.2, 0).sentence(METRIC)));
    assertEquals(
        "The sensor hardly changes although the coolant entering the core does (+4 K): the charge"
            + " stands 4 K closer to it.",
        breakable(new Cause(0, 4, 0).sentence(METRIC)));
  }

  @Test
  void numbersForPeopleAreRoundedAndNeverMinusNought() {
    assertEquals("0 K", PLAIN.signedDifference(-0.2));
    assertEquals("0 K", PLAIN.signedDifference(0.2));
    assertEquals("-3 K", PLAIN.signedDifference(-2.6));
    assertEquals("1250 kJ", PLAIN.heat(1_253_900));
    assertEquals("483 kJ", PLAIN.heat(483_400));
    assertEquals("-", METRIC.number(Double.NaN, Dimension.TEMPERATURE, 1));
    assertEquals("under 1 s", Display.duration(0.2));
    assertEquals("0 s", Display.duration(0));
    assertEquals("119 s", Display.duration(119.4));
    assertEquals("2 min", Display.duration(119.6));
    assertEquals("-1:05", Display.clock(-65));
  }
}
