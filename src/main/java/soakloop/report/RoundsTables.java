package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import soakloop.plan.EveningAnswer;
import soakloop.plan.EveningRound;
import soakloop.quantity.Dimension;

/**
 * A planned evening in a table.
 *
 * @param answer what it gave
 * @param words how it is shown
 */
record RoundsTables(EveningAnswer answer, WaitWords words) {
  private static final double WATT_HOUR = 3600;

  /** Returns all rounds. */
  Table rounds() {
    Display display = words.display();
    String degrees = ", " + display.symbol(Dimension.TEMPERATURE);
    String mass = ", " + display.symbol(Dimension.MASS);
    boolean ices =
        answer.plan().ice() > 0 || answer.rounds().stream().anyMatch(r -> r.iceInTank() > 0);
    boolean counts = answer.plan().battery().isPresent();
    List<String> head = new ArrayList<>(List.of("Round", "In the pit"));
    if (ices) {
      head.addAll(List.of("Ice" + mass, "Tank"));
    }
    if (counts) {
      head.add("Wh");
    }
    head.addAll(List.of("Peak" + degrees, "Margin", "Keep"));
    List<List<String>> rows = new ArrayList<>();
    for (EveningRound round : answer.rounds()) {
      List<String> row = new ArrayList<>();
      row.add(String.valueOf(round.number()));
      row.add(round.way().map(words::brief).orElse("as it was"));
      if (ices) {
        row.add(display.number(round.iceLeft(), Dimension.MASS, 1));
        row.add(display.number(round.iceInTank(), Dimension.MASS, 1));
      }
      if (counts) {
        row.add(String.format(Locale.ROOT, "%.0f", Math.floor(round.batteryLeft() / WATT_HOUR)));
      }
      row.add(display.number(round.peak(), Dimension.TEMPERATURE, 0));
      row.add(display.signed(margin(round), Dimension.TEMPERATURE_DIFFERENCE, 1));
      row.add(words.percent(round.keeps()));
      rows.add(row);
    }
    return new Table(head, rows, 2, head.size() - 1);
  }

  private double margin(EveningRound round) {
    return answer.plan().question().limit() - round.peak();
  }
}
