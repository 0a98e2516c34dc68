package soakloop.validation;

import java.util.List;
import soakloop.flow.Fittings;
import soakloop.flow.FlowSolver;
import soakloop.flow.Liquid;
import soakloop.flow.Mover;
import soakloop.flow.OperatingPoint;
import soakloop.flow.PipeFriction;
import soakloop.flow.RamAir;
import soakloop.flow.Resistance;

/** Friction, pumps, fans and ram air. */
final class FlowChecks implements CheckSuite {
  static final double LITRE_PER_MINUTE = 1 / 60e3;
  private static final Liquid ANY = new Liquid(1000, 1e-3);

  private final CheckList list = new CheckList("Flow of coolant and air");

  @Override
  public List<Check> checks() {
    friction();
    fittings();
    hose();
    pump();
    air();
    return list.checks();
  }

  private void friction() {
    Tolerance digits = Tolerance.relative(1e-6);
    list.from(Kind.LIBRARY, "fluids 1.3.1, Churchill_1977")
        .add("f (Darcy), Re 500", 0.128, PipeFriction.churchill(500, 0), digits, "-")
        .add("f (Darcy), Re 1000", 0.064, PipeFriction.churchill(1000, 0), digits, "-")
        .add("f (Darcy), Re 3000", 0.04297465632, PipeFriction.churchill(3000, 0), digits, "-")
        .add("f (Darcy), Re 4000", 0.04058973297, PipeFriction.churchill(4000, 0), digits, "-")
        .add("f (Darcy), Re 1e4", 0.03100213065, PipeFriction.churchill(1e4, 0), digits, "-")
        .add(
            "f (Darcy), Re 2e4, roughness 1e-3",
            0.02813428854,
            PipeFriction.churchill(2e4, 1e-3),
            digits,
            "-")
        .add(
            "f (Darcy), Re 1e5, roughness 1e-4",
            0.01846262457,
            PipeFriction.churchill(1e5, 1e-4),
            digits,
            "-");
    Tolerance colebrook = Tolerance.percent(2);
    list.from(Kind.LIBRARY, "Colebrook's equation by fluids 1.3.1")
        .add("f (Darcy), Re 4000", 0.03990701406, PipeFriction.churchill(4000, 0), colebrook, "-")
        .add("f (Darcy), Re 1e4", 0.03088295035, PipeFriction.churchill(1e4, 0), colebrook, "-")
        .add(
            "f (Darcy), Re 2e4, roughness 1e-3",
            0.02794571302,
            PipeFriction.churchill(2e4, 1e-3),
            colebrook,
            "-")
        .add(
            "f (Darcy), Re 1e5, roughness 1e-4",
            0.01851386608,
            PipeFriction.churchill(1e5, 1e-4),
            colebrook,
            "-");
  }

  private void fittings() {
    list.from(Kind.LIBRARY, "fluids 1.3.1, fittings")
        .add(
            "expansion to twice the diameter",
            0.5625,
            Fittings.expansion(0.25),
            Tolerance.absolute(1e-12),
            "-")
        .add(
            "contraction to half the diameter (another correlation)",
            0.4955804785,
            Fittings.contraction(0.25),
            Tolerance.percent(33),
            "-")
        .add("sharp entry", 0.57, Fittings.SHARP_ENTRY, Tolerance.percent(15), "-")
        .add(
            "smooth bend, r/D 1.5, Re 1.5e4",
            0.3096757728,
            Fittings.SMOOTH_BEND,
            Tolerance.percent(10),
            "-");
  }

  private void hose() {
    Resistance hose = new Resistance.Pipe(8, 19e-3, 0, 6);
    Liquid mix = new Liquid(1053, 2.10e-3);
    double[][] rows = {{10, 3896.18}, {20, 13_575.81}, {30, 28_442.86}, {40, 48_247.51}};
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "8 m of 19 mm hose and fittings of 6 velocity heads, half glycol, computed in Python");
    for (double[] row : rows) {
      list.add(
          "pressure loss at " + Digits.of(row[0], 3) + " L/min",
          row[1],
          hose.loss(row[0] * LITRE_PER_MINUTE, mix),
          Tolerance.relative(1e-6),
          "Pa");
    }
  }

  private void pump() {
    Mover pump = new Mover.Parabola(45e3, 60 * LITRE_PER_MINUTE);
    Resistance loop = new Resistance.KnownPoint(30e3, 30 * LITRE_PER_MINUTE, 2);
    OperatingPoint full = FlowSolver.solve(pump, loop, ANY);
    Mover.AtSpeed slow = new Mover.AtSpeed(pump, 0.8);
    Tolerance digits = Tolerance.relative(1e-7);
    list.from(
            Kind.ANALYTIC,
            "pump dp0 (1 - (Q/Qm)^2) against k Q^2: Q = (1/Qm^2 + k/dp0)^-1/2; affinity laws")
        .add("flow", 31.333978, full.flow() / LITRE_PER_MINUTE, digits, "L/min")
        .add("pressure", 32_727.27, full.pressure(), Tolerance.relative(2e-7), "Pa")
        .add(
            "flow at 80 % speed",
            25.067182, FlowSolver.solve(slow, loop, ANY).flow() / LITRE_PER_MINUTE, digits, "L/min")
        .add("power at 80 % speed over full", 0.512, slow.powerRatio(), digits, "-");
  }

  private void air() {
    Mover fan = new Mover.Parabola(200, 0.8);
    Resistance core = new Resistance.KnownPoint(120, 0.6, 2);
    OperatingPoint point = FlowSolver.solve(fan, core, ANY);
    Tolerance digits = Tolerance.relative(3e-7);
    list.from(Kind.ANALYTIC, "fan dp0 (1 - (Q/Q0)^2) against k Q^2")
        .add("fan, air flow", 0.5564867, point.flow(), digits, "m3/s")
        .add("fan, pressure", 103.2258, point.pressure(), Tolerance.relative(1e-6), "Pa");
    list.from(Kind.ANALYTIC, "ram air: vf/V = sqrt(dCp / zeta)");
    double[][] rows = {{20, 0.2236}, {40, 0.1581}, {80, 0.1118}};
    for (double[] row : rows) {
      list.add(
          "face over road speed, zeta " + Digits.of(row[0], 3),
          row[1],
          new RamAir(0.2, row[0], 1).roadShare(),
          Tolerance.absolute(6e-5),
          "-");
    }
    RamAir duct = new RamAir(0.2, 35, 0.9);
    RamAir.Wind road = new RamAir.Wind(27.78, 0, 0, new Mover.Off());
    list.add(
        "face speed at 27.78 m/s, dCp 0.9, zeta 35, by the solver",
        4.4547,
        duct.solve(road, 1.2).flow() / 0.2,
        Tolerance.absolute(6e-5),
        "m/s");
    list.from(Kind.TRADE, "face speed 0.1 to 0.25 of road speed, from memory")
        .add("dCp 0.9, zeta 35", 0.175, duct.roadShare(), Tolerance.absolute(0.075), "-");
  }
}
