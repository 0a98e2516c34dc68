package soakloop.simulate;

import soakloop.fluid.Air;
import soakloop.fluid.Coolant;

/** The charge cooler core: charge air gives its heat to the coolant. */
final class CoreCells implements LoopCells {
  private final ExchangerCells cells;
  private final Coolant coolant;

  CoreCells(ExchangerCells cells, Coolant coolant) {
    this.cells = cells;
    this.coolant = coolant;
  }

  /**
   * Lets the moment's charge air pass: sets its temperature after the core and the heat it gave.
   */
  void passAir(double[] y, Moment m) {
    double reference = References.coolantRate(coolant, m.coolantFlow);
    double airReference = m.airMassFlow * Air.heatCapacity(References.AIR);
    cells.flows(m.airMassFlow, airReference, m.coolantFlow, reference);
    cells.passAir(y, m.coreAirIn, m.airCapacityRate);
    m.coreAirOut = m.airMassFlow > 0 ? cells.airOut() : cells.meanMetal(y);
    m.heatCore = cells.heat();
  }

  /** Writes derivatives; {@link #passAir} must have gone before. */
  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    cells.passCoolant(y, dy, m);
  }

  @Override
  public void outlet(double[] y, Moment m) {
    cells.outlet(y, m);
  }

  @Override
  public void fill(double[] y, double temperature) {
    cells.fill(y, temperature);
  }

  double meanMetal(double[] y) {
    return cells.meanMetal(y);
  }

  @Override
  public double storedInCoolant(double[] y) {
    return cells.storedInCoolant(y);
  }

  @Override
  public double storedInMetal(double[] y) {
    return cells.storedInMetal(y);
  }
}
