package soakloop.validation;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Renders the checks as the page in {@code validation/README.md}. */
final class ValidationReadme {
  private static final int VALUE_DIGITS = 8;
  private static final int DEVIATION_DIGITS = 2;

  /** Smaller deviations are rounding of the arithmetic, which differs between machines. */
  private static final double ROUNDING = 1e-11;

  private static final double SMALLEST_PERCENTAGE = 1e-4;

  private ValidationReadme() {}

  static String render(List<Check> checks) {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # What is checked against what

        Every row below is a number this program computes beside a number from outside it. The build
        runs all of them and fails when one leaves its tolerance. This page is written from the same
        list, and the build fails when it is out of date; rewrite it with
        `mvn test -Dtest=ValidationReadmeTest -Dsoakloop.write=true`.

        Deviation is computed minus expected. Where the tolerance is in % or marked "rel.", both are
        shares of the expected value, otherwise both are in the unit of the row. A row marked
        "reported" carries no tolerance. Above each table stand the kind of its source and the source.
        Whether fits find what is true of invented cars stands in [fit](fit/README.md), whether comparisons of cores do in [versus](versus/README.md). The kinds:

        """);
    for (Kind kind : Kind.values()) {
      page.append("- **").append(kind.label()).append("**: ").append(kind.meaning()).append(".\n");
    }
    appendSummary(page, checks);
    by(checks, Check::group).forEach((group, rows) -> appendGroup(page, group, rows));
    return page.toString();
  }

  private static Map<String, List<Check>> by(List<Check> checks, Function<Check, String> key) {
    return checks.stream()
        .collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
  }

  private static void appendSummary(StringBuilder page, List<Check> checks) {
    String kinds = Arrays.stream(Kind.values()).map(Kind::label).collect(Collectors.joining(" | "));
    page.append("\nRows of each kind:\n\n| group | ").append(kinds).append(" |\n|---|");
    page.append("---:|".repeat(Kind.values().length)).append('\n');
    by(checks, Check::group)
        .forEach(
            (group, rows) -> {
              page.append("| ").append(group).append(" |");
              for (Kind kind : Kind.values()) {
                long count = rows.stream().filter(row -> row.kind() == kind).count();
                page.append(' ').append(count == 0 ? "" : count).append(" |");
              }
              page.append('\n');
            });
  }

  private static void appendGroup(StringBuilder page, String group, List<Check> rows) {
    page.append("\n## ").append(group).append('\n');
    by(rows, row -> row.kind().label() + ": " + row.source())
        .forEach((source, sourceRows) -> appendTable(page, source, sourceRows));
  }

  private static void appendTable(StringBuilder page, String source, List<Check> rows) {
    page.append("\n**").append(source.replaceFirst(": ", ":** ")).append("\n\n");
    page.append("| what | expected | computed | deviation | tolerance |\n");
    page.append("|---|---:|---:|---:|---:|\n");
    for (Check row : rows) {
      page.append(
          cells(
              row.what() + (row.unit().equals("-") ? "" : " [" + row.unit() + "]"),
              Digits.of(row.expected(), VALUE_DIGITS),
              Digits.of(row.computed(), VALUE_DIGITS),
              deviation(row),
              tolerance(row)));
    }
  }

  private static String cells(String... cells) {
    StringBuilder line = new StringBuilder("|");
    for (String cell : cells) {
      line.append(' ').append(cell.replace("|", "\\|")).append(" |");
    }
    return line.append('\n').toString();
  }

  private static String deviation(Check check) {
    double deviation = check.deviation();
    double scale =
        check.tolerance() instanceof Tolerance.Relative
            ? 1
            : Math.max(1, Math.abs(check.expected()));
    if (Double.isNaN(deviation)) {
      return "-";
    }
    if (Math.abs(deviation) < ROUNDING * scale) {
      return "0";
    }
    return measure(check.tolerance(), deviation);
  }

  private static String tolerance(Check check) {
    Tolerance tolerance = check.tolerance();
    if (tolerance instanceof Tolerance.Absolute absolute) {
      return measure(tolerance, absolute.limit());
    }
    if (tolerance instanceof Tolerance.Relative relative) {
      return measure(tolerance, relative.limit());
    }
    return "reported";
  }

  private static String measure(Tolerance tolerance, double value) {
    boolean percent =
        tolerance instanceof Tolerance.Relative relative && relative.limit() >= SMALLEST_PERCENTAGE;
    if (percent) {
      return Digits.of(100 * value, DEVIATION_DIGITS) + " %";
    }
    String mark = tolerance instanceof Tolerance.Relative ? " rel." : "";
    return Digits.of(value, DEVIATION_DIGITS) + mark;
  }
}
