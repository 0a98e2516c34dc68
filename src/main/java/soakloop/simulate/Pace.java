package soakloop.simulate;

import java.util.Comparator;
import java.util.Locale;
import soakloop.rig.Core;
import soakloop.rig.Exchanger;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Hose;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;

/** What makes a run slow: a step cannot be much longer than coolant takes through a cell. */
final class Pace {
  /** Coolant that crosses a cell in less makes a run slow by itself, s. */
  private static final double QUICK = 0.02;

  private Pace() {}

  /**
   * Says why a run takes long, and what helps.
   *
   * @param loop the loop
   * @param states of the model
   */
  static String of(Loop loop, int states) {
    double flow = LoopFlow.operating(loop);
    LoopElement quickest =
        loop.elements().stream().min(Comparator.comparingDouble(Pace::cellVolume)).orElseThrow();
    double time = cellVolume(quickest) / flow;
    return time < QUICK
        ? String.format(
            Locale.ROOT,
            "coolant crosses a cell of `%s` in %.2g ms, and no step can be much longer; give it"
                + " fewer cells or more coolant, or make the session shorter",
            quickest.name(),
            1000 * time)
        : "the model has "
            + states
            + " states for this session; give it fewer cells or layers, or make the session"
            + " shorter";
  }

  /** Returns the coolant that one cell along the coolant's way holds, m3. */
  private static double cellVolume(LoopElement element) {
    int cells = 1;
    if (element instanceof Core core) {
      cells = along(core.exchanger());
    } else if (element instanceof HeatExchanger outside) {
      cells = along(outside.exchanger());
    } else if (element instanceof Hose hose) {
      cells = hose.cells();
    }
    return element.coolantVolume() / cells;
  }

  private static int along(Exchanger exchanger) {
    return exchanger.passes().count() * exchanger.grid().along();
  }
}
