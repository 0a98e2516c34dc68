package soakloop.session;

/**
 * What the outside does to the car at one instant. A mutable buffer: the simulation hands the same
 * one to {@link Drive#at} in every evaluation so that none allocates.
 */
public final class Inputs {
  /** How the engine is loaded, which says where its manifold pressure comes from. */
  public enum Load {
    /** Engine off: no air moves. */
    OFF,
    /** Idling, bypass open, at the engine's idle manifold pressure. */
    IDLE,
    /** Bypass open or shut by the gauge pressure stated with it. */
    STATED,
    /** Full load at the rig's own boost. */
    FULL
  }

  /** How the engine is loaded. */
  public Load load = Load.OFF;

  /** Engine speed, rev/s. */
  public double engineSpeed;

  /** Road speed, m/s. */
  public double roadSpeed;

  /** Manifold gauge pressure, Pa; counts with {@link Load#STATED} only. */
  public double boost;

  /** Temperature at the blower inlet, K; NaN leaves it to the rig. */
  public double inletTemperature;

  /** Engine coolant temperature, K; NaN leaves it as at the start. */
  public double engineCoolant;

  /** Sets everything to a parked car with its engine off. */
  public void clear() {
    load = Load.OFF;
    engineSpeed = 0;
    roadSpeed = 0;
    boost = 0;
    inletTemperature = Double.NaN;
    engineCoolant = Double.NaN;
  }
}
