package soakloop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.rig.Rig;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.simulate.CarState;
import soakloop.simulate.Channel;
import soakloop.simulate.Setup;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Trace;

/** One drawn car that goes from round to round, from any state it was in. Not thread-safe. */
final class EveningCar {
  private final Rig rig;
  private final Simulation car;
  private final PullAgain pull;
  private final WaitingCar.Errors errors;
  private final double iceBelow;
  private final double pumpPower;
  private final CarRound first;

  /**
   * Runs a car's session.
   *
   * @param setup the car; its session has a pull
   * @param errors what is wrong about it
   * @param iceBelow reservoir temperature at which ice goes in, K
   * @throws SimulationException if it cannot
   */
  EveningCar(Setup setup, WaitingCar.Errors errors, double iceBelow) throws SimulationException {
    this.rig = setup.rig();
    this.pull = new PullAgain(rig, setup.session().phases());
    this.errors = errors;
    this.iceBelow = iceBelow;
    this.car = Simulation.of(setup);
    var whole = car.runOn(car.start(), pull.before(), Running.SESSION);
    Trace trace = whole.trace();
    List<Trace.Span> pulls = trace.pulls();
    this.pumpPower =
        PullAgain.highest(trace, Channel.HEAT_PUMP, trace.time(0), Double.POSITIVE_INFINITY);
    this.first = round(trace, pulls.get(pulls.size() - 1), whole.end(), 0, ice(trace, 0));
  }

  /** Returns the round that the session ends with. */
  CarRound first() {
    return first;
  }

  /** Returns the pump's power while it runs, W. */
  double pumpPower() {
    return pumpPower;
  }

  /**
   * Does a round.
   *
   * @param from where the last one ended
   * @param way of treating it in the pit
   * @param pit s
   * @param lanes after it, s
   * @return what came of it; failed if it could not be run
   */
  CarRound go(CarRound from, Way way, double pit, double lanes) {
    if (from.end().isEmpty()) {
      return CarRound.FAILED;
    }
    boolean starts = way.startUp() > 0 || lanes > 0;
    double startUp = starts ? WaitPlan.START_UP : 0;
    // An engine is started at the end of the lanes; where they are too short, in the pit.
    double standing = Math.max(0, lanes - startUp);
    double inPit = pit + lanes - standing - startUp;
    try {
      KeptWait kept =
          new KeptWait(
              car, rig, way, pull.drains(), from.end().get(), new double[] {inPit}, iceBelow);
      CarState ready = kept.at(inPit);
      List<Phase> lead = new ArrayList<>();
      if (standing > 0) {
        lead.add(standing(standing));
      }
      if (starts) {
        Cooling pumpOnly = new Cooling(true, false, Cooling.Fan.OFF);
        lead.add(pull.idle("start-up", startUp, pumpOnly));
      }
      if (!lead.isEmpty()) {
        ready = car.runOn(ready, lead, Running.WAIT).end();
      }
      var done = car.runOn(ready, pull.andBack(), Running.ROUND);
      double put = kept.icedAt().isPresent() ? way.ice() : 0;
      return round(done.trace(), pull.span(done.trace()), done.end(), put, from.iceEnd());
    } catch (SimulationException e) {
      return CarRound.FAILED;
    }
  }

  private static Phase standing(double seconds) {
    return new Phase(
        "lanes",
        Phase.Kind.WAIT,
        seconds,
        new Drive.EngineOff(),
        new Cooling(false, false, Cooling.Fan.OFF, false),
        OptionalDouble.empty());
  }

  private CarRound round(
      Trace trace, Trace.Span span, CarState end, double iceIn, double iceBefore) {
    int last = trace.size() - 1;
    double tank = trace.value(Channel.RESERVOIR, last);
    return new CarRound(
        Optional.of(end),
        PullAgain.highest(trace, Channel.CHARGE, span.start(), span.end()) + errors.charge(),
        iceIn,
        iceBefore,
        ice(trace, Math.min(last, trace.firstFrom(span.start()))),
        ice(trace, last),
        Double.isNaN(tank) ? trace.value(Channel.CORE_COOLANT_OUT, last) : tank,
        trace.value(Channel.PLENUM_METAL, last),
        trace.energy());
  }

  private static double ice(Trace trace, int at) {
    double ice = trace.value(Channel.ICE_LEFT, at);
    return Double.isNaN(ice) ? 0 : ice;
  }
}
