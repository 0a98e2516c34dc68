package soakloop.simulate;

import java.util.Optional;
import soakloop.rig.Reservoir;

/**
 * A tank in layers, perhaps with ice.
 *
 * <p>Coolant passes the layers in turn, each of them mixed: one layer is a mixed tank, many are
 * plug flow. Where a layer is warmer than the one above it they turn over, the quicker the more
 * they differ; what lies stably does not mix. Warmer counts as lighter, also in water under 4 degC,
 * where the difference is a ten-thousandth. Ice floats: it lies in the top layer.
 */
final class TankCells implements LoopCells {
  /**
   * How quickly layers turn over, 1/(K s): 1 K levels out within some seconds, as plumes in a tank
   * of a few tens of centimetres do; from memory.
   */
  private static final double TURNOVER = 0.5;

  private final EnthalpyScale coolant;
  private final int first;
  private final int layers;
  private final boolean downwards;
  private final double mass;
  private final double surroundings;
  private final Optional<IceInTank> ice;
  private final Outflow outflow;

  /**
   * Reserves the states.
   *
   * @param mass of all coolant as filled, kg
   * @param thinned what ice would thin
   */
  TankCells(
      Reservoir tank,
      double mass,
      EnthalpyScale coolant,
      StateLayout layout,
      ThinnedCoolant thinned) {
    this.coolant = coolant;
    this.layers = tank.layers().count();
    this.downwards = tank.layers().entry() == Reservoir.Layers.Entry.TOP;
    this.first = layout.reserveCoolant(layers);
    this.mass = mass / layers;
    this.surroundings = tank.surroundings() / layers;
    this.ice =
        tank.ice().map(i -> new IceInTank(i, thinned, mass * coolant.heatCapacity(), layout));
    this.outflow = Outflow.even(first + layers - 1);
  }

  Optional<IceInTank> ice() {
    return ice;
  }

  /** Returns the temperature of the top layer, K. */
  double top(double[] y) {
    return coolant.temperature(y[topLayer()]);
  }

  private int topLayer() {
    return downwards ? first : first + layers - 1;
  }

  private double capacity() {
    return mass * coolant.heatCapacity();
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    double exchange = m.coolantMassFlow / mass;
    double entering = m.coolantTheta;
    for (int i = first; i < first + layers; i++) {
      double fromAround = fromAround(i, y, m);
      m.heatUnderhood += fromAround;
      dy[i] = exchange * (entering - y[i]) + fromAround / capacity();
      entering = y[i];
    }
    for (int i = first; i < first + layers - 1; i++) {
      double turned = TURNOVER * upset(i, y) * upset(i, y);
      dy[upper(i)] += turned;
      dy[lower(i)] -= turned;
    }
    if (ice.isPresent()) {
      double top = top(y);
      double heat = ice.get().heat(y, top);
      m.heatIce += heat;
      dy[topLayer()] -= heat / capacity();
      ice.get().derivatives(y, dy, top);
    }
  }

  private double fromAround(int layer, double[] y, Moment m) {
    return surroundings * (m.underhood - coolant.temperature(y[layer]));
  }

  private int upper(int pair) {
    return downwards ? pair : pair + 1;
  }

  private int lower(int pair) {
    return downwards ? pair + 1 : pair;
  }

  /** Returns by how much the lower layer of a pair is the warmer one, K; 0 if it is not. */
  private double upset(int pair, double[] y) {
    return Math.max(0, y[lower(pair)] - y[upper(pair)]);
  }

  @Override
  public void heats(double[] y, Moment m) {
    for (int i = first; i < first + layers; i++) {
      m.heatUnderhood += fromAround(i, y, m);
    }
    if (ice.isPresent()) {
      m.heatIce += ice.get().heat(y, top(y));
      m.iceLeft = ice.get().mass(y);
    }
  }

  @Override
  public void outlet(double[] y, Moment m) {
    m.coolantTheta = y[first + layers - 1];
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
      entries.add(first, inlet.state(i), exchange * inlet.share(i));
    }
    for (int i = first; i < first + layers; i++) {
      if (i > first) {
        entries.add(i, i - 1, exchange);
      }
      entries.add(i, i, -exchange - surroundings / capacity());
      entries.add(ledger.underhood(), i, -surroundings);
    }
    for (int i = first; i < first + layers - 1; i++) {
      double rate = 2 * TURNOVER * upset(i, y);
      entries.add(upper(i), lower(i), rate);
      entries.add(upper(i), upper(i), -rate);
      entries.add(lower(i), lower(i), -rate);
      entries.add(lower(i), upper(i), rate);
    }
    if (ice.isPresent()) {
      ice.get().jacobian(y, top(y), topLayer(), capacity(), entries);
    }
  }

  @Override
  public void fill(double[] y, double temperature) {
    java.util.Arrays.fill(y, first, first + layers, coolant.theta(temperature));
  }

  @Override
  public double storedInCoolant(double[] y) {
    double sum = 0;
    for (int i = first; i < first + layers; i++) {
      sum += capacity() * y[i];
    }
    return sum;
  }

  @Override
  public double storedInIce(double[] y) {
    return ice.isPresent() ? ice.get().stored(y) : 0;
  }
}
