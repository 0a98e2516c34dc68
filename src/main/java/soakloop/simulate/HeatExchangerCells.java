package soakloop.simulate;

import soakloop.fluid.Air;
import soakloop.fluid.Coolant;

/** A heat exchanger in the outside air: the coolant gives its heat away. */
final class HeatExchangerCells extends CrossedCells {
  private final double faceArea;
  private final double airDensity;
  private final double inletRise;

  HeatExchangerCells(
      ExchangerCells cells, Coolant coolant, double faceArea, double airDensity, double inletRise) {
    super(cells, coolant);
    this.faceArea = faceArea;
    this.airDensity = airDensity;
    this.inletRise = inletRise;
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    double air = airDensity * faceArea * m.faceSpeed;
    double airRate = air * Air.heatCapacity(m.day);
    cells.flows(air, airRate, m.coolantFlow, References.coolantRate(coolant, m.coolantFlow));
    cells.passAir(y, m.day + inletRise, airRate);
    m.heatAmbient -= cells.heat();
    cells.passCoolant(y, dy, m);
  }
}
