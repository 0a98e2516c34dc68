package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;

/**
 * The session of a random scenario: steps of all kinds, settling first if at all, speeds that rise
 * and are reached where they are counted, replays within one of the logs of {@link #LOGS}.
 */
final class RandomSession {
  /** Logs that are there to be named: file, and the times of its first and last row, s. */
  private static final List<Logged> LOGS =
      List.of(
          new Logged("early.csv", -360_000, 60),
          new Logged("usual.csv", 0, 60),
          new Logged("late.csv", 360_000 - 60, 60));

  private static final List<String> STEPS = List.of("idle", "pull", "wait", "cruise");

  /** Share of sessions with a time as long as its key allows, not repeated. */
  private static final double LONG = 0.1;

  private final Draw draw;
  private final RandomValue values;
  private final RandomSection root;
  private final RandomSection session;
  private final RandomPass passes;

  /** Whether there is a tank that takes ice. */
  private final boolean iced;

  /** A session may last seven days, so one time that is as long as its key allows is enough. */
  private boolean mayBeLong;

  /** A log and its times. */
  record Logged(String file, double from, double length) {
    double to() {
      return from + length;
    }

    /** Returns what is in it: invented, driven twice up and down. */
    String text() {
      StringBuilder text = new StringBuilder("# invented\nTime [s],RPM,IAT2 [degC],Boost [kPa]\n");
      for (int i = 0; i <= length; i++) {
        double up = Math.abs((i % 30) / 15.0 - 1);
        text.append((long) (from + i)).append(',').append(900 + 5600 * up).append(',');
        text.append(25 + 20 * up).append(',').append(-60 + 140 * up).append('\n');
      }
      return text.toString();
    }
  }

  RandomSession(Draw draw, RandomValue values, RandomSection root, boolean iced) {
    this.draw = draw;
    this.values = values;
    this.root = root;
    this.iced = iced;
    this.session = root.named("session");
    this.passes = new RandomPass(draw, root);
  }

  static List<Logged> logs() {
    return LOGS;
  }

  void write(double seconds) {
    mayBeLong = draw.chance(LONG);
    List<String> steps = new ArrayList<>();
    boolean drags = draw.chance(0.25);
    if (drags) {
      passes.vehicle();
    }
    if (draw.chance(0.3)) {
      RandomSection settle = session.below("settle");
      if (root.wanted()) {
        time(settle, "for", 600);
      }
      steps.add(session.named("session").put("settle", settle.others("for").toString()).toString());
    }
    boolean replays = draw.chance(0.25);
    if (replays || draw.chance(0.15)) {
      Logged log = draw.any(LOGS);
      log(log, replays);
      if (replays) {
        steps.add(session.named("session").put("replay", replay(log, seconds)).toString());
      }
    }
    double left = seconds;
    while (left > 1 && steps.size() < 6 && (steps.isEmpty() || draw.chance(0.7))) {
      double most = Math.max(1, left * draw.between(0.2, 1));
      steps.add(step(most, true));
      left -= most;
    }
    if (drags) {
      steps.add(session.named("session").put("pass", passes.pass().orEmpty()).toString());
    }
    root.put("session", RandomSection.list(steps));
  }

  private void log(Logged log, boolean replays) {
    RandomSection in = root.below("log").put("file", log.file());
    if (!replays) {
      in.perhaps("starts-at");
      in.any("rate");
    }
    if (root.wanted()) {
      in.put(
          "columns",
          "{charge-temperature: {name: \"IAT2 [degC]\", unit: degC}, engine-speed: RPM}");
    }
    root.put("log", in);
  }

  /** Returns a step of at most so many seconds, at least one. */
  private String step(double most, boolean mayRepeat) {
    RandomSection item = session.named("session");
    boolean couldBeLong = mayBeLong;
    if (mayRepeat && draw.chance(0.2)) {
      mayBeLong = false;
      int times = times("repeat", most);
      List<String> inner = new ArrayList<>(List.of(step(most / times, false)));
      if (most / times > 2 && draw.chance(0.5)) {
        inner.set(0, step(most / times / 2, false));
        inner.add(step(most / times / 2, false));
      }
      return item.put("repeat", String.valueOf(times))
          .put("steps", RandomSection.list(inner))
          .toString();
    }
    if (mayRepeat && draw.chance(0.3)) {
      mayBeLong = false;
      int times = times("pulls", most);
      item.put("pulls", String.valueOf(times)).put("pull", pull(most / times / 2));
      if (draw.chance(0.7)) {
        item.put("wait", wait(most / times / 2));
      }
      mayBeLong = couldBeLong;
      return item.toString();
    }
    String kind = draw.any(STEPS);
    return item.put(
            kind,
            switch (kind) {
              case "pull" -> pull(most);
              case "wait" -> wait(most);
              default -> time(session.below(kind), "for", most).others();
            })
        .toString();
  }

  /** Returns how often something is done that takes a second at least, or now and then less. */
  private int times(String key, double most) {
    KeySpec spec = session.spec(key);
    return draw.chance(0.05) ? (int) RandomValue.high(spec) : values.count(spec, (int) most);
  }

  private RandomSection wait(double most) {
    RandomSection wait = time(session.below("wait"), "for", most);
    if (iced && draw.chance(0.4)) {
      KeySpec ice = wait.spec("ice");
      double usual = draw.chance(0.1) ? RandomValue.high(ice) : 1;
      wait.put("ice", values.written(ice, draw.chance(0.5) ? usual : values.number(ice, 0, usual)));
      return wait.others();
    }
    return wait.others("ice", "drain");
  }

  private RandomSection pull(double most) {
    RandomSection pull = session.below("pull");
    KeySpec speed = pull.spec("curve");
    double low = RandomValue.low(speed);
    double high = RandomValue.high(speed);
    double first;
    double top;
    if (draw.chance(0.4)) {
      int size = draw.count(2, 6);
      double[] places = values.rising(size, 0, Math.max(0.5, most));
      places[0] = 0;
      double[] speeds = new double[size];
      top = 0;
      for (int i = 0; i < size; i++) {
        speeds[i] = values.number(speed, low, high);
        top = Math.max(top, speeds[i]);
      }
      first = speeds[0];
      pull.put("curve", values.points(speed, places, speeds));
    } else {
      first = values.number(speed, low, 0.9 * high);
      top = values.number(speed, first * 1.01, high);
      pull.put("from", values.written(pull.spec("from"), first));
      pull.put("to", values.written(pull.spec("to"), top));
      time(pull, "in", most);
    }
    if (draw.chance(0.5) && top > first * 1.001) {
      KeySpec counted = pull.spec("counted-to");
      pull.put("counted-to", values.written(counted, draw.between(first * 1.0001, top * 0.9999)));
    }
    if (root.wanted()) {
      pull.put("road-speed", pull.below("road-speed").others());
    }
    return pull.others("from", "to", "in", "counted-to");
  }

  private String replay(Logged log, double seconds) {
    RandomSection replay = session.below("replay");
    double from = log.from();
    double to = log.to();
    if (seconds < log.length() || root.wanted()) {
      double length = Math.min(seconds, log.length() - 1) * draw.between(0.3, 1);
      from = draw.between(from + 0.01, to - length - 0.01);
      to = from + length;
      if (log.from() == RandomValue.low(replay.spec("from"))) {
        from = log.from();
      } else if (log.to() == RandomValue.high(replay.spec("to"))) {
        to = log.to();
      }
      replay.put("from", values.written(replay.spec("from"), from));
      replay.put("to", values.written(replay.spec("to"), to));
    }
    if (draw.chance(0.5)) {
      RandomSection pull = replay.below("pulls");
      double third = (to - from) / 3;
      pull.put("from", values.written(pull.spec("from"), from + third));
      pull.put("to", values.written(pull.spec("to"), to - third / 2));
      if (third > 12) {
        // Every stretch of half a minute passes this speed.
        pull.put("counted-to", values.written(pull.spec("counted-to"), 3000 / 60.0));
      }
      replay.put("pulls", RandomSection.list(List.of(pull.toString())));
    }
    return replay.others("from", "to").toString();
  }

  private RandomSection time(RandomSection in, String key, double most) {
    KeySpec spec = in.spec(key);
    double low = RandomValue.low(spec);
    double high = RandomValue.high(spec);
    if (mayBeLong) {
      mayBeLong = false;
      return in.put(
          key, draw.chance(0.5) ? values.written(spec, high) : values.in(spec, low, high));
    }
    return in.put(key, values.in(spec, low, Math.max(low, Math.min(high, most))));
  }
}
