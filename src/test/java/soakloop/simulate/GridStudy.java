package soakloop.simulate;

import java.nio.file.Path;
import java.util.Locale;
import soakloop.rig.Core;
import soakloop.rig.Exchanger;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Hose;
import soakloop.rig.Rig;
import soakloop.scenario.ScenarioReader;

/**
 * How many cells: prints what each coarser grid changes against a fine one on a shipped scenario,
 * one part at a time. Exchanger grids are those of one pass. Run its main from the project's
 * folder; it is no part of the build. A second argument leaves the single parts out.
 */
final class GridStudy {
  private static final Options PRECISE = new Options(1e-6, 1e-9, 0.1, 0.1);
  private static final Cells FINE = new Cells(40, 8, 12, 12, 12, 4);

  private GridStudy() {}

  private record Cells(
      int hose, int layers, int coreAlong, int coreDepth, int exchangerAlong, int exchangerDepth) {
    Rig on(Rig rig) {
      return Altered.elements(
          rig,
          e -> {
            if (e instanceof Hose h) {
              return new Hose(h.name(), h.length(), h.bore(), h.wall(), h.outside(), hose, layers);
            }
            if (e instanceof Core c) {
              return new Core(c.name(), c.exchanger().on(new Exchanger.Grid(coreAlong, coreDepth)));
            }
            if (e instanceof HeatExchanger x) {
              return new HeatExchanger(
                  x.name(),
                  x.exchanger().on(new Exchanger.Grid(exchangerAlong, exchangerDepth)),
                  x.faceArea());
            }
            return e;
          });
    }
  }

  public static void main(String[] args) throws Exception {
    String file = args.length > 0 ? args[0] : "scenarios/cool-morning.yaml";
    Setup setup = ScenarioReader.read(Path.of(file)).setup();
    Trace fine = run(setup, FINE);
    System.out.println("fine grid: " + fine.effort());
    System.out.println(
        "grid, states, evaluations, seconds, largest change [K]: sensor anywhere, sensor in pulls,"
            + " sensor at pull ends, coolant into the core");
    print("as shipped, precise", setup, PRECISE, fine);
    for (double tolerance : new double[] {1e-3, 1e-4, 1e-5, 1e-6}) {
      Options options = PRECISE.withTolerances(tolerance, 1e-3 * tolerance);
      print("as shipped, to " + tolerance + " K", setup, options, fine);
    }
    for (Cells c :
        new Cells[] {
          new Cells(5, 3, 4, 2, 4, 2),
          new Cells(5, 3, 4, 2, 8, 1),
          new Cells(3, 3, 4, 2, 6, 1),
          new Cells(3, 2, 4, 2, 8, 1),
          new Cells(3, 3, 6, 2, 8, 1),
          new Cells(3, 2, 6, 1, 8, 1),
          new Cells(3, 3, 8, 2, 12, 1)
        }) {
      print(c.toString(), setup, c, fine);
    }
    if (args.length < 2) {
      parts(setup, fine);
    }
  }

  private static void parts(Setup setup, Trace fine) throws SimulationException {
    Cells f = FINE;
    for (int n : new int[] {1, 2, 3, 5, 8, 16}) {
      print("hose " + n + " cells", setup, new Cells(n, f.layers, 12, 12, 12, 4), fine);
    }
    for (int n : new int[] {0, 1, 2, 3, 4}) {
      print("hose " + n + " layers", setup, new Cells(f.hose, n, 12, 12, 12, 4), fine);
    }
    for (int[] n : new int[][] {{1, 1}, {2, 2}, {2, 4}, {3, 3}, {4, 2}, {4, 4}, {6, 6}}) {
      print(
          "core " + n[0] + " x " + n[1],
          setup,
          new Cells(f.hose, f.layers, n[0], n[1], 12, 4),
          fine);
    }
    for (int[] n : new int[][] {{1, 1}, {2, 1}, {3, 1}, {4, 1}, {4, 2}, {6, 2}}) {
      print(
          "heat exchanger " + n[0] + " x " + n[1],
          setup,
          new Cells(f.hose, f.layers, 12, 12, n[0], n[1]),
          fine);
    }
  }

  private static Trace run(Setup setup, Cells cells) throws SimulationException {
    return Simulation.run(on(setup, cells), PRECISE);
  }

  private static Setup on(Setup s, Cells cells) {
    return new Setup(s.day(), cells.on(s.rig()), s.start(), s.session(), s.chargeLimit());
  }

  private static void print(String name, Setup setup, Cells cells, Trace fine)
      throws SimulationException {
    print(name, on(setup, cells), PRECISE, fine);
  }

  private static void print(String name, Setup setup, Options options, Trace fine)
      throws SimulationException {
    long began = System.nanoTime();
    Trace trace = Simulation.run(setup, options);
    double seconds = (System.nanoTime() - began) / 1e9;
    double ends = 0;
    double pulls = 0;
    for (Trace.Span pull : fine.pulls()) {
      ends = Math.max(ends, difference(Channel.SENSOR, pull.countedAt(), trace, fine));
      for (double t = pull.start(); t <= pull.end(); t += 0.1) {
        pulls = Math.max(pulls, difference(Channel.SENSOR, t, trace, fine));
      }
    }
    double sensor = 0;
    double coolant = 0;
    for (double t = fine.time(0); t <= fine.time(fine.size() - 1); t += 0.1) {
      sensor = Math.max(sensor, difference(Channel.SENSOR, t, trace, fine));
      coolant = Math.max(coolant, difference(Channel.CORE_COOLANT_IN, t, trace, fine));
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "%-24s %4d %7d %5.2f  %.3f %.3f %.3f %.3f",
            name,
            trace.effort().states(),
            trace.effort().evaluations(),
            seconds,
            sensor,
            pulls,
            ends,
            coolant));
  }

  private static double difference(Channel channel, double t, Trace a, Trace b) {
    return Math.abs(a.at(channel, t) - b.at(channel, t));
  }
}
