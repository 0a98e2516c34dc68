package soakloop.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import soakloop.fluid.Coolant;
import soakloop.rig.Hose;
import soakloop.rig.Reservoir;
import soakloop.session.IceAdded;

/**
 * Cells of the model in a row on their own, fed with a given stream or closed to a ring, integrated
 * as a run integrates them.
 */
public final class CellChain implements OrdinaryDifferentialEquation {
  private final Coolant coolant;
  private final EnthalpyScale scale;
  private final double density;
  private final StateLayout layout = new StateLayout();
  private final List<LoopCells> chain = new ArrayList<>();
  private final Moment moment = new Moment();
  private DoubleUnaryOperator inlet = t -> Coolant.ENTHALPY_ZERO;
  private DoubleUnaryOperator massFlow = t -> 0;
  private boolean closed;
  private double tolerance = Options.DEFAULT.explicitly().absoluteTolerance();
  private double[] y = {};

  /**
   * Starts an empty row.
   *
   * @param coolant what flows
   * @param filledAt temperature whose density fills the cells, K
   */
  public CellChain(Coolant coolant, double filledAt) {
    this.coolant = coolant;
    this.scale = new EnthalpyScale(coolant);
    this.density = coolant.density(filledAt);
  }

  /**
   * Adds a mixed tank.
   *
   * @param volume m3
   * @param surroundings conductance to what is around, W/K
   */
  public CellChain tank(double volume, double surroundings) {
    chain.add(MixedCell.reservoir(scale, layout, density * volume, surroundings));
    return this;
  }

  /**
   * Adds a tank as a rig has it, with the ice that goes in first.
   *
   * @param tank the tank
   */
  public CellChain tank(Reservoir tank) {
    double mass = density * tank.coolantVolume();
    chain.add(new TankCells(tank, mass, scale, layout, new ThinnedCoolant(coolant, mass)));
    return this;
  }

  /** Puts the ice of the last tank in, at the state it starts from. */
  public CellChain iced() {
    IceInTank ice = last().ice().orElseThrow();
    ice.add(new IceAdded(ice.kind().mass(), false), last().top(y), y);
    return this;
  }

  /**
   * Returns the ice left in the last tank, kg.
   *
   * @param state the state
   */
  public double iceLeft(double[] state) {
    return last().ice().orElseThrow().mass(state);
  }

  private TankCells last() {
    return (TankCells) chain.get(chain.size() - 1);
  }

  /**
   * Adds a pump.
   *
   * @param volume m3
   */
  public CellChain pump(double volume) {
    chain.add(MixedCell.pump(scale, layout, density * volume));
    return this;
  }

  /**
   * Adds a hose.
   *
   * @param hose the hose
   */
  public CellChain hose(Hose hose) {
    chain.add(new HoseCells(hose, coolant, scale, layout, density));
    return this;
  }

  /**
   * Feeds the row with a stream.
   *
   * @param temperature K over time
   * @param flow kg/s over time
   */
  public CellChain fed(DoubleUnaryOperator temperature, DoubleUnaryOperator flow) {
    inlet = temperature;
    massFlow = flow;
    return this;
  }

  /**
   * Lets the last feed the first.
   *
   * @param flow kg/s
   */
  public CellChain closed(double flow) {
    closed = true;
    massFlow = t -> flow;
    return this;
  }

  /**
   * Sets what is around.
   *
   * @param temperature K
   * @param pumpPower W
   */
  public CellChain around(double temperature, double pumpPower) {
    moment.underhood = temperature;
    moment.pumpPower = pumpPower;
    return this;
  }

  /**
   * Integrates more closely than a run does by default.
   *
   * @param kelvin error allowed in a step, K
   */
  public CellChain within(double kelvin) {
    tolerance = kelvin;
    return this;
  }

  /**
   * Starts at one temperature.
   *
   * @param temperature K
   */
  public CellChain from(double temperature) {
    double[] all = new double[layout.size()];
    chain.forEach(cells -> cells.fill(all, temperature));
    return from(all);
  }

  /**
   * Starts at given states and works out the films at the flow at time zero.
   *
   * @param state K; for coolant theta, which is the temperature if the heat capacity is constant
   */
  public CellChain from(double... state) {
    y = state.clone();
    films(0);
    return this;
  }

  /** Works out the films in hoses at a time's flow. */
  private void films(double time) {
    double flow = massFlow.applyAsDouble(time) / density;
    chain.forEach(cells -> cells.startPhase(y, flow));
  }

  /**
   * Returns the states at times.
   *
   * @param times s, rising, from above zero
   * @return for each time the whole state, K
   */
  public double[][] at(double... times) {
    double[][] states = new double[times.length][];
    double time = 0;
    for (int i = 0; i < times.length; i++) {
      DormandPrince54Integrator integrator =
          new DormandPrince54Integrator(
              1e-9,
              30,
              tolerance,
              Options.DEFAULT.explicitly().relativeTolerance() * tolerance / 1e-4);
      integrator.setInitialStepSize(Math.min(1e-3, (times[i] - time) / 2));
      films(time);
      y = integrator.integrate(this, new ODEState(time, y), times[i]).getPrimaryState();
      time = times[i];
      states[i] = y.clone();
    }
    return states;
  }

  /**
   * Returns what leaves the last cell in a state.
   *
   * @param state K
   * @return K
   */
  public double leaving(double[] state) {
    chain.get(chain.size() - 1).outlet(state, moment);
    return scale.temperature(moment.coolantTheta);
  }

  /**
   * Returns the heat stored in hose walls in a state, J.
   *
   * @param state K
   */
  public double storedInWalls(double[] state) {
    return chain.stream().mapToDouble(cells -> cells.storedInWalls(state)).sum();
  }

  @Override
  public int getDimension() {
    return layout.size();
  }

  @Override
  public double[] computeDerivatives(double t, double[] state) {
    double[] dy = new double[state.length];
    moment.coolantMassFlow = massFlow.applyAsDouble(t);
    moment.coolantFlow = moment.coolantMassFlow / density;
    if (closed) {
      chain.get(chain.size() - 1).outlet(state, moment);
    } else {
      moment.coolantTheta = scale.theta(inlet.applyAsDouble(t));
    }
    for (LoopCells cells : chain) {
      cells.derivatives(state, dy, moment);
      cells.outlet(state, moment);
    }
    return dy;
  }
}
