package soakloop.report;

import java.util.List;
import soakloop.session.Phase;
import soakloop.study.Outcome;

/**
 * What the counted phases of a session are called.
 *
 * @param one such as "pull"
 * @param many such as "pulls"
 */
record Counted(String one, String many) {
  static final Counted PULLS = new Counted("pull", "pulls");
  private static final Counted PASSES = new Counted("pass", "passes");

  /** Returns passes if there is nothing else, pulls otherwise. */
  static Counted of(Outcome outcome) {
    return of(outcome.scenario().session().phases());
  }

  /** Returns passes if there is nothing else among the phases, pulls otherwise. */
  static Counted of(List<Phase> phases) {
    boolean passes = phases.stream().anyMatch(p -> p.kind() == Phase.Kind.PASS);
    boolean pulls = phases.stream().anyMatch(p -> p.kind() == Phase.Kind.PULL);
    return passes && !pulls ? PASSES : PULLS;
  }

  /** Returns the word as a heading. */
  String head() {
    return Display.sentenceStart(one);
  }

  /** Returns only the number of something that is called by this word and its number. */
  String number(String name) {
    return name.matches(one + " \\d+") ? name.substring(one.length() + 1) : name;
  }
}
