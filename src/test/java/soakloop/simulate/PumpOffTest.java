package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.rig.Day;
import soakloop.rig.Exchanger;
import soakloop.rig.Rig;
import soakloop.session.Session;
import soakloop.session.Start;

/** A stopped pump leaves a loop that conducts and soaks but does not move. */
@Tag("analytic")
class PumpOffTest {
  private static final int RIGS = 150;
  private static final double PULL = 8;

  /** Time constants of the core's still coolant and metal in one wait. */
  private static final double CONSTANTS = 5;

  private static final double LONGEST = 120;

  @Test
  void stillCoolantTakesTheTemperatureOfItsMetal() throws SimulationException {
    for (long seed = 1; seed <= RIGS; seed++) {
      RandomRigs random = new RandomRigs(seed);
      Day day = random.day();
      Rig rig = random.rig(day);
      double constant = timeConstant(rig);
      double wait = Math.min(LONGEST, CONSTANTS * constant);
      Session session =
          new Session(
              List.of(
                  Phases.pumpOff(Phases.pull(random, PULL)),
                  Phases.pumpOff(Phases.engineOff(wait))));
      double cold = Math.max(day.temperature(), rig.coolant().freezingTemperature());
      Start start = new Start(OptionalDouble.empty(), OptionalDouble.of(cold), 360);
      Spread spread = new Spread(rig);
      StateWalk.walk(new Setup(day, rig, start, session, OptionalDouble.empty()), spread);
      String what = "seed " + seed + ": ";
      assertEquals(0, spread.flow, what + "flow");
      assertTrue(Double.isFinite(spread.apart), what + "a temperature is not a number");
      double expected = spread.apartAtStop * Math.exp(-wait / constant);
      assertEquals(
          expected, spread.apart, 0.02 * spread.apartAtStop + 1e-3, what + "metal less coolant");
      assertTrue(spread.apartAtStop > 0, what + "the pull heats the metal first");
    }
  }

  /** Metal and still coolant alone: their difference falls with 1/Gc over their capacities. */
  private static double timeConstant(Rig rig) {
    Exchanger core = rig.loop().core().exchanger();
    double t = References.COOLANT;
    double coolant =
        rig.coolant().density(293.15) * core.coolantVolume() * rig.coolant().heatCapacity(t);
    double side = core.conductance().coolantSide(0, t, rig.coolant());
    return 1 / (side * (1 / coolant + 1 / core.metalHeatCapacity()));
  }

  /** Mean core metal less mean core coolant. */
  private static final class Spread implements StateWalk.Visitor {
    private final CoreStates core;
    double flow;
    double apart;
    double apartAtStop;

    Spread(Rig rig) {
      core = new CoreStates(rig);
    }

    @Override
    public void see(LoopModel model, double[] y, Moment m) {
      flow = Math.max(flow, m.coolantFlow);
      apart = core.metalLessCoolant(model, y);
      if (m.airMassFlow > 0) {
        apartAtStop = apart;
      }
    }
  }
}
