package soakloop.simulate;

import soakloop.rig.Exchanger;
import soakloop.rig.Passes;

/**
 * Which cell of an exchanger lies where, for the coolant and for the air, and where its states are.
 *
 * <p>Air crosses the face in parallel strips, each through all cells of its depth. Coolant runs
 * through each pass in parallel lanes and is mixed between passes. Passes through the depth start
 * at the side where the air leaves, and turn round from one to the next; passes on the face have
 * strips of their own.
 */
final class ExchangerGrid {
  private final int passes;
  private final int along;
  private final int lanes;
  private final int strips;
  private final int depth;
  private final int coolantFirst;
  private final int wallFirst;
  private final int[] cellAt;
  private final Outflow[] leaving;

  ExchangerGrid(Exchanger exchanger, StateLayout layout) {
    this.passes = exchanger.passes().count();
    this.along = exchanger.grid().along();
    this.lanes = exchanger.grid().depth();
    boolean deep = exchanger.passes().arranged() == Passes.Arranged.DEPTH;
    this.strips = deep ? along : along * passes;
    this.depth = deep ? lanes * passes : lanes;
    this.coolantFirst = layout.reserveCoolant(cells());
    this.wallFirst = layout.reserve(cells());
    this.cellAt = new int[cells()];
    this.leaving = new Outflow[passes];
    for (int p = 0; p < passes; p++) {
      int[] last = new int[lanes];
      for (int k = 0; k < lanes; k++) {
        last[k] = coolant(cell(p, along - 1, k));
        for (int j = 0; j < along; j++) {
          int strip = deep ? (p % 2 == 0 ? j : along - 1 - j) : p * along + j;
          int level = deep ? (passes - 1 - p) * lanes + k : k;
          cellAt[level * strips + strip] = cell(p, j, k);
        }
      }
      leaving[p] = Outflow.even(last);
    }
  }

  int passes() {
    return passes;
  }

  /** Returns the number of cells along a lane. */
  int along() {
    return along;
  }

  /** Returns the number of lanes of a pass. */
  int lanes() {
    return lanes;
  }

  /** Returns the number of strips of air. */
  int strips() {
    return strips;
  }

  /** Returns the number of cells that a strip of air crosses. */
  int depth() {
    return depth;
  }

  int cells() {
    return passes * along * lanes;
  }

  /** Returns the cell at a place along the coolant's way. */
  int cell(int pass, int position, int lane) {
    return (pass * along + position) * lanes + lane;
  }

  /** Returns the cell that a strip of air meets at a depth. */
  int cellAt(int level, int strip) {
    return cellAt[level * strips + strip];
  }

  /** Returns the state of a cell's coolant. */
  int coolant(int cell) {
    return coolantFirst + cell;
  }

  /** Returns the state of a cell's wall. */
  int wall(int cell) {
    return wallFirst + cell;
  }

  /** Returns the states of the coolant that leaves a pass, lane by lane. */
  Outflow leaving(int pass) {
    return leaving[pass];
  }
}
