package soakloop.session;

import java.util.ArrayList;
import java.util.List;
import soakloop.quantity.Bracket;
import soakloop.quantity.Curve;

/** A pass whose road speed was measured, from launch to the traps. */
public final class MeasuredPass {
  /** Longest time between two points of an engine speed made from gears, s. */
  private static final double APART = 0.02;

  private MeasuredPass() {}

  /**
   * Takes a pass as it was measured.
   *
   * @param roadSpeed m/s over s from launch to the traps, first point at 0 s
   * @param engineSpeed rev/s over s
   * @throws IllegalArgumentException if the speeds do not lead over {@link Pass#SHORTEST}
   */
  public static PassCourse of(Curve roadSpeed, Curve engineSpeed) {
    double end = roadSpeed.place(roadSpeed.size() - 1);
    double way = way(roadSpeed, end);
    if (!(way >= Pass.SHORTEST)) {
      throw new IllegalArgumentException(
          "the speeds lead over " + Math.round(way) + " m only; a pass takes 40 m at least");
    }
    double traps = Bracket.root(0, end, t -> way(roadSpeed, t) - (way - PassTimes.TRAP));
    double sixty = Bracket.root(0, end, t -> way(roadSpeed, t) - PassTimes.SIXTY_FEET);
    return new PassCourse(
        engineSpeed,
        roadSpeed,
        end,
        new PassTimes(sixty, end, PassTimes.TRAP / (end - traps)),
        true,
        false);
  }

  /**
   * Returns the engine speed that gears make of a measured road speed: the clutch slips until first
   * gear has caught up with the launch speed, then each gear is left at the shift speed.
   *
   * @param gearing the gears
   * @param roadSpeed m/s over s
   * @param launchSpeed rev/s
   */
  public static Curve engineSpeed(Gearing gearing, Curve roadSpeed, double launchSpeed) {
    double end = roadSpeed.place(roadSpeed.size() - 1);
    int steps = (int) Math.ceil(end / APART);
    List<Double> times = new ArrayList<>();
    List<Double> speeds = new ArrayList<>();
    int gear = 0;
    double shiftedAt = Double.NEGATIVE_INFINITY;
    double before = 0;
    for (int i = 0; i <= steps; i++) {
      double t = end * i / steps;
      double v = Math.max(0, roadSpeed.at(t));
      double n = gearing.engineSpeed(gear, v);
      double share = (t - shiftedAt) / gearing.shiftTime();
      if (share < 1) {
        n = before + (n - before) * share;
      } else if (n >= gearing.shiftAt() && gear < gearing.top()) {
        before = n;
        shiftedAt = t;
        gear++;
      }
      times.add(t);
      speeds.add(gear == 0 ? Math.max(launchSpeed, n) : n);
    }
    return Curve.of(
        times.stream().mapToDouble(t -> t).toArray(),
        speeds.stream().mapToDouble(n -> n).toArray());
  }

  /** Way gone up to a time, m: exact for speeds that are straight between points. */
  private static double way(Curve speed, double until) {
    double way = 0;
    for (int i = 1; i < speed.size() && speed.place(i - 1) < until; i++) {
      double to = Math.min(until, speed.place(i));
      way += 0.5 * (speed.value(i - 1) + speed.at(to)) * (to - speed.place(i - 1));
    }
    return way;
  }
}
