package soakloop.versus;

import java.util.Locale;

/** The page on the compared pairs, made from their table. */
final class PairsPage {
  private PairsPage() {}

  static String of(PairsTable table) {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Pairs of cores, compared

        Invented dyno days come in pairs: one car and loop, two cores, another start (up to 10 K away), boost (up to 1 psi away) and day (up to 5 K away). The logs are made by the test tree's generator, a model of another structure than the one that is fitted. Each pair is compared as a shop would: both cores written down alike, 30 % spread on their conductance. Every fourth pair has equal cores, every fourth a second core 20 % better, the rest differ by up to a factor of 1.35 either way, drawn evenly over the logarithm. Nothing here is published data.

        Made by `mvn test -Dtest=PairsTest -Dexcluded.groups=none -Dsoakloop.write=true -Dpairs=1000`; `pairs.csv` holds every pair.

        """);
    page.append(
        String.format(
            Locale.ROOT,
            "Pairs compared: %d.%n%n| What | Found | Wanted |%n|---|---|---|%n",
            table.cases().size()));
    row(page, "Equal cores called better or worse", percent(table.falseVerdicts()), "at most 10 %");
    row(page, "20 % better core called better", percent(table.rightVerdicts("")), "at least 80 %");
    row(page, "the same, shop's logger", percent(table.rightVerdicts("shop")), "");
    row(page, "the same, road logger (whole degC)", percent(table.rightVerdicts("road")), "");
    row(
        page,
        "Brier score of unequal pairs",
        String.format(Locale.ROOT, "%.3f", table.brier()),
        String.format(Locale.ROOT, "below the base rate's %.3f", table.brierOfBaseRate()));
    row(page, "90 % intervals that hold the true difference", percent(table.coverage()), "");
    page.append(
        """

        | Chance said | Pairs | Mean chance | Really better | Within binomial limits |
        |---|---|---|---|---|
        """);
    for (PairsTable.Bin bin : table.bins()) {
      page.append(
          String.format(
              Locale.ROOT,
              "| %.1f to %.1f | %d | %s | %s | %s |%n",
              bin.from(),
              bin.to(),
              bin.count(),
              bin.count() == 0 ? "-" : String.format(Locale.ROOT, "%.3f", bin.stated()),
              bin.count() == 0
                  ? "-"
                  : String.format(Locale.ROOT, "%.3f", bin.better() / (double) bin.count()),
              bin.isReliable() ? "yes" : "no"));
    }
    page.append("\nMissed: ");
    page.append(
        table.shortfalls().isEmpty()
            ? "nothing.\n"
            : String.join("; ", table.shortfalls()) + ".\n");
    return page.toString().replace("\r\n", "\n");
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }

  private static void row(StringBuilder page, String what, String found, String wanted) {
    page.append("| ").append(what).append(" | ").append(found).append(" | ").append(wanted);
    page.append(" |\n");
  }
}
