package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soakloop.quantity.Dimension;

/** Logs that can be read. Every log here is invented. */
class LogReaderTest {
  @TempDir Path folder;

  private Log read(String text) throws IOException, LogException {
    return read(text, LogColumns.NONE);
  }

  private Log read(String text, LogColumns columns) throws IOException, LogException {
    Path file = folder.resolve("run.csv");
    Files.writeString(file, text);
    return LogReader.read(file, columns);
  }

  private static LogColumns choose(Signal signal, String header, String unit) {
    return new LogColumns(
        Map.of(
            signal,
            new LogColumns.Choice(
                header, unit.isEmpty() ? Optional.empty() : signal.dimension().unit(unit))));
  }

  private static Log.Column column(Log log, String header) {
    return log.columns().stream().filter(c -> c.header().equals(header)).findFirst().orElseThrow();
  }

  @Test
  void readsEveryKnownColumnInItsUnit() throws Exception {
    Log log =
        read(
            """
            # Invented log
            Time [s],Engine speed [rpm],Boost [psi],IAT2 [degF],Coolant core in [degF],\
            Vehicle speed [km/h]
            # second note
            0.0,3000,10,104,86,72
            0.5,3060,10.5,105.8,86,
            """);
    assertEquals("run.csv", log.name());
    assertEquals(2, log.size());
    assertEquals(0.5, log.time(1));
    assertEquals(50, log.value(Signal.ENGINE_SPEED, 0), 1e-12);
    assertEquals(51, log.value(Signal.ENGINE_SPEED, 1), 1e-12);
    assertEquals(68947.57, log.value(Signal.BOOST, 0), 0.01);
    assertEquals(313.15, log.value(Signal.CHARGE_TEMPERATURE, 0), 1e-9);
    assertEquals(314.15, log.value(Signal.CHARGE_TEMPERATURE, 1), 1e-9);
    assertEquals(303.15, log.value(Signal.CORE_COOLANT_IN, 1), 1e-9);
    assertEquals(20, log.value(Signal.ROAD_SPEED, 0), 1e-12);
    assertTrue(Double.isNaN(log.value(Signal.ROAD_SPEED, 1)));
    assertEquals(List.of("Invented log", "second note"), log.notes());
    assertEquals(
        List.of(
            Signal.ENGINE_SPEED,
            Signal.ROAD_SPEED,
            Signal.BOOST,
            Signal.CHARGE_TEMPERATURE,
            Signal.CORE_COOLANT_IN),
        List.copyOf(log.signals()));
    assertEquals(
        new Log.Column("Boost [psi]", Optional.of(Signal.BOOST), "psi", ""),
        column(log, "Boost [psi]"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Charge air temp (°C) | CHARGE_TEMPERATURE | degC",
        "charge temperature [C] | CHARGE_TEMPERATURE | degC",
        "IAT 2 (F) | CHARGE_TEMPERATURE | degF",
        "iat2_degF | CHARGE_TEMPERATURE | degF",
        "Charge temp [deg C] | CHARGE_TEMPERATURE | degC",
        "MAT [°F] | CHARGE_TEMPERATURE | degF",
        "'Charge air, C' | CHARGE_TEMPERATURE | degC",
        "RPM | ENGINE_SPEED | rpm",
        "Engine RPM | ENGINE_SPEED | rpm",
        "Engine speed (1/min) | ENGINE_SPEED | rpm",
        "Boost psi | BOOST | psi",
        "Manifold gauge pressure [kPa] | BOOST | kPa",
        "ECT [degC] | ENGINE_COOLANT | degC",
        "Engine coolant temp (F) | ENGINE_COOLANT | degF",
        "Coolant core out [degC] | CORE_COOLANT_OUT | degC",
        "Core coolant inlet temperature [degC] | CORE_COOLANT_IN | degC",
        "Reservoir temp (degF) | RESERVOIR | degF",
        "Inlet air [degC] | INLET_AIR | degC",
        "IAT1 [degC] | INLET_AIR | degC",
        "Blower discharge temp [F] | CORE_AIR_IN | degF",
        "VSS (mph) | ROAD_SPEED | mph",
        "GPS speed [kph] | ROAD_SPEED | km/h",
        "MPH | ROAD_SPEED | mph",
        "MAP [kPa] | MANIFOLD_PRESSURE | kPa",
        "Boost [psia] | MANIFOLD_PRESSURE | psi",
        "Boost [kPa abs] | MANIFOLD_PRESSURE | kPa",
        "MAP [psig] | BOOST | psi",
        "Mass air flow [g/s] | AIR_MASS_FLOW | g/s",
        "Throttle position (%) | THROTTLE | %",
        "Spark advance [deg] | SPARK | deg",
        "Knock retard [deg] | KNOCK | deg",
        "Torque [lb-ft] | TORQUE | lb-ft",
        "Power [kW] | WHEEL_POWER | kW",
        "Power [PS] | WHEEL_POWER | PS",
      })
  void knowsTradeNames(String header, Signal signal, String unit) throws Exception {
    Log log = read("Time (s);" + header.replace("'", "") + "\n0;35\n1;36\n");
    assertEquals(
        new Log.Column(header.replace("'", ""), Optional.of(signal), unit, ""),
        log.columns().get(1));
    double scale =
        unit.equals("PS") ? 75 * 9.80665 : signal.dimension().require(unit).toSi(36) / 36;
    assertEquals(36 * scale, log.value(signal, 1), 1e-9 * Math.abs(36 * scale));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Time [s] | 90 | 90",
        "time (ms) | 500 | 0.5",
        "Seconds | 90 | 90",
        "Elapsed time [min] | 1.5 | 90",
        "Time s | 90 | 90",
      })
  void readsTimeInItsUnit(String header, String cell, double seconds) throws Exception {
    Log log = read(header + "\tRPM\n0\t900\n" + cell + "\t900\n");
    assertEquals(seconds, log.time(1), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IAT [degC] | it may be air before the blower or after the core;"
            + " name it in the scenario to use it",
        "Coolant temp [degC] | it stands at 35 degC, so it may be the loop's, but does not say"
            + " where in it; name it in the scenario to use it",
        "Loop coolant [degC] | it does not say where in the loop, and no pull tells;"
            + " name it in the scenario to use it",
        "Reservoir [L] | its unit is not one of a temperature",
        "Oil temp [degC] | not a known name",
      })
  void leavesUnreadWhatIsNotPlain(String header, String remark) throws Exception {
    Log log = read("Time [s],RPM," + header + "\n0,900,35\n1,900,36\n");
    assertEquals(new Log.Column(header, Optional.empty(), "", remark), log.columns().get(2));
    assertEquals(List.of(Signal.ENGINE_SPEED), List.copyOf(log.signals()));
  }

  @Test
  void readsAnUnsettledColumnWhereTheScenarioNamesIt() throws Exception {
    Log log = read("Time [s],IAT\n0,95\n1,104\n", choose(Signal.CHARGE_TEMPERATURE, "IAT", "degF"));
    assertEquals(313.15, log.value(Signal.CHARGE_TEMPERATURE, 1), 1e-9);
    assertEquals("named in the scenario", column(log, "IAT").remark());
  }

  @Test
  void findsANamedColumnWithoutRegardToCaseAndSpaces() throws Exception {
    Log log =
        read(
            "Time [s],Probe 4 [degC]\n0,20\n1,21\n", choose(Signal.RESERVOIR, "probe4 [DegC]", ""));
    assertEquals(294.15, log.value(Signal.RESERVOIR, 1), 1e-9);
  }

  @Test
  void prefersTheExactHeader() throws Exception {
    Log log =
        read(
            "Time [s],probe [degC],Probe [degC]\n0,20,30\n1,21,31\n",
            choose(Signal.RESERVOIR, "Probe [degC]", ""));
    assertEquals(304.15, log.value(Signal.RESERVOIR, 1), 1e-9);
  }

  @Test
  void aNamedColumnGoesBeforeAKnownOne() throws Exception {
    Log log =
        read(
            "Time [s],IAT2 [degC],Probe [degC]\n0,20,30\n1,21,31\n",
            choose(Signal.CHARGE_TEMPERATURE, "Probe [degC]", ""));
    assertEquals(304.15, log.value(Signal.CHARGE_TEMPERATURE, 1), 1e-9);
    assertEquals(
        "the scenario names another column for charge-temperature",
        column(log, "IAT2 [degC]").remark());
  }

  @Test
  void theScenariosUnitGoesBeforeTheHeaders() throws Exception {
    Log log =
        read(
            "Time [s],IAT2 [degC]\n0,95\n1,104\n",
            choose(Signal.CHARGE_TEMPERATURE, "IAT2 [degC]", "degF"));
    assertEquals(313.15, log.value(Signal.CHARGE_TEMPERATURE, 1), 1e-9);
    assertEquals(
        "read in degF as the scenario says, not degC", column(log, "IAT2 [degC]").remark());
  }

  @ParameterizedTest
  @CsvSource({"','", "';'", "'\t'"})
  void findsTheSeparator(String separator) throws Exception {
    String text = "Time [s],RPM,IAT2 [degC]\r\n0,900,20.5\r\n1,960,21.5\r\n";
    Log log = read(text.replace(",", separator));
    assertEquals(294.65, log.value(Signal.CHARGE_TEMPERATURE, 1), 1e-9);
  }

  @Test
  void semicolonsPartHeadersWithCommas() throws Exception {
    Log log = read("Time, s;Engine speed, rpm;IAT2, degC\n0;900;20\n1;960;21\n");
    assertEquals(16, log.value(Signal.ENGINE_SPEED, 1), 1e-12);
  }

  @Test
  void readsAByteOrderMarkQuotesAndBlankRows() throws Exception {
    Log log =
        read(
            "\ufeff"
                + """
                "Time [s]","Charge ""A"", probe","IAT2, degC"

                "0",x,"20"
                \s
                1,y,21
                ,,

                """);
    assertEquals(2, log.size());
    assertEquals("Charge \"A\", probe", log.columns().get(1).header());
    assertEquals(294.15, log.value(Signal.CHARGE_TEMPERATURE, 1), 1e-9);
  }

  @Test
  void readsMissingValues() throws Exception {
    Log log = read("Time [s],IAT2 [degC],RPM\n0,,900\n1,NaN,900\n2,n/a,900\n3,21,900\n");
    for (int row = 0; row < 3; row++) {
      assertTrue(Double.isNaN(log.value(Signal.CHARGE_TEMPERATURE, row)));
    }
    assertEquals(294.15, log.value(Signal.CHARGE_TEMPERATURE, 3), 1e-9);
  }

  @Test
  void leavesOutAColumnWithoutValues() throws Exception {
    Log log = read("Time [s],IAT2 [degC],RPM\n0,,900\n1,NaN,900\n");
    assertEquals(List.of(Signal.ENGINE_SPEED), List.copyOf(log.signals()));
    assertEquals(
        new Log.Column("IAT2 [degC]", Optional.empty(), "", "has no values"), log.columns().get(1));
  }

  @Test
  void acceptsTrailingSeparators() throws Exception {
    Log log = read("Time [s],RPM,\n0,900,\n1,960,,\n");
    assertEquals(2, log.size());
    assertEquals("has no name", log.columns().get(2).remark());
  }

  @Test
  void timesMayStartBelowZero() throws Exception {
    assertEquals(-2.5, read("Time [s],RPM\n-2.5,900\n.5,9e2\n").time(0));
  }

  @Test
  void boostMayStayHighInALogOfAPullAlone() throws Exception {
    Log log = read("Time [s],RPM,Boost [kPa]\n0,2600,80\n1,3000,90\n");
    assertEquals(80e3, log.value(Signal.BOOST, 0), 1e-9);
  }

  @Test
  void leavesTheFileAsItIs() throws Exception {
    Path file = folder.resolve("kept.csv");
    byte[] bytes = "Time [s],RPM\n0,900\n1,960\n".getBytes(StandardCharsets.UTF_8);
    Files.write(file, bytes);
    FileTime before = FileTime.fromMillis(1_000_000_000_000L);
    Files.setLastModifiedTime(file, before);
    assertTrue(file.toFile().setWritable(false));
    assertEquals(2, LogReader.read(file, LogColumns.NONE).size());
    assertEquals(before, Files.getLastModifiedTime(file));
    assertEquals(
        new String(bytes, StandardCharsets.UTF_8), Files.readString(file, StandardCharsets.UTF_8));
  }

  @Test
  void everySignalHasAPlainNameThatSaysIt() throws Exception {
    for (Signal signal : Signal.values()) {
      if (signal == Signal.MANIFOLD_PRESSURE) {
        continue; // a column of that name may be gauge: its values tell
      }
      String unit = signal.dimension() == Dimension.TEMPERATURE ? "degC" : "";
      String header = signal.key().replace('-', ' ') + (unit.isEmpty() ? "" : " [" + unit + "]");
      assertTrue(Header.of(header).says(signal), header);
    }
  }
}
