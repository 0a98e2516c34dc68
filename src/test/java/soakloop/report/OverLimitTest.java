package soakloop.report;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Trace;

/** Time over a limit of a sensor that moves in straight lines, worked out by hand. */
@Tag("analytic")
class OverLimitTest {
  private static Trace sensor(double[] time, double... kelvin) {
    double[] speed = new double[time.length];
    Arrays.fill(speed, 14);
    return sensor(time, speed, kelvin);
  }

  private static Trace sensor(double[] time, double[] speed, double[] kelvin) {
    Map<Channel, double[]> columns = SampleOutcome.columns(time.length);
    columns.put(Channel.ENGINE_SPEED, speed);
    System.arraycopy(kelvin, 0, requireNonNull(columns.get(Channel.SENSOR)), 0, kelvin.length);
    EnergyLedger nothing = new EnergyLedger(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    return new Trace(time, columns, List.of(), List.of(), nothing, new Trace.Effort(1, 1, 1));
  }

  @Test
  void crossingsAreStraightBetweenSamples() {
    double[] time = {0, 10, 20, 30, 40};
    OverLimit over = OverLimit.of(sensor(time, 300, 320, 300, 300, 312), 310);
    assertEquals(5 + 5 + 10 * 2.0 / 12, over.seconds(), 1e-9);
    assertEquals(5, over.first(), 1e-9);
    assertEquals(320, over.peak(), 0);
  }

  @Test
  void settlingBeforeTimeZeroDoesNotCount() {
    double[] time = {-20, -10, 0, 10};
    OverLimit over = OverLimit.of(sensor(time, 400, 400, 305, 305), 310);
    assertFalse(over.happens());
    assertTrue(Double.isNaN(over.first()));
    assertEquals(305, over.peak(), 0);
  }

  @Test
  void startAboveTheLimitCountsFromTheStart() {
    OverLimit over = OverLimit.of(sensor(new double[] {0, 10}, 320, 300), 310);
    assertEquals(5, over.seconds(), 1e-9);
    assertEquals(0, over.first(), 0);
  }

  @Test
  void touchingTheLimitIsNotPassingIt() {
    assertFalse(OverLimit.of(sensor(new double[] {0, 5, 9}, 300, 310, 300), 310).happens());
  }

  @Test
  void soakWithTheEngineOffIsNotCounted() {
    double[] time = {0, 10, 10, 60, 60, 70};
    double[] speed = {14, 14, 0, 0, 14, 14};
    double[] kelvin = {300, 305, 305, 350, 350, 310};
    OverLimit over = OverLimit.of(sensor(time, speed, kelvin), 320);
    assertEquals(7.5, over.seconds(), 1e-9);
    assertEquals(60, over.first(), 0);
    OverLimit off = OverLimit.of(sensor(time, new double[6], kelvin), 320);
    assertFalse(off.happens());
    assertTrue(Double.isNaN(off.peak()));
  }
}
