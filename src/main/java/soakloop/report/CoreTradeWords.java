package soakloop.report;

import soakloop.quantity.Dimension;
import soakloop.study.CoreTrade;

/**
 * What a core costs and gives, in one line.
 *
 * @param trade the numbers
 * @param display how they are shown
 */
record CoreTradeWords(CoreTrade trade, Display display) {
  /** Returns the line. */
  String line() {
    return "Where "
        + trade.pull()
        + " is counted the core takes "
        + loss()
        + " of the boost, which costs "
        + power(trade.lossPower())
        + " at the blower, and cools the charge by "
        + display.difference(trade.cooling())
        + ": "
        + boost()
        + spark()
        + ".";
  }

  /** Returns the pressure that the core takes. */
  String loss() {
    return display.show(trade.loss(), Dimension.PRESSURE_DIFFERENCE, 1);
  }

  /** Returns a power, a small one to a tenth. */
  String power(double watt) {
    return display.show(watt, Dimension.POWER, Math.abs(watt) < 10e3 ? 1 : 0);
  }

  /** Returns the spark that cooling keeps in. */
  String kept(CoreTrade.SparkKept spark) {
    return (spark.beyond() ? "at least " : "") + display.show(spark.kept(), Dimension.ANGLE, 1);
  }

  /** Says that no power can be put on spark beyond the table. */
  private static String unvalued(CoreTrade.SparkKept spark) {
    return spark.beyond() ? ", and your table ends below a charge without a core" : "";
  }

  private String boost() {
    return trade.boostHeld()
        ? "boost is held as stated, so that saves the blower nothing"
        : "without it the boost would be "
            + display.show(trade.boostWithout(), Dimension.GAUGE_PRESSURE, 0)
            + " in place of "
            + display.show(trade.boost(), Dimension.GAUGE_PRESSURE, 0)
            + " and the blower would need "
            + power(trade.coolingPower())
            + " more";
  }

  private String spark() {
    return trade.spark().map(this::spark).orElse("");
  }

  private String spark(CoreTrade.SparkKept spark) {
    return "; it keeps "
        + kept(spark)
        + " of spark in"
        + spark.power().map(watt -> ", worth " + power(watt)).orElseGet(() -> unvalued(spark));
  }
}
