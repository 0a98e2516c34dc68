package soakloop.simulate;

import java.util.Locale;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import soakloop.quantity.Dimension;
import soakloop.quantity.UnitSystem;
import soakloop.session.Drive;
import soakloop.session.Inputs;
import soakloop.session.Phase;
import soakloop.session.Session;
import soakloop.session.Start;

/**
 * The state that a session starts from: coolant and metal of the loop at one temperature; blower
 * case, plenum and sensor at rest with the engine idling (or off, if the session starts so).
 *
 * <p>A stated charge temperature is what the resting sensor reads. If the loop temperature is not
 * stated, it is solved for; if it is, the plenum's temperature is. A reading that misses what the
 * sensor can read by no more than the rounding of a whole degree is taken for the nearest it can.
 */
final class InitialState {
  private static final double TOLERANCE = 1e-9;

  /** Readings come rounded to whole degrees, K. */
  private static final double ROUNDING = 0.5;

  private static final int MAX_EVALUATIONS = 200;

  /** Hottest loop that a start is looked for at, K. */
  private static final double HOTTEST = 393.15;

  private final LoopModel model;
  private final double[] y;
  private final double[] scratch;

  private InitialState(LoopModel model) {
    this.model = model;
    this.y = new double[model.getDimension()];
    this.scratch = new double[y.length];
  }

  static double[] of(LoopModel model, Setup setup) throws SimulationException {
    return new InitialState(model).solve(setup);
  }

  private double[] solve(Setup setup) throws SimulationException {
    Start start = setup.start();
    double day = setup.day().temperature();
    if (start.loopCoolant().isPresent() || start.charge().isEmpty()) {
      refuseIce(start.loopCoolant().orElse(day), setup.rig().coolant().freezingTemperature());
    }
    // On a freezing day a car from a warm garage: the loop is looked for among liquid ones only.
    double liquid = Math.max(day, setup.rig().coolant().freezingTemperature());
    model.fillLoop(y, start.loopCoolant().orElse(liquid));
    model.startPhase(resting(setup), 0, y);
    if (start.charge().isEmpty()) {
      settleDucts(start.loopCoolant().orElse(day), Optional.empty());
      return y;
    }
    double charge = start.charge().getAsDouble();
    if (start.loopCoolant().isPresent()) {
      double loop = start.loopCoolant().getAsDouble();
      double coolest = Math.min(Math.min(loop, day), start.engineCoolant());
      double warmest = Math.max(Math.max(loop, day), start.engineCoolant());
      double plenum =
          root(
              t -> settleDucts(loop, Optional.of(t)) - charge,
              coolest,
              warmest,
              "no plenum temperature between the coolest and the warmest thing around",
              charge);
      settleDucts(loop, Optional.of(plenum));
      return y;
    }
    double coldest = Math.max(setup.rig().coolant().freezingTemperature(), 223.15);
    double loop =
        root(
            t -> settleDucts(t, Optional.empty()) - charge,
            coldest,
            HOTTEST,
            "no loop temperature",
            charge);
    settleDucts(loop, Optional.empty());
    return y;
  }

  private static void refuseIce(double loop, double freezing) throws SimulationException {
    if (loop < freezing) {
      throw SimulationException.input(
          String.format(
              Locale.ROOT,
              "start.loop-coolant: the coolant would start at %s, but it freezes at %s",
              shown(loop),
              shown(freezing)));
    }
  }

  /** Sets the whole state at a loop temperature and returns what the sensor reads, K. */
  private double settleDucts(double loop, Optional<Double> plenum) {
    model.fillLoop(y, loop);
    AirPath air = model.air();
    y[air.casing()] = loop;
    y[air.plenum()] = loop;
    y[air.casing()] = air.restingCase(model.evaluate(0, y, scratch));
    Moment m = model.evaluate(0, y, scratch);
    y[air.plenum()] = plenum.isPresent() ? plenum.get() : air.restingPlenum(m);
    y[air.sensor()] = air.restingSensor(m, y[air.plenum()]);
    return y[air.sensor()];
  }

  /** Shows a temperature on both scales, for whoever reads the message. */
  private static String shown(double kelvin) {
    return UnitSystem.METRIC.show(kelvin, Dimension.TEMPERATURE, 1)
        + " ("
        + UnitSystem.US.show(kelvin, Dimension.TEMPERATURE, 1)
        + ")";
  }

  private static double root(
      UnivariateFunction f, double low, double high, String what, double charge)
      throws SimulationException {
    double atLow = f.value(low);
    double atHigh = f.value(high);
    if (atLow * atHigh > 0) {
      if (Math.min(Math.abs(atLow), Math.abs(atHigh)) <= ROUNDING) {
        return Math.abs(atLow) < Math.abs(atHigh) ? low : high;
      }
      throw SimulationException.input(
          String.format(
              Locale.ROOT,
              "start.charge: %s makes the sensor read %s at the start (it can read from %s to %s)",
              what,
              shown(charge),
              shown(Math.min(atLow, atHigh) + charge),
              shown(Math.max(atLow, atHigh) + charge)));
    }
    if (atLow == 0) {
      return low;
    }
    return new BracketingNthOrderBrentSolver(TOLERANCE, TOLERANCE, 5)
        .solve(MAX_EVALUATIONS, f, low, high);
  }

  /** Returns what the car was doing just before: what the session starts with, or an idle. */
  private static Phase resting(Setup setup) {
    Session session = setup.session();
    Phase first = session.phases().get(0);
    Inputs inputs = new Inputs();
    first.drive().at(0, inputs);
    if (inputs.load != Inputs.Load.FULL) {
      return first;
    }
    return new Phase(
        "before",
        Phase.Kind.IDLE,
        1,
        new Drive.Idle(setup.rig().engine().idleSpeed()),
        first.cooling(),
        java.util.OptionalDouble.empty());
  }
}
