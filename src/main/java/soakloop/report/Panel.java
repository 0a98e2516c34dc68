package soakloop.report;

import java.awt.Color;
import java.util.List;
import org.jfree.chart.plot.XYPlot;

/**
 * One set of axes with the words that stand outside its frame.
 *
 * @param plot axes, lines and points
 * @param weight share of the height it gets beside other panels
 * @param ends names at the right ends of lines
 * @param bands stretches that are shaded, named above
 */
record Panel(XYPlot plot, int weight, List<End> ends, List<Band> bands) {
  /**
   * A line's name at its right end.
   *
   * @param text the name
   * @param value where on the upright axis, in its units
   * @param color of the line
   */
  record End(String text, double value, Color color) {}

  /**
   * A shaded stretch.
   *
   * @param from in the units of the level axis
   * @param to likewise
   * @param text short name above it
   */
  record Band(double from, double to, String text) {}

  Panel {
    ends = List.copyOf(ends);
    bands = List.copyOf(bands);
  }
}
