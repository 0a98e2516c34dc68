package soakloop.validation;

import java.util.List;
import soakloop.rig.Hose;
import soakloop.simulate.CellChain;
import soakloop.simulate.SteadyCoolant;

/**
 * Tanks, pump and hoses on their own against exact solutions, integrated as a run integrates them.
 */
final class CellChecks implements CheckSuite {
  private static final double ZERO_CELSIUS = 273.15;
  private static final double START = 30; // degC
  private static final SteadyCoolant LIQUID = new SteadyCoolant(1000, 3560);
  private static final double FLOW = 0.5; // kg/s, and L/s
  private static final String BY_HAND = "solution of the balance by hand: ";

  private final CheckList list = new CheckList("Cells in motion");

  @Override
  public List<Check> checks() {
    massInStream();
    warmedMass();
    twoNodes();
    twoNodesWithoutLoss();
    closedRing();
    tanksInSeries();
    return list.checks();
  }

  private void massInStream() {
    double[][] states =
        new CellChain(LIQUID, kelvin(25))
            .tank(20 * FLOW / 1000, 0)
            .fed(t -> kelvin(25), t -> FLOW)
            .from(kelvin(60))
            .at(10, 60);
    list.from(Kind.ANALYTIC, BY_HAND + "T = Tin + (T0 - Tin) exp(-t/20 s), 25 and 60 degC");
    add("tank in a stream, 10 s", 25 + 35 * Math.exp(-0.5), states[0][0]);
    add("tank in a stream, 60 s", 25 + 35 * Math.exp(-3), states[1][0]);
  }

  /** 20 kW and 600 W/K to 25 degC make the same equation as 600 W/K to 58.3 degC. */
  private void warmedMass() {
    double rest = 25 + 20_000 / 600.0;
    double[][] states =
        new CellChain(LIQUID, kelvin(25))
            .tank(30_000 / (1000 * 3560.0), 600)
            .around(kelvin(rest), 0)
            .from(kelvin(40))
            .at(10, 50, 100);
    list.from(Kind.ANALYTIC, BY_HAND + "30 kJ/K, 600 W/K, 20 kW, from 40 degC to 58.3 degC");
    double[] times = {10, 50, 100};
    for (int i = 0; i < times.length; i++) {
      double exact = rest + (40 - rest) * Math.exp(-times[i] / 50);
      add("heated tank, " + (int) times[i] + " s", exact, states[i][0]);
    }
    double[][] pumped =
        new CellChain(LIQUID, kelvin(25)).pump(1e-3).around(0, 356).from(kelvin(40)).at(60);
    add("still pump of 1 L at 356 W, 60 s", 46, pumped[0][0]);
  }

  /**
   * A hose of one cell with one wall layer: 6 kJ/K of coolant, 1800 W/K, 24 kJ/K of wall, 400 W/K
   * to 25 degC. The 40 kW into the coolant of the exact case only move the rest that the equations
   * settle to, so that the hose runs without them from a start moved as far the other way.
   */
  private void twoNodes() {
    double[] rest = {25 + 40_000 / 400.0 + 40_000 / 1800.0, 25 + 40_000 / 400.0};
    double[] times = {1, 10, 60, 300};
    double[][] states =
        new CellChain(LIQUID, kelvin(25))
            .hose(twoNodeHose(400))
            .around(kelvin(25), 0)
            .from(kelvin(25 + START - rest[0]), kelvin(25 + START - rest[1]))
            .at(times);
    double[][] exact = {
      {35.769673, 30.140327},
      {56.467456, 38.629541},
      {100.507163, 80.342211},
      {145.261563, 123.125686}
    };
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "eigenvalues of two nodes (6 and 24 kJ/K, 1800 W/K between, 400 W/K out, 40 kW), Python");
    for (int i = 0; i < times.length; i++) {
      String when = ", two nodes, " + (int) times[i] + " s";
      add("heated node" + when, exact[i][0], states[i][0] + rest[0] - 25);
      add("cooled node" + when, exact[i][1], states[i][1] + rest[1] - 25);
    }
  }

  private void twoNodesWithoutLoss() {
    double apart = 40_000 * 24 / (1800.0 * 30);
    double mean = START + 40_000 * 10 / 30e3;
    double grown = apart * -Math.expm1(-0.375 * 10);
    double[][] states =
        new CellChain(LIQUID, kelvin(25))
            .hose(twoNodeHose(0))
            .from(kelvin(START - 0.8 * apart), kelvin(START + 0.2 * apart))
            .at(10);
    list.from(
        Kind.ANALYTIC,
        BY_HAND + "the same nodes without loss, difference 17.8 K (1 - exp(-0.375 t/s))");
    double carried = 40_000 * 10 / 30e3;
    add("heated node, no loss, 10 s", mean + 0.8 * grown, states[0][0] + carried + 0.8 * apart);
    add("wall node, no loss, 10 s", mean - 0.2 * grown, states[0][1] + carried - 0.2 * apart);
  }

  /** Film of still liquid 3.66 k/d, so the length alone sets the conductance. */
  private static Hose twoNodeHose(double loss) {
    double length = 1800 / (Math.PI * 3.66 * LIQUID.conductivity(0));
    double bore = Math.sqrt(6000 / (1000 * 3560.0) / length / (Math.PI / 4));
    double thickness = 1e-3;
    double section = Math.PI * (bore + thickness) * thickness;
    Hose.Wall wall = new Hose.Wall(thickness, 1e9, 24_000 / (section * length));
    double outside = loss / (Math.PI * (bore + 2 * thickness) * length);
    return new Hose("two nodes", length, bore, wall, outside, 1, 1);
  }

  /** 60 kW into 30 L/min around 8 L: the inlet rises by 33.7 K each time the liquid comes round. */
  private void closedRing() {
    double rise = 60_000 / (FLOW * 3560);
    double[] times = new double[901];
    for (int i = 0; i < times.length; i++) {
      times[i] = (i + 1) * 0.05;
    }
    CellChain ring =
        new CellChain(LIQUID, kelvin(25))
            .pump(0.02e-3)
            .hose(adiabatic(7.98e-3, 400))
            .closed(FLOW)
            .around(0, 60_000)
            .from(kelvin(START));
    double[] back = returning(ring, times);
    list.from(
        Kind.ANALYTIC,
        BY_HAND + "plug flow, rise Q/(m cp) every V/q = 16 s; a hose of 400 cells, a heated pump");
    add("returning liquid, 14 s", START, back[index(14)]);
    add("returning liquid, 24 s", START + rise, back[index(24)], 0.05);
    add("returning liquid, 40 s", START + 2 * rise, back[index(40)], 0.05);
    for (int turn = 1; turn <= 2; turn++) {
      list.add(
          "time of half of step " + turn,
          16.0 * turn,
          Rounded.to(3, crossing(times, back, kelvin(START + (turn - 0.5) * rise))),
          Tolerance.absolute(0.05),
          "s");
    }
    list.from(Kind.ANALYTIC, "a front stays a step in plug flow; what the cells make of it");
    for (int cells : new int[] {5, 20, 80, 320}) {
      CellChain hose =
          new CellChain(LIQUID, kelvin(25))
              .hose(adiabatic(8e-3, cells))
              .fed(t -> kelvin(START + 1), t -> FLOW)
              .from(kelvin(START));
      double[] out = returning(hose, times);
      double tenth = crossing(times, out, kelvin(START + 0.1));
      double most = crossing(times, out, kelvin(START + 0.9));
      double half = crossing(times, out, kelvin(START + 0.5));
      list.report(
          "front from 10 to 90 % over V/q, hose of " + cells + " cells",
          Rounded.to(4, (most - tenth) / 16),
          "-");
      list.add(
          "half of the front over V/q, hose of " + cells + " cells",
          1,
          Rounded.to(4, half / 16),
          Tolerance.percent(5),
          "-");
    }
  }

  private static double[] returning(CellChain chain, double[] times) {
    double[][] states = chain.at(times);
    double[] out = new double[times.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = chain.leaving(states[i]);
    }
    return out;
  }

  private static int index(double time) {
    return (int) Math.round(time / 0.05) - 1;
  }

  private static double crossing(double[] times, double[] values, double level) {
    for (int i = 1; i < values.length; i++) {
      if (values[i] >= level) {
        double share = (level - values[i - 1]) / (values[i] - values[i - 1]);
        return times[i - 1] + share * (times[i] - times[i - 1]);
      }
    }
    return Double.NaN;
  }

  private static Hose adiabatic(double volume, int cells) {
    double bore = 20e-3;
    double length = volume / (Math.PI / 4 * bore * bore);
    return new Hose("adiabatic", length, bore, new Hose.Wall(1e-3, 0.25, 2e6), 0, cells, 0);
  }

  /** Tanks, because a hose's cells hold a front together better than so many tanks would. */
  private void tanksInSeries() {
    CellChain four = new CellChain(LIQUID, kelvin(25)).fed(t -> kelvin(START + 100), t -> FLOW);
    for (int i = 0; i < 4; i++) {
      four.tank(2e-3, 0);
    }
    double[][] states = four.from(kelvin(START)).at(8, 16, 32);
    list.from(
        Kind.ANALYTIC, "tanks in series, 1 - exp(-N t) sum of (N t)^i / i! (Levenspiel), N = 4");
    double[] turns = {0.5, 1, 2};
    for (int i = 0; i < turns.length; i++) {
      double x = 4 * turns[i];
      double exact = 1 - Math.exp(-x) * (1 + x + x * x / 2 + x * x * x / 6);
      add("after " + turns[i] + " V/q, 4 tanks, step of 100 K", START + 100 * exact, states[i][3]);
    }
  }

  private void add(String what, double expected, double computed) {
    add(what, expected, computed, 2e-3);
  }

  private void add(String what, double expected, double computed, double kelvin) {
    list.add(
        what, expected, Rounded.to(4, computed - ZERO_CELSIUS), Tolerance.absolute(kelvin), "degC");
  }

  private static double kelvin(double celsius) {
    return celsius + ZERO_CELSIUS;
  }
}
