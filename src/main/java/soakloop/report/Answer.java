package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.fit.BandedRun;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * What a run says, in sentences made from its numbers.
 *
 * @param number the one number to take away
 * @param unit its unit
 * @param sentences the answer, most important first
 */
record Answer(String number, String unit, List<String> sentences) {
  Answer {
    sentences = List.copyOf(sentences);
  }

  /** Reads an outcome. */
  static Answer of(Outcome outcome, Display display) {
    return of(BandedRun.plain(outcome), display);
  }

  /** Reads an outcome with its bands. */
  static Answer of(BandedRun run, Display display) {
    Outcome outcome = run.outcome();
    Sentences say = new Sentences(outcome, display);
    List<PullResult> pulls = outcome.pulls();
    List<String> sentences = new ArrayList<>();
    double headline;
    if (pulls.isEmpty()) {
      Trace trace = outcome.trace();
      headline = trace.value(Channel.SENSOR, trace.size() - 1);
      sentences.add(say.withoutPulls());
    } else {
      PullResult last = pulls.get(pulls.size() - 1);
      headline = last.sensor().end();
      if (pulls.size() == 1) {
        sentences.add(say.onePull(last));
      } else {
        sentences.add(say.lastAgainstFirst(pulls.get(0), last));
        sentences.add(Cause.of(outcome.trace(), pulls.get(0), last).sentence(display));
      }
    }
    new PassTables(outcome, display).sentence().ifPresent(sentences::add);
    new BandWords(run, display).sentence().ifPresent(sentences::add);
    say.limit().ifPresent(sentences::add);
    sentences.add(say.heat());
    sentences.addAll(new ColdSentences(outcome, display).all());
    say.agreement().ifPresent(sentences::add);
    say.flow().ifPresent(sentences::add);
    return new Answer(
        display.number(headline, Dimension.TEMPERATURE, 0),
        display.symbol(Dimension.TEMPERATURE),
        sentences);
  }
}
