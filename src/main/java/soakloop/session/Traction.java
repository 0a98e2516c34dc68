package soakloop.session;

import soakloop.quantity.Require;

/**
 * The most that the driven tyres push.
 *
 * <p>Equation: F = grip x load on the driven axle, with the load that acceleration moves from front
 * to rear: F = grip m g share / (1 -+ grip transfer), minus for rear, plus for front drive; never
 * more than grip m g. Statics of a rigid car on level ground, without lift. A tyre that spins
 * pushes as much as one that is about to.
 *
 * @param grip friction coefficient of tyre on track
 * @param driven which axle is driven
 * @param share share of the standing car's weight on the driven axle, 0 to 1; 1 for both axles
 * @param transfer height of the centre of gravity over the wheelbase
 */
public record Traction(double grip, Driven driven, double share, double transfer) {
  /** Standard gravity, m/s2. */
  static final double GRAVITY = 9.80665;

  /** Driven axles. */
  public enum Driven {
    /** The front one. */
    FRONT,
    /** The rear one. */
    REAR,
    /** Both. */
    BOTH
  }

  /** Checks the parts. */
  public Traction {
    Require.positive("tyre grip", grip);
    Require.within("weight on the driven axle", share, 0, 1);
    Require.within("weight transfer", transfer, 0, 1);
  }

  /**
   * Returns the most that the tyres push.
   *
   * @param mass of the car, kg
   * @return N
   */
  public double limit(double mass) {
    double all = grip * mass * GRAVITY;
    double left =
        switch (driven) {
          case BOTH -> 1;
          case FRONT -> 1 + grip * transfer;
          case REAR -> 1 - grip * transfer;
        };
    // Beyond this the front wheels lift, and the rear axle carries all there is.
    boolean carriesAll = driven == Driven.BOTH || !(share < left);
    return carriesAll ? all : all * share / left;
  }
}
