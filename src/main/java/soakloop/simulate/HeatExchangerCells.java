package soakloop.simulate;

import soakloop.fluid.Air;
import soakloop.fluid.Coolant;

/** A heat exchanger in the outside air: the coolant gives its heat away. */
final class HeatExchangerCells extends CrossedCells {
  private final double faceArea;
  private final double airDensity;
  private final double inletRise;
  private double airRate;

  HeatExchangerCells(
      ExchangerCells cells, Coolant coolant, double faceArea, double airDensity, double inletRise) {
    super(cells, coolant);
    this.faceArea = faceArea;
    this.airDensity = airDensity;
    this.inletRise = inletRise;
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    heats(y, m);
    cells.passCoolant(y, dy, m);
  }

  @Override
  public void heats(double[] y, Moment m) {
    double air = airDensity * faceArea * m.faceSpeed;
    airRate = air * Air.heatCapacity(m.day);
    double airIn = m.day + inletRise;
    cells.flows(
        y, airIn, air, airRate, m.coolantFlow, References.coolantRate(coolant, m.coolantFlow));
    cells.passAir(y, airIn, airRate);
    m.heatAmbient -= cells.heat();
  }

  @Override
  public void jacobian(double[] y, Moment m, int[] inlet, Ledger ledger, JacobianEntries entries) {
    cells.jacobian().air(airRate, ledger.ambient(), -1, entries);
    cells.jacobian().coolant(m, inlet, entries);
  }
}
