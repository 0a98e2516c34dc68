package soakloop.simulate;

import soakloop.fluid.Ice;
import soakloop.fluid.IceBath;
import soakloop.rig.TankIce;
import soakloop.session.IceAdded;

/**
 * Ice that floats in a tank, and the water it has become.
 *
 * <p>Three states. The size of the pieces over what they went in with, from 1 to 0: mass goes with
 * its cube and the surface, so the conductance, with its square, that is with mass^(2/3), because
 * pieces that shrink evenly keep their number and shape. In it melting is steady and ends at a
 * definite instant: {@code ds/dt = -U0 (T - Tf) / (3 M L)}, where mass itself would creep to zero.
 * And the enthalpy of ice and melted water together, zero for water of 0 degC, as a temperature of
 * the tank, so that what the coolant loses is just what they gain and the ledger closes. And what
 * the ice is colder than Tf, as a temperature of the tank too: it warms through its surface and its
 * inside, one after the other, so that a cold block does not chill the coolant at once.
 *
 * <p>Ice melts at the freezing point Tf of the thinned coolant ({@link ThinnedCoolant}); very cold
 * ice freezes water onto itself. Melted water takes up the tank's temperature T within {@value
 * #WARMING} s. Melted water counts with its own heat capacity; the coolant's flow and properties
 * stay as filled, which for a coolant of 30 % glycol thinned by a third of its mass is 4 % of its
 * heat capacity.
 */
final class IceInTank {
  /**
   * Time in which pieces warm through and melted water mixes, s: a ball of 25 mm takes r2/(pi2
   * k/(rho c)) = 14 s, one of 15 mm 5 s, and the heat in question is small beside that of melting.
   */
  private static final double WARMING = 5;

  /** State per size of the pieces: its tolerance of 0.01 is then 0.02 % of their size. */
  private static final double SCALE = 50;

  private static final double ZERO = Ice.MELTING;
  private static final double WATER = IceBath.WATER_HEAT_CAPACITY;

  private final TankIce kind;
  private final ThinnedCoolant coolant;
  private final int size;
  private final int energy;
  private final int coldness;
  private final double capacity;

  // What the last ice that went in left behind.
  private double asItWentIn;
  private double earlierWater;
  private double conductance;
  private double brought;
  private boolean gone = true;

  /**
   * Reserves the states.
   *
   * @param kind what the ice is like
   * @param coolant what it thins
   * @param capacity of the tank as filled, J/K
   */
  IceInTank(TankIce kind, ThinnedCoolant coolant, double capacity, StateLayout layout) {
    this.kind = kind;
    this.coolant = coolant;
    this.capacity = capacity;
    this.size = layout.reserve(1);
    this.energy = layout.reserve(1);
    this.coldness = layout.reserve(1);
  }

  TankIce kind() {
    return kind;
  }

  /**
   * What the ice that went in so far left behind beside its states.
   *
   * @param asItWentIn mass at the last time that ice went in, kg
   * @param earlierWater water of the ice before, kg
   * @param conductance as it went in, W/K
   * @param brought enthalpy that came with ice, less what was drained, J
   * @param gone whether none is left
   * @param glycol in the loop, kg
   */
  record Memory(
      double asItWentIn,
      double earlierWater,
      double conductance,
      double brought,
      boolean gone,
      double glycol) {}

  Memory memory() {
    return new Memory(asItWentIn, earlierWater, conductance, brought, gone, coolant.glycolMass());
  }

  void recall(Memory memory) {
    asItWentIn = memory.asItWentIn();
    earlierWater = memory.earlierWater();
    conductance = memory.conductance();
    brought = memory.brought();
    gone = memory.gone();
    coolant.setGlycolMass(memory.glycol());
  }

  /** Returns the state that falls through zero as the last ice goes. */
  int size() {
    return size;
  }

  boolean isThere() {
    return !gone;
  }

  void setGone() {
    gone = true;
  }

  /** Returns the ice left, kg. */
  double mass(double[] y) {
    double s = relativeSize(y);
    return asItWentIn * s * s * s;
  }

  private double relativeSize(double[] y) {
    return gone ? 0 : Math.max(0, y[size] / SCALE);
  }

  private double melted(double[] y) {
    return earlierWater + asItWentIn - mass(y);
  }

  /** Returns the mass above the coolant as filled, ice and water together, kg. */
  double added() {
    return earlierWater + asItWentIn;
  }

  /**
   * Puts ice in.
   *
   * @param more what
   * @param tank temperature of the coolant around it, K
   * @param y the state, which takes it up
   */
  void add(IceAdded more, double tank, double[] y) {
    double s = relativeSize(y);
    double left = mass(y);
    double water = melted(y);
    double enthalpy = 0;
    if (more.drains()) {
      enthalpy -= water * WATER * (tank - ZERO);
      coolant.drain(water);
      water = 0;
    }
    enthalpy += more.mass() * Ice.enthalpy(kind.temperature());
    double colder = coolant.freezing(water) - kind.temperature();
    y[coldness] += more.mass() * Ice.HEAT_CAPACITY * colder / capacity;
    conductance = conductance * s * s + kind.conductance() * more.mass();
    asItWentIn = left + more.mass();
    earlierWater = water;
    gone = asItWentIn == 0;
    brought += enthalpy;
    y[energy] += enthalpy / capacity;
    y[size] = gone ? 0 : SCALE;
  }

  /** Returns what ice and melted water gained, J. */
  double stored(double[] y) {
    return capacity * y[energy] - brought;
  }

  /** Returns the heat that ice and melted water take from coolant of a temperature, W. */
  double heat(double[] y, double tank) {
    double s = relativeSize(y);
    double freezing = coolant.freezing(melted(y));
    return conductance * s * s * (tank - freezing) + warming(y, tank, freezing);
  }

  private double warming(double[] y, double tank, double freezing) {
    double warmed =
        mass(y) * (Ice.HEAT_CAPACITY * (freezing - ZERO) - Ice.HEAT_OF_FUSION)
            + melted(y) * WATER * (tank - ZERO);
    return (warmed - capacity * (y[coldness] + y[energy])) / WARMING;
  }

  /** Returns how long the ice takes to warm: its inside, and its mass over its surface, s. */
  private double warmsIn(double[] y) {
    return gone
        ? WARMING
        : WARMING + Ice.HEAT_CAPACITY * asItWentIn * relativeSize(y) / conductance;
  }

  /** Writes the derivatives of its states. */
  void derivatives(double[] y, double[] dy, double tank) {
    dy[energy] = heat(y, tank) / capacity;
    dy[coldness] = -y[coldness] / warmsIn(y);
    dy[size] = -shrinking(y) * (tank - coolant.freezing(melted(y)));
  }

  /** Returns how quickly the state of the size falls, 1/(K s). */
  private double shrinking(double[] y) {
    return gone
        ? 0
        : SCALE * conductance / (3 * asItWentIn * heatOfMelting(coolant.freezing(melted(y))));
  }

  private static double heatOfMelting(double at) {
    return Ice.HEAT_OF_FUSION + (WATER - Ice.HEAT_CAPACITY) * (at - ZERO);
  }

  /**
   * Gives the part of the Jacobian. The heat that one side loses the other gains, entry by entry.
   *
   * @param tank temperature of the coolant around the ice, K
   * @param theta its state
   * @param around its heat capacity, J/K
   */
  void jacobian(double[] y, double tank, int theta, double around, JacobianEntries entries) {
    double s = relativeSize(y);
    double melted = melted(y);
    double freezing = coolant.freezing(melted);
    double slope = coolant.slope(melted);
    double over = tank - freezing;
    double water = 3 * asItWentIn * s * s / SCALE; // melted per fall of the size's state
    double ofTank = conductance * s * s + melted * WATER / WARMING;
    double ofSize =
        2 * conductance * s / SCALE * over
            + conductance * s * s * slope * water
            + (water * (Ice.HEAT_CAPACITY * (freezing - ZERO) - Ice.HEAT_OF_FUSION)
                    - mass(y) * Ice.HEAT_CAPACITY * slope * water
                    - water * WATER * (tank - ZERO))
                / WARMING;
    double ofEnergy = -capacity / WARMING;
    heat(theta, -1 / around, theta, ofTank, ofSize, ofEnergy, entries);
    heat(energy, 1 / capacity, theta, ofTank, ofSize, ofEnergy, entries);
    double warmsIn = warmsIn(y);
    double longer = gone ? 0 : Ice.HEAT_CAPACITY * asItWentIn / (conductance * SCALE);
    entries.add(coldness, coldness, -1 / warmsIn);
    entries.add(coldness, size, y[coldness] * longer / (warmsIn * warmsIn));
    double shrinking = shrinking(y);
    entries.add(size, theta, -shrinking);
    double lighter = 1 + over * (WATER - Ice.HEAT_CAPACITY) / heatOfMelting(freezing);
    entries.add(size, size, -shrinking * slope * water * lighter);
  }

  private void heat(
      int row,
      double factor,
      int theta,
      double ofTank,
      double ofSize,
      double ofEnergy,
      JacobianEntries entries) {
    entries.add(row, theta, factor * ofTank);
    entries.add(row, size, factor * ofSize);
    entries.add(row, energy, factor * ofEnergy);
    entries.add(row, coldness, factor * ofEnergy);
  }
}
