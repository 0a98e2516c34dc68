package soakloop.flow;

import java.util.List;
import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/**
 * Something that pushes: a pump or a fan, as pressure rise over volume flow.
 *
 * <p>A rise below zero is a brake: a fan that ram air movers past its free flow.
 */
public sealed interface Mover {
  /**
   * Pressure rise.
   *
   * @param flow m3/s, 0 or more
   * @return Pa
   */
  double rise(double flow);

  /** Greatest flow the description reaches, m3/s; infinite if it has no end. */
  double reach();

  /** Whether the rise never grows with flow, so that there is one balance at the most. */
  default boolean falls() {
    return true;
  }

  /** Stands still and adds nothing. */
  record Off() implements Mover {
    @Override
    public double rise(double flow) {
      return 0;
    }

    @Override
    public double reach() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /**
   * A pump or fan from its two ends: dp = dp0 (1 - (Q / Q0)^2).
   *
   * <p>Past its free flow the rise goes on below zero. Source: the usual one-line description, no
   * more than that; a measured curve is better.
   *
   * @param shutOff pressure without flow, Pa
   * @param freeFlow flow without pressure, m3/s
   */
  record Parabola(double shutOff, double freeFlow) implements Mover {
    /** Checks the parts. */
    public Parabola {
      Require.positive("shut-off pressure", shutOff);
      Require.positive("free flow", freeFlow);
    }

    @Override
    public double rise(double flow) {
      double share = Require.notNegative("flow", flow) / freeFlow;
      return shutOff * (1 - share * share);
    }

    @Override
    public double reach() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /**
   * A tabulated curve, straight between its points. It may rise with flow somewhere. It is never
   * used past its last point.
   *
   * @param riseOverFlow Pa over m3/s, beginning at no flow
   */
  record Table(Curve riseOverFlow) implements Mover {
    /** Checks that the curve begins at no flow and goes somewhere. */
    public Table {
      if (riseOverFlow.size() < 2 || riseOverFlow.place(0) != 0) {
        throw new IllegalArgumentException(
            "a pump or fan curve begins at no flow and has two points or more");
      }
    }

    @Override
    public double rise(double flow) {
      return riseOverFlow.at(Require.notNegative("flow", flow));
    }

    @Override
    public double reach() {
      return riseOverFlow.place(riseOverFlow.size() - 1);
    }

    @Override
    public boolean falls() {
      for (int i = 1; i < riseOverFlow.size(); i++) {
        if (riseOverFlow.value(i) > riseOverFlow.value(i - 1)) {
          return false;
        }
      }
      return true;
    }
  }

  /**
   * The same machine at another speed: flow goes with speed, pressure with its square.
   *
   * <p>Source: affinity laws (dimensional analysis); they neglect the Reynolds number. Speed
   * follows voltage in proportion only roughly: taking a voltage ratio for the speed ratio is
   * common practice without a source.
   *
   * @param mover at its rated speed
   * @param speed over rated speed [-], 0 or more; 0 is {@link Off}
   */
  record AtSpeed(Mover mover, double speed) implements Mover {
    /** Checks the speed. */
    public AtSpeed {
      Require.notNegative("speed ratio", speed);
    }

    @Override
    public double rise(double flow) {
      return speed == 0 ? 0 : speed * speed * mover.rise(flow / speed);
    }

    @Override
    public double reach() {
      return speed == 0 ? Double.POSITIVE_INFINITY : speed * mover.reach();
    }

    @Override
    public boolean falls() {
      return mover.falls();
    }

    /** Shaft power over rated shaft power at the corresponding flow: speed cubed [-]. */
    public double powerRatio() {
      return speed * speed * speed;
    }
  }

  /**
   * Machines one after the other: pressures add.
   *
   * @param movers in any order
   */
  record InSeries(List<Mover> movers) implements Mover {
    /** Copies the list. */
    public InSeries {
      movers = List.copyOf(movers);
    }

    @Override
    public double rise(double flow) {
      double sum = 0;
      for (Mover mover : movers) {
        sum += mover.rise(flow);
      }
      return sum;
    }

    @Override
    public double reach() {
      return movers.stream().mapToDouble(Mover::reach).min().orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    public boolean falls() {
      return movers.stream().allMatch(Mover::falls);
    }
  }

  /**
   * A pressure that is there whatever flows, such as ram air.
   *
   * @param pressure Pa, 0 or more
   */
  record Constant(double pressure) implements Mover {
    /** Checks the pressure. */
    public Constant {
      Require.notNegative("pressure", pressure);
    }

    @Override
    public double rise(double flow) {
      return pressure;
    }

    @Override
    public double reach() {
      return Double.POSITIVE_INFINITY;
    }
  }
}
