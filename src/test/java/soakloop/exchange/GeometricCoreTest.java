package soakloop.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;

@Tag("analytic")
class GeometricCoreTest {
  private static final FluidState AIR = FluidState.ofAir(370);
  private static final FluidState COOLANT =
      FluidState.of(GlycolMix.ofVolume(Glycol.ETHYLENE, 0.3), 315);
  private static final double AIR_FLOW = 0.45;
  private static final double COOLANT_FLOW = 0.4;
  private static final double DENSITY = 1040;

  static Stream<CoreGeometry> cores() {
    Fin air = new OffsetStripFin(1.3e-3, 6e-3, 0.1e-3, 3e-3);
    return Stream.of(
        new TubeFinGeometry(
            0.36,
            0.055,
            17,
            air,
            new DuctShape.Rectangular(1.5e-3, 1.5e-3),
            1.9e-3,
            0.4e-3,
            2,
            LaminarHeating.WALL_FLUX,
            Metal.ALUMINIUM),
        new PlateFinGeometry(
            0.36,
            0.055,
            17,
            air,
            new OffsetStripFin(1.9e-3, 2.5e-3, 0.1e-3, 3e-3),
            0.4e-3,
            4e-3,
            1,
            Metal.ALUMINIUM));
  }

  @ParameterizedTest
  @MethodSource("cores")
  void twentyPercentThickerIsOneCall(CoreGeometry geometry) {
    GeometricCore core = new GeometricCore(geometry);
    GeometricCore thick = new GeometricCore(geometry.thicker(1.2));
    assertEquals(1.2, thick.airSide(AIR_FLOW, AIR) / core.airSide(AIR_FLOW, AIR), 1e-9);
    assertEquals(1.2, thick.coolantVolume() / core.coolantVolume(), 1e-9);
    assertEquals(core.freeShare(), thick.freeShare(), 1e-12);
    assertTrue(overall(thick) > overall(core));
    assertTrue(overall(thick) <= 1.2 * overall(core) * (1 + 1e-9));
    assertTrue(airLoss(thick) > airLoss(core) && airLoss(thick) < 1.2 * airLoss(core));
    assertTrue(coolantLoss(thick) < coolantLoss(core));
    double heavier = thick.mass() / core.mass();
    assertTrue(heavier > 1.15 && heavier <= 1.2 + 1e-12, "mass " + heavier);
  }

  @ParameterizedTest
  @MethodSource("cores")
  void denserFinsChangeAllTheyChange(CoreGeometry geometry) {
    GeometricCore core = new GeometricCore(geometry);
    GeometricCore dense = new GeometricCore(geometry.withFinDensity(900));
    assertTrue(dense.airSide(AIR_FLOW, AIR) > core.airSide(AIR_FLOW, AIR));
    assertEquals(
        core.coolantSide(COOLANT_FLOW, COOLANT), dense.coolantSide(COOLANT_FLOW, COOLANT), 1e-9);
    assertTrue(airLoss(dense) > airLoss(core));
    assertTrue(dense.mass() > core.mass());
    assertEquals(core.coolantVolume(), dense.coolantVolume(), 1e-15);
    assertEquals(geometry.faceHeight(), dense.geometry().faceHeight(), 1e-12);
  }

  @ParameterizedTest
  @MethodSource("cores")
  void aBiggerFaceLosesLessPressure(CoreGeometry geometry) {
    GeometricCore core = new GeometricCore(geometry);
    GeometricCore wide = new GeometricCore(geometry.withWidth(1.25 * geometry.width()));
    GeometricCore high = new GeometricCore(geometry.withAirLayers(22));
    assertTrue(airLoss(wide) < airLoss(core) && airLoss(high) < airLoss(core));
    assertTrue(overall(wide) > overall(core) && overall(high) > overall(core));
    assertTrue(coolantLoss(wide) > coolantLoss(core), "longer tubes");
    assertTrue(coolantLoss(high) < coolantLoss(core), "more tubes");
    assertTrue(high.geometry().faceHeight() > geometry.faceHeight());
    assertEquals(1.25, wide.coolantVolume() / core.coolantVolume(), 1e-12);
  }

  @ParameterizedTest
  @MethodSource("cores")
  void noFlowIsAllowed(CoreGeometry geometry) {
    GeometricCore core = new GeometricCore(geometry);
    assertEquals(0, core.airSide(0, AIR));
    assertEquals(0, core.airLoss(0, AIR.viscosity(), 2, 2, 2));
    assertEquals(0, core.coolantLoss(0, COOLANT.viscosity(), DENSITY));
    assertEquals(0, core.overall(0, AIR, COOLANT_FLOW, COOLANT));
    assertThrows(IllegalArgumentException.class, () -> core.airSide(-1, AIR));
    assertThrows(IllegalArgumentException.class, () -> core.coolantSide(Double.NaN, COOLANT));
  }

  @Test
  void stillCoolantInPortsStillConducts() {
    GeometricCore core = new GeometricCore(cores().toList().get(0));
    double still = core.coolantSide(0, COOLANT);
    assertTrue(still > 0);
    assertEquals(still, core.coolantSide(1e-6, COOLANT), 1e-6 * still);
  }

  @ParameterizedTest
  @MethodSource("cores")
  void massIsThatOfThePiecesOfMetal(CoreGeometry geometry) {
    // Whole box less air and coolant is metal, but for bars and what both leave open.
    GeometricCore core = new GeometricCore(geometry);
    double box = geometry.frontalArea() * geometry.depth();
    double open = geometry.air().fluidVolume() + core.coolantVolume();
    double bars =
        geometry instanceof PlateFinGeometry plate
            ? 2
                * plate.bar()
                * (17 * plate.fin().spacing() * plate.depth()
                    + 18 * plate.coolantFin().spacing() * plate.width())
            : 0;
    double expected = (box - open + bars) * Metal.ALUMINIUM.density();
    // A fin sheet lies on one wall at a time: the half gap on the other is open to the air too.
    assertEquals(expected, core.mass(), 0.03 * expected);
  }

  @ParameterizedTest
  @MethodSource("cores")
  void whatLiesOutsideIsListed(CoreGeometry geometry) {
    GeometricCore core = new GeometricCore(geometry);
    int few = core.outsideRange(AIR_FLOW, AIR, COOLANT_FLOW, COOLANT).size();
    int many = core.outsideRange(AIR_FLOW / 1000, AIR, COOLANT_FLOW, COOLANT).size();
    assertEquals(few + 1, many, "air far too slow for the correlation");
  }

  @Test
  void layersFillAFace() {
    assertEquals(14, CoreGeometry.layersIn(0.11955, 6.075e-3, 2.3e-3));
    assertEquals(13, CoreGeometry.layersIn(0.1195, 6.075e-3, 2.3e-3));
    assertThrows(IllegalArgumentException.class, () -> CoreGeometry.layersIn(0.005, 6e-3, 2.3e-3));
  }

  @Test
  void impossibleCoresAreRefused() {
    TubeFinGeometry good = (TubeFinGeometry) cores().toList().get(0);
    for (CoreGeometry core : List.of(good, cores().toList().get(1))) {
      assertThrows(IllegalArgumentException.class, () -> core.withDepth(0));
      assertThrows(IllegalArgumentException.class, () -> core.withWidth(Double.NaN));
      assertThrows(IllegalArgumentException.class, () -> core.withAirLayers(0));
      assertThrows(IllegalArgumentException.class, () -> core.thicker(-1.2));
    }
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new TubeFinGeometry(
                0.3,
                0.05,
                10,
                good.fin(),
                good.port(),
                1.4e-3,
                0.4e-3,
                1,
                LaminarHeating.ENTRY,
                Metal.ALUMINIUM));
  }

  private static double overall(GeometricCore core) {
    return core.overall(AIR_FLOW, AIR, COOLANT_FLOW, COOLANT);
  }

  private static double airLoss(GeometricCore core) {
    return core.airLoss(AIR_FLOW, AIR.viscosity(), 2.2, 2.2, 2.2);
  }

  private static double coolantLoss(GeometricCore core) {
    return core.coolantLoss(COOLANT_FLOW, COOLANT.viscosity(), DENSITY);
  }
}
