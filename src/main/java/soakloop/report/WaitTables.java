package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soakloop.plan.AfterWait;
import soakloop.plan.GaugeRule;
import soakloop.plan.WaitAnswer;
import soakloop.plan.WayAnswer;
import soakloop.plan.Window;
import soakloop.quantity.Dimension;

/**
 * A plan of waits in tables.
 *
 * @param answer what it gave
 * @param words how it is shown
 */
record WaitTables(WaitAnswer answer, WaitWords words) {
  /** Rows above and below the threshold. */
  private static final int ABOVE = 3;

  private static final int BELOW = 3;

  /** Returns all ways with their windows. */
  Table ways() {
    boolean plain = words.display().plain();
    String degrees = ", " + words.display().symbol(Dimension.TEMPERATURE);
    List<List<String>> rows = new ArrayList<>();
    for (WayAnswer way : answer.ways()) {
      String full = plain ? words.brief(way.way()) : words.way(way.way());
      String name = Display.sentenceStart(full);
      if (way.windows().isEmpty()) {
        rows.add(row(name, "never", Display.NOTHING, way));
      }
      for (Window window : way.windows()) {
        rows.add(row(name, words.from(window), until(window), way));
        name = "";
      }
    }
    return new Table(
        List.of("Way of waiting", "Go from", "Until", "Gauge" + degrees, "Best peak" + degrees),
        rows,
        1,
        4);
  }

  private String until(Window window) {
    return window.open() ? words.to(window) + " +" : words.to(window);
  }

  private List<String> row(String name, String from, String to, WayAnswer way) {
    boolean byGauge = way.threshold().isPresent() && !way.windows().isEmpty();
    boolean any = byGauge && way.gauge().isAlwaysUnder(way.threshold().getAsDouble());
    String most =
        any
            ? "any"
            : byGauge ? whole(words.wholeDegrees(way.threshold().getAsDouble())) : Display.NOTHING;
    double lowest =
        way.curve().stream()
            .mapToDouble((AfterWait a) -> a.charge(answer.plan().confidence()))
            .min()
            .orElse(Double.NaN);
    return List.of(name, from, to, most, words.display().number(lowest, Dimension.TEMPERATURE, 1));
  }

  private static String whole(double degrees) {
    return String.format(Locale.ROOT, "%.0f", degrees);
  }

  /** Returns whether the best way can be gone by on the gauge. */
  boolean hasGauge() {
    WayAnswer best = answer.best();
    return !best.windows().isEmpty()
        && best.threshold().isPresent()
        && !best.gauge().isAlwaysUnder(best.threshold().getAsDouble());
  }

  /** Returns what to do at each reading of the coolant gauge; only if there is a threshold. */
  Table gauge() {
    WayAnswer best = answer.best();
    double confidence = answer.plan().confidence();
    double most = words.wholeDegrees(best.threshold().orElseThrow());
    String degrees = ", " + words.display().symbol(Dimension.TEMPERATURE);
    List<List<String>> rows = new ArrayList<>();
    for (int i = ABOVE; i >= -BELOW; i--) {
      double reading = most + i * words.step();
      Optional<GaugeRule.At> at = best.gauge().at(words.kelvin(reading), confidence);
      at.ifPresent(
          a ->
              rows.add(
                  List.of(
                      whole(reading),
                      reading <= most ? "GO" : "WAIT",
                      words.percent(a.keeps()),
                      words.display().number(a.peak(), Dimension.TEMPERATURE, 0),
                      Display.clock(a.seconds()))));
    }
    return new Table(
        List.of("Gauge" + degrees, "Then", "Keep it", "Peak under" + degrees, "Reads so at"),
        rows,
        2,
        4);
  }
}
