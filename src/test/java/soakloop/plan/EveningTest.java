package soakloop.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.Scenario;
import soakloop.simulate.EnergyLedger;

/** What must hold of an evening of rounds. */
@Tag("analytic")
class EveningTest {
  /**
   * Latent heat of ice, J/kg: 333.55 kJ/kg at 0 degC (CRC Handbook of Chemistry and Physics, from
   * memory).
   */
  private static final double LATENT = 333_550;

  /** More than ice at -5 degC and its water up to 45 degC take up besides, J/kg. */
  private static final double SENSIBLE = 4_220 * 45 + 2_100 * 5;

  private static final double MINUTE = 60;

  private static EveningPlan plan(
      Scenario scenario, double limit, double ice, OptionalDouble battery, double... minutes)
      throws Exception {
    Scenario made = ice > 0 ? IceRoom.made(scenario, ice) : scenario;
    List<Double> intervals = new ArrayList<>();
    for (double m : minutes) {
      intervals.add(m * MINUTE);
    }
    return new EveningPlan(
            WaitFacts.plan(made, EveningPlan.ways(true, ice), limit, 0.9),
            intervals,
            3 * MINUTE,
            ice,
            battery,
            EveningPlan.USUAL_FAN_POWER)
        .checked();
  }

  /** Runs a plan of ways with all cars; all rounds, cars within. */
  private static List<List<CarRound>> driven(EveningPlan plan, List<Way> ways) throws Exception {
    EveningFleet fleet = EveningFleet.of(plan, 2);
    List<List<CarRound>> rounds = new ArrayList<>();
    rounds.add(fleet.first());
    for (int i = 0; i < ways.size(); i++) {
      rounds.add(fleet.go(List.of(new EveningFleet.Step(rounds.get(i), i, ways.get(i)))).get(0));
    }
    return rounds;
  }

  @Test
  void heatAndIceBalanceAndIceIsCarriedOver() throws Exception {
    EveningPlan plan =
        plan(WaitFacts.shipped("cool-morning"), 330, 20, OptionalDouble.empty(), 15, 12, 12);
    Way ice = new Way(false, true, false, 9);
    Way stand = new Way(false, false, false, 0);
    List<List<CarRound>> rounds = driven(plan, List.of(ice, stand, ice));
    int carried = 0;
    for (int car = 0; car < rounds.get(0).size(); car++) {
      double put = 0;
      double before = rounds.get(0).get(car).iceEnd();
      for (int r = 1; r < rounds.size(); r++) {
        CarRound round = rounds.get(r).get(car);
        assertTrue(round.end().isPresent());
        assertEquals(before, round.iceBefore(), 1e-12, "ice is carried over as it was left");
        assertTrue(round.iceStart() <= before + round.iceIn() + 1e-9, "no ice from nowhere");
        assertTrue(round.iceEnd() >= 0 && round.iceEnd() <= round.iceStart() + 1e-9);
        carried += r == 2 && round.iceStart() > 0.01 && round.iceIn() == 0 ? 1 : 0;
        put += round.iceIn();
        before = round.iceEnd();
      }
      EnergyLedger books = rounds.get(3).get(car).books();
      assertTrue(books.residualFraction() < 1e-9, () -> "books: " + books);
      double started = rounds.get(0).get(car).iceEnd();
      double melted = started + put - before;
      // What the coolant gave to ice says by itself how much can have melted.
      double heat = books.storedIce();
      assertTrue(melted * LATENT * 0.9 < heat, melted + " kg by " + heat + " J");
      assertTrue(heat < (melted * LATENT + (put + 20) * SENSIBLE), melted + " kg by " + heat);
    }
    assertTrue(carried > 0, "some cars must still have ice in the round after");
  }

  @Test
  void fewestActionsFirst() throws Exception {
    Scenario scenario = WaitFacts.shipped("cool-morning");
    int kept = 0;
    for (double limit : new double[] {336, 331, 326}) {
      EveningPlan plan = plan(scenario, limit, 3, OptionalDouble.of(4e5), 25, 22);
      EveningAnswer answer = new EveningRunner(plan, 2, WaitFacts.FEW).answer();
      EveningFleet fleet = EveningFleet.of(plan, 2);
      double pump = fleet.pumpPower();
      List<Prefix> every = new ArrayList<>();
      Prefix start = Prefix.first(plan, fleet.first(), fleet.sample(fleet.size()));
      for (Way one : plan.question().ways()) {
        if (start.allows(one, pump)) {
          Prefix first = start.then(one, pump, fleet.go(List.of(start.step(one))).get(0));
          for (Way two : plan.question().ways()) {
            if (first.allows(two, pump)) {
              every.add(first.then(two, pump, fleet.go(List.of(first.step(two))).get(0)));
            }
          }
        }
      }
      List<Prefix> keep = every.stream().filter(p -> p.firstMiss() > 3).toList();
      boolean told = answer.rounds().stream().skip(1).allMatch(r -> r.peak() <= limit);
      assertEquals(!keep.isEmpty(), told, "limit " + limit);
      if (told) {
        kept++;
        int fewest = keep.stream().mapToInt(Prefix::actions).min().orElseThrow();
        assertEquals(fewest, answer.actions(), "limit " + limit);
      } else {
        int latest = every.stream().mapToInt(Prefix::firstMiss).max().orElseThrow();
        int first =
            answer.rounds().stream()
                .skip(1)
                .filter(r -> r.peak() > limit)
                .findFirst()
                .orElseThrow()
                .number();
        assertEquals(latest, first, "limit " + limit);
      }
    }
    assertEquals(2, kept, "two of the limits can be kept, the third not");
  }

  @Test
  void aLimitThatCannotBeKeptIsSaidSo() throws Exception {
    EveningPlan plan =
        plan(WaitFacts.shipped("cool-morning"), 300, 0, OptionalDouble.empty(), 15, 15);
    EveningAnswer answer = new EveningRunner(plan, 2).answer();
    assertEquals(1, answer.firstMiss().orElseThrow().number());
    assertEquals(3, answer.rounds().size());
    assertTrue(answer.rounds().stream().allMatch(r -> r.keeps() < 0.9));
    assertFalse(answer.residual() > 1e-9);
  }

  @Test
  void iceAndBatteryNeverGoNegative() throws Exception {
    Random random = new Random(8);
    List<Scenario> cars =
        List.of(WaitFacts.shipped("evening-rounds"), WaitFacts.shipped("cool-morning"));
    for (int i = 0; i < 4; i++) {
      double ice = random.nextInt(8);
      double battery = random.nextDouble() * 1e6;
      double limit = 315 + 20 * random.nextDouble();
      double[] minutes = random.doubles(1 + random.nextInt(2), 15, 50).toArray();
      EveningPlan plan = plan(cars.get(i % 2), limit, ice, OptionalDouble.of(battery), minutes);
      EveningAnswer answer = new EveningRunner(plan, 2).answer();
      double iceLeft = ice;
      double chargeLeft = battery;
      for (EveningRound round : answer.rounds()) {
        iceLeft -= round.iceUsed();
        double draw =
            round
                .way()
                .map(
                    w ->
                        w.idles()
                            ? 0
                            : (w.pump() ? answer.pumpPower() : 0)
                                + (w.fans() ? EveningPlan.USUAL_FAN_POWER : 0))
                .orElse(0.0);
        chargeLeft -= draw * round.pit();
        assertTrue(round.iceLeft() >= 0 && round.batteryLeft() >= 0, round::toString);
        assertEquals(iceLeft, round.iceLeft(), 1e-9);
        assertEquals(chargeLeft, round.batteryLeft(), 1e-6 * battery + 1e-6);
      }
    }
  }
}
