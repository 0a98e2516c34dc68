package soakloop.invented;

import java.util.Arrays;

/**
 * A rubber hose: coolant as a queue of plugs that never mix, the wall in segments along and layers
 * through its thickness.
 */
final class PlugHose {

  /**
   * What the hose is.
   *
   * @param length [m]
   * @param bore inside diameter [m]
   * @param wall wall thickness [m]
   * @param segments wall segments along the hose [-]
   * @param layers wall layers through the thickness [-]
   */
  record Shape(double length, double bore, double wall, int segments, int layers) {
    /** The same hose on another mesh. */
    Shape withMesh(int newSegments, int newLayers) {
      return new Shape(length, bore, wall, newSegments, newLayers);
    }

    double volume() {
      return length * Math.PI * bore * bore / 4;
    }
  }

  /**
   * Conductivity of the rubber [W/(m K)], density [kg/m3], heat capacity [J/(kg K)]: from memory.
   */
  private static final double CONDUCTIVITY = 0.27;

  private static final double WALL_PER_VOLUME = 1160.0 * 1750.0;

  /** Film outside the hose [W/(m2 K)]. */
  private static final double OUTSIDE_FILM = 11;

  /** Film inside the hose at 25 L/min [W/(m2 K)]; grows with flow to the 0.8. */
  private static final double INSIDE_FILM = 1500;

  private static final double INSIDE_FILM_FLOW = 25.0 / 60000.0;
  private static final int QUEUE = 8192;

  private final Shape shape;
  private final double coolantPerVolume;
  private final double[] plugVolume = new double[QUEUE];
  private final double[] plugTemperature = new double[QUEUE];
  private int head;
  private int count;
  private final double[][] layer;
  private final double[] between;
  private final double[] layerCapacity;
  private final double outward;
  private final double innerHalfLayer;
  private final double[] drawn;
  private double out;

  PlugHose(Shape shape, double coolantPerVolume, double temperature) {
    this.shape = shape;
    this.coolantPerVolume = coolantPerVolume;
    int n = shape.layers;
    layer = new double[shape.segments][n];
    for (double[] segment : layer) {
      Arrays.fill(segment, temperature);
    }
    drawn = new double[shape.segments];
    between = new double[n - 1];
    layerCapacity = new double[n];
    double length = shape.length / shape.segments;
    double thickness = shape.wall / n;
    double inner = shape.bore / 2;
    double through = 2 * Math.PI * CONDUCTIVITY * length;
    for (int i = 0; i < n; i++) {
      double r = inner + i * thickness;
      double next = r + thickness;
      layerCapacity[i] = WALL_PER_VOLUME * length * Math.PI * (next * next - r * r);
      if (i < n - 1) {
        between[i] = through / StrictMath.log((next + thickness / 2) / (r + thickness / 2));
      }
    }
    innerHalfLayer = StrictMath.log((inner + thickness / 2) / inner) / through;
    double outer = inner + shape.wall;
    outward =
        1
            / (StrictMath.log(outer / (outer - thickness / 2)) / through
                + 1 / (OUTSIDE_FILM * 2 * Math.PI * outer * length));
    push(shape.volume(), temperature);
    split(shape.segments * 4);
    out = temperature;
  }

  private void split(int parts) {
    double volume = plugVolume[head] / parts;
    double temperature = plugTemperature[head];
    head = 0;
    count = 0;
    for (int i = 0; i < parts; i++) {
      push(volume, temperature);
    }
  }

  private void push(double volume, double temperature) {
    if (count == QUEUE) {
      throw new IllegalStateException("hose queue is full: step too short for this flow");
    }
    int tail = (head + count) % QUEUE;
    plugVolume[tail] = volume;
    plugTemperature[tail] = temperature;
    count++;
  }

  private double pull(double volume) {
    double left = volume;
    double heat = 0;
    while (left > 0 && count > 1 && plugVolume[head] <= left) {
      heat += plugVolume[head] * plugTemperature[head];
      left -= plugVolume[head];
      head = (head + 1) % QUEUE;
      count--;
    }
    heat += left * plugTemperature[head];
    plugVolume[head] -= left;
    return heat / volume;
  }

  /**
   * Steps on.
   *
   * @param dt step [s]
   * @param flow coolant flow [m3/s]
   * @param in inlet [degC]
   * @param around air around the hose [degC]
   * @return heat from the surroundings into the wall [W]
   */
  double step(double dt, double flow, double in, double around) {
    push(flow * dt, in);
    out = pull(flow * dt);
    exchange(dt, flow);
    return conduct(dt, around);
  }

  private void exchange(double dt, double flow) {
    double length = shape.length / shape.segments;
    double film = INSIDE_FILM * StrictMath.pow(flow / INSIDE_FILM_FLOW, 0.8);
    double conductance = 1 / (1 / (film * Math.PI * shape.bore * length) + innerHalfLayer);
    double segmentVolume = shape.volume() / shape.segments;
    double rate = conductance * dt / (segmentVolume * coolantPerVolume);
    Arrays.fill(drawn, 0);
    double passed = 0;
    int k = head;
    for (int i = 0; i < count; i++) {
      double volume = plugVolume[k];
      int segment = (int) ((passed + volume / 2) / segmentVolume);
      segment = shape.segments - 1 - Math.min(segment, shape.segments - 1);
      double change = rate * (layer[segment][0] - plugTemperature[k]);
      plugTemperature[k] += change;
      drawn[segment] += change * volume * coolantPerVolume;
      passed += volume;
      k = k + 1 == QUEUE ? 0 : k + 1;
    }
  }

  private double conduct(double dt, double around) {
    int n = shape.layers;
    double gained = 0;
    for (int s = 0; s < shape.segments; s++) {
      double[] t = layer[s];
      double inflow = -drawn[s];
      for (int i = 0; i < n - 1; i++) {
        double next = dt * between[i] * (t[i] - t[i + 1]);
        t[i] += (inflow - next) / layerCapacity[i];
        inflow = next;
      }
      double outside = dt * outward * (around - t[n - 1]);
      t[n - 1] += (inflow + outside) / layerCapacity[n - 1];
      gained += outside;
    }
    return gained / dt;
  }

  /** Outlet during the last step [degC]. */
  double out() {
    return out;
  }

  /** Heat held above 0 degC [J]. */
  double stored() {
    double heat = 0;
    for (int i = 0; i < count; i++) {
      int k = (head + i) % QUEUE;
      heat += plugVolume[k] * plugTemperature[k] * coolantPerVolume;
    }
    for (double[] t : layer) {
      for (int i = 0; i < shape.layers; i++) {
        heat += t[i] * layerCapacity[i];
      }
    }
    return heat;
  }
}
