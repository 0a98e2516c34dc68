package soakloop.simulate;

import soakloop.fluid.Coolant;

/** A loop element that air crosses; what air, its kinds say. */
abstract sealed class CrossedCells implements LoopCells permits CoreCells, HeatExchangerCells {
  final ExchangerCells cells;
  final Coolant coolant;

  CrossedCells(ExchangerCells cells, Coolant coolant) {
    this.cells = cells;
    this.coolant = coolant;
  }

  @Override
  public void outlet(double[] y, Moment m) {
    cells.outlet(y, m);
  }

  @Override
  public Outflow outflow() {
    return cells.outflow();
  }

  @Override
  public void fill(double[] y, double temperature) {
    cells.fill(y, temperature);
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
