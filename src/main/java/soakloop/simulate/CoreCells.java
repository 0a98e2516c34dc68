package soakloop.simulate;

import soakloop.fluid.Air;
import soakloop.fluid.Coolant;

/** The charge cooler core: charge air gives its heat to the coolant. */
final class CoreCells extends CrossedCells {
  CoreCells(ExchangerCells cells, Coolant coolant) {
    super(cells, coolant);
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

  /** Adds nothing: {@link #passAir} has set the heat that the charge air gave. */
  @Override
  public void heats(double[] y, Moment m) {}

  @Override
  public void jacobian(
      double[] y, Moment m, Outflow inlet, Ledger ledger, JacobianEntries entries) {
    cells.jacobian().air(m.airCapacityRate, ledger.core(), 1, entries);
    cells.jacobian().coolant(m, inlet, entries);
  }

  /** Returns the cells' Jacobian, for what the air carries in and out. */
  ExchangerJacobian cellsJacobian() {
    return cells.jacobian();
  }

  double meanMetal(double[] y) {
    return cells.meanMetal(y);
  }
}
