package soakloop.invented;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import soakloop.log.Log;
import soakloop.log.Signal;

/** Records an {@link Outing} as an invented logger would: rows, held values, steps, noise. */
public final class Recorder {
  /** What the day and the loop are, K: invented. */
  private static final double DAY = 291;

  private static final double ENGINE = 363;

  private final double every;
  private final long seed;
  private final Set<Signal> signals = new TreeSet<>();
  private final Map<Signal, Double> noise = new EnumMap<>(Signal.class);
  private final Map<Signal, Double> steps = new EnumMap<>(Signal.class);
  private final Map<Signal, Integer> turns = new EnumMap<>(Signal.class);
  private final Map<Signal, Double> holds = new EnumMap<>(Signal.class);

  /**
   * A recorder.
   *
   * @param every time between rows, s
   * @param seed of the noise
   * @param signals what it records
   */
  public Recorder(double every, long seed, Signal... signals) {
    this.every = every;
    this.seed = seed;
    this.signals.addAll(List.of(signals));
    for (Signal signal : signals) {
      steps.put(signal, step(signal));
      noise.put(signal, step(signal) / 3);
    }
    noise.put(Signal.ENGINE_SPEED, 5.0 / 60);
  }

  /** Usual steps, SI. */
  private static double step(Signal signal) {
    return switch (signal.dimension()) {
      case ROTATION -> 1.0 / 60;
      case TEMPERATURE -> 0.1;
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> 500;
      case SPEED -> 0.1 / 3.6;
      default -> 0.01;
    };
  }

  /** Sets a signal's standard deviation of noise and its step, SI. */
  public Recorder with(Signal signal, double deviation, double step) {
    noise.put(signal, deviation);
    steps.put(signal, step);
    return this;
  }

  /** Measures a signal on one row in so many only, and repeats it on the others. */
  public Recorder inTurn(Signal signal, int rows) {
    turns.put(signal, rows);
    return this;
  }

  /** Measures all signals in turn, one on each row. */
  public Recorder allInTurn() {
    signals.forEach(signal -> turns.put(signal, signals.size()));
    return this;
  }

  /** Measures a signal by a clock of its own and repeats it between. */
  public Recorder held(Signal signal, double seconds) {
    holds.put(signal, seconds);
    return this;
  }

  /** Records a session. */
  public Log record(Outing outing) {
    return record(outing, 0, outing.duration(), 0);
  }

  /** Records a part of a session by a clock that shows {@code clock} at its start. */
  public Log record(Outing outing, double from, double to, double clock) {
    Map<Signal, double[]> truth = new Physics().run(outing);
    int rows = (int) Math.floor((to - from) / every) + 1;
    double[] time = new double[rows];
    for (int i = 0; i < rows; i++) {
      time[i] = clock + i * every;
    }
    Map<Signal, double[]> values = new EnumMap<>(Signal.class);
    int place = 0;
    for (Signal signal : signals) {
      double[] course = truth.get(signal);
      if (course == null) {
        throw new IllegalArgumentException("not invented: " + signal);
      }
      values.put(signal, column(signal, place++, course, from, rows));
    }
    return new Log("invented.csv", time, values, List.of(), List.of("Invented log"));
  }

  private double[] column(Signal signal, int place, double[] course, double from, int rows) {
    Random random = new Random(seed * 31 + signal.key().hashCode());
    int turn = turns.getOrDefault(signal, 1);
    double hold = holds.getOrDefault(signal, 0.0);
    double step = steps.getOrDefault(signal, 0.0);
    double[] column = new double[rows];
    double held = Double.NaN;
    double due = 0;
    for (int i = 0; i < rows; i++) {
      double t = i * every;
      boolean measured = hold > 0 ? t >= due : (i - place % turn) % turn == 0;
      if (measured || Double.isNaN(held)) {
        int k = (int) Math.min(course.length - 1, Math.round((from + t) / Outing.STEP));
        double value = course[k] + noise.getOrDefault(signal, 0.0) * random.nextGaussian();
        held = step > 0 ? Math.round(value / step) * step : value;
        due += measured ? hold : 0;
      }
      column[i] = held;
    }
    return column;
  }

  /** The temperatures and pressures that follow from what the driver does. */
  private static final class Physics {
    private double manifold = 38;
    private double discharge = DAY + 15;
    private double coolant = DAY + 6;
    private double out = DAY + 6;
    private double metal = 318;
    private double charge = 305;
    private double before = DAY + 15;
    private double power;

    Map<Signal, double[]> run(Outing outing) {
      int n = (int) Math.round(outing.duration() / Outing.STEP) + 1;
      Map<Signal, double[]> truth = new EnumMap<>(Signal.class);
      for (int i = 0; i < n; i++) {
        Outing.Ask ask = outing.at(i * Outing.STEP);
        step(ask);
        put(truth, Signal.ENGINE_SPEED, i, n, ask.speed() / 60);
        put(truth, Signal.THROTTLE, i, n, ask.throttle());
        put(truth, Signal.ROAD_SPEED, i, n, ask.road() / 3.6);
        put(truth, Signal.BOOST, i, n, (manifold - 100) * 1e3);
        put(truth, Signal.MANIFOLD_PRESSURE, i, n, manifold * 1e3);
        put(truth, Signal.CHARGE_TEMPERATURE, i, n, charge);
        put(truth, Signal.CORE_AIR_IN, i, n, before);
        put(truth, Signal.CORE_COOLANT_IN, i, n, coolant);
        put(truth, Signal.CORE_COOLANT_OUT, i, n, out);
        put(truth, Signal.INLET_AIR, i, n, DAY + 4);
        put(truth, Signal.ENGINE_COOLANT, i, n, ENGINE);
        put(truth, Signal.WHEEL_POWER, i, n, power);
        put(truth, Signal.TORQUE, i, n, power / Math.max(1, ask.speed() * Math.PI / 30));
      }
      return truth;
    }

    private void step(Outing.Ask ask) {
      double dt = Outing.STEP;
      manifold += dt * (ask.manifold() - manifold) / 0.2;
      double flow = 0.45 * manifold / 190 * ask.speed() / 6700;
      double ratio = Math.max(1, manifold / 100);
      double hot = DAY + 4 + 470 * (StrictMath.pow(ratio, 0.286) - 1);
      discharge += dt * (hot - discharge) / 0.8;
      double heat = Math.max(0, flow * 1010 * 0.72 * (discharge - coolant));
      coolant += dt * (heat / 40e3 - (coolant - DAY - 6) / 90);
      out += dt * (coolant + heat / 1600 - out) / 2;
      double air = coolant + 0.28 * (discharge - coolant);
      metal += dt * (ask.speed() < 100 ? (328 - metal) / 60 : (318 - metal) / 60);
      double share = 0.02 + 0.98 * StrictMath.exp(-flow / 0.01);
      double seen = share * metal + (1 - share) * air;
      charge += dt * (seen - charge) / (1.2 + 6 * StrictMath.exp(-flow / 0.01));
      before += dt * (discharge - before) / 1.5;
      power = ask.throttle() > 0.8 ? 420e3 * ask.speed() / 6700 * manifold / 190 : 0;
    }

    private static void put(
        Map<Signal, double[]> truth, Signal signal, int i, int n, double value) {
      truth.computeIfAbsent(signal, s -> new double[n])[i] = value;
    }
  }
}
