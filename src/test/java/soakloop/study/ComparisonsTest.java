package soakloop.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static soakloop.study.HandMade.row;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.log.Signal;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** Comparisons of straight lines, against values worked out by hand. */
@Tag("analytic")
class ComparisonsTest {
  private static final double EXACT = 1e-9;

  private static Trace trace() {
    double[] none = new double[3];
    Arrays.fill(none, Double.NaN);
    return new HandMade(-10, 0, 20)
        .with(Channel.SENSOR, 280, 300, 340)
        .with(Channel.CORE_COOLANT_OUT, 290, 300, 310)
        .with(Channel.RESERVOIR, none)
        .idle(0, 20)
        .trace();
  }

  @Test
  void takesTheModelAtTheLogsRows() {
    Scenario.Logged logged =
        HandMade.logged(
            1000,
            row(-5, 0, 5, 10, 20, 25),
            Map.of(
                Signal.CHARGE_TEMPERATURE,
                row(0, 301, 309, Double.NaN, 337, 0),
                Signal.CORE_COOLANT_OUT,
                row(0, 300, 302.5, 305, 310, 0)));
    Comparison comparison = Comparisons.of(trace(), logged, Set.of(), OptionalDouble.empty());

    assertEquals(1000, comparison.offset());
    assertEquals(
        List.of(
            new Comparison.Residual(0, 301, 300),
            new Comparison.Residual(5, 309, 310),
            new Comparison.Residual(20, 337, 340)),
        comparison.residuals().get(Signal.CHARGE_TEMPERATURE));
    Misfit misfit = comparison.misfit(Signal.CHARGE_TEMPERATURE).orElseThrow();
    assertEquals(3, misfit.count());
    assertEquals(1, misfit.bias(), EXACT);
    assertEquals(Math.sqrt(11 / 3.), misfit.rms(), EXACT);
    assertEquals(3, misfit.largest(), EXACT);
    assertEquals(new Misfit(4, 0, 0, 0), comparison.misfit(Signal.CORE_COOLANT_OUT).orElseThrow());
    assertEquals(
        List.of(Signal.CHARGE_TEMPERATURE, Signal.CORE_COOLANT_OUT),
        List.copyOf(comparison.whole().keySet()));
  }

  @Test
  void aModelThatReadsLowHasANegativeBias() {
    Misfit misfit =
        Misfit.of(
            List.of(new Comparison.Residual(0, 300, 302), new Comparison.Residual(1, 300, 294)));
    assertEquals(-2, misfit.bias(), EXACT);
    assertEquals(-6, misfit.largest(), EXACT);
    assertEquals(Math.sqrt(20), misfit.rms(), EXACT);
  }

  @Test
  void leavesOutWhatDroveTheRunOrIsNotPredicted() {
    double[] level = row(300, 300);
    Scenario.Logged logged =
        HandMade.logged(
            0,
            row(0, 10),
            Map.of(
                Signal.INLET_AIR, level,
                Signal.CORE_AIR_IN, level,
                Signal.ENGINE_SPEED, level,
                Signal.BOOST, level,
                Signal.ROAD_SPEED, level,
                Signal.ENGINE_COOLANT, level));
    assertEquals(
        Set.of(Signal.INLET_AIR, Signal.CORE_AIR_IN),
        Comparisons.of(trace(), logged, Set.of(), OptionalDouble.empty()).whole().keySet());
    assertEquals(
        Set.of(Signal.CORE_AIR_IN),
        Comparisons.of(trace(), logged, Set.of(Signal.INLET_AIR), OptionalDouble.empty())
            .whole()
            .keySet());
  }

  @Test
  void leavesOutASignalThatEitherSideLacks() {
    Scenario.Logged logged =
        HandMade.logged(
            0,
            row(-4, 10, 30),
            Map.of(
                Signal.RESERVOIR,
                row(300, 300, 300),
                Signal.CHARGE_TEMPERATURE,
                row(300, Double.NaN, 300)));
    Comparison comparison = Comparisons.of(trace(), logged, Set.of(), OptionalDouble.empty());
    assertTrue(comparison.whole().isEmpty());
    assertTrue(comparison.residuals().isEmpty());
    assertEquals(Optional.empty(), comparison.misfit(Signal.RESERVOIR));
  }

  @Test
  void aMisfitOfNothingIsRefused() {
    assertEquals(
        "a misfit needs at least one residual",
        assertThrows(IllegalArgumentException.class, () -> Misfit.of(List.of())).getMessage());
  }

  @Test
  void theWholeRunIsReadWhereBothAre() {
    Scenario.Logged logged =
        HandMade.logged(
            0, row(-5, 0, 10, 20), Map.of(Signal.CHARGE_TEMPERATURE, row(400, 300, 320, 310)));
    WholeRun run =
        Comparisons.of(trace(), logged, Set.of(), OptionalDouble.of(310)).charge().orElseThrow();
    assertEquals(new WholeRun.Course(300, 340, 340, 15), run.modelled());
    assertEquals(new WholeRun.Course(300, 310, 320, 15), run.logged());
  }
}
