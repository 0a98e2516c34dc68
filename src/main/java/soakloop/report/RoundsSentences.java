package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.plan.EveningAnswer;
import soakloop.plan.EveningRound;
import soakloop.plan.WaitPlan;
import soakloop.quantity.Dimension;

/**
 * What a planned evening says.
 *
 * @param answer what it gave
 * @param words how it is shown
 */
record RoundsSentences(EveningAnswer answer, WaitWords words) {
  private Display display() {
    return words.display();
  }

  private WaitPlan question() {
    return answer.plan().question();
  }

  private String cars() {
    return words.percent(question().confidence()) + " of equally likely cars";
  }

  /** Returns the answer, the verdict first. */
  Answer answered() {
    List<String> sentences = new ArrayList<>();
    Optional<EveningRound> miss = answer.firstMiss();
    String limit = display().temperature(question().limit());
    sentences.add(
        miss.map(
                m ->
                    "The limit of "
                        + limit
                        + " is first passed in round "
                        + m.number()
                        + ": "
                        + (Double.isFinite(m.peak())
                            ? cars() + " stay under " + display().temperature(m.peak()) + " there"
                            : "too many of the cars cannot do it")
                        + ".")
            .orElse("The limit of " + limit + " is never passed in " + cars() + "."));
    miss.ifPresent(m -> sentences.add(missed(m)));
    sentences.add(plan());
    sentences.add(tightest());
    double least = planned().stream().mapToDouble(this::margin).min().orElse(0);
    return new Answer(
        display().signed(least, Dimension.TEMPERATURE_DIFFERENCE, 0),
        display().symbol(Dimension.TEMPERATURE_DIFFERENCE) + " margin",
        sentences);
  }

  private double margin(EveningRound round) {
    return question().limit() - round.peak();
  }

  private String missed(EveningRound miss) {
    if (miss.number() > 1) {
      return "No plan was found that keeps it longer with the ice and battery there are; of those"
          + " that pass it there this one passes it by least.";
    }
    return "That is the session's own last pull, before any pit; of the rounds after it "
        + answer
            .firstPlannedMiss()
            .map(
                m ->
                    "round "
                        + m.number()
                        + " is the first to pass it, and no plan was found that does better.")
            .orElse("none passes it.");
  }

  private List<EveningRound> planned() {
    return answer.rounds().subList(1, answer.rounds().size());
  }

  private String plan() {
    List<String> parts = new ArrayList<>();
    List<EveningRound> further = planned();
    int from = 0;
    for (int i = 1; i <= further.size(); i++) {
      if (i == further.size() || !further.get(i).way().equals(further.get(from).way())) {
        int first = further.get(from).number();
        int last = further.get(i - 1).number();
        parts.add(
            (first == last ? "before round " + first : "before rounds " + first + " to " + last)
                + " "
                + words.way(further.get(from).way().orElseThrow()));
        from = i;
      }
    }
    int actions = answer.actions();
    return "Plan, "
        + actions
        + (actions == 1 ? " action" : " actions")
        + " in all: "
        + String.join("; ", parts)
        + ".";
  }

  private String tightest() {
    EveningRound tight = planned().get(0);
    for (EveningRound round : planned()) {
      tight = margin(round) < margin(tight) ? round : tight;
    }
    EveningRound last = answer.rounds().get(answer.rounds().size() - 1);
    List<String> left = new ArrayList<>();
    if (answer.plan().ice() > 0) {
      left.add(display().show(last.iceLeft(), Dimension.MASS, 1) + " of ice");
    }
    if (answer.plan().battery().isPresent()) {
      left.add(Math.round(Math.floor(last.batteryLeft() / 3600)) + " Wh of the battery");
    }
    return "The least margin of the planned rounds is in round "
        + tight.number()
        + ", "
        + display().show(margin(tight), Dimension.TEMPERATURE_DIFFERENCE, 1)
        + (left.isEmpty() ? "." : "; left at the end: " + String.join(" and ", left) + ".");
  }

  /** Returns how the plan is found and what it leaves out. */
  List<String> method() {
    List<String> notes = new ArrayList<>();
    notes.add(
        answer.draws()
            + " equally likely cars, drawn over "
            + answer.keys()
            + " keys with a spread, go through the whole evening, each round from where the last"
            + " left it: warm metal, ice in the tank and all. Round 1 is the session's last pull.");
    notes.add(
        "Plans are put together round by round with "
            + answer.searched()
            + " of the cars that decide whether the limit is kept, "
            + answer.looked()
            + " rounds looked at; a few plans go on after each round, so a better plan may have been"
            + " missed. The plan told was run with all "
            + answer.draws()
            + ". Of those that keep the limit it has the fewest actions: engine or pump, fans and ice"
            + " count one each.");
    notes.add(
        "Each interval is from the end of one pull to the start of the next; the way back, and"
            + " burnout and staging, are as in the session. In the lanes, the last "
            + Display.duration(answer.plan().lanes())
            + " before those, nothing runs until the engine is started 20 s before their end.");
    notes.add(
        "While the engine is off the pump draws "
            + watts(answer.pumpPower())
            + " (as much as that of "
            + words.percent(question().confidence())
            + " of the cars at the most) and fans draw "
            + watts(answer.plan().fanPower())
            + " (150 W if nothing is said, our own guess). The engine is not taken to charge the"
            + " battery.");
    if (answer.plan().ice() > 0) {
      notes.add(
          "Ice goes in 2 min after the car is in the pit at the soonest, and not before the reservoir"
              + " is below "
              + display().temperature(question().iceBelow())
              + "; a plan counts it as used even for a car that stays warmer. What was not put in is"
              + " taken to keep.");
    }
    if (answer.lost() > 0) {
      notes.add(answer.lost() + " more cars could not do the session and say nothing.");
    }
    return notes;
  }

  /** Returns what a pump or a fan draws: nobody counts that in horsepower. */
  private String watts(double power) {
    return Dimension.POWER.si().format(power, 0) + (display().plain() ? " W" : "\u00a0W");
  }
}
