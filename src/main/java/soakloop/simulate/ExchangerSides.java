package soakloop.simulate;

import soakloop.exchange.UnevenAir;
import soakloop.fluid.Coolant;
import soakloop.rig.Conductance;

/** The two sides of an exchanger's conductance at running flows and temperatures. */
final class ExchangerSides {
  private final Conductance conductance;
  private final Coolant coolant;
  private final boolean follows;
  private final FlowTable airTable;
  private final FlowTable coolantTable;
  private final double unevenAir;
  private final double airExponent;

  // The coolant side as last asked for: air is often asked for again at the same coolant.
  private double knownFlow = Double.NaN;
  private double knownTemperature = Double.NaN;
  private double known;

  ExchangerSides(Conductance conductance, Coolant coolant) {
    this.conductance = conductance;
    this.coolant = coolant;
    this.follows = conductance.followsTemperature();
    this.airTable = new FlowTable(conductance::airSide);
    this.coolantTable = new FlowTable(this::coolantSide);
    this.unevenAir = conductance.unevenAir();
    this.airExponent = unevenAir > 0 ? conductance.airExponent() : 0;
  }

  /** Returns whether the sides change with temperature. */
  boolean followTemperature() {
    return follows;
  }

  /** Returns the coolant side at a flow, m3/s, and a mean temperature of the coolant, K. */
  double coolant(double flow, double temperature) {
    if (flow != knownFlow || temperature != knownTemperature) {
      knownFlow = flow;
      knownTemperature = temperature;
      known =
          follows && flow > 0
              ? coolantTable.at(flow / kinematic(temperature), held(temperature))
              : conductance.coolantSide(flow, temperature, coolant);
    }
    return known;
  }

  /**
   * Tabulated over flow by kinematic viscosity, m, which goes with the Reynolds number: where flow
   * turns turbulent hardly moves with temperature then.
   */
  private double coolantSide(double flowByViscosity, double temperature) {
    return conductance.coolantSide(
        flowByViscosity * kinematic(temperature), held(temperature), coolant);
  }

  private double kinematic(double temperature) {
    double held = held(temperature);
    return coolant.viscosity(held) / coolant.density(held);
  }

  /** Returns the temperature, or the end of the coolant's own range. */
  private double held(double temperature) {
    return Math.max(coolant.minTemperature(), Math.min(coolant.maxTemperature(), temperature));
  }

  /**
   * Returns the air side, with what uneven air takes from it.
   *
   * @param flow kg/s
   * @param temperature mean temperature of the air, K
   * @param rate capacity rate of the air, W/K
   * @param coolantSide the other side, W/K
   */
  double air(double flow, double temperature, double rate, double coolantSide) {
    double even =
        follows && flow > 0
            ? airTable.at(flow, References.possible(temperature))
            : conductance.airSide(flow, temperature);
    return unevenAir > 0 && even > 0 && coolantSide > 0
        ? UnevenAir.airSide(even, coolantSide, rate, unevenAir, airExponent)
        : even;
  }
}
