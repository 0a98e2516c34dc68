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

  /** Returns whether the engine is at full load throughout, at the rig's own boost. */
  default boolean isFullLoad() {
    return false;
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
    public boolean isFullLoad() {
      return true;
    }

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
   * A drag pass, at full load from launch to the traps; the engine does not let off while shifting.
   *
   * @param course speeds over time, and what the clocks would show
   */
  record Pass(PassCourse course) implements Drive {
    @Override
    public boolean isFullLoad() {
      return true;
    }

    @Override
    public void at(double time, Inputs inputs) {
      inputs.clear();
      inputs.load = Inputs.Load.FULL;
      inputs.engineSpeed = course.engineSpeed().at(time);
      inputs.roadSpeed = course.roadSpeed().at(time);
    }

    @Override
    public Drive after(double passed) {
      return new FullLoad(course.engineSpeed().earlier(passed), course.roadSpeed().earlier(passed));
    }
  }

  /**
   * Throttle closed, the bypass open at the engine's idle manifold pressure, while the car rolls.
   *
   * @param engineSpeed rev/s over time
   * @param roadSpeed m/s over time
   */
  record Coast(Curve engineSpeed, Curve roadSpeed) implements Drive {
    /**
     * Slows down evenly in a gear, down to idling.
     *
     * @param from road speed at the start, m/s
     * @param to road speed at the end, m/s
     * @param duration s
     * @param engineSpeed rev/s at the start
     * @param idle slowest engine speed, rev/s
     */
    public static Coast slowing(
        double from, double to, double duration, double engineSpeed, double idle) {
      Curve road = Curve.of(new double[] {0, duration}, new double[] {from, to});
      double last = from > 0 ? engineSpeed * to / from : idle;
      double first = Math.max(idle, engineSpeed);
      if (!(last < idle && first > idle)) {
        double[] speeds = {first, Math.max(idle, last)};
        return new Coast(Curve.of(new double[] {0, duration}, speeds), road);
      }
      double at = duration * (first - idle) / (first - last);
      return at < duration * (1 - 1e-9)
          ? new Coast(
              Curve.of(new double[] {0, at, duration}, new double[] {first, idle, idle}), road)
          : new Coast(Curve.of(new double[] {0, duration}, new double[] {first, idle}), road);
    }

    @Override
    public void at(double time, Inputs inputs) {
      inputs.clear();
      inputs.load = Inputs.Load.IDLE;
      inputs.engineSpeed = engineSpeed.at(time);
      inputs.roadSpeed = roadSpeed.at(time);
    }

    @Override
    public Drive after(double passed) {
      return new Coast(engineSpeed.earlier(passed), roadSpeed.earlier(passed));
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
