package soakloop.rig;

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
   * A curve that meets the loop's resistance.
   *
   * @param pressureOverFlow pressure rise in Pa over flow in m3/s, falling, ending at 0
   */
  record FromCurve(Curve pressureOverFlow) implements PumpDelivery {
    /** Checks that the curve falls to zero. */
    public FromCurve {
      int last = pressureOverFlow.size() - 1;
      if (last < 1 || pressureOverFlow.place(0) != 0 || pressureOverFlow.value(last) != 0) {
        throw new IllegalArgumentException(
            "a pump curve starts at no flow and ends at no pressure");
      }
      for (int i = 1; i <= last; i++) {
        if (!(pressureOverFlow.value(i) < pressureOverFlow.value(i - 1))) {
          throw new IllegalArgumentException("a pump curve's pressure must fall with flow");
        }
      }
    }
  }
}
