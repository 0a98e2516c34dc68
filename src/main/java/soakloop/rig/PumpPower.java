package soakloop.rig;

import soakloop.quantity.Require;

/** What a running pump draws; all of it ends as heat in the coolant. */
public sealed interface PumpPower {
  /**
   * Returns the power drawn.
   *
   * @param flow m3/s
   * @param pressure rise across the pump, Pa
   * @return W
   */
  double at(double flow, double pressure);

  /**
   * As measured or read off a label, whatever it pumps.
   *
   * @param power W
   */
  record Stated(double power) implements PumpPower {
    /** Checks the power. */
    public Stated {
      Require.notNegative("pump power", power);
    }

    @Override
    public double at(double flow, double pressure) {
      return power;
    }
  }

  /**
   * What the flow takes, over an efficiency of motor and pump together.
   *
   * @param efficiency 0.01 to 1
   */
  record FromFlow(double efficiency) implements PumpPower {
    /** Checks the efficiency. */
    public FromFlow {
      Require.within("pump efficiency", efficiency, 0.01, 1);
    }

    @Override
    public double at(double flow, double pressure) {
      return flow * pressure / efficiency;
    }
  }
}
