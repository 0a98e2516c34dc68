package soakloop.report;

import java.awt.Color;
import java.util.Arrays;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.Unit;
import soakloop.reading.Pull;
import soakloop.reading.Updates;

/**
 * What the charts of logs share.
 *
 * @param set what is drawn
 * @param display how numbers are shown
 */
record LogKit(LogSet set, Display display) {
  /** Fewer readings than this in a line are marked one by one. */
  private static final int FEW = 40;

  /** Returns a unit's symbol in square brackets. */
  String in(Dimension dimension) {
    return " [" + display.symbol(dimension) + "]";
  }

  double shown(double si, Dimension dimension) {
    return display.units().unit(dimension).fromSi(si);
  }

  double[] shown(double[] si, Dimension dimension) {
    Unit unit = display.units().unit(dimension);
    return Arrays.stream(si).map(unit::fromSi).toArray();
  }

  /** Returns what is drawn below a title that stands alone. */
  String subtitle() {
    return set.title();
  }

  /** Returns the colour of a pull: a row of its own for one log, its log's colour for several. */
  Color color(int sheet, int pull, int pulls) {
    return set.single()
        ? Palette.step(pull, pulls)
        : Palette.growing(Palette.hue(sheet), pull, pulls);
  }

  /** Returns a pull's name at the end of its line; empty if it has none. */
  String name(int sheet, int pull, int pulls) {
    if (set.single()) {
      int number = set.first().reading().pulls().get(pull).number();
      return ChargeOverSpeed.named(pull, pulls) ? "pull " + number : "";
    }
    return pull == pulls - 1 ? set.sheets().get(sheet).label() : "";
  }

  /** Draws a pull's line, each reading marked if they are few. */
  void draw(PanelBuilder panel, String name, double[][] line, Color color) {
    panel.line(name, line, color, 2);
    if (Arrays.stream(line[1]).filter(Double::isFinite).count() < FEW) {
      panel.points("", line, color, 5);
    }
  }

  /** Returns the signal that pulls are drawn over: engine speed, else road speed. */
  static Signal across(LogSheet sheet) {
    return sheet.has(Signal.ENGINE_SPEED) ? Signal.ENGINE_SPEED : Signal.ROAD_SPEED;
  }

  /** Returns a signal over engine speed in a pull. */
  double[][] overSpeed(LogSheet sheet, Signal signal, Pull pull) {
    Updates values = sheet.reading().updates(signal).between(pull.start(), pull.end());
    Updates speeds = sheet.reading().updates(across(sheet));
    Dimension level = across(sheet).dimension();
    double[][] line = new double[2][values.size()];
    for (int i = 0; i < values.size(); i++) {
      line[0][i] = shown(speeds.at(values.time(i)), level);
      line[1][i] =
          Double.isFinite(line[0][i]) ? shown(values.value(i), signal.dimension()) : Double.NaN;
    }
    return line;
  }

  /** Draws the limit, if one was asked for. */
  void drawLimit(PanelBuilder panel) {
    set.limit()
        .ifPresent(
            k ->
                panel.limit(
                    shown(k, Dimension.TEMPERATURE),
                    "limit " + display.temperature(k),
                    degrees(10)));
  }

  /** Returns a degree's worth of Kelvin in shown units. */
  double degrees(double kelvin) {
    return shown(kelvin, Dimension.TEMPERATURE_DIFFERENCE);
  }
}
