package soakloop.validation;

import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import soakloop.rig.Hose;
import soakloop.rig.Materials;
import soakloop.simulate.CellChain;
import soakloop.simulate.SteadyCoolant;

/** A hose's layered wall against conduction into a slab. */
final class HoseWallChecks implements CheckSuite {
  private static final double THICKNESS = 4e-3; // m
  private static final Hose.Wall RUBBER = Materials.HoseWall.RUBBER.thick(THICKNESS);
  private static final double DIFFUSIVITY = RUBBER.conductivity() / RUBBER.heatCapacity(); // m2/s
  private static final double START = 300; // K
  private static final double STEP = 10; // K
  private static final double[] TIMES = {5, 10, 30, 60, 120}; // s
  private static final int TERMS = 200;
  private static final String SLAB =
      "slab insulated behind, film in front (Carslaw and Jaeger, Conduction of Heat in Solids, 2nd"
          + " ed., 1959, series from memory), 4 mm of rubber; share of the heat it can take; ";

  /** So wide that the wall is a slab, m. */
  private static final double BORE = 100;

  private final CheckList list = new CheckList("Hose wall");

  @Override
  public List<Check> checks() {
    film(1e5, "film without resistance");
    film(3000, "film of 3000 W/(m2 K), coolant flowing");
    film(90, "film of 90 W/(m2 K), coolant at rest");
    outerFace();
    return list.checks();
  }

  private void film(double film, String name) {
    list.from(Kind.ANALYTIC, SLAB + name);
    double[] three = taken(film, 3);
    double[] twelve = taken(film, 12);
    for (int i = 0; i < TIMES.length; i++) {
      String when = (int) TIMES[i] + " s, ";
      list.add(when + "3 layers", exact(film, TIMES[i]), three[i], Tolerance.absolute(0.006), "-");
      list.add(
          when + "12 layers", exact(film, TIMES[i]), twelve[i], Tolerance.absolute(0.001), "-");
    }
  }

  /** Share of the wall's heat capacity that has warmed by the step, from the hose's cells. */
  private static double[] taken(double film, int layers) {
    CellChain chain = chain(film, layers, 0);
    double[] first = new double[1 + layers];
    java.util.Arrays.fill(first, START);
    double cold = chain.storedInWalls(first);
    java.util.Arrays.fill(first, START + STEP);
    double hot = chain.storedInWalls(first);
    double[][] states = chain.at(TIMES);
    double[] share = new double[TIMES.length];
    for (int i = 0; i < share.length; i++) {
      share[i] = Rounded.to(5, (chain.storedInWalls(states[i]) - cold) / (hot - cold));
    }
    return share;
  }

  /** One cell of still coolant that cannot cool, warmer than the wall by the step. */
  private static CellChain chain(double film, int layers, double outside) {
    double conductivity = film * BORE / 3.66; // of the coolant: Nu is 3.66 at rest
    Hose hose = new Hose("slab", 1, BORE, RUBBER, outside, 1, layers);
    double[] state = new double[1 + layers];
    java.util.Arrays.fill(state, START);
    state[0] = START + STEP;
    return new CellChain(new SteadyCoolant(1000, 1e9, conductivity), START)
        .hose(hose)
        .around(START, 0)
        .within(1e-6)
        .from(state);
  }

  private static double exact(double film, double time) {
    double biot = film * THICKNESS / RUBBER.conductivity();
    double fourier = DIFFUSIVITY * time / (THICKNESS * THICKNESS);
    double left = 0;
    for (int n = 0; n < TERMS; n++) {
      double root = root(biot, n);
      double square = root * root;
      left +=
          2 * biot * biot * Math.exp(-square * fourier) / (square * (square + biot * biot + biot));
    }
    return 1 - left;
  }

  /** The n-th root of x tan x = Bi. */
  private static double root(double biot, int n) {
    return new BrentSolver(1e-13, 1e-13)
        .solve(200, x -> x * Math.sin(x) - biot * Math.cos(x), n * Math.PI, (n + 0.5) * Math.PI);
  }

  /** The layers' temperatures lie inside them; what is known of the back face is its first rise. */
  private void outerFace() {
    double film = 3000;
    double outside = 10;
    double[][] states = chain(film, 12, outside).at(1200);
    double through = 1 / (1 / film + THICKNESS / RUBBER.conductivity() + 1 / outside);
    double last = states[0][12] - START;
    list.from(Kind.ANALYTIC, "resistances in series at rest, 10 W/(m2 K) outside, 10 K apart")
        .add(
            "rise of the outermost of 12 layers (its temperature sits in it, 0.3 mm from the face)",
            STEP * through / outside,
            Rounded.to(4, last),
            Tolerance.absolute(0.15),
            "K");
    list.from(Kind.ANALYTIC, SLAB + "coolant flowing, as above")
        .report(
            "4 mm of rubber engage in 10 s this share of their mass, film of 3000 W/(m2 K)",
            exact(film, 10),
            "-");
  }
}
