package soakloop.charge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class EfficiencyTableTest {
  private static final double[] RATIOS = {1.2, 1.5, 1.9, 2.4};
  private static final double[] SPEEDS = {50, 120, 200, 260};
  private static final double[][] EFFICIENCY = {
    {0.50, 0.58, 0.60, 0.55},
    {0.55, 0.65, 0.67, 0.62},
    {0.52, 0.64, 0.68, 0.64},
    {0.45, 0.58, 0.64, 0.61}
  };
  private static final EfficiencyTable TABLE = EfficiencyTable.of(RATIOS, SPEEDS, EFFICIENCY);

  @Test
  void passesThroughItsPoints() {
    for (int i = 0; i < RATIOS.length; i++) {
      for (int j = 0; j < SPEEDS.length; j++) {
        EfficiencyTable.Reading reading = TABLE.at(RATIOS[i], SPEEDS[j]);
        assertEquals(EFFICIENCY[i][j], reading.efficiency(), 1e-12);
        assertTrue(reading.outside().isEmpty());
      }
    }
  }

  @Test
  void aPlaneIsExact() {
    double[][] plane = new double[RATIOS.length][SPEEDS.length];
    for (int i = 0; i < RATIOS.length; i++) {
      for (int j = 0; j < SPEEDS.length; j++) {
        plane[i][j] = plane(RATIOS[i], SPEEDS[j]);
      }
    }
    EfficiencyTable table = EfficiencyTable.of(RATIOS, SPEEDS, plane);
    for (double ratio = 1.2; ratio <= 2.4; ratio += 0.07) {
      for (double speed = 50; speed <= 260; speed += 13) {
        assertEquals(plane(ratio, speed), table.at(ratio, speed).efficiency(), 1e-12);
      }
    }
  }

  private static double plane(double ratio, double speed) {
    return 0.8 - 0.1 * ratio + 1e-4 * speed;
  }

  @Test
  void outsideItHoldsTheEdgeAndSaysSo() {
    EfficiencyTable.Reading high = TABLE.at(3, 120);
    assertEquals(0.58, high.efficiency(), 1e-12);
    assertEquals(1, high.outside().size());
    assertTrue(high.outside().get(0).message().contains("pressure ratio is 3"));
    EfficiencyTable.Reading corner = TABLE.at(1, 10);
    assertEquals(0.50, corner.efficiency(), 1e-12);
    assertEquals(2, corner.outside().size());
  }

  @Test
  void slopesAreContinuousAcrossPoints() {
    double h = 1e-6;
    for (double ratio : new double[] {1.5, 1.9}) {
      double before = TABLE.at(ratio, 150).efficiency() - TABLE.at(ratio - h, 150).efficiency();
      double after = TABLE.at(ratio + h, 150).efficiency() - TABLE.at(ratio, 150).efficiency();
      assertEquals(before / h, after / h, 1e-4);
    }
  }

  @Test
  void impossibleTablesAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> EfficiencyTable.of(new double[] {1.5, 1.2}, SPEEDS, new double[2][4]));
    assertThrows(
        IllegalArgumentException.class, () -> EfficiencyTable.of(RATIOS, SPEEDS, new double[4][4]));
    assertThrows(
        IllegalArgumentException.class,
        () -> EfficiencyTable.of(RATIOS, new double[] {100}, new double[4][1]));
    assertThrows(
        IllegalArgumentException.class,
        () -> EfficiencyTable.of(RATIOS, SPEEDS, new double[][] {{0.5, 0.5, 0.5, 0.5}}));
    assertThrows(IllegalArgumentException.class, () -> TABLE.at(Double.NaN, 100));
  }
}
