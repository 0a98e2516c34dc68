package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.scenario.ScenarioReader;

/** Whole sessions by the method in use and by Hipparchus' explicit one, which shares no code. */
@Tag("library")
class ImplicitAgainstExplicitTest {
  private static final List<Channel> COMPARED =
      List.of(
          Channel.SENSOR,
          Channel.CHARGE,
          Channel.CORE_COOLANT_IN,
          Channel.CORE_COOLANT_OUT,
          Channel.RESERVOIR,
          Channel.CORE_METAL);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cool-morning",
        "denser-core",
        "traffic-recovery",
        "two-runs",
        "small-pulley",
        "iced-rounds",
        "evening-rounds"
      })
  void sessionsAgreeWithinTwoHundredthsOfAKelvin(String name) throws Exception {
    Setup setup = ScenarioReader.read(Path.of("scenarios", name + ".yaml")).setup();
    Trace exact = Simulation.run(setup, Options.DEFAULT.explicitly().withTolerances(1e-10, 1e-13));
    Trace used = Simulation.run(setup);
    assertEquals(exact.size(), used.size());
    for (Channel channel : COMPARED) {
      for (int i = 0; i < used.size(); i++) {
        double expected = exact.value(channel, i);
        assertEquals(
            expected, used.value(channel, i), 0.02, channel + " at " + used.time(i) + " s");
      }
    }
    assertEquals(
        exact.events().stream().map(Trace.Event::kind).toList(),
        used.events().stream().map(Trace.Event::kind).toList());
    for (int i = 0; i < used.events().size(); i++) {
      // The last ice goes slowly: a hundredth of a kelvin is then a tenth of a second and more.
      double within = exact.events().get(i).kind() == Trace.Event.Kind.ICE_GONE ? 0.3 : 0.1;
      assertEquals(exact.events().get(i).time(), used.events().get(i).time(), within);
    }
    assertTrue(used.effort().evaluations() < exact.effort().evaluations() / 3);
    assertTrue(used.energy().residualFraction() < 1e-12);
  }
}
