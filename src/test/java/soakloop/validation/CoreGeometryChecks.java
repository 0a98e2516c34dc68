package soakloop.validation;

import java.util.List;
import soakloop.exchange.DuctShape;
import soakloop.exchange.FinSurface;
import soakloop.exchange.FinnedPassage;
import soakloop.exchange.FlowArrangement;
import soakloop.exchange.FluidState;
import soakloop.exchange.GeometricCore;
import soakloop.exchange.LaminarHeating;
import soakloop.exchange.Metal;
import soakloop.exchange.OffsetStripFin;
import soakloop.exchange.PassageLoss;
import soakloop.exchange.TubeFinGeometry;

/** A whole core from its geometry, worked a second time elsewhere. */
final class CoreGeometryChecks implements CheckSuite {
  /** Offset strip fins between 15 tubes of 41 square ports. */
  static final TubeFinGeometry CORE =
      new TubeFinGeometry(
          0.30,
          0.075,
          14,
          new OffsetStripFin(1.1e-3, 6e-3, 0.075e-3, 3e-3),
          new DuctShape.Rectangular(1.5e-3, 1.5e-3),
          0.075 / 41,
          0.4e-3,
          1,
          LaminarHeating.WALL_FLUX,
          new Metal(180, 2700, 903));

  static final double AIR_FLOW = 0.45;
  static final double COOLANT_DENSITY = 1029;
  static final double COOLANT_FLOW = 15 / 60e3 * COOLANT_DENSITY;
  static final FluidState AIR = new FluidState(2.16e-5, 1010, 2.16e-5 * 1010 / 0.7);

  /** Viscosity such that 15 L/min give the Reynolds number of the worked case. */
  static final FluidState COOLANT = coolant();

  private static final Tolerance TIGHT = Tolerance.relative(1e-6);
  private static final Tolerance CORE_TOLERANCE = Tolerance.percent(0.1);

  private final CheckList list = new CheckList("A core from its geometry");

  private static FluidState coolant() {
    double massVelocity = COOLANT_FLOW / CORE.coolant().freeArea();
    return new FluidState(massVelocity * 1.5e-3 / 214.51, 3775, 0.48);
  }

  @Override
  public List<Check> checks() {
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "a charge cooler core worked in Python: offset strip fins 1.1 x 6 x 3 mm, 0.075 mm thick, 14"
            + " layers of 300 x 75 mm; 15 tubes of 41 ports 1.5 x 1.5 mm; air 0.45 kg/s, coolant 15"
            + " L/min");
    airSide();
    coolantSide();
    whole();
    transferUnits();
    return list.checks();
  }

  private void airSide() {
    FinnedPassage air = CORE.air();
    double massVelocity = AIR_FLOW / air.freeArea();
    OffsetStripFin fin = (OffsetStripFin) CORE.fin();
    double reynolds = massVelocity * fin.hydraulicDiameter() / AIR.viscosity();
    double film = fin.film(massVelocity, AIR, CORE.depth());
    double efficiency = FinSurface.finEfficiency(film, 180, 0.075e-3, 3e-3);
    list.add("cells", 3574.4681, air.cells(), TIGHT, "-")
        .add("free area of the air", 0.02359149, air.freeArea(), TIGHT, "m2")
        .add("surface of the air side", 3.894606, air.surface(), TIGHT, "m2")
        .add(
            "hydraulic diameter",
            1.81724,
            1e3 * fin.hydraulicDiameter(),
            Tolerance.relative(3e-6),
            "mm")
        .add("mass velocity of the air", 19.074675, massVelocity, TIGHT, "kg/(m2 s)")
        .add("Re of the air", 1604.7835, reynolds, TIGHT, "-")
        .add("j", 0.01182899, fin.colburn(reynolds), TIGHT, "-")
        .add("f", 0.03954567, fin.friction(reynolds), TIGHT, "-")
        .add("film coefficient", 289.06406, film, TIGHT, "W/(m2 K)")
        .add("share of fins in the surface", 0.848563, fin.finShare(), TIGHT, "-")
        .add("fin efficiency", 0.888661, efficiency, TIGHT, "-")
        .add(
            "efficiency of fins and wall",
            0.905522,
            FinSurface.overall(fin.finShare(), efficiency),
            TIGHT,
            "-");
  }

  private void coolantSide() {
    GeometricCore core = new GeometricCore(CORE);
    list.add("surface of the coolant side", 1.107, CORE.coolant().surface(), TIGHT, "m2")
        .add(
            "conductance of the coolant side",
            1278.806,
            core.coolantSide(COOLANT_FLOW, COOLANT),
            CORE_TOLERANCE,
            "W/K")
        .add(
            "friction of the coolant",
            891.2,
            core.coolantFriction(COOLANT_FLOW, COOLANT.viscosity(), COOLANT_DENSITY),
            CORE_TOLERANCE,
            "Pa")
        .add(
            "resistance of the wall",
            3.2922e-6,
            core.wallResistance(),
            Tolerance.relative(2e-5),
            "K/W");
  }

  private void whole() {
    GeometricCore core = new GeometricCore(CORE);
    double overall = core.overall(AIR_FLOW, AIR, COOLANT_FLOW, COOLANT);
    double airRate = AIR_FLOW * 1010;
    double coolantRate = COOLANT_FLOW * 3775;
    double effectiveness =
        FlowArrangement.CROSS_UNMIXED.effectiveness(overall / airRate, airRate / coolantRate);
    double heat = effectiveness * airRate * (150 - 45);
    list.add("conductance of the air side", 1019.4281, core.airSide(AIR_FLOW, AIR), TIGHT, "W/K")
        .add("overall conductance", 566.183, overall, CORE_TOLERANCE, "W/K")
        .add("effectiveness, crossflow", 0.6153484, effectiveness, CORE_TOLERANCE, "-")
        .add("heat, air 150, coolant 45 degC", 29_365.96, heat, CORE_TOLERANCE, "W")
        .add("air out", 85.388, 150 - heat / airRate, CORE_TOLERANCE, "degC")
        .add("coolant out", 75.239, 45 + heat / coolantRate, CORE_TOLERANCE, "degC")
        .add("frontal area", 0.035865, CORE.frontalArea(), TIGHT, "m2")
        .add("free share", 0.657786, core.freeShare(), TIGHT, "-")
        .add("contraction", 0.223714, PassageLoss.contraction(core.freeShare()), TIGHT, "-")
        .add(
            "expansion",
            0.117111,
            PassageLoss.expansion(core.freeShare()),
            Tolerance.relative(5e-6),
            "-")
        .add(
            "pressure loss of the air",
            553.006,
            core.airLoss(AIR_FLOW, AIR.viscosity(), 1.95, 2.166, 2.40),
            CORE_TOLERANCE,
            "Pa");
  }

  private void transferUnits() {
    list.from(
            Kind.PUBLISHED,
            "Incropera and DeWitt, worked example 11.6 (finned coil; edition inferred from a"
                + " companion); the chart was read coarsely, 0.65 for 0.699 by the exact series")
        .add(
            "effectiveness at N 0.65, C 0.321",
            0.466,
            FlowArrangement.CROSS_UNMIXED.effectiveness(0.65, 0.321),
            Tolerance.absolute(0.025),
            "-");
    list.from(Kind.COMPUTED_ELSEWHERE, "example 11.6 with the exact series, mpmath 1.2.1")
        .add(
            "effectiveness at N 0.69863, C 0.321",
            0.466,
            FlowArrangement.CROSS_UNMIXED.effectiveness(0.69863, 0.321),
            Tolerance.absolute(5e-4),
            "-");
  }
}
