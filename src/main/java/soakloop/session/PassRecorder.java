package soakloop.session;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;
import soakloop.quantity.Bracket;
import soakloop.quantity.Curve;

/** Keeps the speeds of a pass over time, and when it comes by places on its way. */
final class PassRecorder implements ODEStepHandler {
  /** Longest time between two points of a curve, s. */
  private static final double APART = 0.05;

  /** Points nearer than this are one, s. */
  private static final double SAME = 1e-7;

  private final List<Double> places;
  private final double[] passed;
  private int next;
  private double[] time = new double[512];
  private double[] road = new double[512];
  private double[] engine = new double[512];
  private int size;
  private Speed speed = (t, v) -> 0;

  /** Engine speed at a time and road speed. */
  interface Speed {
    double at(double t, double v);
  }

  /**
   * Begins at rest.
   *
   * @param engineSpeed rev/s
   * @param places rising, m
   */
  PassRecorder(double engineSpeed, List<Double> places) {
    this.places = places;
    this.passed = new double[places.size()];
    add(0, 0, engineSpeed);
    while (next < passed.length && !(places.get(next) > 0)) {
      passed[next++] = 0;
    }
  }

  /** Says what the engine does from here on. */
  void follow(Speed engineSpeed) {
    speed = engineSpeed;
  }

  @Override
  public void handleStep(ODEStateInterpolator step) {
    double from = step.getPreviousState().getTime();
    double to = step.getCurrentState().getTime();
    int points = (int) Math.ceil((to - from) / APART);
    for (int i = 1; i <= points; i++) {
      double t = i == points ? to : from + (to - from) * i / points;
      double v = Math.max(0, step.getInterpolatedState(t).getPrimaryState()[1]);
      if (t > time[size - 1] + SAME) {
        add(t, v, speed.at(t, v));
      }
    }
    while (next < passed.length && way(step, to) >= places.get(next)) {
      double place = places.get(next);
      passed[next++] =
          way(step, from) >= place
              ? from
              : Bracket.root(0, to - from, dt -> way(step, from + dt) - place) + from;
    }
  }

  private static double way(ODEStateInterpolator step, double t) {
    return step.getInterpolatedState(t).getPrimaryState()[0];
  }

  private void add(double t, double v, double n) {
    if (size == time.length) {
      time = Arrays.copyOf(time, 2 * size);
      road = Arrays.copyOf(road, 2 * size);
      engine = Arrays.copyOf(engine, 2 * size);
    }
    time[size] = t;
    road[size] = v;
    engine[size++] = n;
  }

  /** Returns when each place was passed, s. */
  double[] marks() {
    return passed.clone();
  }

  Curve roadSpeed() {
    return Curve.of(Arrays.copyOf(time, size), Arrays.copyOf(road, size));
  }

  Curve engineSpeed() {
    return Curve.of(Arrays.copyOf(time, size), Arrays.copyOf(engine, size));
  }
}
