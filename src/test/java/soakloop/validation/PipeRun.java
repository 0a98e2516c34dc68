package soakloop.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import soakloop.quantity.Curve;

/** One measured run of a hot front through a steel pipe; see {@code validation/pipe-front}. */
final class PipeRun {
  private static final Path FOLDER =
      Path.of(System.getProperty("basedir", ""), "validation", "pipe-front");
  private static final List<String> NAMES =
      List.of(
          "PipeDataULg151202", "PipeDataULg151204_1", "PipeDataULg151204_4", "PipeDataULg160118_1");
  private static final double ZERO_CELSIUS = 273.15;

  private final String name;
  private final double[] time;
  private final double[] massFlow;
  private final double[] outlet;
  private final double[] inlet;

  private PipeRun(String name, double[][] rows) {
    this.name = name;
    this.time = column(rows, 0, 0);
    this.massFlow = column(rows, 1, 0);
    this.outlet = column(rows, 3, ZERO_CELSIUS);
    this.inlet = column(rows, 5, ZERO_CELSIUS);
  }

  /** The file's name without its ending. */
  String name() {
    return name;
  }

  /** Instants, s. */
  double[] time() {
    return time.clone();
  }

  /** Water leaving, K. */
  double[] outlet() {
    return outlet.clone();
  }

  static List<PipeRun> all() {
    return NAMES.stream().map(PipeRun::read).toList();
  }

  private static PipeRun read(String name) {
    try (var lines = Files.lines(FOLDER.resolve(name + ".mos"))) {
      double[][] rows =
          lines
              .filter(line -> line.matches("\\d.*,.*"))
              .map(line -> numbers(line))
              .toArray(double[][]::new);
      return new PipeRun(name, rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double[] numbers(String line) {
    return java.util.Arrays.stream(line.replaceAll("[;)].*", "").split(","))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  private static double[] column(double[][] rows, int column, double plus) {
    double[] values = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      values[i] = rows[i][column] + plus;
    }
    return values;
  }

  Curve inletOverTime() {
    return Curve.of(time, inlet);
  }

  Curve flowOverTime() {
    return Curve.of(time, massFlow);
  }

  /** The temperature halfway between the first and the hottest water that left, K. */
  double halfway() {
    double most = java.util.Arrays.stream(outlet).max().orElseThrow();
    return 0.5 * (outlet[0] + most);
  }

  /** When a series first comes up to a temperature, s. */
  double reaches(double[] series, double level) {
    for (int i = 1; i < series.length; i++) {
      if (series[i] >= level) {
        double share = (level - series[i - 1]) / (series[i] - series[i - 1]);
        return time[i - 1] + share * (time[i] - time[i - 1]);
      }
    }
    return Double.NaN;
  }
}
