package soakloop.simulate;

import soakloop.exchange.PipeFlow;
import soakloop.fluid.Coolant;
import soakloop.rig.Hose;

/**
 * A hose or pipe: coolant moves through a row of cells as a front, each cell with layers of wall.
 *
 * <p>The coolant leaving a cell is reconstructed to second order with van Albada's limiter (G. D.
 * van Albada, B. van Leer, W. W. Roberts, Astron. Astrophys. 108 (1982) 76), which keeps a front
 * steep without making a temperature that was not there.
 *
 * <p>The wall is a row of cylindrical shells, the inner ones thinner because heat enters there.
 * Their borders follow a geometric law, and each shell's temperature sits at the law's middle
 * between two borders, nearer the inner one; shells are joined by the conduction in between. In a
 * plane wall warmed from one side this takes up heat as the exact solution does within 0.6 % of the
 * wall's capacity from 2 s on with three layers of 4 mm of rubber; with temperatures at
 * mid-thickness it would be 3 %.
 */
final class HoseCells implements LoopCells {
  /** The outermost wall layer is this much thicker than the innermost. */
  private static final double LAYER_SPREAD = 4;

  /** A wall that heat crosses in less (thickness squared over diffusivity) is one layer, s. */
  private static final double QUICK = 1;

  /** No layer is so thin that heat crosses it in less, s. */
  private static final double QUICKEST_LAYER = 0.01;

  private final Hose hose;
  private final Coolant coolant;
  private final EnthalpyScale scale;
  private final int first;
  private final int wallFirst;
  private final int cells;
  private final int layers;
  private final Outflow outflow;
  private final double cellMass;
  private final double[] layerCapacity;

  /** Between coolant and layer 0, between layers, and from the last layer to the outside; W/K. */
  private final double[] joint;

  private final double beyondFilm;

  HoseCells(Hose hose, Coolant coolant, EnthalpyScale scale, StateLayout layout, double density) {
    this.hose = hose;
    this.coolant = coolant;
    this.scale = scale;
    this.cells = hose.cells();
    this.layers = layers(hose);
    this.first = layout.reserveCoolant(cells);
    this.outflow = Outflow.even(first + cells - 1);
    this.wallFirst = layout.reserve(cells * layers);
    this.cellMass = density * hose.coolantVolume() / cells;
    this.layerCapacity = new double[layers];
    this.joint = new double[layers + 1];
    this.beyondFilm = layOutWall();
  }

  /** Returns the layers asked for, or as many as do not only make the equations stiff. */
  private static int layers(Hose hose) {
    Hose.Wall wall = hose.wall();
    double diffusivity = wall.conductivity() / wall.heatCapacity();
    if (wall.thickness() * wall.thickness() < QUICK * diffusivity) {
      return Math.min(1, hose.layers());
    }
    double thinnest = Math.sqrt(QUICKEST_LAYER * diffusivity);
    int layers = hose.layers();
    while (layers > 1 && innermost(wall, layers) < thinnest) {
      layers--;
    }
    return layers;
  }

  /** Returns how much thicker each layer is than the one inside it. */
  private static double growth(int layers) {
    return Math.pow(LAYER_SPREAD, 1.0 / Math.max(1, layers - 1));
  }

  private static double innermost(Hose.Wall wall, int layers) {
    double growth = growth(layers);
    return wall.thickness() * (growth - 1) / (Math.pow(growth, layers) - 1);
  }

  /** Fills capacities and outer joints; returns the resistance between film and first node. */
  private double layOutWall() {
    double length = hose.length() / cells;
    double inner = hose.bore() / 2;
    double outer = inner + hose.wall().thickness();
    double perRadius = 1 / (2 * Math.PI * hose.wall().conductivity() * length);
    double outside = 1 / (hose.outside() * 2 * Math.PI * outer * length);
    double firstResistance = 0;
    double growth = growth(layers);
    double nodeShare = 1 / (1 + Math.sqrt(growth));
    double thickness = innermost(hose.wall(), layers);
    double radius = inner;
    double node = inner;
    for (int k = 0; k < layers; k++) {
      double nextNode = radius + nodeShare * thickness;
      double resistance = perRadius * Math.log(nextNode / node);
      if (k == 0) {
        firstResistance = resistance;
      } else {
        joint[k] = 1 / resistance;
      }
      double next = radius + thickness;
      layerCapacity[k] =
          Math.PI * (next * next - radius * radius) * length * hose.wall().heatCapacity();
      node = nextNode;
      radius = next;
      thickness *= growth;
    }
    double last = perRadius * Math.log(outer / node) + outside;
    if (layers == 0) {
      return last;
    }
    joint[layers] = 1 / last;
    return firstResistance;
  }

  /** Sets the joint between coolant and wall with the film that the flow makes. */
  @Override
  public void startPhase(double[] y, double coolantFlow) {
    double mean = 0;
    for (int i = 0; i < cells; i++) {
      mean += scale.temperature(y[first + i]) / cells;
    }
    double area = Math.PI * hose.bore() * hose.length() / cells;
    joint[0] = 1 / (1 / (film(mean, coolantFlow) * area) + beyondFilm);
  }

  private double film(double mean, double flow) {
    double bore = hose.bore();
    double temperature = coolant.held(mean);
    double viscosity = coolant.viscosity(temperature);
    double reynolds = 4 * flow * coolant.density(temperature) / (Math.PI * bore * viscosity);
    double conductivity = coolant.conductivity(temperature);
    double prandtl = viscosity * coolant.heatCapacity(temperature) / conductivity;
    return PipeFlow.nusselt(reynolds, prandtl) * conductivity / bore;
  }

  @Override
  public void derivatives(double[] y, double[] dy, Moment m) {
    double before = m.coolantTheta;
    double in = before;
    double exchange = m.coolantMassFlow / cellMass;
    double perHeat = 1 / (cellMass * scale.heatCapacity());
    for (int i = 0; i < cells; i++) {
      double theta = y[first + i];
      // The hose's inlet face is half a cell away, so its slope counts double.
      double back = i == 0 ? 2 * (theta - before) : theta - before;
      double ahead = i == cells - 1 ? 0 : y[first + i + 1] - theta;
      double out = theta + halfSlope(back, ahead);
      double heat = wall(i, scale.temperature(theta), y, dy, m);
      dy[first + i] = exchange * (in - out) + perHeat * heat;
      before = theta;
      in = out;
    }
  }

  /** Van Albada's average of two slopes, halved; zero where they disagree in sign. */
  private static double halfSlope(double back, double ahead) {
    double product = back * ahead;
    return product <= 0 ? 0 : 0.5 * product * (back + ahead) / (back * back + ahead * ahead);
  }

  /** Writes the wall's derivatives beside cell i and returns the heat into its coolant. */
  private double wall(int i, double coolantTemperature, double[] y, double[] dy, Moment m) {
    int at = wallFirst + i * layers;
    double inside = coolantTemperature;
    double fromInside = 0;
    double intoCoolant = 0;
    for (int k = 0; k < layers; k++) {
      double t = y[at + k];
      double flow = joint[k] * (inside - t);
      if (k == 0) {
        intoCoolant = -flow;
      } else {
        dy[at + k - 1] = (fromInside - flow) / layerCapacity[k - 1];
      }
      fromInside = flow;
      inside = t;
    }
    double fromOutside = joint[layers] * (m.underhood - inside);
    m.heatUnderhood += fromOutside;
    if (layers == 0) {
      return fromOutside;
    }
    dy[at + layers - 1] = (fromInside + fromOutside) / layerCapacity[layers - 1];
    return intoCoolant;
  }

  @Override
  public void heats(double[] y, Moment m) {
    for (int i = 0; i < cells; i++) {
      double outermost =
          layers == 0 ? scale.temperature(y[first + i]) : y[wallFirst + (i + 1) * layers - 1];
      m.heatUnderhood += joint[layers] * (m.underhood - outermost);
    }
  }

  @Override
  public void outlet(double[] y, Moment m) {
    m.coolantTheta = y[first + cells - 1];
  }

  @Override
  public Outflow outflow() {
    return outflow;
  }

  @Override
  public void jacobian(
      double[] y, Moment m, Outflow inlet, Ledger ledger, JacobianEntries entries) {
    double exchange = m.coolantMassFlow / cellMass;
    for (int k = 0; k < inlet.size(); k++) {
      entries.add(first, inlet.state(k), exchange * inlet.share(k));
    }
    double before = m.coolantTheta;
    for (int i = 0; i < cells; i++) {
      int row = first + i;
      double back = i == 0 ? 2 * (y[row] - before) : y[row] - before;
      double ahead = i == cells - 1 ? 0 : y[row + 1] - y[row];
      double withBack = slopeShare(back, ahead) * (i == 0 ? 2 : 1);
      double withAhead = i == cells - 1 ? 0 : slopeShare(ahead, back);
      // What leaves this cell enters the next, and changes with three cells.
      for (int to = row; to <= Math.min(row + 1, first + cells - 1); to++) {
        double sign = to == row ? -exchange : exchange;
        entries.add(to, row, sign * (1 + withBack - withAhead));
        if (i < cells - 1) {
          entries.add(to, row + 1, sign * withAhead);
        }
        if (i > 0) {
          entries.add(to, row - 1, -sign * withBack);
        } else {
          for (int k = 0; k < inlet.size(); k++) {
            entries.add(to, inlet.state(k), -sign * withBack * inlet.share(k));
          }
        }
      }
      before = y[row];
      wallJacobian(i, ledger, entries);
    }
  }

  private void wallJacobian(int i, Ledger ledger, JacobianEntries entries) {
    int inside = first + i;
    double insideCapacity = cellMass * scale.heatCapacity();
    for (int k = 0; k < layers; k++) {
      int layer = wallFirst + i * layers + k;
      entries.add(inside, inside, -joint[k] / insideCapacity);
      entries.add(inside, layer, joint[k] / insideCapacity);
      entries.add(layer, inside, joint[k] / layerCapacity[k]);
      entries.add(layer, layer, -joint[k] / layerCapacity[k]);
      inside = layer;
      insideCapacity = layerCapacity[k];
    }
    entries.add(inside, inside, -joint[layers] / insideCapacity);
    entries.add(ledger.underhood(), inside, -joint[layers]);
  }

  /** Change of {@link #halfSlope} with its first slope. */
  private static double slopeShare(double slope, double other) {
    double product = slope * other;
    if (product <= 0) {
      return 0;
    }
    double squares = slope * slope + other * other;
    double value = product * (slope + other);
    return 0.5
        * ((2 * product + other * other) * squares - 2 * slope * value)
        / (squares * squares);
  }

  @Override
  public void fill(double[] y, double temperature) {
    double theta = scale.theta(temperature);
    java.util.Arrays.fill(y, first, first + cells, theta);
    java.util.Arrays.fill(y, wallFirst, wallFirst + cells * layers, temperature);
  }

  @Override
  public double storedInCoolant(double[] y) {
    double sum = 0;
    for (int i = 0; i < cells; i++) {
      sum += cellMass * scale.heatCapacity() * y[first + i];
    }
    return sum;
  }

  @Override
  public double storedInWalls(double[] y) {
    double sum = 0;
    for (int i = 0; i < cells * layers; i++) {
      sum += layerCapacity[i % layers] * y[wallFirst + i];
    }
    return sum;
  }
}
