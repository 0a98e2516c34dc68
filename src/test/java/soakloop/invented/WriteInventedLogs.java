package soakloop.invented;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Writes the invented logs and the true values behind them.
 *
 * <p>{@code mvn test -Dtest=InventedLogsTest -Dsoakloop.write=true} does the same to {@code
 * scenarios/logs} through the test.
 */
final class WriteInventedLogs {
  private WriteInventedLogs() {}

  /**
   * Writes every log.
   *
   * @param arguments the folder to write to
   * @throws IOException if a file cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Files.createDirectories(folder);
    for (InventedLog log : InventedLog.values()) {
      TruthRun run = log.run();
      Files.writeString(folder.resolve(log.fileName()), log.text(run));
      describe(log, run, System.out);
    }
  }

  private static void describe(InventedLog log, TruthRun run, PrintStream to) {
    to.printf(Locale.ROOT, "%s%n  %s%n", log.fileName(), log.deviations());
    to.printf(
        Locale.ROOT,
        "  residual %.2e, heat from air %.0f kJ, to ambient %.0f kJ%n",
        run.residual(),
        run.heatFromAir() / 1e3,
        run.heatToAmbient() / 1e3);
    if (log.duty() instanceof DynoDay day) {
      for (int pull = 0; pull < day.pulls(); pull++) {
        double start = DynoDay.pullStart(pull);
        line(run, start, to);
        line(run, start + DynoDay.countedAfter(), to);
        to.printf(
            Locale.ROOT,
            "    peak %.1f%n",
            run.sensorPeak(start, start + DynoDay.PULL + DynoDay.WAIT));
      }
    } else {
      for (double time : new double[] {0, 40, 60, 120, 180, 238, 245, 248, 255, 300, 400, 495}) {
        line(run, time, to);
      }
    }
  }

  private static void line(TruthRun run, double time, PrintStream to) {
    TruthLoop.Truth t = run.at(time);
    to.printf(
        Locale.ROOT,
        "  %5.1f s sensor %.1f charge %.1f in %.1f out %.1f lid %.1f, %.3f kg/s %.1f L/min, "
            + "discharge %.0f%n",
        t.time(),
        t.sensor(),
        t.charge(),
        t.coreIn(),
        t.coreOut(),
        t.lid(),
        t.airFlow(),
        t.coolantFlow() * 60000,
        t.discharge());
  }
}
