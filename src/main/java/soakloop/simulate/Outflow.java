package soakloop.simulate;

import java.util.Arrays;
import java.util.List;

/**
 * The coolant that leaves a loop element, as states of the vector and their shares of the flow. The
 * shares add up to 1; where branches join they follow how the flow divides.
 */
final class Outflow {
  private final int[] states;
  private final double[] shares;

  private Outflow(int[] states) {
    this.states = states;
    this.shares = new double[states.length];
  }

  /** Returns states that leave in equal parts. */
  static Outflow even(int... states) {
    Outflow outflow = new Outflow(states);
    Arrays.fill(outflow.shares, 1.0 / states.length);
    return outflow;
  }

  /** Returns what leaves several elements side by side; their shares are still to be set. */
  static Outflow joined(List<Outflow> parts) {
    return new Outflow(parts.stream().flatMapToInt(part -> Arrays.stream(part.states)).toArray());
  }

  int size() {
    return states.length;
  }

  int state(int i) {
    return states[i];
  }

  double share(int i) {
    return shares[i];
  }

  /** Sets the share of a state. */
  void setShare(int i, double share) {
    shares[i] = share;
  }
}
