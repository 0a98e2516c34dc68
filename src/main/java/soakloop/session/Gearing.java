package soakloop.session;

import java.util.List;
import soakloop.quantity.Require;

/**
 * From engine speed to road speed, and when the gears are changed.
 *
 * @param tyreCircumference way rolled in one turn of the wheel, m
 * @param finalDrive turns of the drive shaft per turn of the wheel
 * @param ratios turns of the engine per turn of the drive shaft, first gear first, falling
 * @param shiftAt engine speed at which the next gear is taken, rev/s
 * @param shiftTime without drive while shifting, s
 */
public record Gearing(
    double tyreCircumference,
    double finalDrive,
    List<Double> ratios,
    double shiftAt,
    double shiftTime) {
  /** Checks the parts. */
  public Gearing {
    Require.positive("tyre circumference", tyreCircumference);
    Require.positive("final drive", finalDrive);
    Require.positive("shift speed", shiftAt);
    Require.positive("shift time", shiftTime);
    ratios = List.copyOf(ratios);
    if (ratios.isEmpty()) {
      throw new IllegalArgumentException("a car needs one gear at least");
    }
    for (int i = 0; i < ratios.size(); i++) {
      Require.positive("gear ratio", ratios.get(i));
      if (i > 0 && !(ratios.get(i) < ratios.get(i - 1))) {
        throw new IllegalArgumentException("gear ratios must fall from gear to gear");
      }
    }
  }

  /** Returns the highest gear, counted from 0. */
  int top() {
    return ratios.size() - 1;
  }

  /** Returns turns of the engine per turn of the wheel. */
  double overall(int gear) {
    return ratios.get(gear) * finalDrive;
  }

  /** Returns the engine speed in a gear at a road speed in m/s, rev/s. */
  double engineSpeed(int gear, double roadSpeed) {
    return roadSpeed / tyreCircumference * overall(gear);
  }

  /** Returns the road speed in a gear at an engine speed in rev/s, m/s. */
  double roadSpeed(int gear, double engineSpeed) {
    return engineSpeed * tyreCircumference / overall(gear);
  }
}
