package soakloop.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The table's own machinery: it must be able to fail. */
class CheckTest {
  @Test
  void aValueOutsideItsToleranceFails() {
    assertTrue(check(100, 100.9, Tolerance.percent(1)).passes());
    assertFalse(check(100, 101.1, Tolerance.percent(1)).passes());
    assertTrue(check(-100, -99.5, Tolerance.absolute(0.6)).passes());
    assertFalse(check(-100, -99.3, Tolerance.absolute(0.6)).passes());
    assertFalse(check(100, Double.NaN, Tolerance.percent(1)).passes());
    assertFalse(check(100, Double.NaN, Tolerance.absolute(1)).passes());
    assertFalse(check(Double.NaN, Double.NaN, Tolerance.reported()).passes());
  }

  @Test
  void aCheckNeedsSomethingToCheckAgainst() {
    assertThrows(IllegalArgumentException.class, () -> check(Double.NaN, 1, Tolerance.absolute(1)));
    assertThrows(IllegalArgumentException.class, () -> check(0, 1, Tolerance.percent(1)));
    assertThrows(IllegalArgumentException.class, () -> Tolerance.absolute(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Tolerance.relative(0));
  }

  @Test
  void aReportedRowShowsItsNumberOnly() {
    var list = new CheckList("Order").from(Kind.ANALYTIC, "a source");
    String page = ValidationReadme.render(list.report("order", 1.987654321, "-").checks());
    assertTrue(page.contains("| order | - | 1.9876543 | - | reported |"), page);
    assertEquals(1, list.checks().size());
  }

  private static Check check(double expected, double computed, Tolerance tolerance) {
    return new Check("g", "w", Kind.ANALYTIC, "s", expected, computed, tolerance, "-");
  }
}
