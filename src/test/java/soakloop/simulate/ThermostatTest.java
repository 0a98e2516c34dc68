package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.rig.Airflow;
import soakloop.rig.FaceAir;
import soakloop.rig.Rig;
import soakloop.rig.Thermostat;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/** The car fan after a stretch in which its thermostat had no say. */
@Tag("analytic")
class ThermostatTest {
  private static final double FAN = 3;
  private static final double STILL = 0.2;
  private static final Thermostat SWITCH = new Thermostat(345, 343);

  private static Setup hot(List<Phase> phases) {
    Setup setup = TradeRig.pulls(1, 1600);
    Rig r = setup.rig();
    Rig rig =
        new Rig(
            r.coolant(),
            r.engine(),
            r.blower(),
            r.boost(),
            r.plenum(),
            r.sensor(),
            r.loop(),
            new Airflow(new FaceAir.Speeds(0, FAN, 0.18), STILL, 0, 0, Optional.of(SWITCH)),
            r.underhood());
    Start start = new Start(OptionalDouble.empty(), OptionalDouble.of(352), 366);
    return new Setup(setup.day(), rig, start, new Session(phases), OptionalDouble.empty());
  }

  /** Starts hot, cools with the engine off, and idles again. */
  private static Trace cooledWithEngineOff(double off) throws SimulationException {
    Rig rig = TradeRig.pulls(1, 1600).rig();
    return Simulation.run(
        hot(List.of(Phases.idle(rig, 5), Phases.engineOff(off), Phases.idle(rig, 10))));
  }

  @Test
  void fanStaysOffIfTheCoolantCooledMeanwhile() throws SimulationException {
    Trace trace = cooledWithEngineOff(4000);
    assertEquals(Math.hypot(FAN, STILL), trace.value(Channel.FACE_SPEED, 0), 1e-12);
    int last = trace.size() - 1;
    assertTrue(trace.value(Channel.EXCHANGER_COOLANT_IN, last) < SWITCH.off(), "cooled");
    assertEquals(STILL, trace.value(Channel.FACE_SPEED, last), 1e-12);
    assertEquals(
        List.of(new Trace.Event(4005, Trace.Event.Kind.FAN_OFF)), trace.events(), "events");
  }

  /** The phase after one without the thermostat has it again. */
  @Test
  void thermostatRulesAgainAfterTheEngineWasOff() throws SimulationException {
    Setup setup =
        hot(List.of(Phases.engineOff(1), Phases.idle(TradeRig.pulls(1, 1600).rig(), 1500)));
    Trace trace = Simulation.run(setup);
    int last = trace.size() - 1;
    assertTrue(trace.value(Channel.EXCHANGER_COOLANT_IN, last) < SWITCH.off(), "cooled");
    assertEquals(STILL, trace.value(Channel.FACE_SPEED, last), 1e-12);
    assertEquals(1, trace.events().size());
    assertEquals(Trace.Event.Kind.FAN_OFF, trace.events().get(0).kind());
  }

  @Test
  void fanGoesOnIfItIsStillHot() throws SimulationException {
    Trace trace = cooledWithEngineOff(10);
    int last = trace.size() - 1;
    assertTrue(trace.value(Channel.EXCHANGER_COOLANT_IN, last) > SWITCH.off(), "hot");
    assertEquals(Math.hypot(FAN, STILL), trace.value(Channel.FACE_SPEED, last), 1e-12);
    assertTrue(trace.events().isEmpty(), "events");
  }
}
