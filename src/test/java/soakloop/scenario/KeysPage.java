package soakloop.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soakloop.quantity.Dimension;

/** Prints the key table as a page. */
final class KeysPage {
  private static final String INTRO =
      """
      # Keys of a scenario

      Made from the one table that the reader obeys; a test fails if this page is stale. To write it
      anew: `mvn test -Dtest=GeneratedPagesTest -Dsoakloop.write=true`.

      **Values** carry their unit: `5 L`, `13 psi`, `62 %`. A bare number is an error wherever a unit is
      needed. US and metric units are equals and may be mixed. Spaces before the unit do not matter, a
      degree sign may stand for `deg`, and `L` may be written `l`. `psig` and `psia` say which pressure
      is meant; where the key takes the other kind they are an error, never converted in silence.

      **Spreads** may follow any value: `18 L/min +/- 30 %` (of the value), `5 kg +/- 0.3 kg`,
      `62 % +/- 4 points`, `20 degC +/- 2 K`; `\u00b1` will do for `+/-`. Nine times in ten the true value lies
      inside. A default brings its own spread; all defaults are common practice without a source unless
      one is named.

      **Curves** are one value, which holds everywhere, or points that rise:
      `[[2500 rpm, 11.5 psi], [6800 rpm, 13 psi]]`. Between points they are straight, beyond their ends
      level.

      **Names.** A loop may have any number of reservoirs, hoses, heat exchangers and chillers. Each is called by
      its kind, or by a name that ends in it (`supply-hose`, `front-heat-exchanger`), and has a section of
      that name. In the table a star stands for the name's beginning. A section that `loop` does not name
      is an error.

      **Paths** name one value, where a study or a message speaks of it: `reservoir.volume`,
      `supply-hose.bore`. Items of a list count from 1: `session.2.wait.for` is how long the wait of the
      second step lasts, `boost.1.2` the pressure of the first point.

      **Needed** keys have neither a default nor "may be left out" in the column for defaults. A key inside
      a section is needed only if the section is there. A key that another one makes useless is an error
      that says which one to take out.
      """;

  private KeysPage() {}

  static String render() {
    StringBuilder page = new StringBuilder(INTRO);
    for (Map.Entry<String, List<KeySpec>> group : groups().entrySet()) {
      page.append("\n## ").append(group.getKey().replace("*", "\\*")).append("\n\n");
      page.append("| Key | Takes | From, to | If left out | Why | What it is |\n");
      page.append("|---|---|---|---|---|---|\n");
      for (KeySpec spec : group.getValue()) {
        page.append(row(spec));
      }
    }
    return page.append(units()).toString();
  }

  private static Map<String, List<KeySpec>> groups() {
    Map<String, List<KeySpec>> groups = new LinkedHashMap<>();
    for (KeySpec spec : KeyTable.get().specs()) {
      String top = spec.key().split("\\.")[0];
      boolean ofPage = spec.takes() == KeySpec.Takes.TEXT || spec.key().equals("units");
      groups
          .computeIfAbsent(ofPage && top.equals(spec.key()) ? "page" : top, k -> new ArrayList<>())
          .add(spec);
    }
    return groups;
  }

  private static String row(KeySpec spec) {
    String left =
        spec.defaultText()
            .map(text -> "`" + text + "`")
            .orElse(spec.optional() ? "may be left out" : "");
    return "| `"
        + spec.key()
        + "` | "
        + takes(spec)
        + " | "
        + (spec.takes() == KeySpec.Takes.CHOICE ? "" : Ranges.of(spec))
        + " | "
        + left
        + " | "
        + spec.because()
        + " | "
        + spec.means()
        + " |\n";
  }

  private static String takes(KeySpec spec) {
    return switch (spec.takes()) {
      case QUANTITY -> quantity(spec.dimension().orElseThrow());
      case QUANTITY_OR_CHOICE ->
          quantity(spec.dimension().orElseThrow()) + "; or " + words(spec.choices());
      case CHOICE -> words(spec.choices());
      case SWITCH -> words(List.of("on", "off"));
      case COUNT -> "whole number";
      case TEXT -> "text";
      case CURVE ->
          "curve of "
              + quantity(spec.dimension().orElseThrow())
              + " over "
              + quantity(spec.over().orElseThrow())
              + (spec.choices().isEmpty() ? "" : "; or " + words(spec.choices()));
      case SECTION -> "section";
      case LIST -> "list";
    };
  }

  private static String quantity(Dimension dimension) {
    return dimension.isPlainNumber()
        ? "number without a unit"
        : dimension.label() + " (" + dimension.allowed() + ")";
  }

  private static String words(List<String> words) {
    return Wanted.oneOf(words.stream().map(word -> "`" + word + "`").toList());
  }

  private static String units() {
    StringBuilder page = new StringBuilder("\n## Units\n\n| What | Units |\n|---|---|\n");
    for (Dimension dimension : Dimension.values()) {
      page.append("| ")
          .append(dimension.label())
          .append(" | ")
          .append(dimension.allowed())
          .append(" |\n");
    }
    return page.toString();
  }
}
