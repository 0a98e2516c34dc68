package soakloop.flow;

/** Where a drive meets a resistance, or why nothing flows. */
public sealed interface OperatingPoint {
  /** Volume flow, m3/s. */
  double flow();

  /** Pressure rise of the drive, Pa. */
  double pressure();

  /**
   * A stable balance: more flow would meet more loss than rise.
   *
   * @param flow m3/s
   * @param pressure Pa
   * @param balances how many balances were seen on the way, 1 for a falling curve; with more, the
   *     greatest stable flow is given and the loop may settle at another
   */
  record Balanced(double flow, double pressure, int balances) implements OperatingPoint {}

  /**
   * Nothing flows.
   *
   * @param cause why
   * @param pressure rise without flow, Pa
   */
  record Still(Cause cause, double pressure) implements OperatingPoint {
    @Override
    public double flow() {
      return 0;
    }
  }

  /**
   * The drive's table ends before the balance: the true flow is more than this.
   *
   * @param flow last flow of the table, m3/s
   * @param pressure rise there, Pa
   * @param loss loss there, Pa, less than the rise
   */
  record PastCurve(double flow, double pressure, double loss) implements OperatingPoint {}

  /**
   * Nothing brakes: the drive pushes more than is lost at any flow.
   *
   * @param pressure rise left at the greatest flow that was tried, Pa
   */
  record Unbraked(double pressure) implements OperatingPoint {
    @Override
    public double flow() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /** Why nothing flows. */
  enum Cause {
    /** The drive stands still or gives no pressure without flow. */
    NO_PRESSURE,
    /** The way is shut. */
    DEAD_HEADED,
    /** Flow is so small that it cannot be told from none. */
    CLOGGED
  }
}
