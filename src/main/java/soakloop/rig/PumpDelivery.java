package soakloop.rig;

import java.util.OptionalDouble;
import soakloop.flow.Mover;
import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/** What a running pump gives. */
public sealed interface PumpDelivery {
  /**
   * A flow that was measured or is taken as known, whatever the loop.
   *
   * @param flow m3/s
   */
  record StatedFlow(double flow) implements PumpDelivery {
    /** Checks the flow. */
    public StatedFlow {
      Require.positive("pump flow", flow);
    }
  }

  /**
   * A pressure over flow that meets the loop's resistance.
   *
   * @param mover as it runs, at its speed and with all pumps in series; falling with flow
   * @param label flow that its label claims, m3/s, if it is known by that
   */
  record Pushing(Mover mover, OptionalDouble label) implements PumpDelivery {
    /** Checks that more flow never has more pressure. */
    public Pushing {
      if (!mover.falls()) {
        throw new IllegalArgumentException("a pump's pressure must fall with flow");
      }
    }
  }

  /**
   * Returns a pump's measured curve.
   *
   * @param pressureOverFlow pressure rise in Pa over flow in m3/s, from no flow, falling; where it
   *     ends above no pressure it is not used past its end
   * @throws IllegalArgumentException if it is not such a curve
   */
  static Mover curve(Curve pressureOverFlow) {
    int last = pressureOverFlow.size() - 1;
    if (last < 1 || pressureOverFlow.place(0) != 0) {
      throw new IllegalArgumentException("a pump curve starts at no flow and has two points");
    }
    for (int i = 1; i <= last; i++) {
      if (!(pressureOverFlow.value(i) < pressureOverFlow.value(i - 1))) {
        throw new IllegalArgumentException("a pump curve's pressure must fall with flow");
      }
    }
    return new Mover.Table(pressureOverFlow);
  }
}
