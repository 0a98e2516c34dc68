package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.fluid.Water;
import soakloop.rig.Day;
import soakloop.rig.Hose;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
import soakloop.rig.Materials;
import soakloop.rig.Rig;
import soakloop.session.Session;
import soakloop.session.Start;

/** What a stated charge temperature does to the start. */
@Tag("analytic")
class StartTemperaturesTest {
  private static final double DAY = 310;
  private static final double WHOLE_DEGREE = 1;

  private static Trace started(double charge, OptionalDouble loop) throws SimulationException {
    Setup rig = TradeRig.pulls(1, 1600);
    Start start = new Start(OptionalDouble.of(charge), loop, 366);
    Day day = new Day(DAY, 100e3, 0.3);
    return Simulation.run(new Setup(day, rig.rig(), start, rig.session(), OptionalDouble.empty()));
  }

  @Test
  void sensorReadsWhatIsStated() throws SimulationException {
    Trace withLoop = started(DAY + 2, OptionalDouble.of(DAY));
    assertEquals(DAY + 2, withLoop.value(Channel.SENSOR, 0), 1e-6);
    assertEquals(DAY, withLoop.value(Channel.CORE_COOLANT_IN, 0), 1e-9);
    Trace solved = started(DAY + 12, OptionalDouble.empty());
    assertEquals(DAY + 12, solved.value(Channel.SENSOR, 0), 1e-6);
    assertTrue(solved.value(Channel.CORE_COOLANT_IN, 0) < DAY + 12, "the plenum adds to it");
  }

  /** A car that has stood: everything reads the day, though the blower's case is a little warm. */
  @Test
  void everythingAtTheDayIsAStart() throws SimulationException {
    Trace trace = started(DAY, OptionalDouble.of(DAY));
    assertEquals(DAY, trace.value(Channel.SENSOR, 0), WHOLE_DEGREE / 2);
    assertEquals(DAY, trace.value(Channel.PLENUM_METAL, 0), 1e-9);
  }

  @Test
  void readingFarFromWhatItCanBeIsWrongInput() {
    SimulationException wrong =
        assertThrows(SimulationException.class, () -> started(DAY - 5, OptionalDouble.of(DAY)));
    String message = String.valueOf(wrong.getMessage());
    assertTrue(wrong.isInputWrong(), message);
    assertTrue(message.startsWith("start.charge: "), message);
  }

  /** From a warm garage into the frost, on plain water, with a hose whose film is worked out. */
  @Test
  void loopIsLookedForAmongLiquidOnesOnly() throws SimulationException {
    Setup trade = TradeRig.pulls(1, 1600);
    Rig rig = trade.rig();
    List<LoopElement> elements = new ArrayList<>(rig.loop().elements());
    elements.add(new Hose("odd hose", 1, 0.02, Materials.HoseWall.RUBBER.thick(4e-3), 12, 3, 3));
    Rig onWater =
        new Rig(
            Water.INSTANCE,
            rig.engine(),
            rig.blower(),
            rig.boost(),
            rig.plenum(),
            rig.sensor(),
            new Loop(elements, rig.loop().plumbing()),
            rig.airflow(),
            rig.underhood());
    Day frost = new Day(233.15, 100e3, 0.3);
    Start warm = new Start(OptionalDouble.of(300), OptionalDouble.empty(), 366);
    Trace trace =
        Simulation.run(new Setup(frost, onWater, warm, trade.session(), OptionalDouble.empty()));
    assertEquals(300, trace.value(Channel.SENSOR, 0), 1e-6);
    assertTrue(trace.value(Channel.CORE_COOLANT_IN, 0) > 273.15);
  }

  @Test
  void frozenCoolantIsNoStart() {
    SimulationException wrong =
        assertThrows(SimulationException.class, () -> started(DAY, OptionalDouble.of(230)));
    String message = String.valueOf(wrong.getMessage());
    assertTrue(wrong.isInputWrong(), message);
    assertTrue(message.startsWith("start.loop-coolant: the coolant would start at -43.1"), message);
  }

  /** Water on a freezing day: the loop is as warm as the charge says, not as the day. */
  @Test
  void freezingDayIsAStartIfTheChargeSaysThatTheLoopIsWarm() throws SimulationException {
    Rig trade = TradeRig.pulls(1, 1600).rig();
    Rig rig =
        new Rig(
            Water.INSTANCE,
            trade.engine(),
            trade.blower(),
            trade.boost(),
            trade.plenum(),
            trade.sensor(),
            trade.loop(),
            trade.airflow(),
            trade.underhood());
    Session session = new Session(List.of(Phases.idle(rig, 5)));
    Start start = new Start(OptionalDouble.of(305), OptionalDouble.empty(), 360);
    Day day = new Day(265, 100e3, 0.3);
    Trace trace = Simulation.run(new Setup(day, rig, start, session, OptionalDouble.empty()));
    assertEquals(305, trace.value(Channel.SENSOR, 0), 1e-6);
    assertTrue(trace.value(Channel.CORE_COOLANT_IN, 0) > 273.15, "liquid");
  }
}
