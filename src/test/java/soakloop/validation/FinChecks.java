package soakloop.validation;

import java.util.List;
import soakloop.exchange.DuctFlow;
import soakloop.exchange.DuctShape;
import soakloop.exchange.FinSurface;
import soakloop.exchange.LaminarHeating;
import soakloop.exchange.LouvreCorrelation;
import soakloop.exchange.LouvredFin;
import soakloop.exchange.OffsetStripFin;
import soakloop.exchange.PassageLoss;
import soakloop.exchange.PipeFlow;

/** Fins, ducts and what they lose. */
final class FinChecks implements CheckSuite {
  static final OffsetStripFin STRIP = new OffsetStripFin(1.6e-3, 8e-3, 0.1e-3, 3e-3);
  static final LouvredFin LOUVRED =
      new LouvredFin(
          1.4e-3, 8e-3, 0.1e-3, new LouvredFin.Louvres(1.2e-3, 6.8e-3, Math.toRadians(27), 2e-3));

  /** Re, j, f. */
  static final double[][] STRIP_ROWS = {
    {200, 0.0349686, 0.1881484},
    {500, 0.0217836, 0.0955185},
    {1000, 0.0155178, 0.0592517},
    {2000, 0.0112870, 0.0434159},
    {5000, 0.0076023, 0.0327039}
  };

  /** Re, j, f. */
  static final double[][] LOUVRE_ROWS = {
    {100, 0.0450494, 0.2239926},
    {130, 0.0396148, 0.1770840},
    {180, 0.0337758, 0.1540190},
    {230, 0.0299532, 0.1268264},
    {500, 0.0204736, 0.0802947},
    {1000, 0.0145777, 0.0567805}
  };

  static final double LAST_DIGIT = 6e-8;

  private final CheckList list = new CheckList("Fins and ducts");

  @Override
  public List<Check> checks() {
    laminarDucts();
    turbulentDucts();
    offsetStrip();
    louvres();
    surface();
    return list.checks();
  }

  private void laminarDucts() {
    Tolerance digits = Tolerance.absolute(6e-5);
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "polynomials of Shah and London 1978, Laminar Flow Forced Convection in Ducts, computed in"
            + " Python");
    DuctShape flat = new DuctShape.Rectangular(10e-3, 1e-3);
    DuctShape square = new DuctShape.Rectangular(1e-3, 1e-3);
    list.add("Nu, one temperature, 1:10", 5.9110, flat.nusseltAtWallTemperature(), digits, "-")
        .add("Nu, even heat, 1:10", 6.7879, flat.nusseltAtWallFlux(), digits, "-")
        .add("f Re (Fanning), 1:10", 21.1759, flat.frictionTimesReynolds(), digits, "-")
        .add("Nu, one temperature, square", 2.9787, square.nusseltAtWallTemperature(), digits, "-")
        .add("Nu, even heat, square", 3.6102, square.nusseltAtWallFlux(), digits, "-")
        .add("f Re (Fanning), square", 14.2296, square.frictionTimesReynolds(), digits, "-");
    DuctShape slit = new DuctShape.Rectangular(1, 1e-9);
    list.from(Kind.ANALYTIC, "parallel plates")
        .add("Nu, one temperature", 7.541, slit.nusseltAtWallTemperature(), digits, "-")
        .add("Nu, even heat", 8.235, slit.nusseltAtWallFlux(), digits, "-")
        .add("f Re (Fanning)", 24, slit.frictionTimesReynolds(), digits, "-");
    list.from(Kind.LIBRARY, "ht 1.0.7, tests")
        .add(
            "Nu, even heat, 1:10", 6.78787, flat.nusseltAtWallFlux(), Tolerance.absolute(6e-6), "-")
        .add(
            "Nu, entry of a round tube, Re 1000, Pr 10, D/L 1/60",
            8.694487,
            new DuctFlow(new DuctShape.Circular(5e-3), 0.3, LaminarHeating.ENTRY).nusselt(1000, 10),
            Tolerance.absolute(6e-7),
            "-");
  }

  private void turbulentDucts() {
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "Petukhov's friction and Gnielinski's equation, computed in Python");
    turbulent(1e4, 5.83, 0.03147980, 74.164136);
    turbulent(5000, 20, 0.03861947, 58.345221);
    list.from(Kind.LIBRARY, "ht 1.0.7, tests")
        .add(
            "Nu, Re 1e5, Pr 1.2, f 0.0185",
            254.626827,
            PipeFlow.gnielinski(1e5, 1.2, 0.0185),
            Tolerance.absolute(6e-7),
            "-");
  }

  private void turbulent(double re, double pr, double friction, double nusselt) {
    DuctFlow duct = new DuctFlow(new DuctShape.Circular(5e-3), 1, LaminarHeating.WALL_FLUX);
    String state = ", Re " + Digits.of(re, 6) + ", Pr " + Digits.of(pr, 6);
    list.add("f (Darcy)" + state, friction, 4 * duct.friction(re), Tolerance.absolute(6e-9), "-")
        .add("Nu" + state, nusselt, duct.nusselt(re, pr), Tolerance.absolute(6e-7), "-");
  }

  private void offsetStrip() {
    list.from(
            Kind.COMPUTED_ELSEWHERE,
            "Manglik and Bergles 1995 as transcribed in public (last exponent of f: majority),"
                + " computed in Python")
        .add(
            "offset strip, hydraulic diameter",
            2.5876011,
            1e3 * STRIP.hydraulicDiameter(),
            Tolerance.absolute(LAST_DIGIT),
            "mm");
    for (double[] row : STRIP_ROWS) {
      String state = ", Re " + Digits.of(row[0], 6);
      list.add(
              "offset strip, j" + state,
              row[1],
              STRIP.colburn(row[0]),
              Tolerance.absolute(LAST_DIGIT),
              "-")
          .add(
              "offset strip, f" + state,
              row[2],
              STRIP.friction(row[0]),
              Tolerance.absolute(LAST_DIGIT),
              "-");
    }
  }

  private void louvres() {
    LouvreCorrelation louvres = LOUVRED.correlation(20e-3);
    list.from(
            Kind.COMPUTED_ELSEWHERE,
            "Chang and Wang 1997 (j), Chang et al. 2000 and 2006 (f) as transcribed in public,"
                + " computed in Python")
        .add(
            "louvred, hydraulic diameter",
            2.3829787,
            1e3 * LOUVRED.hydraulicDiameter(),
            Tolerance.absolute(LAST_DIGIT),
            "mm");
    for (double[] row : LOUVRE_ROWS) {
      String state = ", Re " + Digits.of(row[0], 6);
      list.add(
              "louvred, j" + state,
              row[1],
              louvres.colburn(row[0]),
              Tolerance.absolute(LAST_DIGIT),
              "-")
          .add(
              "louvred, f" + state,
              row[2],
              louvres.friction(row[0]),
              Tolerance.absolute(LAST_DIGIT),
              "-");
    }
  }

  private void surface() {
    list.from(Kind.COMPUTED_ELSEWHERE, "fin theory and loss factors, computed in Python")
        .add(
            "fin efficiency, h 150, k 180, t 0.1 mm, L 4 mm",
            0.9196690,
            FinSurface.finEfficiency(150, 180, 0.1e-3, 4e-3),
            Tolerance.absolute(LAST_DIGIT),
            "-")
        .add(
            "contraction, free share 0.6 (Idelchik)",
            0.2515,
            PassageLoss.contraction(0.6),
            Tolerance.absolute(6e-5),
            "-")
        .add(
            "expansion, free share 0.6",
            0.16,
            PassageLoss.expansion(0.6),
            Tolerance.absolute(1e-12),
            "-");
    list.from(
            Kind.PUBLISHED,
            "Incropera and DeWitt, worked example 11.6 (finned coil; edition inferred from a"
                + " companion)")
        .add(
            "efficiency of fins and wall, fin share 0.830, fin 0.89",
            0.909,
            FinSurface.overall(0.830, 0.89),
            Tolerance.absolute(6e-4),
            "-");
  }
}
