package soakloop.rig;

import soakloop.fluid.Coolant;
import soakloop.quantity.Require;

/**
 * A conductance known at one pair of flows, split so that each side follows its own flow.
 *
 * <p>The shares are of the thermal resistance at the reference flows. Away from them the air side
 * goes with air flow to {@code airExponent}; the coolant side with coolant flow to {@code
 * coolantExponent}, falling no lower than {@code stillShare} of its reference value when the pump
 * stops; the wall stays.
 *
 * @param value overall conductance at the reference flows, W/K
 * @param airFlow reference air flow, kg/s
 * @param coolantFlow reference coolant flow, m3/s
 * @param airSideShare share of the resistance on the air side, 0 to 1
 * @param wallShare share of the resistance in the wall, 0 to 1
 * @param airExponent 0 to 1
 * @param coolantExponent 0 to 1
 * @param stillShare share of the coolant-side conductance that is left without flow, 0 to 1
 */
public record PowerLawConductance(
    double value,
    double airFlow,
    double coolantFlow,
    double airSideShare,
    double wallShare,
    double airExponent,
    double coolantExponent,
    double stillShare)
    implements Conductance {
  /** Sharpness of the passage from flowing to still coolant. */
  private static final double BLEND = 4;

  /** Least share of a side. */
  private static final double LEAST = 1e-6;

  /** Checks the parts. */
  public PowerLawConductance {
    Require.positive("conductance", value);
    Require.positive("conductance reference air flow", airFlow);
    Require.positive("conductance reference coolant flow", coolantFlow);
    Require.within("air-side share", airSideShare, LEAST, 1 - LEAST);
    Require.within("wall share", wallShare, 0, 1 - LEAST);
    Require.within("air exponent", airExponent, 0, 1);
    Require.within("coolant exponent", coolantExponent, 0, 1);
    Require.within("still-coolant share", stillShare, 0, 1);
    if (!(airSideShare + wallShare <= 1 - LEAST)) {
      throw new IllegalArgumentException(
          "air-side and wall share leave nothing for the coolant side: "
              + airSideShare
              + " + "
              + wallShare);
    }
  }

  @Override
  public double airSide(double flow, double temperature) {
    return airSide(flow);
  }

  @Override
  public double coolantSide(double flow, double temperature, Coolant coolant) {
    return coolantSide(flow);
  }

  /**
   * Returns the same exchanger made larger or smaller, fins and tubes alike, at the same reference
   * flows: surfaces go with size, and each side with its own speed by its own exponent.
   *
   * @param along length of the coolant's way over what it was [-], above 0
   * @param across extent of the face across that way, over what it was [-], above 0
   * @param depth thickness over what it was [-], above 0
   */
  public PowerLawConductance scaled(double along, double across, double depth) {
    Require.positive("scale along the coolant", along);
    Require.positive("scale across the coolant", across);
    Require.positive("scale of the thickness", depth);
    double air = airSideShare / (depth * Math.pow(along * across, 1 - airExponent));
    double wall = wallShare / (along * across * depth);
    double coolant =
        (1 - airSideShare - wallShare) / (along * Math.pow(across * depth, 1 - coolantExponent));
    double sum = air + wall + coolant;
    return new PowerLawConductance(
        value / sum,
        airFlow,
        coolantFlow,
        air / sum,
        wall / sum,
        airExponent,
        coolantExponent,
        stillShare);
  }

  @Override
  public PowerLawConductance narrowed(double share) {
    return new PowerLawConductance(
        share * value,
        airFlow,
        share * coolantFlow,
        airSideShare,
        wallShare,
        airExponent,
        coolantExponent,
        stillShare);
  }

  /**
   * Returns the conductance from air to the middle of the wall.
   *
   * @param flow air flow, kg/s
   * @return W/K; 0 without flow
   */
  public double airSide(double flow) {
    return flow == 0
        ? 0
        : withHalfWall(value / airSideShare * Math.pow(flow / airFlow, airExponent));
  }

  /**
   * Returns the conductance from the middle of the wall to the coolant.
   *
   * @param flow coolant flow, m3/s
   * @return W/K
   */
  public double coolantSide(double flow) {
    double share = 1 - airSideShare - wallShare;
    double moving = Math.pow(flow / coolantFlow, coolantExponent);
    double blended =
        Math.pow(Math.pow(moving, BLEND) + Math.pow(stillShare, BLEND), 1 / BLEND)
            / Math.pow(1 + Math.pow(stillShare, BLEND), 1 / BLEND);
    return withHalfWall(value / share * blended);
  }

  /**
   * Returns the overall conductance.
   *
   * @param air air flow, kg/s
   * @param coolant coolant flow, m3/s
   * @return W/K
   */
  public double overall(double air, double coolant) {
    double a = airSide(air);
    double c = coolantSide(coolant);
    return a == 0 || c == 0 ? 0 : a * c / (a + c);
  }

  private double withHalfWall(double film) {
    return film == 0 ? 0 : 1 / (1 / film + wallShare / (2 * value));
  }
}
