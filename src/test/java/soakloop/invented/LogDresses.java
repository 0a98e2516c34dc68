package soakloop.invented;

import static soakloop.invented.LogDress.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import soakloop.invented.LogDress.Encoding;
import soakloop.invented.LogDress.Extra;
import soakloop.invented.LogDress.Names;
import soakloop.invented.LogDress.Preamble;
import soakloop.invented.LogDress.Time;
import soakloop.invented.LogDress.Units;

/** Dresses that logs come in: one for each habit of loggers, and some that have several. */
public final class LogDresses {
  private LogDresses() {}

  /** Returns all. */
  public static List<LogDress> all() {
    List<LogDress> all = new ArrayList<>();
    all.add(plain("plain"));
    all.add(plain("semicolons").parted(';', '.'));
    all.add(plain("semicolons, decimal comma").parted(';', ','));
    all.add(plain("tabs").parted('\t', '.'));
    all.add(plain("tabs, decimal comma").parted('\t', ','));
    all.add(plain("bars").parted('|', '.'));
    all.add(plain("commas, decimal comma in quotes").parted(',', ','));
    for (Encoding encoding : Encoding.values()) {
      all.add(
          plain("encoding " + encoding).encoded(encoding, "\r\n").units(Units.DEGREE_SIGN, false));
    }
    for (Preamble preamble : Preamble.values()) {
      all.add(plain("preamble " + preamble).after(preamble));
    }
    all.add(plain("old line ends").encoded(Encoding.UTF_8, "\r"));
    for (Units units : Units.values()) {
      all.add(plain("units " + units).units(units, false));
      all.add(plain("units " + units + ", US").units(units, true));
    }
    for (Time time : Time.values()) {
      all.add(plain("time " + time).timed(time));
    }
    for (Extra extra : Extra.values()) {
      all.add(plain("with " + extra).with(extra));
    }
    for (String word : List.of("NaN", "N/A", "---", "null")) {
      all.add(plain("missing " + word).missing(word));
    }
    all.add(plain("open names").named(Names.OPEN));
    all.add(plain("open names, US, units nowhere").named(Names.OPEN).units(Units.NOWHERE, true));
    all.add(plain("open names, engine off first").named(Names.OPEN).with(Extra.ENGINE_OFF));
    all.add(
        plain("spreadsheet abroad")
            .parted(';', ',')
            .encoded(Encoding.LATIN_1, "\r\n")
            .after(Preamble.RAGGED)
            .units(Units.ROW, false)
            .timed(Time.OVER_MIDNIGHT)
            .with(Extra.TRAILING));
    all.add(
        plain("phone")
            .units(Units.CELLS, true)
            .timed(Time.EPOCH_MILLISECONDS)
            .with(Extra.POLLED)
            .missing("N/A"));
    all.add(
        plain("polled and held, whole seconds, tabs")
            .parted('\t', '.')
            .timed(Time.ROUNDED)
            .with(Extra.HELD));
    all.add(plain("long, decimal comma").parted(';', ',').timed(Time.ISO).with(Extra.LONG));
    all.add(
        plain("restarted, header again, BOM")
            .encoded(Encoding.UTF_8_MARKED, "\r\n")
            .timed(Time.RESTARTS)
            .with(Extra.REPEATED_HEADER));
    all.add(
        plain("two pages, units row, days, index")
            .after(Preamble.PADDED)
            .units(Units.BRACKETED_ROW, true)
            .timed(Time.DAYS)
            .with(Extra.INDEX));
    all.add(plain("full").named(Names.FULL));
    all.add(plain("full, US, units nowhere").named(Names.FULL).units(Units.NOWHERE, true));
    all.add(plain("full, units nowhere").named(Names.FULL).units(Units.NOWHERE, false));
    all.add(plain("US, units nowhere, on the road").units(Units.NOWHERE, true).onTheRoad());
    all.add(plain("on the road").onTheRoad());
    all.add(
        plain("full, on the road, cells with units")
            .named(Names.FULL)
            .units(Units.CELLS, true)
            .timed(Time.CLOCK)
            .onTheRoad());
    all.add(
        plain("full, on the road, abroad")
            .parted(';', ',')
            .encoded(Encoding.UTF_8_MARKED, "\r\n")
            .after(Preamble.RAGGED)
            .units(Units.ROW, false)
            .named(Names.FULL)
            .timed(Time.EPOCH_MILLISECONDS)
            .missing("---")
            .onTheRoad());
    all.add(plain("open names, on the road").named(Names.OPEN).onTheRoad());
    all.add(plain("one loop temperature, core out").named(Names.LONE_OUT));
    all.add(plain("one loop temperature, core in, US").named(Names.LONE_IN).units(Units.ROW, true));
    all.add(plain("one loop temperature, core out, road").named(Names.LONE_OUT).onTheRoad());
    all.add(plain("one loop temperature, core in, road").named(Names.LONE_IN).onTheRoad());
    all.add(plain("absolute pressure alone").named(Names.ABSOLUTE));
    all.add(
        plain("broken quote, semicolons")
            .parted(';', ',')
            .units(Units.SPACED_CELLS, false)
            .with(Extra.BROKEN_QUOTE));
    return all;
  }

  /** Returns a dress of random habits that can stand together. */
  public static LogDress random(Random random) {
    char decimal = random.nextInt(3) == 0 ? ',' : '.';
    char separator =
        decimal == ',' ? (random.nextBoolean() ? ';' : '\t') : any(random, ',', ';', '\t');
    Extra extra = any(random, Extra.values());
    Time time = any(random, Time.values());
    Units units = any(random, Units.values());
    Names names = any(random, Names.PLAIN, Names.PLAIN, Names.FULL, Names.OPEN);
    boolean sparse = extra == Extra.POLLED || extra == Extra.HELD;
    if (extra == Extra.LONG) {
      // A row for each value has a time in each row, and stamps that repeat say nothing else.
      time = any(random, Time.SECONDS, Time.MILLISECONDS, Time.CLOCK, Time.ISO, Time.NEGATIVE);
      units = Units.ROW;
    }
    if (sparse || extra == Extra.TEXTS) {
      names = Names.PLAIN;
    }
    Preamble preamble =
        extra == Extra.LONG
            ? any(random, Preamble.NONE, Preamble.COMMENTS)
            : any(random, Preamble.values());
    if (units == Units.AFTER_COMMA && separator == ',') {
      units = Units.BRACKETS;
    }
    LogDress dress =
        plain("random")
            .parted(separator, decimal)
            .encoded(any(random, Encoding.values()), any(random, "\n", "\r\n"))
            .after(preamble)
            .units(units, random.nextBoolean())
            .timed(time)
            .named(names)
            .with(extra)
            .missing(any(random, "", "", "NaN", "N/A", "---"));
    return random.nextInt(3) == 0 ? dress.onTheRoad() : dress;
  }

  @SafeVarargs
  private static <T> T any(Random random, T... from) {
    return from[random.nextInt(from.length)];
  }
}
