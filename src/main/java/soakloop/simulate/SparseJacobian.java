package soakloop.simulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A Jacobian whose places are found on the first pass and known on every later one.
 *
 * <p>Rows of dynamic states make a square matrix for {@link SparseLu}; rows of quadratures are only
 * multiplied.
 */
final class SparseJacobian {
  private final int dynamic;
  private final int size;
  private final List<int[]> places = new ArrayList<>();
  private int[] order = new int[256];
  private int given;
  private double[] values = {};
  private final Cursor cursor = new Cursor();

  /** Row, column and index of the value of each entry of a quadrature. */
  private final int[] quadratureRow;

  private final int[] quadratureColumn;
  private final int[] quadratureValue;

  SparseJacobian(LinearlyImplicitEquation equation, double[] y) {
    this.dynamic = equation.dynamicStates();
    this.size = equation.getDimension();
    Map<Long, Integer> known = new HashMap<>();
    equation.jacobian(
        y,
        (row, column, value) -> {
          int index =
              known.computeIfAbsent(
                  (long) row * size + column,
                  key -> {
                    places.add(new int[] {row, column});
                    return places.size() - 1;
                  });
          if (given == order.length) {
            order = java.util.Arrays.copyOf(order, 2 * given);
          }
          order[given++] = index;
        });
    values = new double[places.size()];
    quadratureValue =
        IntStream.range(0, places.size()).filter(i -> places.get(i)[0] >= dynamic).toArray();
    quadratureRow = IntStream.of(quadratureValue).map(i -> places.get(i)[0]).toArray();
    quadratureColumn = IntStream.of(quadratureValue).map(i -> places.get(i)[1]).toArray();
  }

  /** Returns the places of the dynamic rows, each row and column; index as of {@link #value}. */
  List<int[]> places() {
    return places;
  }

  int dynamicStates() {
    return dynamic;
  }

  double value(int index) {
    return values[index];
  }

  /** Takes the values at a state whose derivatives were just worked out. */
  void update(LinearlyImplicitEquation equation, double[] y) {
    java.util.Arrays.fill(values, 0);
    cursor.next = 0;
    equation.jacobian(y, cursor);
  }

  /** Adds the quadrature rows times the dynamic part of a vector to its quadratures. */
  void addQuadratures(double[] x) {
    for (int i = 0; i < quadratureRow.length; i++) {
      x[quadratureRow[i]] += values[quadratureValue[i]] * x[quadratureColumn[i]];
    }
  }

  private final class Cursor implements JacobianEntries {
    private int next;

    @Override
    public void add(int row, int column, double value) {
      values[order[next++]] += value;
    }
  }
}
