package soakloop.simulate;

import soakloop.fluid.Coolant;
import soakloop.rig.Exchanger;
import soakloop.rig.Passes;

/**
 * A crossflow exchanger cut into cells, each with coolant and wall metal; air passes
 * quasi-steadily.
 *
 * <p>Air crosses the face in parallel strips, each through all cells of its depth. Coolant runs
 * through each pass in parallel lanes and is mixed between passes. Passes through the depth start
 * at the side where the air leaves, and turn round from one to the next; passes on the face have
 * strips of their own.
 */
final class ExchangerCells {
  private final Exchanger exchanger;
  private final Coolant coolant;
  private final int passes;
  private final int along;
  private final int lanes;
  private final int strips;
  private final int depth;
  private final int coolantFirst;
  private final int wallFirst;
  private final double cellMass;
  private final double cellMetal;
  private final CellCoefficients coefficients = new CellCoefficients();

  /** Cell met at each depth of each strip. */
  private final int[] cellAt;

  private final double[] airHeat;
  private double cellCoolantSide;
  private double knownAir = Double.NaN;
  private double knownCoolant = Double.NaN;
  private double airOut;
  private double heat;

  ExchangerCells(Exchanger exchanger, Coolant coolant, StateLayout layout, double density) {
    this.exchanger = exchanger;
    this.coolant = coolant;
    this.passes = exchanger.passes().count();
    this.along = exchanger.grid().along();
    this.lanes = exchanger.grid().depth();
    boolean deep = exchanger.passes().arranged() == Passes.Arranged.DEPTH;
    this.strips = deep ? along : along * passes;
    this.depth = deep ? lanes * passes : lanes;
    int cells = passes * along * lanes;
    this.coolantFirst = layout.reserve(cells);
    this.wallFirst = layout.reserve(cells);
    this.cellMass = density * exchanger.coolantVolume() / cells;
    this.cellMetal = exchanger.metalHeatCapacity() / cells;
    this.airHeat = new double[cells];
    this.cellAt = new int[cells];
    for (int p = 0; p < passes; p++) {
      for (int j = 0; j < along; j++) {
        for (int k = 0; k < lanes; k++) {
          int strip = deep ? (p % 2 == 0 ? j : along - 1 - j) : p * along + j;
          int level = deep ? (passes - 1 - p) * lanes + k : k;
          cellAt[level * strips + strip] = cell(p, j, k);
        }
      }
    }
  }

  private int cell(int pass, int position, int lane) {
    return (pass * along + position) * lanes + lane;
  }

  /**
   * Recomputes what depends on the flows, if they changed.
   *
   * @param air air mass flow, kg/s
   * @param airRate air capacity rate, W/K
   * @param coolantFlow m3/s
   * @param coolantRate coolant capacity rate, W/K
   */
  void flows(double air, double airRate, double coolantFlow, double coolantRate) {
    if (air == knownAir && coolantFlow == knownCoolant) {
      return;
    }
    knownAir = air;
    knownCoolant = coolantFlow;
    int cells = airHeat.length;
    cellCoolantSide = exchanger.conductance().coolantSide(coolantFlow) / cells;
    coefficients.update(
        exchanger.conductance().airSide(air) / cells,
        cellCoolantSide,
        airRate / strips,
        coolantRate / lanes);
  }

  /**
   * Lets air pass over the walls: sets the heat into each and the air's mean outlet temperature.
   *
   * @param airIn K
   * @param airRate air capacity rate, W/K
   */
  void passAir(double[] y, double airIn, double airRate) {
    double share = coefficients.airShare();
    double rate = airRate / strips;
    double sum = 0;
    heat = 0;
    for (int s = 0; s < strips; s++) {
      double air = airIn;
      for (int level = 0; level < depth; level++) {
        int cell = cellAt[level * strips + s];
        double drop = share * (air - y[wallFirst + cell]);
        airHeat[cell] = rate * drop;
        heat += airHeat[cell];
        air -= drop;
      }
      sum += air;
    }
    airOut = sum / strips;
  }

  /** Returns the mean temperature of the air that left, K. */
  double airOut() {
    return airOut;
  }

  /** Returns the heat that the air gave, W. */
  double heat() {
    return heat;
  }

  /** Writes the derivatives; {@link #passAir} must have gone before. */
  void passCoolant(double[] y, double[] dy, Moment m) {
    double theta = coefficients.theta();
    double laneFlow = m.coolantMassFlow / lanes;
    double passInT = m.coolantTemperature;
    double passInH = m.coolantEnthalpy;
    for (int p = 0; p < passes; p++) {
      double outT = 0;
      double outH = 0;
      for (int k = 0; k < lanes; k++) {
        double inT = passInT;
        double inH = passInH;
        for (int j = 0; j < along; j++) {
          int cell = cell(p, j, k);
          double t = y[coolantFirst + cell];
          double h = coolant.enthalpy(t);
          double felt = inT + theta * (t - inT);
          double flow = cellCoolantSide * (y[wallFirst + cell] - felt);
          dy[coolantFirst + cell] =
              (laneFlow * (inH - h) + flow) / (cellMass * coolant.heatCapacity(t));
          dy[wallFirst + cell] = (airHeat[cell] - flow) / cellMetal;
          inT = t;
          inH = h;
        }
        outT += inT;
        outH += inH;
      }
      passInT = outT / lanes;
      passInH = outH / lanes;
    }
  }

  void outlet(double[] y, Moment m) {
    double t = 0;
    double h = 0;
    for (int k = 0; k < lanes; k++) {
      double lane = y[coolantFirst + cell(passes - 1, along - 1, k)];
      t += lane;
      h += coolant.enthalpy(lane);
    }
    m.coolantTemperature = t / lanes;
    m.coolantEnthalpy = h / lanes;
  }

  void fill(double[] y, double temperature) {
    for (int i = 0; i < airHeat.length; i++) {
      y[coolantFirst + i] = temperature;
      y[wallFirst + i] = temperature;
    }
  }

  double meanMetal(double[] y) {
    double sum = 0;
    for (int i = 0; i < airHeat.length; i++) {
      sum += y[wallFirst + i];
    }
    return sum / airHeat.length;
  }

  double storedInCoolant(double[] y) {
    double sum = 0;
    for (int i = 0; i < airHeat.length; i++) {
      sum += cellMass * coolant.enthalpy(y[coolantFirst + i]);
    }
    return sum;
  }

  double storedInMetal(double[] y) {
    return exchanger.metalHeatCapacity() * meanMetal(y);
  }
}
