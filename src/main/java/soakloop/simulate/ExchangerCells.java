package soakloop.simulate;

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
  private final EnthalpyScale coolant;
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

  /** For each pass the states of what leaves it, lane by lane. */
  private final int[][] passOutlets;

  private final double[] airHeat;
  private double cellCoolantSide;
  private double knownAir = Double.NaN;
  private double knownCoolant = Double.NaN;
  private double airOut;
  private double heat;

  ExchangerCells(Exchanger exchanger, EnthalpyScale coolant, StateLayout layout, double density) {
    this.exchanger = exchanger;
    this.coolant = coolant;
    this.passes = exchanger.passes().count();
    this.along = exchanger.grid().along();
    this.lanes = exchanger.grid().depth();
    boolean deep = exchanger.passes().arranged() == Passes.Arranged.DEPTH;
    this.strips = deep ? along : along * passes;
    this.depth = deep ? lanes * passes : lanes;
    int cells = passes * along * lanes;
    this.coolantFirst = layout.reserveCoolant(cells);
    this.wallFirst = layout.reserve(cells);
    this.cellMass = density * exchanger.coolantVolume() / cells;
    this.cellMetal = exchanger.metalHeatCapacity() / cells;
    this.airHeat = new double[cells];
    this.cellAt = new int[cells];
    this.passOutlets = new int[passes][];
    for (int p = 0; p < passes; p++) {
      passOutlets[p] = outletStates(p);
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
    double share = coefficients.theta();
    double exchange = m.coolantMassFlow / (lanes * cellMass);
    double perHeat = 1 / (cellMass * coolant.heatCapacity());
    double perMetal = 1 / cellMetal;
    double passIn = m.coolantTheta;
    for (int p = 0; p < passes; p++) {
      double passInTemperature = coolant.temperature(passIn);
      double out = 0;
      for (int k = 0; k < lanes; k++) {
        double in = passIn;
        double inTemperature = passInTemperature;
        for (int j = 0; j < along; j++) {
          int cell = cell(p, j, k);
          double theta = y[coolantFirst + cell];
          double temperature = coolant.temperature(theta);
          double felt = inTemperature + share * (temperature - inTemperature);
          double flow = cellCoolantSide * (y[wallFirst + cell] - felt);
          dy[coolantFirst + cell] = exchange * (in - theta) + perHeat * flow;
          dy[wallFirst + cell] = (airHeat[cell] - flow) * perMetal;
          in = theta;
          inTemperature = temperature;
        }
        out += in;
      }
      passIn = out / lanes;
    }
  }

  void outlet(double[] y, Moment m) {
    double sum = 0;
    for (int k = 0; k < lanes; k++) {
      sum += y[coolantFirst + cell(passes - 1, along - 1, k)];
    }
    m.coolantTheta = sum / lanes;
  }

  private int[] outletStates(int pass) {
    int[] states = new int[lanes];
    for (int k = 0; k < lanes; k++) {
      states[k] = coolantFirst + cell(pass, along - 1, k);
    }
    return states;
  }

  int[] outletStates() {
    return passOutlets[passes - 1];
  }

  /** Gives the coolant's side; a theta's temperature is taken to change as the theta does. */
  void coolantJacobian(Moment m, int[] inlet, JacobianEntries entries) {
    double share = coefficients.theta();
    double exchange = m.coolantMassFlow / (lanes * cellMass);
    double perHeat = 1 / (cellMass * coolant.heatCapacity());
    for (int p = 0; p < passes; p++) {
      int[] passInlet = p == 0 ? inlet : passOutlets[p - 1];
      for (int k = 0; k < lanes; k++) {
        for (int j = 0; j < along; j++) {
          int row = coolantFirst + cell(p, j, k);
          int wall = wallFirst + cell(p, j, k);
          double withIn = cellCoolantSide * (1 - share);
          double withOut = cellCoolantSide * share;
          if (j == 0) {
            for (int column : passInlet) {
              double part = 1.0 / passInlet.length;
              entries.add(row, column, part * (exchange - perHeat * withIn));
              entries.add(wall, column, part * withIn / cellMetal);
            }
          } else {
            int before = coolantFirst + cell(p, j - 1, k);
            entries.add(row, before, exchange - perHeat * withIn);
            entries.add(wall, before, withIn / cellMetal);
          }
          entries.add(row, row, -exchange - perHeat * withOut);
          entries.add(row, wall, perHeat * cellCoolantSide);
          entries.add(wall, row, withOut / cellMetal);
          entries.add(wall, wall, -cellCoolantSide / cellMetal);
        }
      }
    }
  }

  /**
   * Gives the air's side.
   *
   * @param airRate air capacity rate, W/K
   * @param ledgerRow where the heat from the air is booked
   * @param sign as what it is booked
   * @param entries takes the entries
   */
  void airJacobian(double airRate, int ledgerRow, double sign, JacobianEntries entries) {
    double share = coefficients.airShare();
    double rate = airRate / strips * share;
    for (int s = 0; s < strips; s++) {
      for (int level = 0; level < depth; level++) {
        int wall = wallAt(level, s);
        entries.add(wall, wall, -rate / cellMetal);
        double passed = rate * share / cellMetal;
        for (int behind = level + 1; behind < depth; behind++) {
          entries.add(wallAt(behind, s), wall, passed);
          passed *= 1 - share;
        }
        entries.add(ledgerRow, wall, -sign * rate * left(depth - 1 - level));
      }
    }
  }

  /** Gives the walls' and the ledger's part that comes of the entering air's temperature. */
  void airInletJacobian(
      double airRate, int column, double change, int ledgerRow, JacobianEntries entries) {
    double rate = airRate / strips * coefficients.airShare() * change;
    for (int s = 0; s < strips; s++) {
      for (int level = 0; level < depth; level++) {
        entries.add(wallAt(level, s), column, rate * left(level) / cellMetal);
      }
    }
    entries.add(ledgerRow, column, airRate * change * (1 - left(depth)));
  }

  /**
   * Gives a row that changes with the mean temperature of the air that leaves.
   *
   * @param row which
   * @param factor its change with that temperature
   * @param inletColumn state that the entering air changes with
   * @param inletChange by how much
   * @param entries takes the entries
   */
  void airOutletJacobian(
      int row, double factor, int inletColumn, double inletChange, JacobianEntries entries) {
    double share = coefficients.airShare() / strips;
    for (int s = 0; s < strips; s++) {
      for (int level = 0; level < depth; level++) {
        entries.add(row, wallAt(level, s), factor * share * left(depth - 1 - level));
      }
    }
    entries.add(row, inletColumn, factor * inletChange * left(depth));
  }

  /** Returns the share of a difference that the air keeps after some cells. */
  private double left(int cells) {
    double left = 1;
    for (int i = 0; i < cells; i++) {
      left *= 1 - coefficients.airShare();
    }
    return left;
  }

  private int wallAt(int level, int strip) {
    return wallFirst + cellAt[level * strips + strip];
  }

  void fill(double[] y, double temperature) {
    double theta = coolant.theta(temperature);
    java.util.Arrays.fill(y, coolantFirst, coolantFirst + airHeat.length, theta);
    java.util.Arrays.fill(y, wallFirst, wallFirst + airHeat.length, temperature);
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
      sum += cellMass * coolant.heatCapacity() * y[coolantFirst + i];
    }
    return sum;
  }

  double storedInMetal(double[] y) {
    return exchanger.metalHeatCapacity() * meanMetal(y);
  }
}
