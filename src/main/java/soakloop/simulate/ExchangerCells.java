package soakloop.simulate;

import java.util.Arrays;
import java.util.Optional;
import soakloop.fluid.Coolant;
import soakloop.rig.Exchanger;

/**
 * A crossflow exchanger cut into cells ({@link ExchangerGrid}), each with coolant and wall metal;
 * air passes quasi-steadily.
 */
final class ExchangerCells {
  /** Relative change of flow that moves a conductance by less than it itself, and is let be. */
  private static final double SAME_FLOW = 1e-3;

  private final Exchanger exchanger;
  private final EnthalpyScale coolant;
  private final ExchangerSides sides;
  private final ExchangerGrid grid;
  private final double cellMass;
  private final double cellMetal;
  private final CellCoefficients coefficients = new CellCoefficients();
  private final ExchangerJacobian jacobian;
  private final double[] airHeat;
  private final double[] latentSlope;
  private final Optional<CondensingAir> vapour;
  private double cellCoolantSide;
  private double knownAir = Double.NaN;
  private double knownCoolant = Double.NaN;
  private double airUnits;
  private boolean wasWet;
  private double airOut;
  private double heat;

  /**
   * Makes the cells.
   *
   * @param exchanger what is cut
   * @param fluid the coolant
   * @param coolant its scale
   * @param layout where states are reserved
   * @param density of the coolant where the loop was filled, kg/m3
   * @param vapour humid air whose water may condense; empty if it is not looked at
   */
  ExchangerCells(
      Exchanger exchanger,
      Coolant fluid,
      EnthalpyScale coolant,
      StateLayout layout,
      double density,
      Optional<CondensingAir> vapour) {
    this.exchanger = exchanger;
    this.coolant = coolant;
    this.sides = new ExchangerSides(exchanger.conductance(), fluid);
    this.vapour = vapour;
    this.grid = new ExchangerGrid(exchanger, layout);
    this.cellMass = density * exchanger.coolantVolume() / grid.cells();
    this.cellMetal = exchanger.metalHeatCapacity() / grid.cells();
    this.airHeat = new double[grid.cells()];
    this.latentSlope = new double[grid.cells()];
    this.jacobian =
        new ExchangerJacobian(
            grid,
            coefficients,
            cellMass,
            cellMass * coolant.heatCapacity(),
            cellMetal,
            latentSlope);
  }

  /**
   * Recomputes what depends on the flows, and on temperatures where the conductance does; else only
   * if they changed, the coolant's by more than {@link #SAME_FLOW}, which viscosity moves all the
   * time.
   *
   * @param airIn temperature of the air that enters, K
   * @param air air mass flow, kg/s
   * @param airRate air capacity rate, W/K
   * @param coolantFlow m3/s
   * @param coolantRate coolant capacity rate, W/K
   */
  void flows(
      double[] y,
      double airIn,
      double air,
      double airRate,
      double coolantFlow,
      double coolantRate) {
    boolean warms = sides.followTemperature();
    if (!warms
        && air == knownAir
        && Math.abs(coolantFlow - knownCoolant) <= SAME_FLOW * knownCoolant) {
      return;
    }
    knownAir = air;
    knownCoolant = coolantFlow;
    int cells = grid.cells();
    double coolantSide = sides.coolant(coolantFlow, warms ? meanCoolant(y) : airIn);
    double airFilm = warms ? 0.5 * (airIn + meanMetal(y)) : airIn;
    double airSide = sides.air(air, airFilm, airRate, coolantSide);
    cellCoolantSide = coolantSide / cells;
    airUnits = airRate > 0 ? airSide / cells * grid.strips() / airRate : 0;
    coefficients.update(
        airSide / cells, cellCoolantSide, airRate / grid.strips(), coolantRate / grid.lanes());
    jacobian.setCoolantSide(cellCoolantSide);
  }

  /**
   * Lets air pass over the walls: sets the heat into each and the air's mean outlet temperature.
   *
   * @param airIn K
   * @param airRate air capacity rate, W/K
   */
  void passAir(double[] y, double airIn, double airRate) {
    int strips = grid.strips();
    int depth = grid.depth();
    double share = coefficients.airShare();
    double rate = airRate / strips;
    double sum = 0;
    heat = 0;
    for (int s = 0; s < strips; s++) {
      double air = airIn;
      for (int level = 0; level < depth; level++) {
        int cell = grid.cellAt(level, s);
        double drop = share * (air - y[grid.wall(cell)]);
        airHeat[cell] = rate * drop;
        heat += airHeat[cell];
        air -= drop;
      }
      sum += air;
    }
    airOut = sum / strips;
  }

  /**
   * Lets water condense where walls are below the dew point, and adds its heat to what {@link
   * #passAir} found; air temperatures stay.
   *
   * @param flow air mass flow, kg/s
   * @param pressure absolute pressure of the air, Pa
   * @return water that condenses, kg/s
   */
  double condense(double[] y, double flow, double pressure) {
    CondensingAir air = vapour.orElseThrow();
    if (wasWet) {
      Arrays.fill(latentSlope, 0);
      wasWet = false;
    }
    if (flow == 0 || !(coldestWall(y) < air.warmestWetWall(pressure))) {
      return 0;
    }
    wasWet = true;
    air.begin(pressure, flow / grid.strips(), airUnits);
    jacobian.setVapourShare(air.share());
    for (int s = 0; s < grid.strips(); s++) {
      air.startStrip();
      for (int level = 0; level < grid.depth(); level++) {
        int cell = grid.cellAt(level, s);
        double latent = air.heat(y[grid.wall(cell)]);
        latentSlope[cell] = air.slope();
        airHeat[cell] += latent;
        heat += latent;
      }
    }
    return air.water();
  }

  /** Returns the mean temperature of the air that left, K. */
  double airOut() {
    return airOut;
  }

  /** Returns the share of a difference in the entering air that is left where it leaves. */
  double airKept() {
    return jacobian.left(grid.depth());
  }

  /** Returns the heat that the air gave, W. */
  double heat() {
    return heat;
  }

  /** Writes the derivatives; {@link #passAir} must have gone before. */
  void passCoolant(double[] y, double[] dy, Moment m) {
    int lanes = grid.lanes();
    int along = grid.along();
    double share = coefficients.theta();
    double exchange = m.coolantMassFlow / (lanes * cellMass);
    double perHeat = 1 / (cellMass * coolant.heatCapacity());
    double perMetal = 1 / cellMetal;
    double passIn = m.coolantTheta;
    for (int p = 0; p < grid.passes(); p++) {
      double passInTemperature = coolant.temperature(passIn);
      double out = 0;
      for (int k = 0; k < lanes; k++) {
        double in = passIn;
        double inTemperature = passInTemperature;
        for (int j = 0; j < along; j++) {
          int cell = grid.cell(p, j, k);
          double theta = y[grid.coolant(cell)];
          double temperature = coolant.temperature(theta);
          double felt = inTemperature + share * (temperature - inTemperature);
          double flow = cellCoolantSide * (y[grid.wall(cell)] - felt);
          dy[grid.coolant(cell)] = exchange * (in - theta) + perHeat * flow;
          dy[grid.wall(cell)] = (airHeat[cell] - flow) * perMetal;
          in = theta;
          inTemperature = temperature;
        }
        out += in;
      }
      passIn = out / lanes;
    }
  }

  void outlet(double[] y, Moment m) {
    Outflow leaving = outflow();
    double sum = 0;
    for (int i = 0; i < leaving.size(); i++) {
      sum += y[leaving.state(i)];
    }
    m.coolantTheta = sum / leaving.size();
  }

  Outflow outflow() {
    return grid.leaving(grid.passes() - 1);
  }

  /** Returns what gives the Jacobian of these cells at the flows last set. */
  ExchangerJacobian jacobian() {
    return jacobian;
  }

  void fill(double[] y, double temperature) {
    double theta = coolant.theta(temperature);
    Arrays.fill(y, grid.coolant(0), grid.coolant(grid.cells()), theta);
    Arrays.fill(y, grid.wall(0), grid.wall(grid.cells()), temperature);
  }

  double meanMetal(double[] y) {
    double sum = 0;
    for (int i = 0; i < airHeat.length; i++) {
      sum += y[grid.wall(i)];
    }
    return sum / airHeat.length;
  }

  private double coldestWall(double[] y) {
    double coldest = y[grid.wall(0)];
    for (int i = 1; i < airHeat.length; i++) {
      coldest = Math.min(coldest, y[grid.wall(i)]);
    }
    return coldest;
  }

  private double meanCoolant(double[] y) {
    double sum = 0;
    for (int i = 0; i < airHeat.length; i++) {
      sum += y[grid.coolant(i)];
    }
    return coolant.temperature(sum / airHeat.length);
  }

  double storedInCoolant(double[] y) {
    double sum = 0;
    for (int i = 0; i < airHeat.length; i++) {
      sum += cellMass * coolant.heatCapacity() * y[grid.coolant(i)];
    }
    return sum;
  }

  double storedInMetal(double[] y) {
    return exchanger.metalHeatCapacity() * meanMetal(y);
  }
}
