package soakloop.simulate;

import soakloop.fluid.Coolant;

/**
 * A coolant's enthalpy written as a temperature: what a cell's state holds.
 *
 * <p>{@code theta = T0 + (h(T) - h(T0)) / c0}, with {@code c0} the heat capacity at {@code T0}, so
 * that theta lies within a degree or so of the temperature and mixing and transport are linear in
 * it. A balance of thetas then closes to the last digits whatever the integration's tolerance.
 *
 * <p>The way back, T of theta, is a polynomial through {@value #NODES} points, true to 3e-3 K from
 * 5 K under the freezing point to 400 K and continued straight outside. The scale is defined by
 * that polynomial, so both ways agree exactly.
 */
final class EnthalpyScale {
  private static final int NODES = 7;
  private static final double HOTTEST = 400;

  /** How far under the freezing point the range goes, K: water's heat capacity climbs below. */
  private static final double UNDERCOOLED = 5;

  private final double middleHeatCapacity;
  private final double[] node = new double[NODES];
  private final double[] difference = new double[NODES];
  private final double lowest;
  private final double highest;
  private final double atLowest;
  private final double atHighest;
  private final double slopeAtLowest;
  private final double slopeAtHighest;

  /**
   * Makes a coolant's scale.
   *
   * @param coolant the coolant
   */
  EnthalpyScale(Coolant coolant) {
    double coldest = coolant.freezingTemperature() - UNDERCOOLED;
    double middle = 0.5 * (HOTTEST + coldest);
    double reach = 0.5 * (HOTTEST - coldest);
    middleHeatCapacity = coolant.heatCapacity(middle);
    double zero = coolant.enthalpy(middle);
    for (int i = 0; i < NODES; i++) {
      double t = middle + reach * Math.cos(Math.PI * (i + 0.5) / NODES);
      node[i] = middle + (coolant.enthalpy(t) - zero) / middleHeatCapacity;
      difference[i] = t;
    }
    for (int order = 1; order < NODES; order++) {
      for (int i = NODES - 1; i >= order; i--) {
        difference[i] = (difference[i] - difference[i - 1]) / (node[i] - node[i - order]);
      }
    }
    highest = node[0];
    lowest = node[NODES - 1];
    atLowest = polynomial(lowest);
    atHighest = polynomial(highest);
    slopeAtLowest = slope(lowest);
    slopeAtHighest = slope(highest);
  }

  /** Returns the heat capacity by which a theta becomes an enthalpy, J/(kg K). */
  double heatCapacity() {
    return middleHeatCapacity;
  }

  /**
   * Returns the temperature of a theta, K.
   *
   * @param theta K
   */
  double temperature(double theta) {
    if (theta > highest) {
      return atHighest + slopeAtHighest * (theta - highest);
    }
    if (theta < lowest) {
      return atLowest + slopeAtLowest * (theta - lowest);
    }
    return polynomial(theta);
  }

  /**
   * Returns the theta of a temperature, K.
   *
   * @param temperature K
   */
  double theta(double temperature) {
    double theta = temperature;
    for (int i = 0; i < 4; i++) { // Newton; three steps reach the last digit
      theta -= (temperature(theta) - temperature) / slopeAnywhere(theta);
    }
    return theta;
  }

  private double slopeAnywhere(double theta) {
    return theta > highest ? slopeAtHighest : theta < lowest ? slopeAtLowest : slope(theta);
  }

  private double polynomial(double theta) {
    double value = difference[NODES - 1];
    for (int i = NODES - 2; i >= 0; i--) {
      value = value * (theta - node[i]) + difference[i];
    }
    return value;
  }

  private double slope(double theta) {
    double value = difference[NODES - 1];
    double slope = 0;
    for (int i = NODES - 2; i >= 0; i--) {
      slope = slope * (theta - node[i]) + value;
      value = value * (theta - node[i]) + difference[i];
    }
    return slope;
  }
}
