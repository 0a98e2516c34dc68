package soakloop.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Map;
import soakloop.fit.Band;
import soakloop.fit.PullNumber;
import soakloop.fit.RunBands;
import soakloop.simulate.Channel;
import soakloop.study.Outcome;

/**
 * {@code bands} in a summary: 90 % intervals of every number of every pull, and of three channels
 * over time. Temperatures are degC, differences K, all else SI.
 */
final class BandsJson {
  private static final double ZERO_CELSIUS = 273.15;

  private static final Map<Channel, String> COURSES =
      Map.of(
          Channel.SENSOR, "sensorTemperature",
          Channel.CHARGE, "chargeTemperature",
          Channel.CORE_COOLANT_IN, "coreInlet");

  private BandsJson() {}

  static JsonObject of(RunBands bands, Outcome outcome) {
    JsonObject o = new JsonObject();
    o.addProperty("share", 0.9);
    o.addProperty("draws", bands.draws());
    o.addProperty("couldNotRun", bands.lost());
    o.addProperty("keys", bands.keys());
    o.addProperty("correlation", bands.correlated() ? "fitted" : "none");
    o.addProperty("sensorError", bands.ownError() ? "fitted" : "usual");
    JsonArray pulls = new JsonArray();
    for (int i = 0; i < bands.pulls().size(); i++) {
      JsonObject pull = new JsonObject();
      pull.addProperty("name", outcome.pulls().get(i).name());
      for (PullNumber number : PullNumber.values()) {
        Band band = bands.pulls().get(i).numbers().get(number);
        if (band != null) {
          add(pull, number.key(), band(band, number.isTemperature() ? ZERO_CELSIUS : 0));
        }
      }
      pulls.add(pull);
    }
    o.add("pulls", pulls);
    o.add("overTime", overTime(bands));
    return o;
  }

  private static void add(JsonObject pull, String key, JsonObject band) {
    int dot = key.indexOf('.');
    if (dot < 0) {
      pull.add(key, band);
      return;
    }
    String group = key.substring(0, dot);
    if (!pull.has(group)) {
      pull.add(group, new JsonObject());
    }
    pull.getAsJsonObject(group).add(key.substring(dot + 1), band);
  }

  private static JsonObject band(Band band, double zero) {
    JsonObject o = new JsonObject();
    o.addProperty("low", band.low() - zero);
    o.addProperty("middle", band.middle() - zero);
    o.addProperty("high", band.high() - zero);
    return o;
  }

  /** Returns the courses at those times at which all of them are known. */
  private static JsonObject overTime(RunBands bands) {
    JsonObject o = new JsonObject();
    JsonArray times = new JsonArray();
    bands.times().forEach(times::add);
    o.add("time", times);
    for (Channel channel : RunBands.CHANNELS) {
      List<Band> course = bands.courses().getOrDefault(channel, List.of());
      JsonObject of = new JsonObject();
      of.add("low", array(course.stream().mapToDouble(Band::low).toArray()));
      of.add("high", array(course.stream().mapToDouble(Band::high).toArray()));
      o.add(COURSES.getOrDefault(channel, channel.name()), of);
    }
    return o;
  }

  /** Returns degC to a thousandth; null where there is nothing to tell. */
  private static JsonArray array(double[] kelvin) {
    JsonArray array = new JsonArray();
    for (double k : kelvin) {
      double celsius = Math.rint((k - ZERO_CELSIUS) * 1000) / 1000;
      array.add(Double.isFinite(celsius) ? celsius : null);
    }
    return array;
  }
}
