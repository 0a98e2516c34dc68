package soakloop.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;

/** A fit that must not be leaned on says so. */
@Tag("analytic")
class CautionsTest {
  private static final FitResult.Effort CALM = new FitResult.Effort(100, 3, true, 0);

  private static KeyNews share(String name, double place) {
    Estimate half = new Estimate(0.5, 0.2);
    FitKey.Part part = FitKey.part(0, name, half, 0, 1);
    FitKey key =
        new FitKey(
            name, "a share", Dimension.FRACTION, true, half, List.of(part), new Role.OfScenario());
    return KeyNews.of(key, place, 0.3);
  }

  private static FitResult.SignalFit charge(double off) {
    List<FitResult.Beside> course =
        List.of(
            new FitResult.Beside(0, 300, 310, 300 + off),
            new FitResult.Beside(1, 300, 310, 300 - off));
    return new FitResult.SignalFit("car", Signal.CHARGE_TEMPERATURE, course, 0.5, 20);
  }

  @Test
  void goodFitHasNothingToSay() {
    List<KeyNews> keys = List.of(share("a", 0.5), share("b", -1));
    assertEquals(List.of(), Cautions.of(keys, List.of(charge(0.5)), CALM));
  }

  @Test
  void keysThatMovedFarAreNamedTogether() {
    List<KeyNews> keys = List.of(share("a", 2.6), share("b", 0), share("c", -2.6));
    List<String> said = Cautions.of(keys, List.of(charge(0.5)), CALM);
    assertEquals(1, said.size(), said.toString());
    assertTrue(said.get(0).startsWith("Moved much further"), said.get(0));
    assertTrue(said.get(0).contains(": a, c."), said.get(0));
  }

  @Test
  void keyAtABoundIsNamed() {
    KeyNews low = share("a", -10);
    assertTrue(low.after().low() >= 0, "never below its bound");
    assertTrue(low.isAtBound());
    assertTrue(share("b", 10).isAtBound());
    assertFalse(share("c", 1).isAtBound());
    List<String> said = Cautions.of(List.of(low), List.of(charge(0.5)), CALM);
    assertTrue(said.stream().anyMatch(s -> s.startsWith("Ended at a bound")), said.toString());
  }

  @Test
  void poorFitIsToldWithItsSize() {
    List<String> said = Cautions.of(List.of(), List.of(charge(4)), CALM);
    assertEquals(1, said.size());
    assertTrue(said.get(0).contains("4.0 K off"), said.get(0));
  }

  @Test
  void searchWithoutEndAndRivalsAreTold() {
    FitResult.Effort effort = new FitResult.Effort(100, 3, false, 2);
    assertEquals(2, Cautions.of(List.of(), List.of(charge(0.5)), effort).size());
  }
}
