package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import soakloop.quantity.Dimension;

/** Logs that cannot be read, each with its whole message. Every log here is invented. */
class BrokenLogTest {
  private static final String TEMPERATURES = "K, degC or degF";

  @TempDir Path folder;

  private List<String> problems(byte[] bytes, LogColumns columns) throws IOException {
    Path file = folder.resolve("run.csv");
    Files.write(file, bytes);
    return problems(file, columns);
  }

  private List<String> problems(Path file, LogColumns columns) {
    LogException e = assertThrows(LogException.class, () -> LogReader.read(file, columns));
    assertEquals(String.join("\n", e.problems()), e.getMessage());
    String prefix = file + ": ";
    for (String problem : e.problems()) {
      assertTrue(problem.startsWith(prefix), problem);
    }
    return e.problems().stream().map(p -> p.substring(prefix.length())).toList();
  }

  private List<String> problems(String text, LogColumns columns) throws IOException {
    return problems(text.getBytes(StandardCharsets.UTF_8), columns);
  }

  private static LogColumns choose(Signal signal, String header) {
    return new LogColumns(Map.of(signal, new LogColumns.Choice(header, Optional.empty())));
  }

  static Stream<Arguments> broken() {
    return Stream.of(
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,off\n1,cold\n",
            "has no value in any known column besides time"),
        Arguments.of(
            "Time [s],RPM\n14:05:02.1,900\n1,900\n", "has 1 row of values; at least 2 are needed"),
        Arguments.of(
            "Time [hh:mm:ss],RPM\n0,900\n1,900\n",
            "column `Time [hh:mm:ss]`: has no unit; head it `Time [s]`, or write `time: {name: \"Time"
                + " [hh:mm:ss]\", unit: s}` in the scenario under log, columns; allowed: s, ms, min"
                + " or h"),
        Arguments.of(
            "Time,RPM\n0,900\n1,900\n",
            "column `Time`: has no unit; head it `Time [s]`, or write `time: {name: \"Time\", unit: s}`"
                + " in the scenario under log, columns; allowed: s, ms, min or h"),
        Arguments.of(
            "Time [s],IAT2\n0,20\n1,20\n",
            "column `IAT2`: has no unit; head it `IAT2 [degC]`, or write `charge-temperature: {name:"
                + " \"IAT2\", unit: degC}` in the scenario under log, columns; allowed: "
                + TEMPERATURES),
        Arguments.of(
            "Time [s],IAT2 [grads]\n0,20\n1,20\n",
            "column `IAT2 [grads]`: has the unit `grads`; allowed for charge-temperature: "
                + TEMPERATURES),
        Arguments.of(
            "Time [kPa],RPM\n0,900\n1,900\n",
            "column `Time [kPa]`: has the unit `kPa`; allowed for time: s, ms, min or h"),
        Arguments.of(
            "Time [s],IAT2 [degC],Charge temp [degC]\n0,20,21\n1,20,21\n",
            "has 2 columns for charge-temperature: `IAT2 [degC]`, `Charge temp [degC]`; write"
                + " `charge-temperature: \"...\"` in the scenario under log, columns, to choose one"),
        Arguments.of(
            "RPM,IAT2 [degC]\n900,20\n900,20\n",
            "has no time column; head it `Time [s]`, name it in the scenario, or say how many rows a"
                + " second there are, as `rate: 10 Hz` under log; its columns are `RPM`, `IAT2"
                + " [degC]`"),
        Arguments.of(
            "Temperatures:of the run\n1\n2\n",
            "has no time column; head it `Time [s]`, name it in the scenario, or say how many rows a"
                + " second there are, as `rate: 10 Hz` under log; its columns are `Temperatures:of"
                + " the run` (cells must be parted by commas, semicolons, tabs or bars)"),
        Arguments.of(
            "Time [s],Probe,Oil [degC]\n0,1,20\n1,1,20\n",
            "has no column besides time that is known; name them in the scenario; its columns are"
                + " `Time [s]`, `Probe`, `Oil [degC]`"),
        Arguments.of(
            "Time [s],IAT [degC]\n0,20\n1,20\n",
            "column `IAT [degC]`: it may be air before the blower or after the core; name it in the"
                + " scenario to use it"),
        Arguments.of("Time [s],RPM\n0,\n1,NaN\n", "has no value in any known column besides time"),
        Arguments.of("Time [s],RPM\n0,900\n", "has 1 row of values; at least 2 are needed"),
        Arguments.of("Time [s],RPM\n", "has 0 rows of values; at least 2 are needed"),
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,24,5\n1,20,1\n2,20\n",
            "row 2: has 3 cells, but the header has 2 (parted by comma); a decimal comma or a comma"
                + " in a text without quotes makes such rows"),
        Arguments.of(
            "Time [s],IAT2 [K]\n0,25\n1,30\n",
            "column `IAT2 [K]`: 25.0 K, as half of its values, is -248.1 degC, outside -60 to 400"
                + " degC; is the unit wrong?"),
        Arguments.of(
            "0,900\n1,900\n2,900\n",
            "row 1 holds numbers where the names of the columns must stand; export the log with one"
                + " header row"),
        Arguments.of(
            "Time [s],RPM\n0,\"900\n1,\"900\n2,900\n",
            "has quotes throughout that open a cell and never close it, the first in row 2; allowed: a pair of"
                + " quotes around a cell, a quote within it doubled"),
        Arguments.of("{\"time\": [0, 1]}\n", "is JSON; export the log as CSV"),
        Arguments.of("<?xml version=\"1.0\"?>\n<log/>\n", "is XML; export the log as CSV"),
        Arguments.of("# Time [s],RPM,\"a", "has 0 rows of values; at least 2 are needed"),
        Arguments.of("\n \n", "is empty"),
        Arguments.of("", "is empty"),
        Arguments.of(
            "# only\n#notes\n", "holds comments only; its first row must name the columns"));
  }

  @ParameterizedTest
  @MethodSource("broken")
  void saysWhatIsWrong(String text, String problem) throws Exception {
    assertEquals(List.of(problem), problems(text, LogColumns.NONE));
  }

  @Test
  void refusesAnAbsolutePressureNamedAsBoost() throws Exception {
    assertEquals(
        List.of("column `MAP [kPa]`: is an absolute pressure; boost is gauge: name a gauge column"),
        problems(
            "Time [s],RPM,MAP [kPa]\n0,900,35\n1,900,35\n", choose(Signal.BOOST, "MAP [kPa]")));
    assertEquals(
        List.of("column `P2 [psia]`: is an absolute pressure; boost is gauge: name a gauge column"),
        problems(
            "Time [s],RPM,P2 [psia]\n0,900,15\n1,900,15\n", choose(Signal.BOOST, "P2 [psia]")));
  }

  /** First bytes as the formats' specifications give them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "504b0304140000000800 | is packed (zip); unpack it and use the CSV file in it",
        "1f8b0800 | is packed (gzip); unpack it and use the CSV file in it",
        "d0cf11e0a1b11ae1 | is an old spreadsheet (xls); save its sheet as CSV",
        "255044462d312e37 | is a PDF; export the log's numbers as CSV",
        "89504e470d0a1a0a | is a picture (PNG); export the log's numbers as CSV",
        "ffd8ffe0 | is a picture (JPEG); export the log's numbers as CSV",
        "4d4446202020202034 | is a binary measurement file (MDF); export it as CSV",
        "01020300ff | is not text (byte 4 is NUL); export the log as CSV",
      })
  void recognisesWhatIsNoText(String hex, String problem) throws Exception {
    assertEquals(
        List.of(problem), problems(java.util.HexFormat.of().parseHex(hex), LogColumns.NONE));
  }

  @Test
  void namesTheColumnsThereAre() throws Exception {
    assertEquals(
        List.of("has no column `IAT3` for charge-temperature; its columns are `Time [s]`, `RPM`"),
        problems("Time [s],RPM\n0,900\n1,900\n", choose(Signal.CHARGE_TEMPERATURE, "IAT3")));
  }

  @Test
  void refusesANameThatTwoColumnsHave() throws Exception {
    assertEquals(
        List.of("has 2 columns `T [degC]` for charge-temperature; give each a name of its own"),
        problems(
            "Time [s],RPM,T [degC],T [degC]\n0,900,1,2\n1,900,1,2\n",
            choose(Signal.CHARGE_TEMPERATURE, "T [degC]")));
  }

  @Test
  void refusesAColumnNamedForTwoSignals() throws Exception {
    LogColumns.Choice choice = new LogColumns.Choice("T [degC]", Optional.empty());
    assertEquals(
        List.of("column `T [degC]`: is named for both inlet-air and reservoir"),
        problems(
            "Time [s],RPM,T [degC]\n0,900,1\n1,900,1\n",
            new LogColumns(Map.of(Signal.INLET_AIR, choice, Signal.RESERVOIR, choice))));
  }

  @Test
  void refusesAUnitOfAnotherDimension() throws Exception {
    LogColumns.Choice choice =
        new LogColumns.Choice("T", Optional.of(Dimension.LENGTH.require("mm")));
    assertEquals(
        List.of("column `T`: has the unit `mm`; allowed for reservoir: " + TEMPERATURES),
        problems(
            "Time [s],RPM,T\n0,900,1\n1,900,1\n",
            new LogColumns(Map.of(Signal.RESERVOIR, choice))));
  }

  @Test
  void saysSeveralProblemsAtOnce() throws Exception {
    assertEquals(
        List.of(
            "column `IAT2`: has no unit; head it `IAT2 [degC]`, or write `charge-temperature: {name:"
                + " \"IAT2\", unit: degC}` in the scenario under log, columns; allowed: "
                + TEMPERATURES,
            "column `ECT [V]`: has the unit `V`; allowed for engine-coolant: " + TEMPERATURES),
        problems("Time [s];IAT2;ECT [V]\n0;20;1\n1;21;1\n2;20;2\n", LogColumns.NONE).stream()
            .sorted(java.util.Comparator.reverseOrder())
            .sorted(java.util.Comparator.comparing(p -> p.contains("ECT")))
            .toList());
  }

  @Test
  void refusesWhatIsNotAReadableTextFile() throws Exception {
    assertEquals(
        List.of("there is no such file"), problems(folder.resolve("absent.csv"), LogColumns.NONE));
    assertEquals(List.of("is a folder, not a file"), problems(folder, LogColumns.NONE));
    assertEquals(
        List.of("is not text (byte 4 is NUL); export the log as CSV"),
        problems("PK\u0003\u0000\u0000".getBytes(StandardCharsets.ISO_8859_1), LogColumns.NONE));
  }
}
