package soakloop.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the measured front in the steel pipe says beyond the size of the error. */
@Tag("published")
class PipeFrontTest {
  private static final double LENGTH = 39;
  private static final double KELVIN = 0.01;

  private final List<PipeRun> runs = PipeRun.all();

  @Test
  void withoutTheWallTheFrontComesFarTooSoon() {
    for (PipeRun run : runs) {
      double[] walled = PipeFrontChecks.outlet(run, LENGTH, 120, 1);
      double[] bare = PipeFrontChecks.outlet(run, LENGTH, 120, 0);
      double with = PipeFrontChecks.error(run, walled);
      double without = PipeFrontChecks.error(run, bare);
      assertTrue(without > 3 * with, run.name() + ": " + with + " K with, " + without + " without");
      double late = run.reaches(run.outlet(), run.halfway());
      assertTrue(run.reaches(bare, run.halfway()) < 0.82 * late, run.name());
    }
  }

  @Test
  void moreCellsChangeNothing() {
    for (PipeRun run : runs) {
      double usual = PipeFrontChecks.error(run, PipeFrontChecks.outlet(run, LENGTH, 120, 1));
      double fine = PipeFrontChecks.error(run, PipeFrontChecks.outlet(run, LENGTH, 240, 1));
      assertEquals(fine, usual, KELVIN, run.name());
    }
  }
}
