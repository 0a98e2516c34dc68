package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.log.Signal;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Trace;

/** What a sensor of first order shows, against exact answers. */
@Tag("analytic")
class SensorLagTest {
  private static Trace trace(double step, double end, DoubleUnaryOperator course) {
    double[] times = new double[(int) Math.round(end / step) + 1];
    Arrays.setAll(times, i -> i * step);
    Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
    for (Channel channel : Channel.values()) {
      columns.put(channel, Arrays.stream(times).map(course).toArray());
    }
    EnergyLedger nothing = new EnergyLedger(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    return new Trace(times, columns, List.of(), List.of(), nothing, new Trace.Effort(1, 1, 1));
  }

  private static double shown(Trace trace, double at, double lag) {
    SignalData wanted =
        new SignalData(
            Signal.CORE_COOLANT_IN, new double[] {at / 3, at}, new double[2], new double[2]);
    return SensorLag.of(trace, wanted, lag)[1];
  }

  /** A ramp of 3 K/s through 5 s: behind by 15 K in the end; R [t - tau (1 - exp(-t/tau))]. */
  @Test
  void rampIsExact() {
    Trace ramp = trace(2.5, 60, t -> 300 + 3 * t);
    assertEquals(17.030029, shown(ramp, 10, 5) - 300, 1e-6);
    assertEquals(3 * 9.3 - 15 * (1 - Math.exp(-9.3 / 5)), shown(ramp, 9.3, 5) - 300, 1e-9);
    assertEquals(15, 300 + 3 * 60 - shown(ramp, 60, 5), 1e-4);
  }

  /** exp(-t/a) through tau, from rest at 1: (a e^(-t/a) - tau e^(-t/tau)) / (a - tau). */
  @Test
  void decayIsExactForFineSamples() {
    Trace decay = trace(0.05, 40, t -> Math.exp(-t / 12));
    for (double t : new double[] {2, 7.77, 30}) {
      double exact = (12 * Math.exp(-t / 12) - 4 * Math.exp(-t / 4)) / 8;
      assertEquals(exact, shown(decay, t, 4), 1e-5);
    }
  }

  @Test
  void sensorWithoutLagShowsWhatIs() {
    Trace ramp = trace(1, 20, t -> 300 + 3 * t);
    assertEquals(300 + 3 * 7.25, shown(ramp, 7.25, 0), 1e-9);
  }
}
