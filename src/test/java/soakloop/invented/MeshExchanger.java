package soakloop.invented;

import java.util.Arrays;

/**
 * A crossflow exchanger as a fine mesh: wall metal and coolant in every cell, air marched through
 * the depth column by column.
 *
 * <p>Each depth row is a coolant lane. Passes through the depth group the lanes: the first pass is
 * the rearmost group, so that the exchanger is counterflow overall, and the lanes mix in the header
 * between passes. Air is quasi-steady; in a cell its outlet follows from the film and the mean of
 * inlet and outlet (trapezoidal). Metal and coolant are stepped explicitly, coolant upwind.
 */
final class MeshExchanger {

  /**
   * A film whose conductance grows with a power of the flow.
   *
   * @param conductance whole exchanger at the reference flow [W/K]
   * @param reference reference flow, air [kg/s], coolant [m3/s]
   * @param exponent growth with flow [-]
   */
  record Film(double conductance, double reference, double exponent) {

    /** Conductance at a flow [W/K]. */
    double at(double flow) {
      return conductance * StrictMath.pow(flow / reference, exponent);
    }
  }

  /**
   * What the exchanger is.
   *
   * @param along cells along the coolant path [-]
   * @param depth cells through the air's depth [-], a multiple of passes
   * @param passes coolant passes through the depth [-]
   * @param air film on the air side
   * @param coolant film on the coolant side
   * @param metalCapacity heat capacity of the metal [J/K]
   * @param coolantVolume coolant inside [m3]
   * @param unevenness half the spread of the air flow over the face, as a fraction of its mean [-]
   */
  record Shape(
      int along,
      int depth,
      int passes,
      Film air,
      Film coolant,
      double metalCapacity,
      double coolantVolume,
      double unevenness) {

    Shape {
      if (!(along > 1 && depth > 1 && passes >= 1) || depth % passes != 0) {
        throw new IllegalArgumentException(
            "mesh of " + along + " x " + depth + " cells for " + passes + " passes");
      }
    }

    /** The same exchanger on another mesh. */
    Shape withMesh(int newAlong, int newDepth) {
      return new Shape(
          newAlong, newDepth, passes, air, coolant, metalCapacity, coolantVolume, unevenness);
    }
  }

  private final Shape shape;
  private final double coolantPerVolume;
  private final double[] share;
  private final double[] filmOverFlow;
  private final double[] metal;
  private final double[] coolant;
  private final double[] airHeat;
  private double airOut;
  private double coolantOut;

  MeshExchanger(Shape shape, double coolantPerVolume, double temperature) {
    this.shape = shape;
    this.coolantPerVolume = coolantPerVolume;
    int n = shape.along;
    int d = shape.depth;
    share = new double[n];
    filmOverFlow = new double[n * d];
    metal = new double[n * d];
    coolant = new double[n * d];
    airHeat = new double[n * d];
    Arrays.fill(metal, temperature);
    Arrays.fill(coolant, temperature);
    airOut = temperature;
    coolantOut = temperature;
    for (int i = 0; i < n; i++) {
      // One whole wave over the face: the mean stays 1.
      share[i] = 1 + shape.unevenness * StrictMath.cos(2 * Math.PI * (i + 0.5) / n);
      for (int j = 0; j < d; j++) {
        filmOverFlow[i * d + j] = StrictMath.pow(share[i], shape.air.exponent() - 1) * entrance(j);
      }
    }
  }

  /**
   * The air film is thin where air enters and reaches its developed value in a tenth of the depth.
   */
  private double entrance(int j) {
    double from = j / (double) shape.depth;
    double to = (j + 1) / (double) shape.depth;
    double reach = 0.1;
    double excess = 0.4;
    double mean = 1 + excess * reach * (1 - StrictMath.exp(-1 / reach));
    double local =
        1
            + excess
                * reach
                * (StrictMath.exp(-from / reach) - StrictMath.exp(-to / reach))
                / (to - from);
    return local / mean;
  }

  /**
   * Steps on.
   *
   * @param dt step [s]
   * @param air air flow [kg/s], above 0
   * @param airHeatCapacity [J/(kg K)]
   * @param airIn air inlet [degC]
   * @param flow coolant flow [m3/s]
   * @param coolantIn coolant inlet [degC]
   * @param thinness reference viscosity over viscosity [-]
   * @return heat from air to metal [W]
   */
  double step(
      double dt,
      double air,
      double airHeatCapacity,
      double airIn,
      double flow,
      double coolantIn,
      double thinness) {
    double taken = marchAir(air, airHeatCapacity, airIn);
    double film = shape.coolant.at(flow) * StrictMath.pow(thinness, 0.25);
    stepCoolant(dt, flow, coolantIn, film / (shape.along * shape.depth));
    return taken;
  }

  private double marchAir(double air, double airHeatCapacity, double airIn) {
    int n = shape.along;
    int d = shape.depth;
    double capacity = air * airHeatCapacity;
    double base = shape.air.at(air) / (capacity * d);
    double taken = 0;
    double mixed = 0;
    for (int i = 0; i < n; i++) {
      double column = capacity * share[i] / n;
      double t = airIn;
      for (int j = 0; j < d; j++) {
        int k = i * d + j;
        double half = 0.5 * base * filmOverFlow[k];
        double drop = (t - metal[k]) * (2 * half / (1 + half));
        airHeat[k] = column * drop;
        t -= drop;
      }
      taken += column * (airIn - t);
      mixed += share[i] * t;
    }
    airOut = mixed / n;
    return taken;
  }

  private void stepCoolant(double dt, double flow, double coolantIn, double film) {
    int n = shape.along;
    int d = shape.depth;
    int lanes = d / shape.passes;
    double cellVolume = shape.coolantVolume / (n * d);
    double move = dt * flow / (lanes * cellVolume);
    double toCoolant = dt * film / (cellVolume * coolantPerVolume);
    double toMetal = dt * (n * d) / shape.metalCapacity;
    double inlet = coolantIn;
    for (int pass = 0; pass < shape.passes; pass++) {
      int last = d - pass * lanes;
      boolean forward = pass % 2 == 0;
      int exit = forward ? n - 1 : 0;
      int back = forward ? -d : d;
      double mixed = 0;
      for (int j = last - lanes; j < last; j++) {
        mixed += coolant[exit * d + j];
        // From the outlet to the inlet, so that the upstream value is still the old one.
        int k = exit * d + j;
        for (int s = 0; s < n; s++, k += back) {
          double upstream = s == n - 1 ? inlet : coolant[k + back];
          double difference = metal[k] - coolant[k];
          coolant[k] += move * (upstream - coolant[k]) + toCoolant * difference;
          metal[k] += toMetal * (airHeat[k] - film * difference);
        }
      }
      inlet = mixed / lanes;
    }
    coolantOut = inlet;
  }

  /** Mixed air outlet of the last step [degC]. */
  double airOut() {
    return airOut;
  }

  /** Mixed coolant outlet during the last step [degC]. */
  double coolantOut() {
    return coolantOut;
  }

  /** Heat held above 0 degC [J]. */
  double stored() {
    double m = Arrays.stream(metal).sum() * shape.metalCapacity;
    double c = Arrays.stream(coolant).sum() * shape.coolantVolume * coolantPerVolume;
    return (m + c) / (shape.along * shape.depth);
  }
}
