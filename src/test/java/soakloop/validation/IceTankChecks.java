package soakloop.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Ice;

/**
 * A measured ice tank: heat balance and shape of the outlet temperature. A coil in ice, so nothing
 * here says what loose ice in the coolant does; see {@code validation/ice-tank}.
 */
final class IceTankChecks implements CheckSuite {
  private static final Path FILE =
      Path.of(System.getProperty("basedir", ""), "validation", "ice-tank", "discharging1.txt");
  private static final double CAPACITY = 264 * 3.6e6; // J, "about"
  private static final double ZERO_CELSIUS = 273.15;
  private static final String SOURCE =
      "melting of an ice tank by a coil, data of BE-HVACR/modelica-ice-tank (validation/ice-tank)";

  private final CheckList list = new CheckList("A measured ice tank");

  @Override
  public List<Check> checks() {
    double[][] rows = read();
    double[] first = rows[0];
    double[] last = rows[rows.length - 1];
    double melted = (first[4] - last[4]) * CAPACITY;
    double coldest = Arrays.stream(rows).mapToDouble(row -> row[2]).min().orElseThrow();
    list.from(Kind.MEASURED, SOURCE)
        .add("heat for the ice that went", melted / 3.6e6, heat(rows), Tolerance.percent(15), "kWh")
        .add(
            "coldest outlet beside the melting point",
            coldest,
            Ice.MELTING - ZERO_CELSIUS,
            Tolerance.absolute(0.5),
            "degC");
    shape(rows);
    double constant = Math.exp(-units(first)) * last[1];
    list.from(
            Kind.MEASURED,
            SOURCE + "; what one conductance for all of the melting would give, and misses by")
        .report("outlet at the end, with the transfer units of the beginning", constant, "degC")
        .report("the same, below the measured outlet", last[2] - constant, "K");
    return list.checks();
  }

  private void shape(double[][] rows) {
    list.from(Kind.MEASURED, SOURCE + "; transfer units between coolant and ice of 0 degC");
    for (double charge : new double[] {0.9, 0.7, 0.5, 0.3, 0.2}) {
      double[] row = Arrays.stream(rows).filter(r -> r[4] <= charge).findFirst().orElseThrow();
      list.report("with " + Digits.of(100 * charge, 3) + " % of the ice left", units(row), "-");
    }
  }

  /** Transfer units of a stream against ice of 0 degC. */
  private static double units(double[] row) {
    return Math.log(row[1] / row[2]);
  }

  /** Heat brought by the coolant, kWh. */
  private static double heat(double[][] rows) {
    Coolant coolant = GlycolMix.ofMass(Glycol.PROPYLENE, 0.30);
    double sum = 0;
    for (int i = 1; i < rows.length; i++) {
      double[] row = rows[i];
      double given =
          coolant.enthalpy(row[1] + ZERO_CELSIUS) - coolant.enthalpy(row[2] + ZERO_CELSIUS);
      sum += row[3] * given * (row[0] - rows[i - 1][0]);
    }
    return sum / 3.6e6;
  }

  private static double[][] read() {
    try (var lines = Files.lines(FILE)) {
      return lines
          .filter(line -> line.matches("\\d.*"))
          .map(line -> Arrays.stream(line.split(" ")).mapToDouble(Double::parseDouble).toArray())
          .toArray(double[][]::new);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
