package soakloop.simulate;

import soakloop.rig.Chiller;

/** A chiller's coolant, mixed, with the heat that the refrigerant takes out of it. */
final class ChillerCell implements LoopCells {
  private static final double STEP = 0.05; // K

  private final Chiller chiller;
  private final EnthalpyScale coolant;
  private final int index;
  private final double mass;
  private final Outflow outflow;
  private double flow;

  ChillerCell(Chiller chiller, double mass, EnthalpyScale coolant, StateLayout layout) {
    this.chiller = chiller;
    this.coolant = coolant;
    this.index = layout.reserveCoolant(1);
    this.mass = mass;
    this.outflow = Outflow.even(index);
  }

  @Override
  public void flows(Moment m) {
    flow = m.coolantFlow;
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    double heat = heat(y[index], m);
    book(heat, m);
    dy[index] =
        m.coolantMassFlow / mass * (m.coolantTheta - y[index])
            - heat / (mass * coolant.heatCapacity());
  }

  private double heat(double theta, Moment m) {
    boolean driven = m.engineRuns || chiller.drive() == Chiller.Drive.ELECTRIC;
    return m.chillerOn && driven ? chiller.heat(coolant.temperature(theta), flow) : 0;
  }

  private void book(double heat, Moment m) {
    m.heatChiller += heat;
    m.chillerPower += heat / chiller.performance();
  }

  @Override
  public void heats(double[] y, Moment m) {
    book(heat(y[index], m), m);
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
    double slope = (heat(y[index] + STEP, m) - heat(y[index] - STEP, m)) / (2 * STEP);
    entries.add(index, index, -exchange - slope / (mass * coolant.heatCapacity()));
    entries.add(ledger.chiller(), index, slope);
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
