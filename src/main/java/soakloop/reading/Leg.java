package soakloop.reading;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch over which a signal climbs, from a low turning point to the next high one.
 *
 * @param low index of the update at its foot
 * @param high index of the update at its top
 */
record Leg(int low, int high) {
  /**
   * Finds all climbs.
   *
   * @param signal what climbs
   * @param turn how far it must fall from a top, or climb from a foot, for that to be one
   * @param gap time between updates over which no climb is followed, s
   */
  static List<Leg> of(Updates signal, double turn, double gap) {
    double[] smooth = Numbers.middleOfThree(signal.values());
    List<Leg> legs = new ArrayList<>();
    int low = 0;
    int high = 0;
    boolean climbing = false;
    for (int i = 1; i < smooth.length; i++) {
      if (signal.time(i) - signal.time(i - 1) > gap) {
        add(legs, climbing, low, high);
        climbing = false;
        low = i;
      } else if (climbing && smooth[i] >= smooth[high]) {
        high = i;
      } else if (climbing && smooth[i] < smooth[high] - turn) {
        add(legs, true, low, high);
        climbing = false;
        low = i;
      } else if (!climbing && smooth[i] <= smooth[low]) {
        low = i;
      } else if (!climbing && smooth[i] > smooth[low] + turn) {
        climbing = true;
        high = i;
      }
    }
    add(legs, climbing, low, high);
    return legs;
  }

  private static void add(List<Leg> legs, boolean climbing, int low, int high) {
    if (climbing) {
      legs.add(new Leg(low, high));
    }
  }
}
