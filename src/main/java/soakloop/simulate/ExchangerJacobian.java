package soakloop.simulate;

/** The Jacobian of an exchanger's cells, part by part. */
final class ExchangerJacobian {
  private final ExchangerGrid grid;
  private final CellCoefficients coefficients;
  private final double cellMass;
  private final double cellHeat;
  private final double cellMetal;
  private final double[] latentSlope;
  private double coolantSide;
  private double vapourShare;

  /**
   * Takes what the cells are made of.
   *
   * @param grid where they are
   * @param coefficients theirs, kept up to date by them
   * @param cellMass coolant in a cell, kg
   * @param cellHeat its heat capacity, J/K
   * @param cellMetal heat capacity of a cell's wall, J/K
   * @param latentSlope heat of condensing water that each cell's wall loses by its own warming,
   *     W/K, kept up to date by the cells
   */
  ExchangerJacobian(
      ExchangerGrid grid,
      CellCoefficients coefficients,
      double cellMass,
      double cellHeat,
      double cellMetal,
      double[] latentSlope) {
    this.grid = grid;
    this.coefficients = coefficients;
    this.cellMass = cellMass;
    this.cellHeat = cellHeat;
    this.cellMetal = cellMetal;
    this.latentSlope = latentSlope;
  }

  /** Takes the coolant side of a cell's conductance, W/K. */
  void setCoolantSide(double conductance) {
    coolantSide = conductance;
  }

  /** Takes the share of the distance to saturation that vapour closes in a cell, 0 to 1. */
  void setVapourShare(double share) {
    vapourShare = share;
  }

  /** Gives the coolant's side; a theta's temperature is taken to change as the theta does. */
  void coolant(Moment m, Outflow inlet, JacobianEntries entries) {
    double share = coefficients.theta();
    double exchange = m.coolantMassFlow / (grid.lanes() * cellMass);
    double perHeat = 1 / cellHeat;
    for (int p = 0; p < grid.passes(); p++) {
      Outflow passInlet = p == 0 ? inlet : grid.leaving(p - 1);
      for (int k = 0; k < grid.lanes(); k++) {
        for (int j = 0; j < grid.along(); j++) {
          int row = grid.coolant(grid.cell(p, j, k));
          int wall = grid.wall(grid.cell(p, j, k));
          double withIn = coolantSide * (1 - share);
          double withOut = coolantSide * share;
          if (j == 0) {
            for (int i = 0; i < passInlet.size(); i++) {
              int column = passInlet.state(i);
              double part = passInlet.share(i);
              entries.add(row, column, part * (exchange - perHeat * withIn));
              entries.add(wall, column, part * withIn / cellMetal);
            }
          } else {
            int before = grid.coolant(grid.cell(p, j - 1, k));
            entries.add(row, before, exchange - perHeat * withIn);
            entries.add(wall, before, withIn / cellMetal);
          }
          entries.add(row, row, -exchange - perHeat * withOut);
          entries.add(row, wall, perHeat * coolantSide);
          entries.add(wall, row, withOut / cellMetal);
          entries.add(wall, wall, -coolantSide / cellMetal);
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
  void air(double airRate, int ledgerRow, double sign, JacobianEntries entries) {
    double share = coefficients.airShare();
    double rate = airRate / grid.strips() * share;
    for (int s = 0; s < grid.strips(); s++) {
      for (int level = 0; level < grid.depth(); level++) {
        int cell = grid.cellAt(level, s);
        int wall = grid.wall(cell);
        entries.add(wall, wall, -(rate + latentSlope[cell]) / cellMetal);
        double lost = rate * left(grid.depth() - 1 - level) + latentSlope[cell];
        double passed = rate * share;
        double vapour = latentSlope[cell] * vapourShare;
        for (int behind = level + 1; behind < grid.depth(); behind++) {
          int next = grid.cellAt(behind, s);
          double more = latentSlope[next] > 0 ? vapour : 0;
          entries.add(grid.wall(next), wall, (passed + more) / cellMetal);
          lost -= more;
          passed *= 1 - share;
          vapour -= vapourShare * more;
        }
        entries.add(ledgerRow, wall, -sign * lost);
      }
    }
  }

  /** Gives the walls' and the ledger's part that comes of the entering air's temperature. */
  void airInlet(double airRate, int column, double change, int ledgerRow, JacobianEntries entries) {
    double rate = airRate / grid.strips() * coefficients.airShare() * change;
    for (int s = 0; s < grid.strips(); s++) {
      for (int level = 0; level < grid.depth(); level++) {
        entries.add(wallAt(level, s), column, rate * left(level) / cellMetal);
      }
    }
    entries.add(ledgerRow, column, airRate * change * (1 - left(grid.depth())));
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
  void airOutlet(
      int row, double factor, int inletColumn, double inletChange, JacobianEntries entries) {
    double share = coefficients.airShare() / grid.strips();
    for (int s = 0; s < grid.strips(); s++) {
      for (int level = 0; level < grid.depth(); level++) {
        entries.add(row, wallAt(level, s), factor * share * left(grid.depth() - 1 - level));
      }
    }
    entries.add(row, inletColumn, factor * inletChange * left(grid.depth()));
  }

  /** Returns the share of a difference that the air keeps after some cells. */
  double left(int cells) {
    double left = 1;
    for (int i = 0; i < cells; i++) {
      left *= 1 - coefficients.airShare();
    }
    return left;
  }

  private int wallAt(int level, int strip) {
    return grid.wall(grid.cellAt(level, strip));
  }
}
