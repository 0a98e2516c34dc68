package soakloop.simulate;

import soakloop.fluid.Coolant;

/** A fully mixed volume: a reservoir with heat from its surroundings, or a pump with its power. */
final class MixedCell implements LoopCells {
  private final Coolant coolant;
  private final int index;
  private final double mass;
  private final double surroundings;
  private final boolean isPump;

  private MixedCell(
      Coolant coolant, StateLayout layout, double mass, double surroundings, boolean isPump) {
    this.coolant = coolant;
    this.index = layout.reserve(1);
    this.mass = mass;
    this.surroundings = surroundings;
    this.isPump = isPump;
  }

  static MixedCell reservoir(
      Coolant coolant, StateLayout layout, double mass, double surroundings) {
    return new MixedCell(coolant, layout, mass, surroundings, false);
  }

  static MixedCell pump(Coolant coolant, StateLayout layout, double mass) {
    return new MixedCell(coolant, layout, mass, 0, true);
  }

  int index() {
    return index;
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    double t = y[index];
    double fromAround = surroundings * (m.underhood - t);
    double heat = isPump ? m.pumpPower : fromAround;
    m.heatUnderhood += fromAround;
    double carried = m.coolantMassFlow * (m.coolantEnthalpy - coolant.enthalpy(t));
    dy[index] = (carried + heat) / (mass * coolant.heatCapacity(t));
  }

  @Override
  public void outlet(double[] y, Moment m) {
    m.coolantTemperature = y[index];
    m.coolantEnthalpy = coolant.enthalpy(y[index]);
  }

  @Override
  public void fill(double[] y, double temperature) {
    y[index] = temperature;
  }

  @Override
  public double storedInCoolant(double[] y) {
    return mass * coolant.enthalpy(y[index]);
  }
}
