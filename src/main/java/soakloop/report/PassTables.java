package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soakloop.quantity.Dimension;
import soakloop.session.Drive;
import soakloop.session.PassCourse;
import soakloop.session.PassTimes;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;

/**
 * What a strip's clocks would show of the passes.
 *
 * @param outcome what they are about
 * @param display how numbers are shown
 */
record PassTables(Outcome outcome, Display display) {
  /** A pass and its name. */
  private record Named(String name, PassCourse course) {}

  private List<Named> passes() {
    List<Named> passes = new ArrayList<>();
    for (Trace.Span span : outcome.trace().pulls()) {
      if (span.phase().drive() instanceof Drive.Pass pass) {
        passes.add(new Named(span.phase().name(), pass.course()));
      }
    }
    return passes;
  }

  boolean hasSomething() {
    return !passes().isEmpty();
  }

  /** Returns the times, pass by pass. */
  Table times() {
    Counted counted = Counted.of(outcome);
    List<List<String>> rows =
        passes().stream()
            .map(
                pass ->
                    List.of(
                        counted.number(pass.name()),
                        seconds(pass.course().times().sixtyFoot()),
                        seconds(pass.course().times().elapsed()),
                        display.number(pass.course().times().trapSpeed(), Dimension.SPEED, 1)))
            .toList();
    String speed = "Speed [" + display.symbol(Dimension.SPEED) + "]";
    return new Table(List.of("Pass", "60 ft [s]", "Time [s]", speed), rows, 1, 3);
  }

  /** Says what the times are and how far to trust them. */
  String note() {
    boolean measured = passes().stream().allMatch(p -> p.course().measured());
    String how =
        measured
            ? "From the road speed as measured"
            : "Estimates from power, mass, gears, grip and drag, which do not follow the charge"
                + " temperature";
    return how + "; speed is the mean over the last 66 ft.";
  }

  /** Says what the last pass runs. */
  Optional<String> sentence() {
    List<Named> passes = passes();
    if (passes.isEmpty()) {
      return Optional.empty();
    }
    Named last = passes.get(passes.size() - 1);
    PassTimes times = last.course().times();
    return Optional.of(
        Display.sentenceStart(last.name())
            + " takes "
            + seconds(times.elapsed())
            + " s and goes through the traps at "
            + display.show(times.trapSpeed(), Dimension.SPEED, 0)
            + (last.course().measured() ? ", as measured." : ", an estimate."));
  }

  private static String seconds(double time) {
    return String.format(Locale.ROOT, "%.2f", time);
  }
}
