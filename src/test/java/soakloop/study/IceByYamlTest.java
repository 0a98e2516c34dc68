package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.scenario.ScenarioReader;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/**
 * Closed forms of melting ice (heat of fusion 333430 J/kg, water 4190 and ice 2050 J/(kg K)) by
 * scenarios as a user would write them, as near to the forms as the keys allow.
 */
class IceByYamlTest {
  private static final double ZERO_CELSIUS = 273.15;

  /** Next to nothing but the tank: the lightest core, no heat from outside, engine off. */
  private static Trace run(String day, String start, String wait, String loop) throws Exception {
    String bare =
        """
        title: Invented bath
        day: {temperature: DAY, humidity: 0 %}
        engine: {displacement: 4 L}
        blower: {displacement: 1.7 L/rev, drive-ratio: 2}
        boost: 10 psi
        core: {mass: 0.1 kg, coolant: 0.05 L, conductance: {value: 10 W/K, air-flow: 0.5 kg/s}}
        coolant: {glycol: none}
        start: {loop-coolant: START}
        session:
          - wait: {for: WAIT, engine: off}
        """;
    String text = bare.replace("DAY", day).replace("START", start).replace("WAIT", wait) + loop;
    return Run.of(ScenarioReader.parse("bath", text, Path.of(""))).trace();
  }

  private static double gone(Trace trace) {
    return trace.events().stream()
        .filter(e -> e.kind() == Trace.Event.Kind.ICE_GONE)
        .mapToDouble(Trace.Event::time)
        .findFirst()
        .orElseThrow();
  }

  /** Seconds that so much ice takes at the rate between two times. */
  private static double atRate(Trace trace, double mass, double from, double to) {
    double melted = trace.at(Channel.ICE_LEFT, from) - trace.at(Channel.ICE_LEFT, to);
    return mass * (to - from) / melted;
  }

  /**
   * 5 kg of 0 degC at 40 kW take 41.678 s, and so do 1.5 kg at 12 kW, which is what four pumps may
   * be said to put into the coolant. Warming the 0.13 L behind the pumps by a kelvin or two takes 1
   * kJ of 500 kJ, 0.2 %; at the end the last pieces have no surface left and the coolant warms
   * until they are gone, which delays the event by less than 1 %.
   */
  @Test
  @Tag("analytic")
  void iceHeatedByPumps() throws Exception {
    Trace trace =
        run(
            "0 degC",
            "0 degC",
            "60 s",
            """
            loop: [reservoir, pump, core]
            reservoir:
              volume: 0.1 L
              capacity: 5 L
              surroundings-conductance: 0 W/K
              ice: {mass: 1.5 kg, temperature: 0 degC, conductance: 1000 kW/K}
            pump:
              {curve: [[0 L/min, 200 kPa], [400 L/min, 0 kPa]], power: 3 kW, in-series: 4, coolant: 0.02 L}
            """);
    assertEquals(41.678, atRate(trace, 1.5, 5, 35), 0.002 * 41.678);
    assertEquals(41.678, gone(trace), 0.01 * 41.678);
    assertEquals(0, trace.value(Channel.ICE_LEFT, trace.size() - 1));
  }

  /**
   * A bath fed with 1800 W/K of 35 degC takes 26.463 s for 5 kg. The stream is warmed by an
   * exchanger in a wind of 35 degC, which leaves it a little cooler; so held against the
   * temperature at which it does enter, the rate is right to 0.5 %, and against 35 degC to what the
   * wind falls short, 3 %.
   */
  @Test
  @Tag("analytic")
  void iceFedByAWarmStream() throws Exception {
    double litres = 1800 / 4190.0 / 0.9982 * 60;
    Trace trace =
        run(
            "35 degC",
            "0 degC",
            "40 s",
            """
            loop: [reservoir, pump, core, heat-exchanger]
            reservoir:
              volume: 0.1 L
              capacity: 12 L
              surroundings-conductance: 0 W/K
              ice: {mass: 5 kg, temperature: 0 degC, conductance: 1000 kW/K}
            pump: {flow: %.4f L/min, power: 0 W, coolant: 0.02 L}
            heat-exchanger:
              face: {width: 1500 mm, height: 1000 mm}
              coolant: 0.1 L
              mass: 0.2 kg
              conductance: {value: 20 kW/K, air-speed: 20 m/s, coolant-flow: 25 L/min}
            airflow: {shop-fan: 20 m/s}
            """
                .formatted(litres));
    double entering = trace.at(Channel.EXCHANGER_COOLANT_OUT, 15) - ZERO_CELSIUS;
    assertTrue(entering > 34 && entering <= 35, () -> entering + " degC");
    double seconds = atRate(trace, 5, 8, 20);
    assertEquals(5 * 333_430 / (1800 * entering), seconds, 0.005 * seconds);
    assertEquals(26.463, seconds, 0.03 * 26.463);
    assertEquals(26.463, gone(trace), 0.05 * 26.463);
  }

  /** 8 kg of water in all, most of it in the tank; ice as it comes out of a freezer. */
  private static Trace mixed(String ice) throws Exception {
    double litres = 8 / 0.99821 - 0.05 - 0.02;
    return run(
        "30 degC",
        "30 degC",
        "15 min",
        """
        loop: [reservoir, pump, core]
        reservoir:
          volume: %.4f L
          capacity: 20 L
          surroundings-conductance: 0 W/K
          ice: {mass: %s, temperature: -18 degC, conductance: 20 kW/K}
        pump: {flow: 20 L/min, power: 0 W, coolant: 0.02 L}
        """
            .formatted(litres, ice));
  }

  /**
   * 8 kg of water of 30 degC and 2 kg of ice of -18 degC settle at 6.323150 degC. 0.1 kg of core
   * metal, which the form has not, holds 90 J/K of 42 kJ/K and so lifts that by 0.05 K; the heat
   * capacity of water, 4180 to 4205 where the form has 4190, moves it by 0.03 K.
   */
  @Test
  @Tag("analytic")
  void littleIceMeltsWhole() throws Exception {
    Trace trace = mixed("2 kg");
    double end = trace.value(Channel.RESERVOIR, trace.size() - 1) - ZERO_CELSIUS;
    assertEquals(6.323150, end, 0.1);
    assertEquals(0, trace.value(Channel.ICE_LEFT, trace.size() - 1));
  }

  /** With 4 kg it ends at 0 degC, 2.573254 kg melted; the metal melts 8 g more, water's cp 6 g. */
  @Test
  @Tag("analytic")
  void muchIceIsLeft() throws Exception {
    Trace trace = mixed("4 kg");
    int last = trace.size() - 1;
    assertEquals(0, trace.value(Channel.RESERVOIR, last) - ZERO_CELSIUS, 0.02);
    assertEquals(2.573254, 4 - trace.value(Channel.ICE_LEFT, last), 0.016);
  }
}
