package soakloop.report;

/**
 * A chart drawn for the page.
 *
 * @param title what it shows
 * @param caption how to read it
 * @param wide SVG for a desk screen and print
 * @param narrow SVG for a phone
 */
record DrawnChart(String title, String caption, String wide, String narrow) {
  static DrawnChart of(Chart chart) {
    return new DrawnChart(
        chart.title(),
        chart.caption(),
        Drawing.svg(chart, ChartStyle.PAGE),
        Drawing.svg(chart, ChartStyle.PHONE));
  }
}
