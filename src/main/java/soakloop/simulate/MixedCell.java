package soakloop.simulate;

/** A fully mixed volume: a reservoir with heat from its surroundings, or a pump with its power. */
final class MixedCell implements LoopCells {
  private final EnthalpyScale coolant;
  private final int index;
  private final double mass;
  private final double surroundings;
  private final boolean isPump;
  private final Outflow outflow;

  private MixedCell(
      EnthalpyScale coolant, StateLayout layout, double mass, double surroundings, boolean isPump) {
    this.coolant = coolant;
    this.index = layout.reserveCoolant(1);
    this.mass = mass;
    this.surroundings = surroundings;
    this.isPump = isPump;
    this.outflow = Outflow.even(index);
  }

  static MixedCell reservoir(
      EnthalpyScale coolant, StateLayout layout, double mass, double surroundings) {
    return new MixedCell(coolant, layout, mass, surroundings, false);
  }

  static MixedCell pump(EnthalpyScale coolant, StateLayout layout, double mass) {
    return new MixedCell(coolant, layout, mass, 0, true);
  }

  int index() {
    return index;
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    double fromAround = fromAround(y, m);
    double heat = isPump ? m.pumpPower : fromAround;
    m.heatUnderhood += fromAround;
    dy[index] =
        m.coolantMassFlow / mass * (m.coolantTheta - y[index])
            + heat / (mass * coolant.heatCapacity());
  }

  private double fromAround(double[] y, Moment m) {
    return surroundings * (m.underhood - coolant.temperature(y[index]));
  }

  @Override
  public void heats(double[] y, Moment m) {
    m.heatUnderhood += fromAround(y, m);
  }

  @Override
  public void outlet(double[] y, Moment m) {
    m.coolantTheta = y[index];
  }

  @Override
  public Outflow outflow() {
    return outflow;
  }

  @Override
  public void jacobian(
      double[] y, Moment m, Outflow inlet, Ledger ledger, JacobianEntries entries) {
    double exchange = m.coolantMassFlow / mass;
    for (int i = 0; i < inlet.size(); i++) {
      entries.add(index, inlet.state(i), exchange * inlet.share(i));
    }
    entries.add(index, index, -exchange - surroundings / (mass * coolant.heatCapacity()));
    entries.add(ledger.underhood(), index, -surroundings);
  }

  @Override
  public void fill(double[] y, double temperature) {
    y[index] = coolant.theta(temperature);
  }

  @Override
  public double storedInCoolant(double[] y) {
    return mass * coolant.heatCapacity() * y[index];
  }
}
