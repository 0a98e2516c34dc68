package soakloop.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.fluid.Coolant;
import soakloop.fluid.MoistAir;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.Exchanger;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Hose;
import soakloop.rig.LoopElement;
import soakloop.rig.Pump;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Inputs;
import soakloop.session.Phase;

/**
 * A rig compiled into one system of ordinary differential equations.
 *
 * <p>One evaluation goes once along the charge air and once around the loop. Every element's outlet
 * is a state, so there is nothing to iterate. Not thread-safe: a run has a model of its own.
 */
final class LoopModel implements LinearlyImplicitEquation {
  /** Coolant fills the loop at this temperature; its mass then stays, K. */
  private static final double FILL = 293.15;

  private final Rig rig;
  private final Day day;
  private final double engineCoolantAtStart;
  private final Coolant coolant;
  private final EnthalpyScale scale;
  private final double pumpedFlow;
  private final double pumpPower;
  private final StateLayout layout = new StateLayout();
  private final List<LoopCells> loop = new ArrayList<>();
  private final AirPath air;
  private final Ledger ledger;
  private final Moment moment = new Moment();
  private final CoreCells core;
  private final int coreAt;
  private final int pumpAt;
  private final int pumpState;

  // What holds for the running phase.
  private Drive drive = new Drive.EngineOff();
  private Cooling cooling = Cooling.ALL;
  private double phaseStart;
  private boolean fanSwitchedOn;

  LoopModel(Rig rig, Day day, double engineCoolantAtStart) {
    this.rig = rig;
    this.day = day;
    this.engineCoolantAtStart = engineCoolantAtStart;
    this.coolant = rig.coolant();
    this.scale = new EnthalpyScale(coolant);
    this.pumpedFlow = LoopFlow.operating(rig.loop());
    this.pumpPower = rig.loop().pump().power();
    double density = coolant.density(FILL);
    double airDensity =
        MoistAir.of(day.temperature(), day.pressure(), day.humidity())
            .density(day.temperature(), day.pressure());
    for (LoopElement element : rig.loop().elements()) {
      loop.add(compile(element, density, airDensity));
    }
    this.coreAt = first(Core.class);
    this.core = (CoreCells) loop.get(coreAt);
    this.pumpAt = first(Pump.class);
    this.pumpState = ((MixedCell) loop.get(pumpAt)).index();
    this.air = new AirPath(rig, day, core, layout);
    this.ledger = new Ledger(layout);
  }

  private LoopCells compile(LoopElement element, double density, double airDensity) {
    double mass = density * element.coolantVolume();
    if (element instanceof Reservoir r) {
      return MixedCell.reservoir(scale, layout, mass, r.surroundings());
    }
    if (element instanceof Pump) {
      return MixedCell.pump(scale, layout, mass);
    }
    if (element instanceof Hose h) {
      return new HoseCells(h, coolant, scale, layout, density);
    }
    if (element instanceof Core c) {
      return new CoreCells(
          cells(c.exchanger(), density, Optional.of(new CondensingAir(day))),
          coolant,
          new CoreLoss(c.exchanger().conductance().geometry()));
    }
    HeatExchanger x = (HeatExchanger) element;
    return new HeatExchangerCells(
        cells(x.exchanger(), density, Optional.empty()),
        coolant,
        x.faceArea(),
        airDensity,
        rig.airflow().inletRise());
  }

  private ExchangerCells cells(
      Exchanger exchanger, double density, Optional<CondensingAir> vapour) {
    return new ExchangerCells(exchanger, coolant, scale, layout, density, vapour);
  }

  /** Takes up a phase: its drive, its cooling, and coefficients at the state it starts from. */
  void startPhase(Phase phase, double start, double[] y) {
    drive = phase.drive();
    cooling = phase.cooling();
    phaseStart = start;
    for (LoopCells cells : loop) {
      cells.startPhase(y, cooling.pump() ? pumpedFlow : 0);
    }
  }

  void switchFan(boolean on) {
    fanSwitchedOn = on;
  }

  boolean isFanSwitchedOn() {
    return fanSwitchedOn;
  }

  /** Returns whether a thermostat decides on the car fan in this phase. */
  boolean thermostatRules() {
    return cooling.carFan() == Cooling.Fan.AUTO
        && rig.airflow().thermostat().isPresent()
        && !(drive instanceof Drive.EngineOff);
  }

  @Override
  public int dynamicStates() {
    return ledger.first();
  }

  @Override
  public void derivatives(double t, double[] y, double[] dy) {
    evaluate(t, y, dy);
  }

  @Override
  public void jacobian(double[] y, JacobianEntries entries) {
    air.jacobian(moment, core.cellsJacobian(), ledger, entries);
    LoopCells before = loop.get(loop.size() - 1);
    for (LoopCells cells : loop) {
      before.outlet(y, moment);
      cells.jacobian(y, moment, before.outletStates(), ledger, entries);
      before = cells;
    }
  }

  @Override
  public int getDimension() {
    return layout.size();
  }

  /** Evaluates everything at an instant; the moment then holds what was found. */
  Moment evaluate(double t, double[] y, double[] dy) {
    Moment m = moment;
    m.clearHeat();
    boundaries(t, y, m);
    air.beforeCore(y, dy, m);
    core.passAir(y, m);
    loop.get(loop.size() - 1).outlet(y, m);
    for (LoopCells cells : loop) {
      cells.derivatives(y, dy, m);
      cells.outlet(y, m);
    }
    air.afterCore(y, dy, m);
    ledger.derivatives(dy, m);
    return m;
  }

  /**
   * Finds what a trace shows at an instant: as {@link #evaluate} does, but without the coolant's
   * derivatives.
   *
   * @param ducts takes derivatives of case, plenum and sensor that nobody asks for
   */
  Moment observe(double t, double[] y, double[] ducts) {
    Moment m = moment;
    m.clearHeat();
    boundaries(t, y, m);
    air.beforeCore(y, ducts, m);
    core.passAir(y, m);
    for (LoopCells cells : loop) {
      cells.heats(y, m);
    }
    air.afterCore(y, ducts, m);
    return m;
  }

  private void boundaries(double t, double[] y, Moment m) {
    drive.at(t - phaseStart, m.inputs);
    Inputs in = m.inputs;
    m.day = day.temperatureAt(t);
    m.engineCoolant = Double.isNaN(in.engineCoolant) ? engineCoolantAtStart : in.engineCoolant;
    m.underhood = rig.underhood().temperature(m.day, m.engineCoolant, in.roadSpeed);
    m.coolantFlow = cooling.pump() ? pumpedFlow : 0;
    m.coolantMassFlow = m.coolantFlow * coolant.density(scale.temperature(y[pumpState]));
    m.pumpPower = cooling.pump() ? pumpPower : 0;
    m.faceSpeed = rig.airflow().faceSpeed(in.roadSpeed, cooling.shopFan(), carFanRuns(in));
  }

  private boolean carFanRuns(Inputs in) {
    return switch (cooling.carFan()) {
      case ON -> true;
      case OFF -> false;
      case AUTO ->
          in.load != Inputs.Load.OFF && (rig.airflow().thermostat().isEmpty() || fanSwitchedOn);
    };
  }

  /** Returns the temperature that a dynamic state stands for, K. */
  double temperature(int state, double[] y) {
    return layout.isCoolant(state) ? scale.temperature(y[state]) : y[state];
  }

  /** Returns the temperature of the coolant entering a loop element. */
  double entering(int element, double[] y) {
    int before = (element + loop.size() - 1) % loop.size();
    return leaving(before, y);
  }

  /** Returns the temperature of the coolant leaving a loop element. */
  double leaving(int element, double[] y) {
    loop.get(element).outlet(y, moment);
    return scale.temperature(moment.coolantTheta);
  }

  Ledger.Stored stored(double[] y) {
    double inCoolant = 0;
    double inMetal = 0;
    double inWalls = 0;
    for (LoopCells cells : loop) {
      inCoolant += cells.storedInCoolant(y);
      inMetal += cells.storedInMetal(y);
      inWalls += cells.storedInWalls(y);
    }
    double ducts =
        rig.blower().casing().heatCapacity() * y[air.casing()]
            + rig.plenum().heatCapacity() * y[air.plenum()];
    return new Ledger.Stored(inCoolant, inMetal, inWalls, ducts);
  }

  void fillLoop(double[] y, double temperature) {
    for (LoopCells cells : loop) {
      cells.fill(y, temperature);
    }
  }

  Rig rig() {
    return rig;
  }

  AirPath air() {
    return air;
  }

  CoreCells core() {
    return core;
  }

  int coreAt() {
    return coreAt;
  }

  int pumpAt() {
    return pumpAt;
  }

  Ledger ledger() {
    return ledger;
  }

  /** Returns the place in the loop of the first element of a kind; -1 if there is none. */
  final int first(Class<? extends LoopElement> kind) {
    List<LoopElement> elements = rig.loop().elements();
    for (int i = 0; i < elements.size(); i++) {
      if (kind.isInstance(elements.get(i))) {
        return i;
      }
    }
    return -1;
  }
}
