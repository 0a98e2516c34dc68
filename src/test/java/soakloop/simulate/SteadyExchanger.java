package soakloop.simulate;

import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import soakloop.rig.Exchanger;
import soakloop.rig.Passes;
import soakloop.rig.PowerLawConductance;

/**
 * The steady state of an exchanger's cells between two streams of constant properties. The cells'
 * equations are then linear, so the state at which every derivative is zero is solved for.
 */
public final class SteadyExchanger {
  private static final double CAPACITY_RATE = 1000; // W/K, of the larger stream
  private static final double COOLANT_FLOW = 4e-4; // m3/s
  private static final double AIR_FLOW = 0.5; // kg/s
  private static final double AIR_IN = 400; // K
  private static final double COOLANT_IN = 300; // K

  private final double airRate;
  private final double coolantRate;
  private final ExchangerCells cells;
  private final Moment moment = new Moment();
  private final int size;

  private SteadyExchanger(
      Passes passes, Exchanger.Grid grid, double units, double ratio, boolean airIsLess) {
    airRate = airIsLess ? ratio * CAPACITY_RATE : CAPACITY_RATE;
    coolantRate = airIsLess ? CAPACITY_RATE : ratio * CAPACITY_RATE;
    double conductance = units * ratio * CAPACITY_RATE;
    SteadyCoolant coolant = new SteadyCoolant(1000, coolantRate / (1000 * COOLANT_FLOW));
    Exchanger exchanger =
        new Exchanger(
            new PowerLawConductance(conductance, AIR_FLOW, COOLANT_FLOW, 0.7, 0.01, 0.6, 0.3, 0.1),
            3000,
            1e-3,
            passes,
            grid);
    StateLayout layout = new StateLayout();
    cells =
        new ExchangerCells(
            exchanger, coolant, new EnthalpyScale(coolant), layout, 1000, Optional.empty());
    size = layout.size();
    cells.flows(new double[size], AIR_IN, AIR_FLOW, airRate, COOLANT_FLOW, coolantRate);
    moment.coolantFlow = COOLANT_FLOW;
    moment.coolantMassFlow = 1000 * COOLANT_FLOW;
    moment.coolantTheta = COOLANT_IN; // of a constant heat capacity, so the temperature itself
  }

  /**
   * Returns the effectiveness of an exchanger on a grid.
   *
   * @param passes coolant passes
   * @param grid cells of each pass
   * @param units transfer units of the whole exchanger
   * @param ratio smaller over larger capacity rate
   * @param airIsLess whether the air has the smaller capacity rate
   */
  public static double effectiveness(
      Passes passes, Exchanger.Grid grid, double units, double ratio, boolean airIsLess) {
    return new SteadyExchanger(passes, grid, units, ratio, airIsLess).effectiveness();
  }

  private double effectiveness() {
    double[] steady = solve();
    derivatives(steady);
    double least = Math.min(airRate, coolantRate);
    return cells.heat() / (least * (AIR_IN - COOLANT_IN));
  }

  private double[] solve() {
    double[] y = new double[size];
    java.util.Arrays.fill(y, COOLANT_IN);
    double[] constant = derivatives(y);
    double[][] slopes = new double[size][size];
    for (int j = 0; j < size; j++) {
      y[j] += 1;
      double[] moved = derivatives(y);
      y[j] -= 1;
      for (int i = 0; i < size; i++) {
        slopes[i][j] = constant[i] - moved[i];
      }
    }
    double[] rise =
        new LUDecomposition(new Array2DRowRealMatrix(slopes, false))
            .getSolver()
            .solve(new ArrayRealVector(constant, false))
            .toArray();
    for (int i = 0; i < size; i++) {
      y[i] += rise[i];
    }
    return y;
  }

  private double[] derivatives(double[] y) {
    double[] dy = new double[size];
    cells.passAir(y, AIR_IN, airRate);
    cells.passCoolant(y, dy, moment);
    return dy;
  }
}
