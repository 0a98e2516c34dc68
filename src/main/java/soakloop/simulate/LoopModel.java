package soakloop.simulate;

import java.util.List;
import java.util.Optional;
import soakloop.fluid.Coolant;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.LoopElement;
import soakloop.rig.Pump;
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
  private final Rig rig;
  private final Day day;
  private final double engineCoolantAtStart;
  private final Coolant coolant;
  private final EnthalpyScale scale;
  private final LoopFlow flow;
  private final StateLayout layout = new StateLayout();
  private final LoopPlaces places;
  private final List<LoopCells> loop;
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
    this.flow = new LoopFlow(rig.loop(), coolant);
    this.places = new LoopPlaces(rig, day, scale, layout, flow);
    this.loop = places.around();
    this.coreAt = first(Core.class);
    this.core = (CoreCells) places.cells(coreAt);
    this.pumpAt = first(Pump.class);
    this.pumpState = ((MixedCell) places.cells(pumpAt)).index();
    this.air = new AirPath(rig, day, core, layout);
    this.ledger = new Ledger(layout);
  }

  /** Takes up a phase: its drive, its cooling, and coefficients at the state it starts from. */
  void startPhase(Phase phase, double start, double[] y) {
    drive = phase.drive();
    cooling = phase.cooling();
    phaseStart = start;
    flow.moveTo(scale.temperature(y[pumpState]));
    for (LoopCells cells : loop) {
      cells.startPhase(y, cooling.pump() ? flow.flow() : 0);
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
      cells.jacobian(y, moment, before.outflow(), ledger, entries);
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
    passAir(y, m);
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
    passAir(y, m);
    for (LoopCells cells : loop) {
      cells.heats(y, m);
    }
    air.afterCore(y, ducts, m);
    return m;
  }

  /** Lets air pass core and heat exchangers, each at its coolant's flow. */
  private void passAir(double[] y, Moment m) {
    core.passAir(y, m);
    for (LoopCells cells : loop) {
      cells.flows(m);
    }
    for (HeatExchangerCells exchanger : places.inAirOrder()) {
      exchanger.passAir(y, m);
    }
  }

  private void boundaries(double t, double[] y, Moment m) {
    drive.at(t - phaseStart, m.inputs);
    Inputs in = m.inputs;
    m.day = day.temperatureAt(t);
    m.engineCoolant = Double.isNaN(in.engineCoolant) ? engineCoolantAtStart : in.engineCoolant;
    m.underhood =
        rig.underhood().temperature(m.day, m.engineCoolant, in.roadSpeed, cooling.openHood());
    double atPump = scale.temperature(y[pumpState]);
    flow.moveTo(atPump);
    m.coolantFlow = cooling.pump() ? flow.flow() : 0;
    m.coolantMassFlow = m.coolantFlow * coolant.density(atPump);
    m.pumpPower = cooling.pump() ? flow.power() : 0;
    m.engineRuns = in.load != Inputs.Load.OFF;
    m.chillerOn = cooling.chiller();
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

  /** Returns the temperature of the coolant entering a piece of the loop. */
  double entering(int place, double[] y) {
    return leaving(places.before(place), y);
  }

  /** Returns the temperature of the coolant leaving a piece of the loop. */
  double leaving(int place, double[] y) {
    return leaving(places.cells(place), y);
  }

  private double leaving(LoopCells cells, double[] y) {
    cells.outlet(y, moment);
    return scale.temperature(moment.coolantTheta);
  }

  Ledger.Stored stored(double[] y) {
    double inCoolant = 0;
    double inMetal = 0;
    double inWalls = 0;
    double inIce = 0;
    for (LoopCells cells : loop) {
      inCoolant += cells.storedInCoolant(y);
      inMetal += cells.storedInMetal(y);
      inWalls += cells.storedInWalls(y);
      inIce += cells.storedInIce(y);
    }
    double ducts =
        rig.blower().casing().heatCapacity() * y[air.casing()]
            + rig.plenum().heatCapacity() * y[air.plenum()];
    return new Ledger.Stored(inCoolant, inMetal, inWalls, ducts, inIce);
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

  /** Returns the tank that ice goes into. */
  Optional<TankCells> iced() {
    return places.iced();
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

  /** Returns the place of the first piece of a kind; -1 if there is none. */
  final int first(Class<? extends LoopElement> kind) {
    return places.first(kind);
  }
}
