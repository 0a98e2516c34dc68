package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import soakloop.plan.EveningAnswer;
import soakloop.plan.EveningPlan;
import soakloop.plan.EveningRound;

/**
 * {@code rounds.json}: what a program may read of a planned evening. Temperatures in degC, times in
 * s, energies in J; what has no value is left out.
 */
final class RoundsJson {
  private static final double ZERO = 273.15;

  private RoundsJson() {}

  static String of(EveningAnswer answer, String version) {
    EveningPlan plan = answer.plan();
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    JsonObject scenario = new JsonObject();
    scenario.addProperty("name", plan.question().scenario().name());
    scenario.addProperty("title", plan.question().scenario().title());
    top.add("scenario", scenario);
    top.add("asked", asked(plan));
    JsonObject cars = new JsonObject();
    cars.addProperty("drawn", answer.draws());
    cars.addProperty("lost", answer.lost());
    cars.addProperty("keys", answer.keys());
    cars.addProperty("searchedWith", answer.searched());
    cars.addProperty("roundsLookedAt", answer.looked());
    cars.addProperty("energyResidualAtMost", answer.residual());
    top.add("cars", cars);
    top.addProperty("pumpPower", answer.pumpPower());
    top.addProperty("actions", answer.actions());
    top.addProperty("keepsTheLimit", answer.firstMiss().isEmpty());
    answer.firstMiss().ifPresent(m -> top.addProperty("firstPassedInRound", m.number()));
    JsonArray rounds = new JsonArray();
    answer.rounds().forEach(r -> rounds.add(round(r, plan.question().limit())));
    top.add("rounds", rounds);
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private static JsonObject asked(EveningPlan plan) {
    JsonObject asked = new JsonObject();
    asked.addProperty("limit", plan.question().limit() - ZERO);
    asked.addProperty("confidence", plan.question().confidence());
    asked.addProperty("iceBelow", plan.question().iceBelow() - ZERO);
    JsonArray intervals = new JsonArray();
    plan.intervals().forEach(intervals::add);
    asked.add("intervals", intervals);
    asked.addProperty("lanes", plan.lanes());
    asked.addProperty("ice", plan.ice());
    plan.battery().ifPresent(b -> asked.addProperty("battery", b));
    asked.addProperty("fanPower", plan.fanPower());
    return asked;
  }

  private static JsonObject round(EveningRound round, double limit) {
    JsonObject o = new JsonObject();
    o.addProperty("round", round.number());
    round
        .way()
        .ifPresent(
            way -> {
              o.addProperty("engine", way.idles() ? "idle" : "off");
              o.addProperty("pump", way.pump());
              o.addProperty("fans", way.fans());
              o.addProperty("hoodOpen", way.hood());
              o.addProperty("pit", round.pit());
            });
    o.addProperty("actions", round.actions());
    o.addProperty("icePutIn", round.iceUsed());
    o.addProperty("iceLeft", round.iceLeft());
    if (Double.isFinite(round.batteryLeft())) {
      o.addProperty("batteryLeft", round.batteryLeft());
    }
    o.addProperty("iceInTankAtStart", round.iceInTank());
    if (Double.isFinite(round.peak())) {
      o.addProperty("peak", round.peak() - ZERO);
      o.addProperty("margin", limit - round.peak());
    }
    if (Double.isFinite(round.middle())) {
      o.addProperty("peakOfMiddleCar", round.middle() - ZERO);
    }
    o.addProperty("shareThatKeeps", round.keeps());
    return o;
  }
}
