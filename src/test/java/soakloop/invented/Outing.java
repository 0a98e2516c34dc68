package soakloop.invented;

import java.util.ArrayList;
import java.util.List;

/**
 * An invented session put together piece by piece, with its true pulls known because they were
 * asked for. Simpler than {@link TruthLoop}: its temperatures follow by first-order lags, since
 * here it is the course of engine speed and throttle that matters.
 */
public final class Outing {
  static final double STEP = 0.01;
  private static final double IDLE = 850;

  private final List<Piece> pieces = new ArrayList<>();
  private final List<TruePull> pulls = new ArrayList<>();
  private double time;
  private double speed = IDLE;

  /**
   * A pull that was asked for.
   *
   * @param start s
   * @param end s
   * @param from rev/min
   * @param to rev/min
   * @param aborted whether it was lifted early
   */
  public record TruePull(double start, double end, double from, double to, boolean aborted) {}

  /**
   * One moment of what the driver does.
   *
   * @param speed rev/min
   * @param throttle 0 to 1
   * @param manifold absolute pressure asked for, kPa
   * @param road km/h
   */
  record Ask(double speed, double throttle, double manifold, double road) {}

  private interface Course {
    Ask at(double since);
  }

  private record Piece(double from, double to, Course course) {}

  private Outing add(double seconds, double endSpeed, Course course) {
    pieces.add(new Piece(time, time + seconds, course));
    time += seconds;
    speed = endSpeed;
    return this;
  }

  /** Returns four pulls from 2,600 to 6,700 rpm in ten seconds, a minute of idling after each. */
  public static Outing fourPulls() {
    Outing outing = new Outing().idle(20);
    for (int i = 0; i < 4; i++) {
      outing.runUp(2600, 3).pull(6700, 10).idle(60);
    }
    return outing;
  }

  /** Idles; engine speed falls back from what it was. */
  public Outing idle(double seconds) {
    double before = speed;
    return add(
        seconds,
        IDLE,
        t -> new Ask(IDLE + (before - IDLE) * StrictMath.exp(-t / 1.1), 0.03, 38, 0));
  }

  /** Switches the engine off. */
  public Outing off(double seconds) {
    double before = speed;
    return add(seconds, 0, t -> new Ask(before * StrictMath.exp(-t / 0.4), 0, 100, 0));
  }

  /** Starts the engine. */
  public Outing crank() {
    return add(2, IDLE, t -> new Ask(t < 1 ? 220 : 220 + (IDLE - 220) * (t - 1), 0.05, 70, 0));
  }

  /** Brings the engine smoothly to a speed at part load. */
  public Outing runUp(double to, double seconds) {
    double before = speed;
    return add(
        seconds, to, t -> new Ask(before + (to - before) * Duty.smooth(t, 0, seconds), 0.2, 62, 0));
  }

  /** Holds a speed at part load. */
  public Outing hold(double seconds) {
    double held = speed;
    return add(seconds, held, t -> new Ask(held, 0.22, 60, 0));
  }

  /** Holds a speed at full throttle, as a loaded dyno does before it lets go. */
  public Outing holdWideOpen(double seconds) {
    double held = speed;
    return add(seconds, held, t -> new Ask(held, 1, 175, 0));
  }

  /** Pulls from the present speed on a dyno that lets speed rise evenly. */
  public Outing pull(double to, double seconds) {
    return pull(to, seconds, 0, 0, false);
  }

  /** The same, lifted before the top. */
  public Outing abort(double to, double seconds) {
    return pull(to, seconds, 0, 0, true);
  }

  /**
   * Pulls at full throttle in one gear.
   *
   * @param to rev/min
   * @param seconds how long
   * @param bend how much quicker the start is than the end, of the mean rate, 0 to 0.6
   * @param perRoad km/h for each rev/min, 0 on a dyno without road speed
   * @param aborted whether it counts as lifted early
   */
  public Outing pull(double to, double seconds, double bend, double perRoad, boolean aborted) {
    double from = speed;
    pulls.add(new TruePull(time, time + seconds, from, to, aborted));
    return add(
        seconds,
        to,
        t -> {
          double x = t / seconds;
          double n = from + (to - from) * (x + bend / 2 * x * (1 - x));
          double low = Math.max(0, (6700 - n) / 4100);
          return new Ask(n, 1, 100 + 90 * (1 - 0.11 * low * low), n * perRoad);
        });
  }

  /** Changes up under full load; the next piece is the pull in the next gear. */
  public Outing shift(double ratio, double perRoad) {
    double before = speed;
    double after = before * ratio;
    return add(
        0.3,
        after,
        t -> {
          double n = before + (after - before) * Duty.smooth(t, 0.05, 0.3);
          return new Ask(n, 0.6, 120, before * perRoad);
        });
  }

  /** Lets the car roll in gear with the throttle shut. */
  public Outing coast(double to, double seconds, double perRoad) {
    double before = speed;
    return add(
        seconds,
        to,
        t -> {
          double n = before + (to - before) * t / seconds;
          return new Ask(n, 0, 28, n * perRoad);
        });
  }

  /** Drives through three gears at part load and back to a stop, some 40 s at a time. */
  public Outing drive(double seconds) {
    double before = speed;
    return add(seconds, IDLE, t -> driven(t, seconds, before));
  }

  private static Ask driven(double t, double seconds, double before) {
    double u = t % 40;
    double in = Duty.smooth(t, 0, 1);
    double out = 1 - Duty.smooth(t, seconds - 2, seconds);
    double n;
    double road;
    if (u < 6) {
      n = 1100 + 2100 * u / 6;
      road = n * 0.012;
    } else if (u < 11) {
      n = 1800 + 1300 * (u - 6) / 5;
      road = n * 0.021;
    } else if (u < 30) {
      n = 2000 + 350 * StrictMath.sin((u - 11) / 3);
      road = n * 0.033;
    } else {
      n = 2000 - 110 * (u - 30);
      road = n * 0.033 * (40 - u) / 10;
    }
    double throttle = u < 11 ? 0.35 : u < 30 ? 0.18 + 0.05 * StrictMath.sin(u) : 0;
    double manifold = u < 11 ? 85 : u < 30 ? 55 : 30;
    double level = before + (n - before) * in;
    return new Ask(IDLE + (level - IDLE) * out, throttle * out, manifold, road * in * out);
  }

  /** Blips the throttle in neutral. */
  public Outing blip() {
    return add(
        2.4,
        IDLE,
        t -> {
          double n =
              t < 0.6 ? IDLE + 3600 * t / 0.6 : IDLE + 3600 * StrictMath.exp(-(t - 0.6) / 0.4);
          return new Ask(n, t < 0.5 ? 0.7 : 0, t < 0.5 ? 95 : 30, 0);
        });
  }

  /** The pulls that were asked for. */
  public List<TruePull> pulls() {
    return List.copyOf(pulls);
  }

  /** Its length, s. */
  public double duration() {
    return time;
  }

  Ask at(double when) {
    for (Piece piece : pieces) {
      if (when < piece.to) {
        return piece.course.at(when - piece.from);
      }
    }
    Piece last = pieces.get(pieces.size() - 1);
    return last.course.at(last.to - last.from);
  }
}
