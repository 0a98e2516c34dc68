package soakloop.invented;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What a dressed log has before its values. */
final class DressHead {
  private final LogDress dress;
  private final DressTime time;
  private final List<DressChannel> channels;
  private final DressPage page;

  DressHead(LogDress dress, DressTime time, List<DressChannel> channels, DressPage page) {
    this.dress = dress;
    this.time = time;
    this.channels = channels;
    this.page = page;
  }

  /** Writes all of it. */
  void write() {
    preamble();
    if (dress.extra() == LogDress.Extra.LONG) {
      page.line(List.of(time.header(), "Channel", "Value", "Unit"));
    } else {
      names();
    }
  }

  private void preamble() {
    switch (dress.preamble()) {
      case COMMENTS -> page.text("# Invented log\n# No real car\n");
      case RAGGED -> {
        page.line(List.of("Invented log"));
        page.line(List.of("Car", "Falke", "two doors"));
        page.line(List.of("Date", "2026-05-01"));
        page.line(List.of("Tyres", "235", "warm"));
        page.text("\n");
      }
      case PADDED -> {
        List<String> padded = new ArrayList<>(Collections.nCopies(channels.size() + 1, ""));
        padded.set(0, "Invented log");
        page.line(padded);
        padded.set(0, "Displacement");
        padded.set(1, "2.0");
        page.line(padded);
      }
      default -> {}
    }
  }

  /** Writes the names, and the units if they have a row. */
  void names() {
    boolean row =
        dress.units() == LogDress.Units.ROW || dress.units() == LogDress.Units.BRACKETED_ROW;
    List<String> names = new ArrayList<>();
    List<String> units = new ArrayList<>();
    if (dress.extra() == LogDress.Extra.INDEX) {
      names.add("");
      units.add("");
    }
    if (dress.time() != LogDress.Time.ABSENT) {
      names.add(time.header());
      units.add(row && time.unit().length() > 0 ? unitCell(time.unit()) : "");
    }
    for (DressChannel c : channels) {
      names.add(head(c));
      units.add(unitCell(c.symbol(dress)));
    }
    extraNames(names);
    while (units.size() < names.size()) {
      units.add("");
    }
    if (dress.preamble() == LogDress.Preamble.HEADER_COMMENTED) {
      page.text("# ");
    }
    page.line(names);
    if (row) {
      page.line(units);
    }
  }

  private void extraNames(List<String> names) {
    switch (dress.extra()) {
      case TRAILING -> Collections.addAll(names, "", "");
      case DUPLICATES -> Collections.addAll(names, "Spare", "Spare");
      case NAMELESS -> names.add("");
      case TEXTS -> Collections.addAll(names, "Status", "Pump");
      default -> {}
    }
  }

  private String unitCell(String unit) {
    return dress.units() == LogDress.Units.BRACKETED_ROW && !unit.isEmpty()
        ? "[" + unit + "]"
        : unit;
  }

  private String head(DressChannel c) {
    String symbol = c.symbol(dress);
    if (symbol.isEmpty()) {
      return c.name();
    }
    return switch (dress.units()) {
      case BRACKETS -> c.name() + " [" + symbol + "]";
      case PARENTHESES -> c.name() + " (" + symbol.replaceFirst("deg(?=.)", "") + ")";
      case DEGREE_SIGN -> c.name() + " [" + symbol.replaceFirst("deg(?=.)", "\u00b0") + "]";
      case AFTER_COMMA -> c.name() + ", " + symbol;
      default -> c.name();
    };
  }
}
