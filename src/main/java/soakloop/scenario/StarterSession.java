package soakloop.scenario;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import soakloop.quantity.Dimension;
import soakloop.reading.LogReading;
import soakloop.reading.Pull;

/**
 * Writes the session as pulls and what lies between them. Pulls alike are one step; what rounding
 * shifts is made up for in the next wait, so that each pull starts where the log has it.
 */
final class StarterSession {
  /** How far a pull of several alike may start from where the log has it, s. */
  private static final double SHIFTED = 0.5;

  /** How far their speeds may differ, rev/s. */
  private static final double ALIKE = 100.0 / 60;

  private final List<Pull> pulls;
  private final double zero;
  private final double end;
  private final StarterBetween between;
  private final StarterPulls written;
  private final StarterFigures figures;
  private final StarterText text;
  private double clock;
  private boolean pulled;

  StarterSession(
      LogReading reading,
      double zero,
      StarterBetween between,
      StarterFigures figures,
      StarterText text) {
    this.pulls = reading.pulls();
    this.zero = zero;
    this.end = reading.log().endTime();
    this.between = between;
    this.written = new StarterPulls(reading, figures);
    this.figures = figures;
    this.text = text;
  }

  void write() {
    text.line("session:", "");
    double first = pulls.isEmpty() ? end : pulls.get(0).start();
    List<StarterStep> lead = between.steps(zero, first);
    steps(
        lead.isEmpty() && pulls.isEmpty() ? List.of(new StarterStep.Stands(false, 0.1)) : lead,
        Math.max(first - zero, pulls.isEmpty() ? 0.1 : 0),
        pulls.isEmpty() ? "from the log: no pull found" : "from the log: before the first pull");
    pulled = true;
    int i = 0;
    while (i < pulls.size()) {
      int alike = alike(i);
      if (alike > 1) {
        together(pulls.subList(i, i + alike));
      } else {
        alone(pulls.get(i));
      }
      i += alike;
    }
  }

  private double nextStart(int index) {
    return index + 1 < pulls.size() ? pulls.get(index + 1).start() : end;
  }

  private List<StarterStep> after(int index) {
    return between.steps(pulls.get(index).end(), nextStart(index));
  }

  private void alone(Pull pull) {
    double length = StarterPulls.duration(List.of(pull));
    text.line(
        "  - pull: " + written.section(List.of(pull)),
        String.format(
            Locale.ROOT,
            "from the log: pull %d, at %.1f s%s%s",
            pull.number(),
            pull.start(),
            pull.aborted() ? ", lifted early" : "",
            pull.sweep().isEmpty() ? "; no engine speed. GUESS: replace from and to" : ""));
    clock += length;
    steps(after(pull.number() - 1), nextStart(pull.number() - 1) - zero, "from the log: after it");
  }

  private void together(List<Pull> group) {
    int last = group.get(group.size() - 1).number() - 1;
    int first = group.get(0).number() - 1;
    double length = StarterPulls.duration(group);
    double wait = wait(first, group.size());
    boolean off = stands(first).off();
    text.line(
        "  - pulls: " + group.size(),
        String.format(
            Locale.ROOT,
            "from the log: pulls %d to %d, the first at %.1f s%s",
            first + 1,
            last + 1,
            pulls.get(first).start(),
            group.get(0).aborted() ? ", all lifted early" : ""));
    text.line("    pull: " + written.section(group), "");
    text.line(
        "    wait: {for: "
            + StarterFigures.seconds(wait)
            + ", engine: "
            + (off ? "off" : "idle")
            + "}",
        "");
    clock += group.size() * (length + wait);
    double left = nextStart(last) - zero - clock;
    if (left > SHIFTED) {
      List<StarterStep> rest = between.steps(zero + clock, nextStart(last));
      steps(rest, nextStart(last) - zero, "from the log: longer after the last one");
    }
  }

  private double wait(int first, int count) {
    double mean =
        IntStream.range(first, first + count - 1)
            .mapToDouble(i -> pulls.get(i + 1).start() - pulls.get(i).end())
            .average()
            .orElse(0);
    return Math.round(10 * mean) / 10.0;
  }

  /** What stands after a pull, if the car only stands; else nothing. */
  private StarterStep.Stands stands(int index) {
    List<StarterStep> steps = after(index);
    return steps.size() == 1 && steps.get(0) instanceof StarterStep.Stands s
        ? s
        : new StarterStep.Stands(false, 0);
  }

  /** The number of pulls from one on that can be written as one step, with a wait after each. */
  private int alike(int first) {
    int most = 1;
    for (int count = 2; first + count <= pulls.size() && fits(first, count); count++) {
      most = count;
    }
    if (most == 1) {
      return 1;
    }
    int last = first + most - 1;
    List<StarterStep> steps = after(last);
    boolean waits =
        !steps.isEmpty()
            && steps.get(0) instanceof StarterStep.Stands s
            && s.off() == stands(first).off()
            && s.duration() >= wait(first, most) - SHIFTED;
    return waits ? most : Math.max(1, most - 1);
  }

  private boolean fits(int first, int count) {
    List<Pull> group = pulls.subList(first, first + count);
    double length = StarterPulls.duration(group);
    double wait = wait(first, count);
    boolean off = stands(first).off();
    for (int i = 0; i < count; i++) {
      Pull pull = group.get(i);
      double starts = zero + clock + i * (length + wait);
      boolean waits = i == count - 1 || standsAlike(first + i, off);
      boolean sweeps =
          pull.sweep().isPresent()
              && Math.abs(StarterPulls.from(List.of(pull)) - StarterPulls.from(group)) <= ALIKE
              && Math.abs(StarterPulls.to(List.of(pull)) - StarterPulls.to(group)) <= ALIKE;
      if (!waits
          || !sweeps
          || pull.aborted() != group.get(0).aborted()
          || Math.abs(pull.duration() - length) > SHIFTED
          || Math.abs(pull.start() - starts) > SHIFTED) {
        return false;
      }
    }
    return StarterFigures.allows("session.wait.for", wait);
  }

  private boolean standsAlike(int index, boolean off) {
    StarterStep.Stands stands = stands(index);
    return stands.duration() >= 0.1 && stands.off() == off;
  }

  /** Writes steps so that they end at a session time, s. */
  private void steps(List<StarterStep> steps, double until, String comment) {
    for (int i = 0; i < steps.size(); i++) {
      boolean last = i == steps.size() - 1;
      double length = last ? until - clock : steps.get(i).duration();
      double rounded = Math.round(10 * length) / 10.0;
      if (rounded >= 0.1) {
        step(steps.get(i), rounded, i == 0 ? comment : "");
        clock += rounded;
      }
    }
  }

  private void step(StarterStep step, double length, String comment) {
    String time =
        "for: " + StarterFigures.seconds(StarterFigures.within("session.wait.for", length));
    if (step instanceof StarterStep.Stands stands) {
      text.line(
          pulled
              ? "  - wait: {" + time + ", engine: " + (stands.off() ? "off" : "idle") + "}"
              : stands.off() ? "  - wait: {" + time + ", engine: off}" : "  - idle: {" + time + "}",
          comment);
    } else if (step instanceof StarterStep.Drives drives) {
      String pressure =
          Double.isNaN(drives.manifold())
              ? ""
              : ", manifold-pressure: "
                  + figures.show(
                      StarterFigures.within("session.cruise.manifold-pressure", drives.manifold()),
                      Dimension.ABSOLUTE_PRESSURE);
      text.line(
          "  - cruise: {"
              + time
              + ", engine-speed: "
              + figures.speed(
                  StarterFigures.within("session.cruise.engine-speed", drives.engineSpeed()))
              + ", road-speed: "
              + figures.show(
                  StarterFigures.within("session.cruise.road-speed", drives.roadSpeed()),
                  Dimension.SPEED)
              + pressure
              + "}",
          comment.isEmpty() ? "from the log: means of a drive" : comment + ", means of a drive");
    }
  }
}
