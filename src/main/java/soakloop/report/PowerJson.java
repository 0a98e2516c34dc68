package soakloop.report;

import com.google.gson.JsonObject;
import soakloop.study.CoreTrade;
import soakloop.study.PullPower;

/** Power, spark and the core's cost and gain for {@code summary.json}; W, rad and shares. */
final class PowerJson {
  private PowerJson() {}

  /** Adds to a pull what its power is, and what spark was taken out. */
  static void add(JsonObject pull, PullPower power) {
    JsonObject o = new JsonObject();
    o.addProperty("airMassFlow", power.airFlow());
    o.addProperty("blower", power.blower());
    power
        .crank()
        .ifPresent(
            crank -> {
              o.addProperty("crank", crank.crank());
              o.addProperty("crankFullSpark", crank.fullSpark());
              o.addProperty("wheels", crank.wheels());
              o.addProperty("wheelsFullSpark", crank.wheelsFullSpark());
              o.addProperty("spreadFraction", crank.spread());
            });
    pull.add("power", o);
    power
        .spark()
        .ifPresent(
            spark -> {
              JsonObject out = new JsonObject();
              out.addProperty("angle", spark.out());
              out.addProperty("torqueFraction", spark.share());
              out.addProperty("beyondTable", spark.beyond());
              pull.add("sparkOut", out);
            });
  }

  /** Returns what the core costs and gives. */
  static JsonObject of(CoreTrade trade) {
    JsonObject o = new JsonObject();
    o.addProperty("pull", trade.pull());
    o.addProperty("boostHeld", trade.boostHeld());
    o.addProperty("pressureLoss", trade.loss());
    o.addProperty("pressureLossPower", trade.lossPower());
    o.addProperty("cooling", trade.cooling());
    o.addProperty("coolingPower", trade.coolingPower());
    o.addProperty("boostAfterCore", trade.boost());
    o.addProperty("boostWithoutCore", trade.boostWithout());
    trade
        .spark()
        .ifPresent(
            spark -> {
              JsonObject kept = new JsonObject();
              kept.addProperty("angle", spark.kept());
              kept.addProperty("beyondTable", spark.beyond());
              spark.power().ifPresent(watt -> kept.addProperty("power", watt));
              o.add("sparkKept", kept);
            });
    return o;
  }
}
