package soakloop.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.fluid.Air;
import soakloop.invented.ShopDay;
import soakloop.log.Log;
import soakloop.log.Signal;
import soakloop.quantity.Curve;
import soakloop.quantity.Estimate;

/** The loop's flow from a heat balance, on logs whose true flow is known. */
class CoolantFlowTest {
  private static final double LITRES_PER_MINUTE = 60000;

  /** Seeds other than those that the bounds were chosen on. */
  private static final int FIRST = 7000;

  /**
   * Nine intervals in ten must hold the truth. Of 24 with a chance of 0.9 each, 18 or more do in 99
   * cases of 100, and all 24 do in 8 of 100; so intervals are also held to a width that says
   * something.
   */
  @Test
  @Tag("analytic")
  void intervalHoldsTheTrueFlow() {
    Coverage coverage = coverage(FIRST, 24);
    assertTrue(coverage.told >= 22, coverage::toString);
    assertTrue(coverage.held >= 0.8 * coverage.told, coverage::toString);
    assertTrue(coverage.width <= 0.3, coverage::toString);
  }

  /** On 200 days a share of 0.9 is known to 0.035, nine times in ten. */
  @Test
  @Tag("long")
  void intervalHoldsTheTrueFlowAsOftenAsItSays() {
    Coverage coverage = coverage(FIRST + 100, 200);
    assertTrue(coverage.held >= 0.85 * coverage.told, coverage::toString);
  }

  private record Coverage(int told, int held, double width, double off) {}

  private static Coverage coverage(int first, int days) {
    int told = 0;
    int held = 0;
    double width = 0;
    double off = 0;
    for (int seed = first; seed < first + days; seed++) {
      ShopDay.FullyLogged day = ShopDay.draw(seed).fullyLogged();
      CoolantFlow read = LogStudy.of(day.log(), LogOptions.DEFAULTS).coolantFlow();
      if (read.mean().isPresent()) {
        Estimate flow = read.mean().get();
        told++;
        held += Math.abs(flow.value() - day.flow()) <= flow.spread() ? 1 : 0;
        width += flow.spread() / flow.value();
        off += flow.value() / day.flow() - 1;
      }
    }
    return new Coverage(told, held, width / told, off / told);
  }

  /** Air that gives the core a heat known beforehand. */
  private static AirHeat heat(double watts, double from, double to) {
    return (a, b) -> Estimate.exactly(watts * Math.max(0, Math.min(b, to) - Math.max(a, from)));
  }

  /** Two sensors: the rise steps up with a pull from 40 to 50 s, and the out sensor reads high. */
  private static Map<Signal, Channel> coolant(double rise, double outHigh) {
    Map<Signal, Channel> channels = new EnumMap<>(Signal.class);
    channels.put(Signal.CORE_COOLANT_IN, channel(Signal.CORE_COOLANT_IN, 0, 0));
    channels.put(Signal.CORE_COOLANT_OUT, channel(Signal.CORE_COOLANT_OUT, rise, outHigh));
    return channels;
  }

  private static Channel channel(Signal signal, double rise, double high) {
    double[] time = IntStream.range(0, 1000).mapToDouble(i -> 0.1 * i).toArray();
    double[] value =
        IntStream.range(0, 1000)
            .mapToDouble(i -> 300 + high + (time[i] >= 40 && time[i] < 50 ? rise : 0))
            .toArray();
    return new Channel(
        signal, new Refresh(Refresh.Kind.EVERY_ROW, 1, 0.1), 0, 0, Updates.of(time, value));
  }

  private static final Pull PULL =
      new Pull(
          1,
          40,
          50,
          0.3,
          java.util.Optional.empty(),
          java.util.OptionalDouble.empty(),
          java.util.OptionalDouble.empty(),
          false,
          false,
          Sureness.SURE);

  /**
   * 60 kW into 30 L/min of 3.56 MJ/(m3 K) is 33.707865 K: arithmetic, whatever sensors differ by.
   */
  @Test
  @Tag("analytic")
  void steadyHeatGivesTheFlowExactly() {
    CoolantFlow.Loop loop = new CoolantFlow.Loop(new Estimate(3.56e6, 0), new Estimate(6000, 3000));
    for (double high : new double[] {0, 3, -3}) {
      CoolantFlow read =
          CoolantFlow.of(
              coolant(33.707865, high),
              List.of(PULL),
              heat(60e3, 40, 50),
              loop,
              LogOptions.DEFAULTS);
      Estimate flow = read.mean().orElseThrow();
      assertEquals(30, flow.value() * LITRES_PER_MINUTE, 0.01, read.why());
      assertTrue(flow.spread() < 0.05 * flow.value(), "but for a sensor's drift, all is known");
    }
  }

  @Test
  void coolantThatHardlyRisesTellsNothing() {
    CoolantFlow read =
        CoolantFlow.of(
            coolant(0.05, 0),
            List.of(PULL),
            heat(60e3, 40, 50),
            CoolantFlow.Loop.ANY,
            LogOptions.DEFAULTS);
    assertTrue(read.mean().isEmpty());
    assertTrue(read.why().contains("stand clear"), read.why());
  }

  /** 0.4 kg/s cooled from 400 to 330 K for 10 s, sensors ideal: m cp dT t with cp at the mean. */
  @Test
  @Tag("analytic")
  void airSideIsFlowTimesHeatCapacityTimesFall() {
    AirSide air =
        new AirSide(
            new AirSide.Flow(Curve.constant(0.4), 0.05),
            AirSide.Course.exactly(Curve.constant(400)),
            new AirSide.Course(Curve.constant(330), new Estimate(3, 2), 2));
    Estimate heat = air.over(5, 15);
    double perKelvin = 0.4 * Air.heatCapacity(365) * 10;
    assertEquals(perKelvin * 70, heat.value(), 1e-6 * heat.value());
    assertEquals(Math.hypot(0.05 * heat.value(), 2 * perKelvin), heat.spread(), 1);
  }

  /** A ramp of 3 K/s seen through 5 s lags by 15 K in the long run: exact solution. */
  @Test
  @Tag("analytic")
  void lagOfAnAirSensorIsTakenOut() {
    Curve ramp = Curve.of(new double[] {0, 100}, new double[] {300, 600});
    Curve lagged = Curve.of(new double[] {0, 100}, new double[] {285, 585});
    AirSide.Flow flow = new AirSide.Flow(Curve.constant(0.4), 0);
    AirSide.Course out = AirSide.Course.exactly(Curve.constant(290));
    double known = new AirSide(flow, AirSide.Course.exactly(ramp), out).over(30, 40).value();
    double found =
        new AirSide(flow, new AirSide.Course(lagged, new Estimate(5, 0), 0), out)
            .over(30, 40)
            .value();
    assertEquals(known, found, 0.002 * known);
  }

  @Test
  void missingChannelsAreNamed() {
    Log log = ShopDay.draw(1).fullyLogged().log();
    Map<Signal, double[]> kept = new EnumMap<>(Signal.class);
    for (Signal signal : List.of(Signal.ENGINE_SPEED, Signal.CORE_COOLANT_IN, Signal.BOOST)) {
      kept.put(
          signal, IntStream.range(0, log.size()).mapToDouble(i -> log.value(signal, i)).toArray());
    }
    double[] time = IntStream.range(0, log.size()).mapToDouble(log::time).toArray();
    CoolantFlow read =
        LogStudy.of(new Log("part.csv", time, kept, List.of(), List.of()), LogOptions.DEFAULTS)
            .coolantFlow();
    assertEquals(
        List.of(
            Signal.CORE_COOLANT_OUT,
            Signal.AIR_MASS_FLOW,
            Signal.CORE_AIR_IN,
            Signal.CHARGE_TEMPERATURE),
        read.missing());
    assertTrue(read.why().contains("air mass flow"), read.why());
  }
}
