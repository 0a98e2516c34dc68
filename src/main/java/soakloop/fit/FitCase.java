package soakloop.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import soakloop.log.Signal;
import soakloop.reading.Channel;
import soakloop.reading.LogReading;
import soakloop.reading.Updates;
import soakloop.scenario.Scenario;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.study.Comparisons;
import soakloop.study.Run;

/**
 * A scenario and what its log says of it.
 *
 * @param label short name, different from those of other cases beside it
 * @param scenario with a log
 * @param data what is compared, at least one signal
 */
public record FitCase(String label, Scenario scenario, List<SignalData> data) {
  /** Readings closer than this are drawn together: in a pull, and where things are slow, s. */
  private static final double QUICK = 1;

  private static final double SLOW = 5;

  /** How long after the end of a pull things still are quick, s. */
  private static final double TURNING = 12;

  /** How long after the engine starts its charge sensor still shows soaked metal, s. */
  private static final double RECOVERY = 15;

  /** Fewest points that anything is fitted to. */
  private static final int FEWEST = 20;

  /** Smallest range of a charge temperature that says anything, K. */
  private static final double LEAST_RANGE = 2;

  /** Copies the list. */
  public FitCase {
    data = List.copyOf(data);
  }

  /**
   * A scenario without a log, of which only what it states is known.
   *
   * @param label short name
   * @param scenario which
   */
  public static FitCase unlogged(String label, Scenario scenario) {
    return new FitCase(label, scenario, List.of());
  }

  /**
   * A scenario whose session is planned and not yet logged.
   *
   * @param label short name
   * @param scenario which
   * @param signals that the planned log will have
   */
  public static FitCase planned(String label, Scenario scenario, List<Signal> signals) {
    return new FitCase(
        label,
        scenario,
        signals.stream()
            .map(s -> new SignalData(s, new double[1], new double[1], new double[] {1}))
            .toList());
  }

  /** A stretch of the session. */
  private record Stretch(double from, double to) {
    boolean has(double time) {
      return time >= from && time <= to;
    }
  }

  /**
   * Draws a scenario's log together.
   *
   * @param label short name
   * @param scenario which
   * @throws FitException if there is no log, or nothing in it that a fit could use; says what is
   *     missing
   */
  public static FitCase of(String label, Scenario scenario) throws FitException {
    Scenario.Logged logged =
        scenario
            .logged()
            .orElseThrow(
                () ->
                    new FitException(
                        label
                            + ": has no log to be fitted to; name one under `log`, or beside it"));
    List<Stretch> quick = new ArrayList<>();
    List<Stretch> soaked = new ArrayList<>();
    double end = stretches(scenario, quick, soaked);
    Set<Signal> given = Run.replayed(scenario);
    List<SignalData> data = new ArrayList<>();
    for (Signal signal : Comparisons.COMPARED) {
      Channel channel = logged.reading().channels().get(signal);
      if (channel != null && !given.contains(signal)) {
        List<Stretch> left = signal == Signal.CHARGE_TEMPERATURE ? soaked : List.of();
        Updates updates = logged.reading().usable(signal);
        data.add(new Drawing(channel, updates, logged.startsAt(), end).data(quick, left));
      }
    }
    data.removeIf(d -> d.size() == 0);
    FitCase made = new FitCase(label, scenario, data);
    made.requireNews();
    return made;
  }

  /** Returns whether there is a charge temperature that moves, in pulls. */
  private void requireNews() throws FitException {
    String log = label + ": the log ";
    SignalData charge =
        data.stream()
            .filter(d -> d.signal() == Signal.CHARGE_TEMPERATURE)
            .findFirst()
            .orElseThrow(
                () ->
                    new FitException(
                        log
                            + "has no charge temperature that moves within the session; name its"
                            + " column under log.columns, see that log.starts-at puts it where the"
                            + " session is and that the sensor was connected"));
    if (charge.size() < FEWEST) {
      throw new FitException(
          log
              + "has only "
              + charge.size()
              + " pieces of news of the charge temperature within the session; a fit needs "
              + FEWEST);
    }
    double low = java.util.Arrays.stream(charge.values()).min().orElseThrow();
    double high = java.util.Arrays.stream(charge.values()).max().orElseThrow();
    if (!(high - low >= LEAST_RANGE)) {
      throw new FitException(
          log + "has a charge temperature that stands still, so it says nothing of the car");
    }
    boolean pulled =
        scenario.session().phases().stream()
            .anyMatch(p -> p.kind().isCounted() || p.kind() == Phase.Kind.REPLAY);
    if (!pulled) {
      throw new FitException(label + ": the session has no pull, so nothing heats the loop");
    }
    LogReading reading = scenario.logged().orElseThrow().reading();
    if (reading.channels().containsKey(Signal.ENGINE_SPEED) && reading.pulls().isEmpty()) {
      throw new FitException(log + "shows no pull; `log` says what it holds");
    }
  }

  /** Finds where things are quick and where the sensor shows metal; returns the session's end. */
  private static double stretches(Scenario scenario, List<Stretch> quick, List<Stretch> soaked) {
    double time = 0;
    for (Phase phase : scenario.session().phases()) {
      if (phase.kind() == Phase.Kind.SETTLE) {
        continue;
      }
      double end = time + phase.duration();
      if (phase.kind().isCounted() || phase.kind() == Phase.Kind.REPLAY) {
        quick.add(new Stretch(time, end + TURNING));
      }
      if (phase.drive() instanceof Drive.EngineOff) {
        soaked.add(new Stretch(time, end + RECOVERY));
      }
      time = end;
    }
    return time;
  }

  /** Draws the updates of one channel together. */
  private record Drawing(Channel channel, Updates updates, double startsAt, double end) {
    SignalData data(List<Stretch> quick, List<Stretch> left) {
      double[] times = new double[updates.size()];
      double[] values = new double[updates.size()];
      double[] noise = new double[updates.size()];
      int n = 0;
      int i = 0;
      double step = channel.quantum() * channel.quantum() / 12;
      double own = Math.max(channel.noise() * channel.noise(), step);
      while (i < updates.size()) {
        double first = updates.time(i) - startsAt;
        double width = quick.stream().anyMatch(s -> s.has(first)) ? QUICK : SLOW;
        double time = 0;
        double value = 0;
        int count = 0;
        while (i < updates.size() && updates.time(i) - startsAt < first + width) {
          time += updates.time(i) - startsAt;
          value += updates.value(i++);
          count++;
        }
        double at = time / count;
        if (first >= 0 && at <= end && left.stream().noneMatch(s -> s.has(at))) {
          times[n] = at;
          values[n] = value / count;
          noise[n++] = Math.sqrt(own / count + step);
        }
      }
      return new SignalData(
          channel.signal(),
          java.util.Arrays.copyOf(times, n),
          java.util.Arrays.copyOf(values, n),
          floored(java.util.Arrays.copyOf(noise, n)));
    }

    /** No thermometer in a car is better than this, K. */
    private static double[] floored(double[] noise) {
      return java.util.Arrays.stream(noise).map(s -> Math.max(s, 0.02)).toArray();
    }
  }

  /** Returns whether a log says anything of it. */
  public boolean isLogged() {
    return size() > 0 && scenario.logged().isPresent();
  }

  /** Returns how many points it is held against. */
  int size() {
    return data.stream().mapToInt(SignalData::size).sum();
  }

  /** Returns how many pulls begin before the last point. */
  int pulls() {
    double last = data.stream().mapToDouble(d -> d.time(d.size() - 1)).max().orElse(0);
    int count = 0;
    double time = 0;
    for (Phase phase : scenario.session().phases()) {
      count += phase.kind().isCounted() && time < last ? 1 : 0;
      time += phase.kind() == Phase.Kind.SETTLE ? 0 : phase.duration();
    }
    return count;
  }

  /** Returns the same with only what was logged before a time, s. */
  FitCase before(double time) {
    return new FitCase(
        label, scenario, data.stream().map(d -> d.before(time)).filter(d -> d.size() > 0).toList());
  }
}
