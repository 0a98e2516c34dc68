package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.reading.Effectiveness;
import soakloop.reading.PullReading;

/**
 * What a log says of itself, in sentences made from its numbers.
 *
 * @param set the logs
 * @param display how numbers are shown
 */
record LogSentences(LogSet set, Display display) {
  /** Returns the answer: of one log its soak, of several how their last pulls stand. */
  Answer answer() {
    List<String> sentences = new ArrayList<>();
    LogSheet first = set.first();
    if (set.single()) {
      sentences.add(pulls(first));
      soak(first).ifPresent(sentences::add);
      coolant(first).ifPresent(sentences::add);
      limit(first).ifPresent(sentences::add);
      effectiveness(first).ifPresent(sentences::add);
      flow(first).ifPresent(sentences::add);
    } else {
      sentences.add(sideBySide());
      starts().ifPresent(sentences::add);
      sentences.add(
          "Starts, day and boost differ between logs: laid side by side they do not yet say which"
              + " hardware is better.");
      set.sheets()
          .forEach(s -> effectiveness(s).ifPresent(t -> sentences.add(s.label() + ": " + t)));
    }
    return new Answer(headline().number(), headline().unit(), sentences);
  }

  /** One number to take away. */
  private record Headline(String number, String unit) {}

  private Headline headline() {
    if (!set.single()) {
      return new Headline(String.valueOf(set.sheets().size()), " logs");
    }
    Optional<PullReading> last = set.first().lastCounted();
    if (last.isPresent()) {
      return new Headline(
          display.number(last.get().counted().getAsDouble(), Dimension.TEMPERATURE, 0),
          display.symbol(Dimension.TEMPERATURE));
    }
    int pulls = set.first().reading().pulls().size();
    return new Headline(String.valueOf(pulls), pulls == 1 ? " pull" : " pulls");
  }

  /** Returns what rows a log has. */
  static String extent(Log log) {
    double step = (log.endTime() - log.time(0)) / (log.size() - 1);
    String each =
        step < 0.95
            ? String.format(Locale.ROOT, "about %.0f a second", 1 / step)
            : String.format(Locale.ROOT, "about one each %.1f s", step).replace(".0 s", " s");
    return String.format(
        Locale.ROOT,
        "%,d rows in %s, %s",
        log.size(),
        Display.duration(log.endTime() - log.time(0)),
        each);
  }

  /** Returns how a file was joined to a log. */
  String joined(LogSheet.Joined file) {
    Estimate offset = file.match().offset();
    String told =
        String.format(
            Locale.ROOT,
            "%s joined by engine speed: its clock reads %.2f s %s, to within %.2f s.",
            file.name(),
            Math.abs(offset.value()),
            offset.value() < 0 ? "more" : "less",
            offset.spread());
    return file.match().unique()
        ? told
        : told
            + " It fits nearly as well "
            + LogWords.listed(
                file.match().rivals().stream()
                    .limit(4)
                    .map(r -> String.format(Locale.ROOT, "%.1f s", r.offset() - offset.value()))
                    .map(t -> t.startsWith("-") ? t.substring(1) + " earlier" : t + " later")
                    .toList())
            + ": pulls are alike. --about says which.";
  }

  private String pulls(LogSheet sheet) {
    int all = sheet.reading().pulls().size();
    if (all == 0) {
      return "No pull was found: " + why(sheet) + ".";
    }
    Optional<PullReading> first = sheet.firstCounted();
    Optional<PullReading> last = sheet.lastCounted();
    String found = all == 1 ? "One pull was found" : all + " pulls were found";
    if (!sheet.has(Signal.CHARGE_TEMPERATURE)) {
      return found + ", but no column was recognised as the charge temperature after the core.";
    }
    if (last.isEmpty()) {
      return found + ", but none has a charge temperature at one common engine speed.";
    }
    String reads =
        "Pull "
            + last.get().pull().number()
            + " reads "
            + display.temperature(last.get().counted().getAsDouble())
            + at();
    if (first.get().pull().number() == last.get().pull().number()) {
      OptionalDouble rise = last.get().rise();
      return rise.isPresent()
          ? reads + ", " + display.difference(rise.getAsDouble()) + " above its start."
          : reads + ".";
    }
    double more = last.get().counted().getAsDouble() - first.get().counted().getAsDouble();
    return reads + ", " + against(more) + " pull " + first.get().pull().number() + ".";
  }

  private String at() {
    return set.counted().isPresent() ? " at " + display.speed(set.counted().getAsDouble()) : "";
  }

  private String against(double kelvin) {
    if (display.isNone(kelvin)) {
      return "the same as";
    }
    return display.difference(kelvin) + (kelvin > 0 ? " above" : " below");
  }

  private static String why(LogSheet sheet) {
    boolean speed = sheet.has(Signal.ENGINE_SPEED) || sheet.has(Signal.ROAD_SPEED);
    if (speed) {
      return "no steady climb of engine speed under full load is in it";
    }
    return "it has neither engine speed nor road speed, and no long stretch of full load";
  }

  /** Says how much of a rise from pull to pull was there at the start. */
  private Optional<String> soak(LogSheet sheet) {
    Optional<PullReading> first = sheet.firstCounted().filter(r -> r.start().isPresent());
    Optional<PullReading> last = sheet.lastCounted().filter(r -> r.start().isPresent());
    if (first.isEmpty()
        || last.isEmpty()
        || first.get().pull().number() == last.get().pull().number()) {
      return Optional.empty();
    }
    double start = last.get().start().getAsDouble() - first.get().start().getAsDouble();
    return Optional.of(
        "It starts "
            + (display.isNone(start)
                ? "as the first did"
                : display.difference(start) + (start > 0 ? " warmer" : " cooler"))
            + " and rises "
            + display.difference(last.get().rise().orElseThrow())
            + " in the pull, where the first rose "
            + display.difference(first.get().rise().orElseThrow())
            + ".");
  }

  private Optional<String> coolant(LogSheet sheet) {
    Optional<PullReading> first = sheet.firstCounted().filter(r -> r.coolantStart().isPresent());
    Optional<PullReading> last = sheet.lastCounted().filter(r -> r.coolantStart().isPresent());
    if (first.isEmpty() || last.isEmpty()) {
      return Optional.empty();
    }
    double from = first.get().coolantStart().getAsDouble();
    double to = last.get().coolantStart().getAsDouble();
    String reads = "Coolant entering the core starts pull ";
    if (first.get().pull().number() == last.get().pull().number()) {
      return Optional.of(
          reads + first.get().pull().number() + " at " + display.temperature(from) + ".");
    }
    return Optional.of(
        reads
            + first.get().pull().number()
            + " at "
            + display.temperature(from)
            + " and pull "
            + last.get().pull().number()
            + " at "
            + display.temperature(to)
            + ".");
  }

  private Optional<String> limit(LogSheet sheet) {
    if (set.limit().isEmpty() || !sheet.has(Signal.CHARGE_TEMPERATURE)) {
      return Optional.empty();
    }
    String limit = display.temperature(set.limit().getAsDouble());
    List<PullReading> over =
        sheet.reading().table().stream().filter(r -> r.overLimit().orElse(0) > 0).toList();
    if (over.isEmpty()) {
      return Optional.of("The charge stays under " + limit + " from each pull to the next.");
    }
    double all = over.stream().mapToDouble(r -> r.overLimit().getAsDouble()).sum();
    return Optional.of(
        "It is over "
            + limit
            + " for "
            + Display.duration(all)
            + " in all, first in pull "
            + over.get(0).pull().number()
            + ".");
  }

  private Optional<String> effectiveness(LogSheet sheet) {
    Effectiveness read = sheet.reading().effectiveness();
    return read.mean()
        .map(
            e ->
                String.format(
                    Locale.ROOT,
                    "The core takes out %s of what parts hot air from the coolant entering it%s"
                        + " (nine in ten: %s).",
                    percent(e.value()),
                    at(),
                    percent(e.value() - e.spread()) + " to " + percent(e.value() + e.spread())));
  }

  /** Says what flow the log's heat balance gives. */
  private Optional<String> flow(LogSheet sheet) {
    return sheet
        .reading()
        .coolantFlow()
        .mean()
        .map(
            flow ->
                "Its heat balance gives a loop flow of "
                    + display.spread(flow, Dimension.VOLUME_FLOW)
                    + " (nine in ten), with any coolant from water to half glycol.");
  }

  static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", Math.max(0, Math.min(1, share)) * 100);
  }

  private String sideBySide() {
    List<String> said = new ArrayList<>();
    for (LogSheet sheet : set.sheets()) {
      Optional<PullReading> last = sheet.lastCounted();
      said.add(
          last.map(r -> display.temperature(r.counted().getAsDouble()) + " in " + sheet.label())
              .orElse("none in " + sheet.label()));
    }
    return "The last pull reads " + LogWords.listed(said) + at() + ".";
  }

  private Optional<String> starts() {
    List<String> said = new ArrayList<>();
    for (LogSheet sheet : set.sheets()) {
      Optional<PullReading> last = sheet.lastCounted().filter(r -> r.start().isPresent());
      last.ifPresent(r -> said.add(display.temperature(r.start().getAsDouble())));
    }
    return said.size() < set.sheets().size()
        ? Optional.empty()
        : Optional.of("It starts at " + LogWords.listed(said) + ".");
  }
}
