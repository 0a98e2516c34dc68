package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import soakloop.fit.PullNumber;
import soakloop.fit.RunBands;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Misfit;
import soakloop.study.Outcome;
import soakloop.study.PullResult;
import soakloop.study.Readings;
import soakloop.study.WholeRun;

/**
 * The tables of the report.
 *
 * @param outcome what they are about
 * @param bands what is known of their numbers, shown where there is room
 * @param display how numbers are shown
 */
record Tables(Outcome outcome, Optional<RunBands> bands, Display display) {
  Tables(Outcome outcome, Display display) {
    this(outcome, Optional.empty(), display);
  }

  /** Returns the pulls by the charge sensor; with a log, what it says beside. */
  Table pulls() {
    boolean limited = outcome.scenario().limits().chargeTemperature().isPresent();
    boolean logged = outcome.pulls().stream().anyMatch(p -> p.logged().isPresent());
    List<String> head =
        new ArrayList<>(List.of(Counted.of(outcome).head(), "Start", "End", "Peak", "Rise"));
    if (limited) {
      head.add("Over limit");
    }
    head.add("Coolant in");
    // A console has no room for all of them.
    boolean room = !(display.plain() && limited && logged);
    boolean loses = room && outcome.pulls().stream().anyMatch(p -> p.chargeLoss().isPresent());
    if (loses) {
      head.add("Core loss [" + display.symbol(Dimension.PRESSURE_DIFFERENCE) + "]");
    }
    if (logged) {
      head.addAll(List.of("Logged end", "Error"));
    }
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < outcome.pulls().size(); i++) {
      PullResult pull = outcome.pulls().get(i);
      List<String> row = new ArrayList<>();
      row.add(shortName(pull));
      row.add(temperature(pull.sensor().start()) + around(i, PullNumber.SENSOR_START));
      row.add(temperature(pull.sensor().end()) + around(i, PullNumber.SENSOR_END));
      row.add(
          temperature(pull.sensor().peakToNextPull()) + around(i, PullNumber.SENSOR_PEAK_TO_NEXT));
      row.add(signed(pull.sensor().rise()) + around(i, PullNumber.SENSOR_RISE));
      if (limited) {
        row.add(Display.duration(pull.sensor().overLimit()));
      }
      row.add(
          temperature(pull.coolant().coreInletStart()) + around(i, PullNumber.CORE_INLET_START));
      if (loses) {
        row.add(
            pull.chargeLoss()
                .map(l -> display.number(l.peak(), Dimension.PRESSURE_DIFFERENCE, 2))
                .orElse(Display.NOTHING));
      }
      if (logged) {
        row.add(pull.logged().map(l -> temperature(l.sensor().end())).orElse(Display.NOTHING));
        row.add(
            pull.logged()
                .map(l -> signed(pull.sensor().end() - l.sensor().end()))
                .orElse(Display.NOTHING));
      }
      rows.add(row);
    }
    return new Table(head, rows, 1, head.size() - 1);
  }

  /** Returns half the width of a band, after a sign; nothing if it is not known. */
  private String around(int pull, PullNumber number) {
    return bands
        .flatMap(b -> b.pulls().get(pull).number(number))
        .map(b -> " \u00b1\u00a0" + difference(b.half()))
        .orElse("");
  }

  /** Returns the misfit of every compared signal. */
  Table misfits() {
    List<List<String>> rows = new ArrayList<>();
    outcome
        .comparison()
        .ifPresent(
            c ->
                Stream.of(Signal.values())
                    .forEach(s -> c.misfit(s).ifPresent(m -> rows.add(misfit(s, m)))));
    return new Table(
        List.of("Logged", "Average", "Typical (RMS)", "Largest", "Readings"), rows, 1, 4);
  }

  /** Returns modelled less logged charge sensor, pull by pull and over all of the run. */
  Table errors() {
    boolean limited = outcome.scenario().limits().chargeTemperature().isPresent();
    List<String> head =
        new ArrayList<>(List.of(Counted.of(outcome).head(), "Start", "End", "Peak", "Rise"));
    if (limited) {
      head.add("Over limit");
    }
    head.addAll(List.of("Bias", "RMS"));
    List<List<String>> rows = new ArrayList<>();
    for (PullResult pull : outcome.pulls()) {
      pull.logged().ifPresent(log -> rows.add(errors(pull, log, limited)));
    }
    outcome
        .comparison()
        .ifPresent(
            c ->
                c.misfit(Signal.CHARGE_TEMPERATURE)
                    .ifPresent(m -> c.charge().ifPresent(w -> rows.add(errors(w, m, limited)))));
    return new Table(head, rows, 1, head.size() - 1);
  }

  private List<String> errors(PullResult pull, PullResult.Logged log, boolean limited) {
    Readings said = pull.sensor();
    Readings seen = log.sensor();
    List<String> row = new ArrayList<>();
    row.add(shortName(pull));
    row.add(signed(said.start() - seen.start()));
    row.add(signed(said.end() - seen.end()));
    row.add(signed(said.peakToNextPull() - seen.peakToNextPull()));
    row.add(signed(said.rise() - seen.rise()));
    if (limited) {
      row.add(seconds(said.overLimit() - seen.overLimit()));
    }
    row.add(signed(log.fit().bias()));
    row.add(difference(log.fit().rms()));
    return row;
  }

  private List<String> errors(WholeRun run, Misfit misfit, boolean limited) {
    WholeRun.Course said = run.modelled();
    WholeRun.Course seen = run.logged();
    List<String> row = new ArrayList<>();
    row.add("all");
    row.add(signed(said.start() - seen.start()));
    row.add(signed(said.end() - seen.end()));
    row.add(signed(said.peak() - seen.peak()));
    row.add(Display.NOTHING);
    if (limited) {
      row.add(seconds(said.overLimit() - seen.overLimit()));
    }
    row.add(signed(misfit.bias()));
    row.add(difference(misfit.rms()));
    return row;
  }

  private static String seconds(double seconds) {
    return String.format(Locale.ROOT, "%+.0f s", seconds)
        .replace("-0 s", "0 s")
        .replace("+0 s", "0 s");
  }

  private String difference(double kelvin) {
    return display.number(kelvin, Dimension.TEMPERATURE_DIFFERENCE, 1);
  }

  /** Returns the defaults that were used. */
  Table assumed() {
    List<List<String>> rows =
        outcome.scenario().assumedAsShown().stream()
            .map(
                a ->
                    List.of(
                        a.key(),
                        a.value(),
                        a.spread().isEmpty() ? "" : "\u00b1 " + spread(a.spread()),
                        a.reason()))
            .toList();
    return new Table(List.of("Key", "Value", "Nine in ten within", "Why"), rows, 9, 9);
  }

  /** Returns what happened and when. */
  Table events() {
    List<List<String>> rows =
        outcome.trace().events().stream()
            .map(e -> List.of(Display.clock(e.time()), said(e.kind())))
            .toList();
    return new Table(List.of("At [min:s]", "What"), rows, 0, 0);
  }

  /** Returns only the number of a pull or pass that is called by its number. */
  private String shortName(PullResult pull) {
    return Counted.of(outcome).number(pull.name());
  }

  private List<String> misfit(Signal signal, Misfit misfit) {
    return List.of(
        signal.channel().map(Channel::label).orElse(signal.key()),
        display.fineDifference(misfit.bias()),
        display.fineSize(misfit.rms()),
        display.fineDifference(misfit.largest()),
        String.valueOf(misfit.count()));
  }

  private String temperature(double kelvin) {
    return display.number(kelvin, Dimension.TEMPERATURE, 1);
  }

  private String signed(double kelvin) {
    return display.signed(kelvin, Dimension.TEMPERATURE_DIFFERENCE, 1);
  }

  private static String spread(String written) {
    return written.replaceFirst("^(\\+/-|\u00b1)\\s*", "");
  }

  private static String said(Trace.Event.Kind kind) {
    return switch (kind) {
      case LIMIT_EXCEEDED -> "sensor rises through the limit";
      case LIMIT_REGAINED -> "sensor falls through the limit";
      case FAN_ON -> "car fan switches on";
      case FAN_OFF -> "car fan switches off";
      case ICE_GONE -> "last of the ice is gone";
    };
  }
}
