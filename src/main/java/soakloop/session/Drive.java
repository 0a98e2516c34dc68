package soakloop.session;

import java.util.Optional;
import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/** What the engine and the road do in one phase, as functions of time from the phase's start. */
public sealed interface Drive {
  /**
   * Fills the inputs for an instant. Allocates nothing.
   *
   * @param time s from the phase's start
   * @param inputs the buffer to fill, every field
   */
  void at(double time, Inputs inputs);

  /**
   * Returns what is left of it after some time.
   *
   * @param passed s from the phase's start
   */
  default Drive after(double passed) {
    return this;
  }

  /** Engine off, car standing. */
  record EngineOff() implements Drive {
    @Override
    public void at(double time, Inputs inputs) {
      inputs.clear();
    }
  }

  /**
   * Engine idling.
   *
   * @param engineSpeed rev/s
   */
  record Idle(double engineSpeed) implements Drive {
    /** Checks the speed. */
    public Idle {
      Require.positive("idle speed", engineSpeed);
    }

    @Override
    public void at(double time, Inputs inputs) {
      inputs.clear();
      inputs.load = Inputs.Load.IDLE;
      inputs.engineSpeed = engineSpeed;
    }
  }

  /**
   * Full load along an engine-speed curve.
   *
   * @param engineSpeed rev/s over time
   * @param roadSpeed m/s over time
   */
  record FullLoad(Curve engineSpeed, Curve roadSpeed) implements Drive {
    @Override
    public void at(double time, Inputs inputs) {
      inputs.clear();
      inputs.load = Inputs.Load.FULL;
      inputs.engineSpeed = engineSpeed.at(time);
      inputs.roadSpeed = roadSpeed.at(time);
    }

    @Override
    public Drive after(double passed) {
      return new FullLoad(engineSpeed.earlier(passed), roadSpeed.earlier(passed));
    }
  }

  /**
   * Steady part load on the road.
   *
   * @param engineSpeed rev/s
   * @param roadSpeed m/s
   * @param boost manifold gauge pressure, Pa, below zero with the bypass open
   */
  record Cruise(double engineSpeed, double roadSpeed, double boost) implements Drive {
    /** Checks the parts. */
    public Cruise {
      Require.positive("cruise engine speed", engineSpeed);
      Require.notNegative("cruise road speed", roadSpeed);
      Require.finite("cruise boost", boost);
    }

    @Override
    public void at(double time, Inputs inputs) {
      inputs.clear();
      inputs.load = Inputs.Load.STATED;
      inputs.engineSpeed = engineSpeed;
      inputs.roadSpeed = roadSpeed;
      inputs.boost = boost;
    }
  }

  /**
   * Logged signals, each where the log has it. Engine speeds below {@link #RUNNING} count as an
   * engine that is off; without logged boost the engine idles below {@link #LOADED} and is at full
   * load above.
   *
   * @param from time of the log at the phase's start, s
   * @param engineSpeed rev/s over log time
   * @param boost manifold gauge pressure in Pa over log time
   * @param roadSpeed m/s over log time
   * @param inletTemperature K over log time
   * @param engineCoolant K over log time
   */
  record Replay(
      double from,
      Curve engineSpeed,
      Optional<Curve> boost,
      Optional<Curve> roadSpeed,
      Optional<Curve> inletTemperature,
      Optional<Curve> engineCoolant)
      implements Drive {
    /** Slowest engine speed that counts as running, rev/s. */
    public static final double RUNNING = 200.0 / 60;

    /** Engine speed that counts as full load where the log has no boost, rev/s. */
    public static final double LOADED = 1800.0 / 60;

    @Override
    public void at(double time, Inputs inputs) {
      double t = from + time;
      inputs.clear();
      double speed = engineSpeed.at(t);
      if (speed >= RUNNING) {
        inputs.engineSpeed = speed;
        if (boost.isPresent()) {
          inputs.load = Inputs.Load.STATED;
          inputs.boost = boost.get().at(t);
        } else {
          inputs.load = speed < LOADED ? Inputs.Load.IDLE : Inputs.Load.FULL;
        }
      }
      if (roadSpeed.isPresent()) {
        inputs.roadSpeed = Math.max(0, roadSpeed.get().at(t));
      }
      if (inletTemperature.isPresent()) {
        inputs.inletTemperature = inletTemperature.get().at(t);
      }
      if (engineCoolant.isPresent()) {
        inputs.engineCoolant = engineCoolant.get().at(t);
      }
    }

    @Override
    public Drive after(double passed) {
      return new Replay(
          from + passed, engineSpeed, boost, roadSpeed, inletTemperature, engineCoolant);
    }
  }
}
