package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.flow.Mover;
import soakloop.flow.RamAir;
import soakloop.quantity.Curve;
import soakloop.rig.FaceAir;
import soakloop.rig.HeatExchanger;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Warning;

/** Pumps, ways in parallel, air and warnings, through a whole scenario. */
@Tag("analytic")
class LoopRunTest {
  /** Two halves side by side are one whole: same volume, face, conductance and flow. */
  @Test
  void twoHalvesInParallelAreOneWhole() throws Exception {
    String exchanger =
        "{mass: %s kg, coolant: %s L, thickness: 26 mm, face: {width: 500 mm, height: %s mm},"
            + " conductance: {value: %s W/K, air-flow: %s kg/s, coolant-flow: %s L/min}}\n";
    String loop = "pump: {flow: 20 L/min}\nairflow: {shop-fan: strong}\n";
    Outcome whole =
        Run.of(
            LoopText.read(
                loop
                    + "loop: [pump, core, heat-exchanger]\nheat-exchanger: "
                    + String.format(exchanger, 3, 2, 400, 300, 1, 20)));
    String half = String.format(exchanger, 1.5, 1, 200, 150, 0.5, 10);
    Outcome halves =
        Run.of(
            LoopText.read(
                loop
                    + "loop: [pump, core, {parallel: [[a-heat-exchanger], [b-heat-exchanger]]}]\n"
                    + "a-heat-exchanger: "
                    + half
                    + "b-heat-exchanger: "
                    + half));
    for (Channel channel : List.of(Channel.SENSOR, Channel.CORE_COOLANT_IN, Channel.HEAT_AMBIENT)) {
      for (double t = 0; t < 75; t += 5) {
        double expected = whole.trace().at(channel, t);
        assertEquals(
            expected, halves.trace().at(channel, t), 1e-5 * Math.abs(expected), channel.label());
      }
    }
  }

  /**
   * All walls at one temperature: with a share r of the air coming again, the heat is (1 - r) / (1
   * - r k) of that without, k being what the air keeps of a difference.
   */
  @Test
  void recirculatedAirTakesLessHeat() throws Exception {
    Scenario plain = LoopText.read(LoopText.PIECES);
    double kept = kept(plain);
    double share = 0.3;
    Scenario again =
        LoopText.read(
            LoopText.PIECES.replace("{shop-fan: weak}", "{shop-fan: weak, recirculation: 30 %}"));
    double expected = heatAtStart(plain) * (1 - share) / (1 - share * kept);
    assertEquals(expected, heatAtStart(again), 1e-9 * expected);
  }

  /**
   * All walls at one temperature: an equal exchanger behind gives k of what the front one gives.
   */
  @Test
  void theOneBehindGetsWarmedAir() throws Exception {
    Scenario plain = LoopText.read(LoopText.PIECES);
    String face = "{face: {width: 660 mm, height: 300 mm}";
    Scenario stacked =
        LoopText.read(
            LoopText.PIECES.replace("return-hose, heat", "rear-heat-exchanger, return-hose, heat")
                + "rear-heat-exchanger: "
                + face
                + ", behind: heat-exchanger}\n");
    double front = heatAtStart(plain);
    double expected = front * (1 + kept(stacked));
    assertEquals(expected, heatAtStart(stacked), 2e-3 * expected);
  }

  /** Share of a difference to the walls that the air keeps, from the heat it takes. */
  private static double kept(Scenario scenario) throws Exception {
    HeatExchanger exchanger =
        (HeatExchanger)
            scenario.rig().loop().pieces().stream()
                .filter(HeatExchanger.class::isInstance)
                .reduce((a, b) -> b)
                .orElseThrow();
    Outcome plain = Run.of(LoopText.read(LoopText.PIECES));
    double day = scenario.day().temperature();
    double density =
        soakloop.fluid.MoistAir.of(day, scenario.day().pressure(), scenario.day().humidity())
            .density(day, scenario.day().pressure());
    double rate =
        density
            * exchanger.faceArea()
            * plain.trace().value(Channel.FACE_SPEED, 0)
            * soakloop.fluid.Air.heatCapacity(day);
    return 1 - plain.trace().value(Channel.HEAT_AMBIENT, 0) / (rate * 20);
  }

  private static double heatAtStart(Scenario scenario) throws Exception {
    return Run.of(scenario).trace().value(Channel.HEAT_AMBIENT, 0);
  }

  /** The closed form of fan, shop fan and road against the solver that brackets. */
  @Test
  void ductAirIsTheSolvers() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 500; i++) {
      double area = random.nextDouble(0.02, 0.5);
      RamAir ram = new RamAir(area, random.nextDouble(10, 100), random.nextDouble(0, 1.2));
      double head = random.nextDouble(20, 400);
      double free = random.nextDouble(0.1, 2);
      Curve fan =
          Curve.of(
              new double[] {0, 0.4 * free, free},
              new double[] {head, head * random.nextDouble(0.3, 1), 0});
      double density = random.nextDouble(0.9, 1.3);
      double shop = random.nextDouble(0, 12);
      double capture = random.nextDouble(0, 1);
      double road = random.nextBoolean() ? 0 : random.nextDouble(0, 15);
      FaceAir.Duct duct = new FaceAir.Duct(ram, shop, capture, java.util.Optional.of(fan), density);
      RamAir.Wind wind = new RamAir.Wind(road, shop, capture, new Mover.Table(fan));
      double solved = ram.solve(wind, density).flow() / area;
      double speed = duct.speed(road, true, true);
      // Past the fan's last point the solver stops and the duct goes on with the wind alone.
      double expected =
          solved * area < free * (1 - 1e-9)
              ? solved
              : Math.max(solved, duct.speed(road, true, false));
      assertEquals(expected, speed, 1e-9 * expected);
    }
  }

  /** A third of the core full of air: less coolant, less flow, hotter charge. */
  @Test
  void trappedAirCosts() throws Exception {
    Scenario full = LoopText.read(LoopText.PIECES);
    Scenario part = LoopText.read(LoopText.PIECES).with("core.trapped-air", "33 %");
    assertEquals(
        0.67 * full.rig().loop().core().coolantVolume(),
        part.rig().loop().core().coolantVolume(),
        1e-9);
    Outcome bled = Run.of(full);
    Outcome airy = Run.of(part);
    assertTrue(
        airy.hydraulics().orElseThrow().running().flow()
            < bled.hydraulics().orElseThrow().running().flow());
    assertTrue(
        airy.pulls().get(0).sensor().end() > bled.pulls().get(0).sensor().end() + 1,
        () -> airy.pulls() + " " + bled.pulls());
  }

  /** A volume means the share of it that the core holds. */
  @Test
  void trappedAirAsAVolumeIsTheSameAsItsShare() throws Exception {
    Scenario full = LoopText.read(LoopText.PIECES);
    double litres = 1e3 * full.rig().loop().core().coolantVolume();
    Scenario share = LoopText.read(LoopText.PIECES).with("core.trapped-air", "25 %");
    Scenario volume =
        LoopText.read(LoopText.PIECES).with("core.trapped-air-volume", 0.25 * litres + " L");
    assertEquals(
        Run.of(share).pulls().get(0).sensor().end(),
        Run.of(volume).pulls().get(0).sensor().end(),
        1e-6);
  }

  @Test
  void saysWhenPumpAndLoopDoNotFit() throws Exception {
    assertEquals(List.of(), kinds(LoopText.PIECES));
    assertEquals(
        List.of(Warning.Kind.FLOW_BELOW_LABEL),
        kinds(LoopText.PIECES.replaceFirst("pump: .*\n", "pump: {label: 200 L/min}\n")));
    assertEquals(
        List.of(Warning.Kind.PUMP_PAST_CURVE),
        kinds(
            LoopText.PIECES.replaceFirst(
                "pump: .*\n", "pump: {curve: [[0 L/min, 60 kPa], [8 L/min, 55 kPa]]}\n")));
    assertEquals(
        List.of(Warning.Kind.PUMP_DEAD_HEADED),
        kinds(LoopText.PIECES.replace("length: 1.8 m", "length: 10 m, bore: 4 mm")));
    assertFalse(Run.of(LoopText.read(LoopText.PARABOLA)).hydraulics().isEmpty());
    assertTrue(
        Run.of(LoopText.read("loop: [pump, core]\npump: {flow: 16 L/min}\n"))
            .hydraulics()
            .isEmpty());
  }

  private static List<Warning.Kind> kinds(String loop) throws Exception {
    return Run.of(LoopText.read(loop)).warnings().stream()
        .map(Warning::kind)
        .filter(kind -> kind.name().startsWith("PUMP") || kind.name().startsWith("FLOW"))
        .toList();
  }
}
