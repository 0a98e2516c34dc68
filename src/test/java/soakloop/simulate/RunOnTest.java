package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.rig.Day;
import soakloop.rig.Rig;
import soakloop.scenario.ScenarioReader;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/** A run that is cut anywhere and gone on with is the run that was not cut. */
@Tag("analytic")
class RunOnTest {
  private static final Options CLOSE = Options.DEFAULT.withTolerances(1e-3, 0).sampledEvery(0.2);

  /** What the steps' own error and a hose's film, set anew where a phase begins, may make, K. */
  private static final double ALIKE = 0.05;

  private static final List<Channel> SHOWN =
      List.of(
          Channel.CHARGE,
          Channel.SENSOR,
          Channel.CORE_COOLANT_IN,
          Channel.CORE_COOLANT_OUT,
          Channel.PLENUM_METAL,
          Channel.BLOWER_CASE);

  @ParameterizedTest
  @ValueSource(strings = {"cool-morning", "iced-rounds", "traffic-recovery", "two-runs"})
  void shippedSessionsCutAnywhere(String name) throws Exception {
    Setup setup = ScenarioReader.read(Path.of("scenarios", name + ".yaml")).setup();
    for (int seed = 1; seed <= 4; seed++) {
      cutAndCompare(setup, seed, name);
    }
  }

  @Test
  void anyRigCutAnywhere() throws SimulationException {
    for (long seed = 1; seed <= 40; seed++) {
      RandomRigs random = new RandomRigs(seed);
      Day day = random.day();
      Rig rig = random.rig(day);
      Session session = Phases.mixed(random, rig);
      Start start =
          new Start(OptionalDouble.empty(), OptionalDouble.of(random.liquid(rig, 275, 330)), 360);
      cutAndCompare(
          new Setup(day, rig, start, session, OptionalDouble.empty()), seed, "seed " + seed);
    }
  }

  private static void cutAndCompare(Setup setup, long seed, String what)
      throws SimulationException {
    Session session = setup.session();
    double from = session.startTime();
    double cut = from + (session.endTime() - from) * new Random(seed).nextDouble();
    Simulation car = Simulation.of(setup);
    Stretch whole = car.runOn(car.start(), session.phases(), CLOSE, cut);
    CarState state = whole.kept().get(0);
    // Something else in between, so that the state alone must tell where the car stood.
    car.runOn(whole.end(), List.of(session.phases().get(session.phases().size() - 1)), CLOSE);
    for (Simulation next : List.of(car, Simulation.of(setup))) {
      Stretch rest = next.runOn(state, rest(session, cut), CLOSE);
      alike(whole.trace(), rest.trace(), cut, what + " cut at " + cut);
    }
  }

  private static List<Phase> rest(Session session, double cut) {
    List<Phase> rest = new ArrayList<>();
    double start = session.startTime();
    for (Phase phase : session.phases()) {
      double end = start + phase.duration();
      if (start >= cut) {
        rest.add(phase);
      } else if (end > cut) {
        rest.add(phase.rest(cut - start));
      }
      start = end;
    }
    return rest;
  }

  private static void alike(Trace whole, Trace rest, double cut, String what) {
    for (Channel channel : SHOWN) {
      for (int i = 0; i <= 200; i++) {
        double t = cut + (whole.time(whole.size() - 1) - cut) * i / 200;
        if (whole.spans().stream().anyMatch(s -> Math.abs(s.start() - t) < 0.5)) {
          continue; // the charge jumps where a phase begins
        }
        int near = rest.firstFrom(t);
        double at = near < rest.size() ? rest.time(near) : rest.time(rest.size() - 1);
        assertEquals(
            whole.at(channel, at),
            rest.at(channel, at),
            tolerance(channel),
            what + " " + channel + " at " + at);
      }
    }
    EnergyLedger one = whole.energy();
    EnergyLedger other = rest.energy();
    double part = 1e-3 * one.turnover() + 50;
    assertEquals(one.turnover(), other.turnover(), part, what);
    assertEquals(one.toAmbient(), other.toAmbient(), part, what);
    assertEquals(one.fromChargeToCore(), other.fromChargeToCore(), part, what);
    assertEquals(one.storedIce(), other.storedIce(), part, what);
    assertTrue(other.residualFraction() < 1e-6, what + " residual " + other.residualFraction());
  }

  private static double tolerance(Channel channel) {
    return channel == Channel.CHARGE ? 4 * ALIKE : ALIKE;
  }

  @Test
  void timesOutsideAndStatesOfOthersAreRefused() throws Exception {
    Setup setup = ScenarioReader.read(Path.of("scenarios", "cool-morning.yaml")).setup();
    Setup other = ScenarioReader.read(Path.of("scenarios", "iced-rounds.yaml")).setup();
    Simulation car = Simulation.of(setup);
    List<Phase> first = setup.session().phases().subList(0, 1);
    assertThrows(IllegalArgumentException.class, () -> car.runOn(car.start(), first, CLOSE, 1e6));
    CarState strange = Simulation.of(other).start();
    assertThrows(IllegalArgumentException.class, () -> car.runOn(strange, first, CLOSE));
  }
}
