package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.plan.AfterWait;
import soakloop.plan.Go;
import soakloop.plan.Needs;
import soakloop.plan.WaitAnswer;
import soakloop.plan.WaitPlan;
import soakloop.plan.WayAnswer;
import soakloop.plan.Window;
import soakloop.quantity.Dimension;

/**
 * What a plan of waits says.
 *
 * @param answer what it gave
 * @param words how it is shown
 */
record WaitSentences(WaitAnswer answer, WaitWords words) {
  private Display display() {
    return words.display();
  }

  private WaitPlan plan() {
    return answer.plan();
  }

  private String limit() {
    return display().temperature(plan().limit());
  }

  private String cars() {
    return words.percent(plan().confidence()) + " of equally likely cars";
  }

  /** Returns the answer, the verdict first. */
  Answer answered() {
    WayAnswer best = answer.best();
    List<String> sentences = new ArrayList<>();
    if (best.windows().isEmpty()) {
      sentences.add(
          "Do not go: no wait up to "
              + Display.duration(plan().horizon())
              + " keeps the charge under "
              + limit()
              + " in "
              + cars()
              + ".");
      sentences.add(why(best));
      needed().forEach(sentences::add);
      double lowest = best.never().orElseThrow().lowest();
      return new Answer(
          display().number(lowest, Dimension.TEMPERATURE, 0),
          display().symbol(Dimension.TEMPERATURE) + " at best",
          sentences);
    }
    Window first = best.windows().get(0);
    sentences.add("Go " + windows(best) + " after the last pull: " + words.way(best.way()) + ".");
    sentences.add(kept(best, first));
    gauge(best).forEach(sentences::add);
    return new Answer(words.from(first), "min:s", sentences);
  }

  private String windows(WayAnswer way) {
    return String.join(" or ", way.windows().stream().map(words::window).toList());
  }

  private String kept(WayAnswer best, Window first) {
    AfterWait at =
        best.curve().stream().filter(a -> a.seconds() >= first.from()).findFirst().orElseThrow();
    return "The true charge then stays under "
        + limit()
        + " in "
        + cars()
        + "; in the middle one it peaks at "
        + display().temperature(at.charge(0.5))
        + ", and the sensor shows up to "
        + display().temperature(at.quantile(Go::sensor, 0.5))
        + ".";
  }

  private List<String> gauge(WayAnswer best) {
    if (best.threshold().isEmpty()) {
      return List.of("No reading of the coolant gauge tells when to go: go by the clock.");
    }
    if (best.gauge().isAlwaysUnder(best.threshold().getAsDouble())) {
      return List.of("Whatever the coolant gauge reads by then will do.");
    }
    double most = words.wholeDegrees(best.threshold().getAsDouble());
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Or go by the gauge: when the coolant into the core reads "
            + words.degrees(most)
            + " or less "
            + (plan().isPass() ? "as the car leaves the pit" : "as the pull starts")
            + ", pump running.");
    best.gauge()
        .at(words.kelvin(most), plan().confidence())
        .ifPresent(
            at ->
                sentences.add(
                    "The middle car reads that after "
                        + Display.clock(at.seconds())
                        + "; "
                        + words.percent(at.share())
                        + " of them read it within "
                        + Display.duration(plan().horizon())
                        + "."));
    return sentences;
  }

  private String why(WayAnswer best) {
    WayAnswer.Never never = best.never().orElseThrow();
    if (!Double.isFinite(never.lowest())) {
      return "Too many of the cars cannot do another pull at all, whatever the wait.";
    }
    return "Nearest comes "
        + words.way(best.way())
        + " after "
        + Display.clock(never.seconds())
        + ": "
        + words.percent(plan().confidence())
        + " then stay under "
        + display().temperature(never.lowest())
        + ", "
        + display().show(never.lowest() - plan().limit(), Dimension.TEMPERATURE_DIFFERENCE, 0)
        + " too warm. The coolant into the middle car's core comes down to "
        + display().temperature(never.reading())
        + " on a day of "
        + display().temperature(plan().scenario().setup().day().temperature())
        + ", and the pull itself puts "
        + display().show(never.rise(), Dimension.TEMPERATURE_DIFFERENCE, 0)
        + " on top.";
  }

  private List<String> needed() {
    if (answer.needs().isEmpty()) {
      return List.of();
    }
    Needs needs = answer.needs().get();
    List<String> ways = new ArrayList<>();
    needs.boost().ifPresent(share -> ways.add("about " + words.percent(share) + " of the boost"));
    needs.ambient().ifPresent(day -> ways.add("a day of about " + display().temperature(day)));
    needs
        .ice()
        .ifPresent(
            ice ->
                ways.add(
                    "about "
                        + display().show(ice, Dimension.MASS, 1)
                        + " of ice, put in cold with the engine off, and 5 min"));
    return List.of(
        ways.isEmpty()
            ? "Neither less boost, nor a cooler day, nor ice by itself would do within reason."
            : "It would take one of these: " + String.join("; ", ways) + ".");
  }

  /** Returns how the answer is found and what it leaves out. */
  List<String> method() {
    List<String> notes = new ArrayList<>();
    notes.add(
        answer.draws()
            + " equally likely cars, drawn over "
            + answer.keys()
            + " keys with a spread, do the session and wait in every way; the model's own error"
            + " counts too. Waits are from the end of the last pull to the start of the next; an"
            + " engine that was off idles for the last "
            + Display.duration(20)
            + " of them.");
    if (plan().isPass()) {
      notes.add(
          "Around a pass the wait is the time in the pit: the way back, and lanes, burnout and"
              + " staging, are as in the session. The gauge is read as the car leaves the pit.");
    }
    notes.add(
        "The charge counts under load, from the pull's start to its end; the sensor from the middle"
            + " of the pull to a little after it.");
    notes.add(
        "The gauge's reading is safe for all the cars together: each goes when its own gauge, up to"
            + " 2 K off, reads so much or less, at the worst such time within the horizon.");
    if (plan().ways().stream().anyMatch(w -> w.ice() > 0)) {
      notes.add(
          "Ice goes in 2 min after the pull at the soonest, and not before the reservoir is below "
              + display().temperature(plan().iceBelow())
              + ". Where the scenario does not say what its tank holds, there is taken to be room.");
    }
    notes.add(
        "The engine's coolant is taken to stay as warm as at the start: what soaks into a car that"
            + " stands long is rather over- than underrated.");
    for (WayAnswer way : answer.ways()) {
      if (way.never().filter(n -> !Double.isFinite(n.lowest())).isPresent()) {
        notes.add(
            Display.sentenceStart(words.way(way.way()))
                + ": too many of the cars cannot do this, whatever the wait; coolant freezes or"
                + " boils, or the tank would run over.");
      }
    }
    if (answer.lost() > 0) {
      notes.add(answer.lost() + " more cars could not do the session and say nothing.");
    }
    return notes;
  }
}
