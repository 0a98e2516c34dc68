package soakloop.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import soakloop.fit.Advice;
import soakloop.fit.Band;
import soakloop.quantity.Dimension;
import soakloop.versus.ConditionKind;
import soakloop.versus.Difference;
import soakloop.versus.Origin;
import soakloop.versus.PullFigure;
import soakloop.versus.TestSheet;
import soakloop.versus.VersusResult;

/**
 * A comparison in tables.
 *
 * @param result what it gave
 * @param words how its numbers are shown
 */
record VersusTables(VersusResult result, VersusWords words) {
  private static final List<PullFigure> MAIN =
      List.of(PullFigure.START, PullFigure.END, PullFigure.RISE, PullFigure.PEAK);

  private Display display() {
    return words.display();
  }

  /** Returns the deciding figure of every pull: all contenders, differences, chances. */
  Table pulls(VersusResult.Pairing pairing) {
    return pulls(pairing, result.plan().by());
  }

  private Table pulls(VersusResult.Pairing pairing, PullFigure figure) {
    List<List<String>> rows = new ArrayList<>();
    VersusResult.Ran one = result.contenders().get(pairing.one());
    VersusResult.Ran other = result.contenders().get(pairing.other());
    for (int p = 0; p < one.pulls().size(); p++) {
      Difference by = pairing.pulls().get(p).get(figure);
      rows.add(
          List.of(
              Display.sentenceStart(one.pulls().get(p)),
              words.figure(one.figures().get(p), figure),
              words.figure(other.figures().get(p), figure),
              by == null ? Display.NOTHING : words.difference(by, figure),
              by == null ? Display.NOTHING : VersusWords.sure(by.better())));
    }
    return new Table(List.of("", one.label(), other.label(), "Difference", "Better"), rows, 1, 4);
  }

  /** Returns every modelled figure of the last pull. */
  Table figures(VersusResult.Pairing pairing) {
    List<List<String>> rows = new ArrayList<>();
    VersusResult.Ran one = result.contenders().get(pairing.one());
    VersusResult.Ran other = result.contenders().get(pairing.other());
    int last = one.pulls().size() - 1;
    for (PullFigure figure : PullFigure.values()) {
      Difference by = pairing.pulls().get(last).get(figure);
      if (by != null) {
        rows.add(
            List.of(
                Display.sentenceStart(figure.label()),
                words.figure(one.figures().get(last), figure),
                words.figure(other.figures().get(last), figure),
                words.difference(by, figure),
                chance(by, figure)));
      }
    }
    return new Table(
        List.of(
            Display.sentenceStart(words.lastPull()),
            one.label(),
            other.label(),
            "Difference",
            "Chance better"),
        rows,
        1,
        4);
  }

  /** A start or a coolant temperature is no merit of a core by itself. */
  private static String chance(Difference by, PullFigure figure) {
    return MAIN.contains(figure) || figure == PullFigure.OVER_LIMIT || !(by.by().half() == 0)
        ? VersusWords.sure(by.better())
        : Display.NOTHING;
  }

  /** Returns what both logs show, as the trade quotes it. */
  Table logged(VersusResult.Pairing pairing) {
    List<List<String>> rows = new ArrayList<>();
    for (VersusResult.Raw raw : pairing.logged()) {
      rows.add(
          List.of(
              Display.sentenceStart(raw.pull()),
              course(raw.one()),
              course(raw.other()),
              String.format(Locale.ROOT, "%.0f %%", 100 * raw.reduction()),
              overCoolant(raw.one()) + " and " + overCoolant(raw.other()),
              share(raw.one().effectiveness()) + " and " + share(raw.other().effectiveness())));
    }
    Table all =
        new Table(
            List.of(
                "",
                words.label(pairing.one()),
                words.label(pairing.other()),
                "Rises less by",
                "End over coolant",
                "Effectiveness"),
            rows,
            1,
            5);
    return pairing.logged().stream().allMatch(VersusTables::isWithoutEffectiveness)
        ? all.without(5)
        : all;
  }

  private static boolean isWithoutEffectiveness(VersusResult.Raw raw) {
    return raw.one().effectiveness().isEmpty() && raw.other().effectiveness().isEmpty();
  }

  private String course(VersusResult.Shown shown) {
    return display().number(shown.start(), Dimension.TEMPERATURE, 0)
        + " to "
        + display().temperature(shown.end())
        + ", up "
        + display().number(shown.rise(), Dimension.TEMPERATURE_DIFFERENCE, 1);
  }

  private String overCoolant(VersusResult.Shown shown) {
    return shown.coolant().isEmpty()
        ? Display.NOTHING
        : display()
            .number(
                shown.end() - shown.coolant().getAsDouble(), Dimension.TEMPERATURE_DIFFERENCE, 0);
  }

  private static String share(OptionalDouble share) {
    return share.isEmpty()
        ? Display.NOTHING
        : String.format(Locale.ROOT, "%.0f %%", 100 * share.getAsDouble());
  }

  /** Returns where the difference of the logged rises comes from, pull by pull. */
  Table parts(VersusResult.Pairing pairing) {
    List<String> head = new ArrayList<>(List.of("", "Logged difference"));
    List<Origin> origins =
        pairing.logged().isEmpty()
            ? List.of()
            : Arrays.stream(Origin.values())
                .filter(pairing.logged().get(0).parts()::containsKey)
                .toList();
    origins.forEach(o -> head.add(Display.sentenceStart(o.label())));
    head.add("Not explained");
    List<List<String>> rows = new ArrayList<>();
    for (VersusResult.Raw raw : pairing.logged()) {
      List<String> row = new ArrayList<>();
      row.add(Display.sentenceStart(raw.pull()));
      row.add(words.degrees(raw.difference()));
      origins.forEach(
          o ->
              row.add(
                  words.signed(
                      raw.parts().getOrDefault(o, new Band(0, 0, 0)),
                      Dimension.TEMPERATURE_DIFFERENCE)));
      row.add(words.degrees(raw.rest()));
      rows.add(row);
    }
    return new Table(head, rows, 1, head.size() - 1);
  }

  /** Returns the same for a console. */
  Table shortParts(VersusResult.Pairing pairing) {
    List<List<String>> rows = new ArrayList<>();
    for (VersusResult.Raw raw : pairing.logged()) {
      double swapped = raw.parts().getOrDefault(Origin.SWAPPED, new Band(0, 0, 0)).middle();
      double start = raw.parts().getOrDefault(Origin.START, new Band(0, 0, 0)).middle();
      rows.add(
          List.of(
              Display.sentenceStart(raw.pull()),
              words.degrees(raw.difference()),
              words.degrees(swapped),
              words.degrees(start),
              words.degrees(raw.difference() - swapped - start - raw.rest()),
              words.degrees(raw.rest())));
    }
    return new Table(
        List.of("", "Logged", "Swapped", "Start", "Day, boost, car", "Unexplained"), rows, 1, 5);
  }

  /** Returns what ought to be alike: as it was, how far apart it may be, what it cost. */
  Table conditions(VersusResult.Pairing pairing) {
    List<List<String>> rows = new ArrayList<>();
    for (VersusResult.Condition condition : pairing.conditions()) {
      rows.add(
          List.of(
              Display.sentenceStart(condition.kind().label()),
              value(condition.kind(), condition.one()),
              value(condition.kind(), condition.other()),
              condition.matters() ? "\u00b1\u00a0" + window(condition) : "any",
              words.degrees(condition.costs()),
              condition.isBroken() ? "no" : "yes"));
    }
    return new Table(
        List.of(
            "",
            words.label(pairing.one()),
            words.label(pairing.other()),
            "Alike within",
            "Costs",
            "Alike"),
        rows,
        1,
        4);
  }

  private String value(ConditionKind kind, double value) {
    return switch (kind) {
      case BOOST -> display().show(value, Dimension.GAUGE_PRESSURE, 1);
      case WAITS -> Display.duration(value);
      default -> display().show(value, Dimension.TEMPERATURE, 0);
    };
  }

  /** Returns how far apart a condition may be. */
  String window(VersusResult.Condition condition) {
    return switch (condition.kind()) {
      case BOOST -> display().show(condition.window(), Dimension.PRESSURE_DIFFERENCE, 1);
      case WAITS -> Display.duration(condition.window());
      default -> display().fineSize(condition.window());
    };
  }

  /** Returns the difference under other conditions. */
  Table elsewhere(VersusResult.Pairing pairing) {
    List<List<String>> rows = new ArrayList<>();
    for (VersusResult.Elsewhere there : pairing.elsewhere()) {
      rows.add(
          List.of(
              words.conditions(there),
              words.difference(there.difference(), result.plan().by()),
              VersusWords.sure(there.difference().better())));
    }
    return new Table(List.of("", "Difference", "Chance better"), rows, 1, 2);
  }

  /** Returns what would sharpen the answer. */
  Table advice(VersusResult.Pairing pairing) {
    List<List<String>> rows = new ArrayList<>();
    for (Advice advice : pairing.settling().advice()) {
      rows.add(
          List.of(
              Display.sentenceStart(advice.what()),
              advice.isTest() ? "test" : "sensor",
              "\u00b1\u00a0" + words.half(advice.now()),
              "\u00b1\u00a0" + words.half(advice.then())));
    }
    return new Table(List.of("", "Kind", "Now", "With it"), rows, 2, 3);
  }

  /** Returns the smallest difference that a day of so many pulls tells apart. */
  Table sheet(TestSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (TestSheet.Row row : sheet.rows()) {
      rows.add(
          List.of(
              row.pulls() + (row.pulls() == 1 ? " pull" : " pulls"),
              display().fineSize(row.plain()),
              display().fineSize(row.thereAndBack()),
              display().fineSize(row.withProbe())));
    }
    return new Table(
        List.of("With each", "One, then the other", "And the first again", "Coolant probe too"),
        rows,
        1,
        3);
  }
}
