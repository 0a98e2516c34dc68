package soakloop.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.fit.Cars;
import soakloop.scenario.Scenario;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.simulate.Channel;
import soakloop.simulate.Options;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.Trace;
import soakloop.study.StudyException;

/** Waiting on shipped scenarios. */
@Tag("analytic")
class WaitTest {
  private static final double ZERO = 273.15;

  /** Pieces run with wide steps against the whole, run in one go with narrow ones. */
  @ParameterizedTest
  @ValueSource(strings = {"cool-morning", "iced-rounds", "traffic-recovery"})
  void piecesGiveWhatTheWholeGives(String name) throws Exception {
    Setup setup = WaitFacts.shipped(name).setup().withoutLimit();
    WaitingCar car = new WaitingCar(setup, WaitingCar.Errors.NONE, WaitPlan.USUAL_ICE_BELOW);
    for (Way way : List.of(WaitFacts.IDLE, WaitFacts.PUMP_AND_FANS, WaitFacts.ALL_OFF)) {
      car.waitIn(way, new double[] {100, 1000});
      for (double wait : new double[] {100, 400, 1000}) {
        Trace whole = whole(setup, way, wait);
        Trace.Span last = whole.spans().get(whole.spans().size() - 2);
        double highest = 0;
        // The first sample at the pull's end is still the pull's.
        int end = whole.firstFrom(last.end()) + 1;
        for (int i = whole.firstFrom(last.start() + 1e-9); i < end; i++) {
          highest = Math.max(highest, whole.value(Channel.CHARGE, i));
        }
        Go go = car.go(way, wait);
        String what = way + " after " + wait;
        assertEquals(highest, go.charge(), 0.15, what);
        assertEquals(whole.at(Channel.CORE_COOLANT_IN, last.start()), go.reading(), 0.1, what);
      }
    }
  }

  private static Trace whole(Setup setup, Way way, double wait) throws Exception {
    List<Phase> session = setup.session().phases();
    int last = WaitPlan.lastPull(session);
    List<Phase> phases = new ArrayList<>(session.subList(0, last + 1));
    phases.add(phase(Phase.Kind.WAIT, wait - way.startUp(), way.drive(setup.rig()), way.cooling()));
    Drive idle = new Drive.Idle(setup.rig().engine().idleSpeed());
    if (way.startUp() > 0) {
      phases.add(phase(Phase.Kind.IDLE, way.startUp(), idle, Cooling.ALL));
    }
    phases.add(session.get(last));
    phases.add(phase(Phase.Kind.IDLE, 5, idle, Cooling.ALL));
    Setup longer =
        new Setup(
            setup.day(), setup.rig(), setup.start(), new Session(phases), OptionalDouble.empty());
    return Simulation.run(longer, Options.DEFAULT.withTolerances(1e-3, 0));
  }

  private static Phase phase(Phase.Kind kind, double seconds, Drive drive, Cooling cooling) {
    return new Phase("piece", kind, seconds, drive, cooling, OptionalDouble.empty());
  }

  /** With all off the loop first evens out, then soaks: one window that closes again. */
  @Test
  void soakClosesAWindow() throws Exception {
    Scenario scenario = WaitFacts.shipped("cool-morning");
    List<Way> off = List.of(WaitFacts.ALL_OFF);
    WayAnswer any = WaitFacts.answer(scenario, off, 450 - 1, 0.9).best();
    double lowest = any.curve().stream().mapToDouble(a -> a.charge(0.9)).min().orElseThrow();
    WayAnswer way = WaitFacts.answer(scenario, off, lowest + 0.3, 0.9).best();
    assertEquals(1, way.windows().size(), way.windows().toString());
    Window window = way.windows().get(0);
    assertTrue(window.from() > 30 && window.to() < 3500 && !window.open(), window.toString());
    assertTrue(WaitFacts.answer(scenario, off, lowest - 1, 0.9).best().windows().isEmpty());
  }

  /**
   * Going by the gauge keeps the limit as often as asked, on cars that were not asked for the
   * threshold: each goes as soon as its own gauge reads so little, or some time later.
   */
  @Test
  void theGaugeIsSafeOnOtherCars() throws Exception {
    Scenario scenario = WaitFacts.shipped("cool-morning");
    double limit = 57 + ZERO;
    WaitPlan plan =
        new WaitPlan(
            scenario,
            List.of(WaitFacts.IDLE),
            limit,
            0.9,
            3600,
            WaitPlan.USUAL_DRAWS,
            WaitPlan.USUAL_ICE_BELOW);
    double most = new WaitRunner(plan, 2).answer().best().threshold().orElseThrow();
    Cars cars = Cars.of(scenario, 2 * WaitPlan.USUAL_DRAWS);
    int go = 0;
    int keep = 0;
    int later = 0;
    for (int i = WaitPlan.USUAL_DRAWS; i < cars.size(); i++) {
      WaitingCar car =
          new WaitingCar(
              cars.scenario(i).setup().withoutLimit(),
              new WaitingCar.Errors(cars.chargeError(i), cars.bias(i), cars.coolantReadingError(i)),
              WaitPlan.USUAL_ICE_BELOW);
      car.waitIn(WaitFacts.IDLE, new double[] {60, 300, 900, 3600});
      double first = firstReading(car, most);
      if (!Double.isNaN(first)) {
        go++;
        keep += car.go(WaitFacts.IDLE, first).charge() <= limit ? 1 : 0;
        double wait = first + (3600 - first) * (i % 5) / 5;
        Go then = car.go(WaitFacts.IDLE, wait);
        later += then.charge() <= limit || then.reading() > most ? 1 : 0;
      }
    }
    assertTrue(go > 80, go + " cars go");
    // Ten in a hundred may scatter by some 4.
    assertTrue(keep >= 0.86 * go, keep + " of " + go + " keep it at once");
    assertTrue(later >= 0.86 * go, later + " of " + go + " keep it later");
  }

  /** When an idling car, which cools all the time, first reads so little; NaN if it does not. */
  private static double firstReading(WaitingCar car, double most) {
    if (car.go(WaitFacts.IDLE, 3600).reading() > most) {
      return Double.NaN;
    }
    double over = 30;
    double under = 3600;
    while (under - over > 2) {
      double middle = Math.sqrt(over * under);
      if (car.go(WaitFacts.IDLE, middle).reading() > most) {
        over = middle;
      } else {
        under = middle;
      }
    }
    return under;
  }

  /** What would be needed is about enough, asked of all cars. */
  @Test
  void whatWouldBeNeededIsAboutEnough() throws Exception {
    Scenario scenario = WaitFacts.shipped("cool-morning");
    List<Way> ways = List.of(WaitFacts.IDLE);
    WaitAnswer never = WaitFacts.answer(scenario, ways, 52 + ZERO, 0.9);
    assertTrue(never.best().windows().isEmpty());
    Needs needs = never.needs().orElseThrow();
    double day = needs.ambient().orElseThrow();
    Scenario cooler = scenario.with("day.temperature", (day - 1.5) + " K");
    assertFalse(WaitFacts.answer(cooler, ways, 52 + ZERO, 0.9).best().windows().isEmpty());
    Scenario warmer = scenario.with("day.temperature", (day + 1.5) + " K");
    assertTrue(WaitFacts.answer(warmer, ways, 52 + ZERO, 0.9).best().windows().isEmpty());
    Way iced = new Way(false, true, true, needs.ice().orElseThrow() + 0.5);
    Scenario tank = IceRoom.made(scenario, iced.ice());
    assertFalse(WaitFacts.answer(tank, List.of(iced), 52 + ZERO, 0.9).best().windows().isEmpty());
    assertTrue(needs.boost().orElseThrow() < 1 && needs.boost().orElseThrow() > 0.6);
  }

  /** An open hood keeps the loop of a standing car cooler, so its next pull too. */
  @Test
  void anOpenHoodHelps() throws Exception {
    WaitingCar car =
        new WaitingCar(
            WaitFacts.shipped("evening-rounds").setup().withoutLimit(),
            WaitingCar.Errors.NONE,
            WaitPlan.USUAL_ICE_BELOW);
    Way shut = new Way(false, true, false, 0);
    Way open = new Way(false, true, false, true, 0);
    car.waitIn(open, new double[] {1800});
    car.waitIn(shut, new double[] {1800});
    Go cooler = car.go(open, 1800);
    Go go = car.go(shut, 1800);
    assertTrue(cooler.reading() < go.reading() - 0.05, cooler + " against " + go);
    assertTrue(cooler.charge() < go.charge(), cooler + " against " + go);
  }

  /** Ice goes in when the reservoir is cold enough, and not at all if it never is. */
  @Test
  void iceWaitsForAColdTank() throws Exception {
    Scenario scenario = IceRoom.made(WaitFacts.shipped("cool-morning"), 3);
    Way way = new Way(false, true, true, 3);
    double[] times = {way.shortest(), 3600};
    double[] below = {60 + ZERO, 25 + ZERO, 5 + ZERO};
    double[] icedAt = new double[3];
    for (int i = 0; i < below.length; i++) {
      WaitingCar car =
          new WaitingCar(scenario.setup().withoutLimit(), WaitingCar.Errors.NONE, below[i]);
      car.waitIn(way, times);
      icedAt[i] = car.icedAt(way).orElse(Double.NaN);
    }
    assertEquals(Way.HANDLING, icedAt[0], 1e-6);
    assertTrue(icedAt[1] > Way.HANDLING + 30 && icedAt[1] < 3600, icedAt[1] + " s");
    assertTrue(Double.isNaN(icedAt[2]), icedAt[2] + " s");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "'idle, pump, fans';true;true;true;0",
        "off;false;false;false;0",
        "'off, hood, pump';false;true;false;0",
        "'OFF, pump, ice 3 kg';false;true;false;3",
        "'off,ice 10 lb';false;false;false;4.5359237"
      })
  void waysAreRead(String text, boolean idles, boolean pump, boolean fans, double ice)
      throws StudyException {
    Way read = WayReader.read(text);
    assertEquals(new Way(idles, pump, fans, text.contains("hood"), read.ice()), read);
    assertEquals(ice, read.ice(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "pump",
        "idle, off",
        "idle, ice 3 kg",
        "off, ice",
        "off, ice 3",
        "off, ice -1 kg",
        "off, roof",
        "off, pump, pump",
        "off, ice 900 kg"
      })
  void noWays(String text) {
    assertThrows(StudyException.class, () -> WayReader.read(text));
  }
}
