package soakloop.simulate;

import java.util.Optional;
import soakloop.fluid.Air;
import soakloop.fluid.Coolant;

/**
 * A heat exchanger in the outside air: the coolant gives its heat away.
 *
 * <p>Its air is as warm as the day and the rise of the place make it, or what leaves the heat
 * exchanger in front; a share of it may have been here before. How walls change with the air that
 * other walls warmed is left out of the Jacobian, from the walls and from the ledger alike.
 */
final class HeatExchangerCells extends CrossedCells {
  /**
   * The air that an exchanger meets.
   *
   * @param faceArea m2
   * @param density kg/m3
   * @param inletRise how much warmer than the day it is, K
   * @param recirculation share of it that has been here before, 0 to 0.9
   */
  record Surroundings(double faceArea, double density, double inletRise, double recirculation) {}

  private final Surroundings around;
  private Optional<HeatExchangerCells> front = Optional.empty();
  private double air;
  private double airRate;
  private double coolantFlow;

  HeatExchangerCells(ExchangerCells cells, Coolant coolant, Surroundings around) {
    super(cells, coolant);
    this.around = around;
  }

  /** Puts this one behind another, whose air it then gets. */
  void standBehind(HeatExchangerCells other) {
    front = Optional.of(other);
  }

  @Override
  public void flows(Moment m) {
    air = around.density() * around.faceArea() * m.faceSpeed;
    airRate = air * Air.heatCapacity(m.day);
    coolantFlow = m.coolantFlow;
  }

  /** Lets air pass; {@link #flows} must have gone before, and the air of the one in front. */
  void passAir(double[] y, Moment m) {
    double fresh = front.isPresent() ? front.get().cells.airOut() : m.day + around.inletRise();
    double rate = References.coolantRate(coolant, coolantFlow);
    cells.flows(y, fresh, air, airRate, coolantFlow, rate);
    cells.passAir(y, fresh, airRate);
    double share = around.recirculation();
    if (share > 0) {
      // What leaves is linear in what enters: airOut = kept * airIn + (what the walls give).
      double warmer = share * (cells.airOut() - fresh) / (1 - share * cells.airKept());
      cells.passAir(y, fresh + warmer, airRate);
    }
    m.heatAmbient -= cells.heat();
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    cells.passCoolant(y, dy, m);
  }

  /** Adds nothing: {@link #passAir} has. */
  @Override
  public void heats(double[] y, Moment m) {}

  @Override
  public void jacobian(
      double[] y, Moment m, Outflow inlet, Ledger ledger, JacobianEntries entries) {
    cells.jacobian().air(airRate, ledger.ambient(), -1, entries);
    cells.jacobian().coolant(m, inlet, entries);
  }
}
