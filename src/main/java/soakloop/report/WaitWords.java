package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.plan.Way;
import soakloop.plan.Window;
import soakloop.quantity.Dimension;
import soakloop.quantity.UnitSystem;

/**
 * The words and numbers that a plan of waits is shown by.
 *
 * @param display how numbers are shown
 */
record WaitWords(Display display) {
  /** Times are told to this, s, on the safe side. */
  private static final double GRAIN = 5;

  /** Returns a way in full, such as {@code engine off, pump and fans on, 3.0 kg of ice}. */
  String way(Way way) {
    List<String> parts = new ArrayList<>();
    parts.add(way.idles() ? "engine idling" : "engine off");
    parts.add(
        way.pump() && way.fans()
            ? "pump and fans on"
            : way.pump() ? "pump on" : way.fans() ? "fans on, pump off" : "all off");
    if (way.hood()) {
      parts.add("hood open");
    }
    if (way.ice() > 0) {
      parts.add(display.show(way.ice(), Dimension.MASS, 1) + " of ice");
    }
    return String.join(", ", parts);
  }

  /** Returns a way in short, for the end of a line. */
  String brief(Way way) {
    List<String> parts = new ArrayList<>();
    if (way.pump()) {
      parts.add("pump");
    }
    if (way.fans()) {
      parts.add("fans");
    }
    if (way.hood()) {
      parts.add("hood");
    }
    if (way.ice() > 0) {
      parts.add(display.show(way.ice(), Dimension.MASS, 1) + " ice");
    }
    String rest = parts.isEmpty() ? "all off" : String.join(" + ", parts);
    return (way.idles() ? "idle, " : "off, ") + rest;
  }

  /** Returns when a window opens, rounded up. */
  String from(Window window) {
    return Display.clock(GRAIN * Math.ceil(window.from() / GRAIN));
  }

  /** Returns when a window closes, rounded down. */
  String to(Window window) {
    return Display.clock(GRAIN * Math.floor(window.to() / GRAIN));
  }

  /** Returns a window in a sentence. */
  String window(Window window) {
    return window.open()
        ? "at " + from(window) + " or later"
        : "from " + from(window) + " to " + to(window);
  }

  /** Returns the number of whole degrees that a gauge may read at the most, rounded down. */
  double wholeDegrees(double kelvin) {
    return Math.floor(display.units().unit(Dimension.TEMPERATURE).fromSi(kelvin) + 1e-9);
  }

  /** Returns whole degrees as K. */
  double kelvin(double degrees) {
    return display.units().unit(Dimension.TEMPERATURE).toSi(degrees);
  }

  /** Returns whole degrees with their unit. */
  String degrees(double degrees) {
    return display.temperature(kelvin(degrees));
  }

  /** Returns the degrees between the rows of a table. */
  double step() {
    return display.units() == UnitSystem.METRIC ? 2 : 4;
  }

  /** Returns a share in per cent. */
  String percent(double share) {
    return Math.round(100 * share) + (display.plain() ? " %" : "\u00a0%");
  }
}
