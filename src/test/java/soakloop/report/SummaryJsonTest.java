package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.quantity.UnitSystem;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/** Keys that others read must stay, and hold the outcome's own numbers. */
@Tag("analytic")
class SummaryJsonTest {
  private static JsonObject summary(Outcome outcome) {
    return JsonParser.parseString(SummaryJson.of(outcome, "1.2.3")).getAsJsonObject();
  }

  @Test
  void keysAreTheAgreedOnes() {
    JsonObject top = summary(SampleOutcome.standard().make());
    assertEquals(
        Set.of(
            "writtenBy",
            "version",
            "scenario",
            "units",
            "pulls",
            "coreTrade",
            "energy",
            "misfit",
            "assumed",
            "warnings",
            "events",
            "effort"),
        top.keySet());
    JsonObject pull = top.getAsJsonArray("pulls").get(1).getAsJsonObject();
    assertEquals(
        Set.of(
            "name",
            "startTime",
            "endTime",
            "countedAt",
            "countedTo",
            "chargeTemperature",
            "sensorTemperature",
            "coolant",
            "airMassFlowPeak",
            "heatToCoolant",
            "boostAfterCore",
            "boostBeforeCore",
            "coreLoss",
            "logged",
            "error"),
        pull.keySet());
    assertEquals(
        Set.of("start", "end", "peakInPull", "peakToNextPull", "rise", "overLimit"),
        pull.getAsJsonObject("sensorTemperature").keySet());
    assertEquals(
        Set.of("coreInletStart", "coreInletPeak", "coreOutletPeak"),
        pull.getAsJsonObject("coolant").keySet());
    assertTrue(top.getAsJsonObject("energy").has("residualFraction"));
    assertEquals(
        Set.of("charge-temperature", "core-coolant-in"), top.getAsJsonObject("misfit").keySet());
  }

  @Test
  void temperaturesAreCelsiusAndDifferencesKelvinInFullPrecision() {
    Outcome outcome = SampleOutcome.standard().in(UnitSystem.US).make();
    PullResult pull = outcome.pulls().get(2);
    JsonObject said = summary(outcome).getAsJsonArray("pulls").get(2).getAsJsonObject();
    JsonObject sensor = said.getAsJsonObject("sensorTemperature");
    assertEquals(pull.sensor().end() - 273.15, sensor.get("end").getAsDouble(), 0);
    assertEquals(pull.sensor().rise(), sensor.get("rise").getAsDouble(), 0);
    assertEquals(6500 / 60.0, said.get("countedTo").getAsDouble(), 0.5);
    double error =
        said.getAsJsonObject("error").getAsJsonObject("sensorTemperature").get("end").getAsDouble();
    double logged = pull.logged().orElseThrow().sensor().end();
    assertEquals(pull.sensor().end() - logged, error, 1e-12);
  }

  @Test
  void whatIsNotThereHasNoKey() {
    JsonObject top =
        summary(SampleOutcome.standard().withoutLog().limit(OptionalDouble.empty()).make());
    assertFalse(top.has("misfit"));
    assertFalse(top.getAsJsonObject("scenario").has("limit"));
    JsonObject pull = top.getAsJsonArray("pulls").get(0).getAsJsonObject();
    assertFalse(pull.has("logged"));
    assertFalse(pull.has("error"));
    assertFalse(top.toString().contains("null"));
    assertFalse(top.toString().contains("NaN"));
  }
}
