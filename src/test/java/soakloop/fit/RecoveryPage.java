package soakloop.fit;

import java.util.Locale;

/** Renders {@code validation/fit/README.md}. */
final class RecoveryPage {
  private RecoveryPage() {}

  static String of(RecoveryTable table) {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Does a fit find what is true?

        Invented dyno days, each drawn from a seed: a car, a scenario as a shop would write it with
        honest spreads, a log of three to five pulls, and one more pull that is not in the log. The
        true car is not the program's own model: its exchangers are a mesh of 24 by 24 cells with uneven air,
        its hoses carry plugs, its reservoir has two zones, its plenum two lumps, its blower leaks
        with speed and has a hill of efficiency, its pump follows viscosity. Sensors lag, read high
        or low, and are rounded to whole degrees (F in the shop's logger, C in the road logger). The
        truth is not drawn from what the scenario believes either: most of it comes evenly from the
        middle two thirds of the stated spread, core and flow go together, and in one day of eight
        one of them, or the heat exchanger, lies outside. The generator steps by 10 ms here; at the 5 ms of the shipped
        logs its peak differs by less than 0.05 K (`ShopDayTest`).

        """);
    page.append(
        line(
            "`mvn test -Dtest=RecoveryTest -Dexcluded.groups=none -Dsoakloop.write=true` fitted %d"
                + " days and wrote `recovery.csv`, one line a day, and this page. Held at each"
                + " build: that the page is what the file says, and a smaller sample fitted anew.\n\n",
            table.cases().size()));
    if (table.cases().size() < RecoveryTest.DAYS) {
      page.append(
          line(
              "%d are meant to be counted; the file holds only those that have been run so far, too"
                  + " few to tell 85 from 95 %%.\n\n",
              RecoveryTest.DAYS));
    }
    page.append("| what | loggers | days | 90 % interval holds the truth | ")
        .append("width over the width before, median | days that say they have news |\n");
    page.append("|---|---|---:|---:|---:|---:|\n");
    for (Quantity quantity : RecoveryCase.ASKED) {
      row(page, quantity, "both", table);
      row(page, quantity, "shop", table.of("shop"));
      row(page, quantity, "road", table.of("road"));
    }
    page.append(
        line(
            "\nWanted are 85 to 95 %% and at most 0.5 over both loggers. The last logged pull,"
                + " foretold from those before: %.1f %% within 2 K (wanted: 95 %%), typically %.2f K"
                + " off, %.1f %% within the interval.\n\n",
            100 * table.near(), table.off(), 100 * table.heldInside()));
    page.append("What is not as wanted: ");
    page.append(table.shortfalls().isEmpty() ? "nothing" : String.join("; ", table.shortfalls()));
    page.append(".\n\nA program that gives back what the scenario believed, on the same days: ");
    page.append(String.join("; ", table.asBelieved().shortfalls())).append(".\n");
    page.append(
        """

        ## What the intervals rest on

        Before the error model was widened, 34 days (seeds from 100, none of which is counted above)
        showed the loop flow 5 to 12 % too low with intervals of 2 to 6 %: it was covered in 18 %,
        the core's duty in 62 %, the next peak always. Now 47 days from 100 give 87, 96 and 89 % by a
        normal approximation about the fitted place. The reason is the reservoir: the program mixes it fully,
        the true one passes a slug of heat on later and sharper, up to 1 K for ten seconds; and a
        model error allowed to last for a thousand seconds took that shape for news of the flow.
        Now an error lasts 10 to 25 s, coolant and other signals are never taken to be better than
        0.6 K and the charge sensor than 0.2 K, and since a model errs in every pull alike, readings of
        several pulls weigh as if they were one. That is judgement, documented in
        `CorrelatedError`, not a published figure. Cars whose model errs in other ways will be covered
        more or less often than these.
        """);
    return page.toString();
  }

  private static void row(
      StringBuilder page, Quantity quantity, String loggers, RecoveryTable table) {
    page.append(
        line(
            "| %s | %s | %d | %.1f %% | %.2f | %.0f %% |\n",
            quantity.label(),
            loggers,
            table.cases().size(),
            100 * table.coverage(quantity),
            table.width(quantity),
            100 * table.informed(quantity)));
  }

  private static String line(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
