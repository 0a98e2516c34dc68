package soakloop.fit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import soakloop.invented.ShopDay;
import soakloop.scenario.ScenarioException;
import soakloop.scenario.ScenarioReader;

/**
 * What a fit said of one invented day, beside what was true.
 *
 * @param seed of the day
 * @param style of its logger
 * @param pulls that were logged
 * @param answers of the quantities asked for
 * @param heldOut last logged pull's peak foretold from those before, less logged, K
 * @param inside whether that was within its 90 % interval
 */
record RecoveryCase(
    long seed,
    String style,
    int pulls,
    Map<Quantity, Answer> answers,
    double heldOut,
    boolean inside) {
  static final List<Quantity> ASKED =
      List.of(Quantity.CORE_DUTY, Quantity.LOOP_FLOW, Quantity.NEXT_PEAK);

  private static final Band NONE = new Band(Double.NaN, Double.NaN, Double.NaN);

  /**
   * One quantity, SI.
   *
   * @param truth what is true
   * @param before what was believed
   * @param after what is known
   * @param informed whether the fit says that the log has news of what decides it
   */
  record Answer(double truth, Band before, Band after, boolean informed) {
    boolean covers() {
      return after.holds(truth);
    }

    double width() {
      return after.half() / before.half();
    }
  }

  /** Fits a day as a shop would. */
  static RecoveryCase of(long seed, Path folder)
      throws IOException, ScenarioException, FitException {
    ShopDay day = ShopDay.draw(seed);
    String log = "day-" + seed + ".csv";
    Files.writeString(folder.resolve(log), day.log());
    FitCase one = FitCase.of(log, ScenarioReader.parse("day-" + seed, day.scenario(log), folder));
    FitResult result =
        Calibration.of(new FitPlan(List.of(one), List.of(), List.of(), FitPlan.USUAL_DRAWS, 1));
    FitResult.Quantities said = result.quantities().get(0);
    Map<Quantity, Answer> answers = new EnumMap<>(Quantity.class);
    for (Quantity quantity : ASKED) {
      answers.put(
          quantity,
          new Answer(
              truth(quantity, day.answers()),
              said.before().getOrDefault(quantity, NONE),
              said.after().getOrDefault(quantity, NONE),
              informed(quantity, result)));
    }
    HeldOut held = result.heldOut().get(0);
    return new RecoveryCase(seed, day.style(), day.pulls(), answers, held.error(), held.inside());
  }

  private static double truth(Quantity quantity, ShopDay.Answers answers) {
    return switch (quantity) {
      case CORE_DUTY -> answers.duty();
      case LOOP_FLOW -> answers.flow();
      default -> answers.peak();
    };
  }

  private static boolean informed(Quantity quantity, FitResult result) {
    String key =
        switch (quantity) {
          case CORE_DUTY -> "core.conductance.value";
          case LOOP_FLOW -> "pump.flow";
          default -> "";
        };
    return key.isEmpty()
        || result.keys().stream().anyMatch(k -> k.key().name().equals(key) && k.isNews());
  }

  /** Returns what was said of a quantity asked for. */
  Answer answer(Quantity quantity) {
    return answers.getOrDefault(quantity, new Answer(Double.NaN, NONE, NONE, false));
  }

  /** Returns what a fit would say that gives back what was believed. */
  RecoveryCase asBelieved() {
    Map<Quantity, Answer> same = new EnumMap<>(Quantity.class);
    answers.forEach(
        (q, a) -> same.put(q, new Answer(a.truth(), a.before(), a.before(), a.informed())));
    return new RecoveryCase(seed, style, pulls, same, heldOut, inside);
  }

  /** Returns it as a line of a file of comma-separated values. */
  String line() {
    StringBuilder line = new StringBuilder(seed + "," + style + "," + pulls);
    for (Quantity quantity : ASKED) {
      Answer a = answer(quantity);
      line.append(
          String.format(
              Locale.ROOT,
              ",%.6g,%.6g,%.6g,%.6g,%.6g,%.6g,%.6g,%s",
              a.truth(),
              a.before().low(),
              a.before().middle(),
              a.before().high(),
              a.after().low(),
              a.after().middle(),
              a.after().high(),
              a.informed() ? "yes" : "no"));
    }
    return line + String.format(Locale.ROOT, ",%.3f,%s", heldOut, inside ? "yes" : "no");
  }

  /** Returns the names of the values of a line. */
  static String header() {
    StringBuilder line = new StringBuilder("seed,logger,pulls");
    for (Quantity quantity : ASKED) {
      for (String what :
          List.of(
              "truth",
              "before low",
              "before middle",
              "before high",
              "after low",
              "after middle",
              "after high",
              "informed")) {
        line.append(',').append(quantity.key()).append(' ').append(what);
      }
    }
    return line + ",held-out error [K],held-out inside";
  }

  /** Reads a line. */
  static RecoveryCase of(String line) {
    String[] cells = line.split(",");
    Map<Quantity, Answer> answers = new EnumMap<>(Quantity.class);
    int next = 3;
    for (Quantity quantity : ASKED) {
      List<Double> numbers = new ArrayList<>();
      for (int i = 0; i < 7; i++) {
        numbers.add(Double.valueOf(cells[next++]));
      }
      answers.put(
          quantity,
          new Answer(
              numbers.get(0),
              new Band(numbers.get(1), numbers.get(2), numbers.get(3)),
              new Band(numbers.get(4), numbers.get(5), numbers.get(6)),
              cells[next++].equals("yes")));
    }
    return new RecoveryCase(
        Long.parseLong(cells[0]),
        cells[1],
        Integer.parseInt(cells[2]),
        answers,
        Double.parseDouble(cells[next]),
        cells[next + 1].equals("yes"));
  }
}
