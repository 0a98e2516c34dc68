package soakloop.reading;

import static soakloop.log.Signal.BOOST;
import static soakloop.log.Signal.CHARGE_TEMPERATURE;
import static soakloop.log.Signal.CORE_COOLANT_IN;
import static soakloop.log.Signal.ENGINE_SPEED;
import static soakloop.log.Signal.INLET_AIR;
import static soakloop.log.Signal.MANIFOLD_PRESSURE;
import static soakloop.log.Signal.ROAD_SPEED;
import static soakloop.log.Signal.THROTTLE;

import java.util.List;
import soakloop.invented.Outing;
import soakloop.invented.Recorder;
import soakloop.log.Log;
import soakloop.log.Signal;

/** Invented sessions with their true pulls, each recorded in a way of its own. */
final class InventedSessions {
  private static final double THIRD = 0.024;
  private static final double FOURTH = 0.032;
  private static final Signal[] ALL = {
    ENGINE_SPEED, THROTTLE, BOOST, CHARGE_TEMPERATURE, CORE_COOLANT_IN, INLET_AIR
  };

  private InventedSessions() {}

  /**
   * A session and its record.
   *
   * @param name what is special about it
   * @param outing the truth
   * @param log what was recorded
   * @param within how far ends may be off, s
   */
  record Session(String name, Outing outing, Log log, double within) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Session session(String name, Outing outing, Recorder recorder) {
    return new Session(name, outing, recorder.record(outing), 0.3);
  }

  private static Session session(String name, Outing outing, Recorder recorder, double within) {
    return new Session(name, outing, recorder.record(outing), within);
  }

  private static Outing dynoDay(int pulls, double wait) {
    Outing outing = new Outing().idle(15);
    for (int i = 0; i < pulls; i++) {
      outing.runUp(2600, 3).pull(6700, 10).idle(wait);
    }
    return outing;
  }

  private static Outing withAborted() {
    return dynoDay(2, 60)
        .runUp(2600, 3)
        .abort(4400, 4.4)
        .idle(40)
        .runUp(2600, 3)
        .pull(6700, 10)
        .idle(30)
        .runUp(2600, 3)
        .abort(3500, 2.2)
        .idle(20);
  }

  private static Outing throughGears() {
    return new Outing()
        .idle(10)
        .runUp(3000, 2)
        .pull(6800, 4, 0.3, 0.017, false)
        .shift(0.7, 0.017)
        .pull(6800, 4.5, 0.3, THIRD, false)
        .shift(0.76, THIRD)
        .pull(6600, 6, 0.3, FOURTH, false)
        .coast(1500, 14, FOURTH)
        .idle(20);
  }

  private static Outing roadPulls() {
    Outing outing = new Outing().idle(5);
    for (int i = 0; i < 3; i++) {
      outing.drive(80).runUp(2500, 2).pull(6200, 7, 0.4, THIRD, false).coast(1600, 12, THIRD);
    }
    return outing.drive(40);
  }

  private static Outing engineOffBetween() {
    Outing outing = new Outing().idle(10);
    for (int i = 0; i < 3; i++) {
      outing.runUp(2400, 3).hold(4).pull(6500, 9).idle(12).off(150).crank().idle(25);
    }
    return outing;
  }

  private static Outing drivesBetween() {
    return new Outing()
        .drive(120)
        .blip()
        .idle(10)
        .blip()
        .runUp(2600, 3)
        .pull(6700, 10)
        .idle(20)
        .drive(160)
        .blip()
        .idle(6)
        .runUp(2600, 3)
        .pull(6700, 10)
        .idle(20)
        .drive(80);
  }

  private static Outing backToBack() {
    Outing outing = new Outing().idle(10).runUp(2600, 3);
    for (int i = 0; i < 4; i++) {
      outing.pull(6700, 8).coast(2600, 4, 0);
    }
    return outing.idle(10);
  }

  private static Outing held() {
    Outing outing = new Outing().idle(10);
    for (int i = 0; i < 3; i++) {
      outing.runUp(2500, 3).hold(5).holdWideOpen(2).pull(6400, 20).idle(60);
    }
    return outing;
  }

  static List<Session> all() {
    return List.of(
        session("everything at 10 Hz", dynoDay(5, 90), new Recorder(0.1, 1, ALL)),
        session("aborted pulls", withAborted(), new Recorder(0.1, 2, ALL)),
        session(
            "aborted pulls, engine speed and charge only",
            withAborted(),
            new Recorder(0.1, 3, ENGINE_SPEED, CHARGE_TEMPERATURE)),
        session(
            "gear changes under load",
            throughGears(),
            new Recorder(0.05, 4, ENGINE_SPEED, THROTTLE, ROAD_SPEED, BOOST, CHARGE_TEMPERATURE)),
        session(
            "road pulls without throttle",
            roadPulls(),
            new Recorder(0.1, 5, ENGINE_SPEED, ROAD_SPEED, BOOST, CHARGE_TEMPERATURE)),
        session(
            "road pulls without boost",
            roadPulls(),
            new Recorder(0.1, 6, ENGINE_SPEED, ROAD_SPEED, THROTTLE, CHARGE_TEMPERATURE)),
        session(
            "road pulls, engine speed and charge only",
            roadPulls(),
            new Recorder(0.1, 7, ENGINE_SPEED, CHARGE_TEMPERATURE)),
        session("engine off between", engineOffBetween(), new Recorder(0.1, 8, ALL)),
        session(
            "engine off between, engine speed and charge only",
            engineOffBetween(),
            new Recorder(0.1, 9, ENGINE_SPEED, CHARGE_TEMPERATURE)),
        session("drives and blips between", drivesBetween(), new Recorder(0.1, 10, ALL)),
        session(
            "drives and blips between, engine speed and charge only",
            drivesBetween(),
            new Recorder(0.1, 11, ENGINE_SPEED, CHARGE_TEMPERATURE)),
        session("back to back without a wait", backToBack(), new Recorder(0.1, 12, ALL)),
        session(
            "back to back, engine speed and charge only",
            backToBack(),
            new Recorder(0.1, 13, ENGINE_SPEED, CHARGE_TEMPERATURE)),
        session("wide open at a held speed before the sweep", held(), new Recorder(0.1, 14, ALL)),
        session(
            "noisy engine speed at 20 Hz",
            dynoDay(4, 60),
            new Recorder(0.05, 15, ALL).with(ENGINE_SPEED, 20.0 / 60, 1.0 / 60)),
        session(
            "engine speed alone, with noise of 8 rpm",
            dynoDay(4, 60),
            new Recorder(0.1, 25, ENGINE_SPEED).with(ENGINE_SPEED, 8.0 / 60, 1.0 / 60)),
        session(
            "coarse steps: 25 rpm, 1 K, 5 kPa",
            dynoDay(4, 60),
            new Recorder(0.1, 16, ALL)
                .with(ENGINE_SPEED, 3.0 / 60, 25.0 / 60)
                .with(CHARGE_TEMPERATURE, 0.2, 1)
                .with(BOOST, 300, 5000)),
        session(
            "six channels polled in turn, each every 0.3 s",
            dynoDay(4, 60),
            new Recorder(0.05, 17, ALL).allInTurn()),
        session("polled once a second", dynoDay(4, 60), new Recorder(1, 18, ALL), 1.0),
        session(
            "ten a second, engine speed once a second, throttle quick",
            dynoDay(3, 60),
            new Recorder(0.1, 19, ALL).inTurn(ENGINE_SPEED, 10)),
        session(
            "absolute manifold pressure only",
            dynoDay(3, 60),
            new Recorder(0.1, 20, ENGINE_SPEED, MANIFOLD_PRESSURE, CHARGE_TEMPERATURE)),
        session(
            "one quick pull at 100 Hz",
            new Outing().idle(5).runUp(2800, 2).pull(7200, 4).idle(10),
            new Recorder(0.01, 21, ENGINE_SPEED, BOOST)),
        session(
            "driving and nothing else",
            new Outing().drive(200).idle(20).blip().drive(80),
            new Recorder(0.1, 22, ALL)),
        session(
            "driving and nothing else, engine speed and charge only",
            new Outing().drive(200).idle(20).blip().drive(80),
            new Recorder(0.1, 23, ENGINE_SPEED, CHARGE_TEMPERATURE)));
  }
}
