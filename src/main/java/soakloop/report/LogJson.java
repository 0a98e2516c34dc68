package soakloop.report;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Locale;
import java.util.OptionalDouble;
import soakloop.log.Log;
import soakloop.quantity.Dimension;
import soakloop.reading.CoolantFlow;
import soakloop.reading.Effectiveness;
import soakloop.reading.PullReading;
import soakloop.reading.Wait;

/**
 * {@code log.json}: what a program may read of logs. Temperatures are in degC, their changes in K,
 * engine speeds in rpm, all else SI; what has no value is left out.
 */
final class LogJson {
  private LogJson() {}

  static String of(LogSet set, String version) {
    JsonObject top = new JsonObject();
    top.addProperty("writtenBy", "soakloop");
    top.addProperty("version", version);
    add(top, "countedSpeed", set.counted(), Dimension.ROTATION);
    add(top, "limit", set.limit(), Dimension.TEMPERATURE);
    JsonArray logs = new JsonArray();
    set.sheets().forEach(sheet -> logs.add(sheet(sheet)));
    top.add("logs", logs);
    return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(top) + "\n";
  }

  private static JsonObject sheet(LogSheet sheet) {
    Log log = sheet.log();
    JsonObject o = new JsonObject();
    o.addProperty("name", sheet.label());
    o.addProperty("rows", log.size());
    o.addProperty("from", log.time(0));
    o.addProperty("to", log.endTime());
    JsonArray columns = new JsonArray();
    for (Log.Column column : log.columns()) {
      JsonObject c = new JsonObject();
      c.addProperty("header", column.header());
      column.signal().ifPresent(s -> c.addProperty("signal", s.key()));
      c.addProperty("unit", column.unit());
      c.addProperty("confidence", lower(column.confidence()));
      c.addProperty("remark", column.remark());
      columns.add(c);
    }
    o.add("columns", columns);
    JsonArray doubts = new JsonArray();
    LogDoubt.of(sheet).forEach(d -> doubts.add(d.text()));
    o.add("doubts", doubts);
    JsonArray pulls = new JsonArray();
    sheet.reading().table().forEach(r -> pulls.add(pull(r)));
    o.add("pulls", pulls);
    JsonArray waits = new JsonArray();
    sheet.reading().waits().forEach(w -> waits.add(wait(w)));
    o.add("waits", waits);
    effectiveness(sheet.reading().effectiveness(), o);
    o.add("coolantFlow", flow(sheet.reading().coolantFlow()));
    return o;
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static JsonObject pull(PullReading r) {
    JsonObject p = new JsonObject();
    p.addProperty("number", r.pull().number());
    p.addProperty("start", r.pull().start());
    p.addProperty("end", r.pull().end());
    p.addProperty("endsKnownTo", r.pull().within());
    p.addProperty("aborted", r.pull().aborted());
    r.pull()
        .sweep()
        .ifPresent(
            s -> {
              p.addProperty("fromSpeed", Dimension.ROTATION.require("rpm").fromSi(s.from()));
              p.addProperty("toSpeed", Dimension.ROTATION.require("rpm").fromSi(s.to()));
            });
    add(p, "countedAt", r.countedAt(), Dimension.TIME);
    add(p, "chargeStart", r.start(), Dimension.TEMPERATURE);
    add(p, "chargeCounted", r.counted(), Dimension.TEMPERATURE);
    add(p, "chargePeak", r.peak(), Dimension.TEMPERATURE);
    add(p, "chargeRise", r.rise(), Dimension.TEMPERATURE_DIFFERENCE);
    add(p, "coreInletStart", r.coolantStart(), Dimension.TEMPERATURE);
    add(p, "coreInletCounted", r.coolantCounted(), Dimension.TEMPERATURE);
    add(p, "boostPeak", r.boost(), Dimension.GAUGE_PRESSURE);
    p.addProperty("boostCutOff", r.boostIsLeast());
    add(p, "powerPeak", r.power(), Dimension.POWER);
    add(p, "overLimit", r.overLimit(), Dimension.TIME);
    return p;
  }

  private static JsonObject wait(Wait w) {
    JsonObject o = new JsonObject();
    o.addProperty("afterPull", w.after());
    o.addProperty("duration", w.duration());
    o.addProperty("engine", lower(w.engine()));
    o.addProperty("engineOff", w.engineOff());
    return o;
  }

  private static JsonObject flow(CoolantFlow read) {
    JsonObject f = new JsonObject();
    read.mean()
        .ifPresent(
            m -> {
              f.addProperty("mean", m.value());
              f.addProperty("spread", m.spread());
            });
    if (!read.why().isEmpty()) {
      f.addProperty("why", read.why());
    }
    return f;
  }

  private static void effectiveness(Effectiveness read, JsonObject o) {
    JsonObject e = new JsonObject();
    read.mean()
        .ifPresent(
            m -> {
              e.addProperty("mean", m.value());
              e.addProperty("spread", m.spread());
            });
    if (!read.why().isEmpty()) {
      e.addProperty("why", read.why());
    }
    o.add("effectiveness", e);
  }

  private static void add(JsonObject o, String name, OptionalDouble si, Dimension dimension) {
    if (si.isPresent()) {
      o.addProperty(
          name,
          switch (dimension) {
            case TEMPERATURE -> dimension.require("degC").fromSi(si.getAsDouble());
            case ROTATION -> dimension.require("rpm").fromSi(si.getAsDouble());
            default -> si.getAsDouble();
          });
    }
  }
}
