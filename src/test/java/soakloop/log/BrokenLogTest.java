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
            "Time [s],IAT2 [degC]\n0,20\n# note\n1,2o\n",
            "row 4, column `IAT2 [degC]`: `2o` has more than a number; export plain numbers, with"
                + " the unit in the header"),
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,off\n1,20\n",
            "row 2, column `IAT2 [degC]`: `off` is not a number; allowed: a number such as 41.5,"
                + " and where there is no value an empty cell, NaN or N/A"),
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,Infinity\n1,20\n",
            "row 2, column `IAT2 [degC]`: `Infinity` is not a number; allowed: a number such as"
                + " 41.5, and where there is no value an empty cell, NaN or N/A"),
        Arguments.of(
            "Time [s];IAT2 [degC]\n0;24,5\n1;20\n",
            "row 2, column `IAT2 [degC]`: `24,5` has a comma in the number; export numbers with a"
                + " decimal point and no other marks"),
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,82C\n1,20\n",
            "row 2, column `IAT2 [degC]`: `82C` has more than a number; export plain numbers, with"
                + " the unit in the header"),
        Arguments.of(
            "Time [s],RPM\n14:05:02.1,900\n1,900\n",
            "row 2, column `Time [s]`: `14:05:02.1` is a clock time; export time as seconds from"
                + " the start of the log"),
        Arguments.of(
            "Time [hh:mm:ss],RPM\n0,900\n1,900\n",
            "column `Time [hh:mm:ss]`: holds clock times; export time as seconds from the start of"
                + " the log, as `Time [s]`"),
        Arguments.of(
            "Time [s],RPM\n0,900\n,900\n2,900\n",
            "row 3, column `Time [s]`: has no time; every row needs one"),
        Arguments.of(
            "Time [s],RPM\n0,900\n1.0,900\n# note\n\n1.0,900\n",
            "row 6, column `Time [s]`: the time `1.0` does not rise above `1.0` in row 3; export"
                + " one run with times that rise from row to row"),
        Arguments.of(
            "Time [s],RPM\n0,900\n9,900\n0,900\n1,900\n",
            "row 4, column `Time [s]`: the time `0` does not rise above `9` in row 3; export one"
                + " run with times that rise from row to row"),
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
            "Time [s],IAT2 [degC],Charge temp [degC]\n0,20,20\n1,20,20\n",
            "has 2 columns for charge-temperature: `IAT2 [degC]`, `Charge temp [degC]`; write"
                + " `charge-temperature: \"...\"` in the scenario under log, columns, to choose one"),
        Arguments.of(
            "RPM,IAT2 [degC]\n900,20\n900,20\n",
            "has no time column; head it `Time [s]` or name it in the scenario; its columns are"
                + " `RPM`, `IAT2 [degC]`"),
        Arguments.of(
            "Temperatures|of the run\n1|2\n",
            "has no time column; head it `Time [s]` or name it in the scenario; its columns are"
                + " `Temperatures|of the run` (cells must be parted by commas, semicolons or"
                + " tabs)"),
        Arguments.of(
            "Time [s],Knock [V],IAT [degC]\n0,1,20\n1,1,20\n",
            "has no column besides time that is known; name them in the scenario; its columns are"
                + " `Time [s]`, `Knock [V]`, `IAT [degC]`"),
        Arguments.of("Time [s],RPM\n0,\n1,NaN\n", "has no value in any known column besides time"),
        Arguments.of("Time [s],RPM\n0,900\n", "has 1 row of values; at least 2 are needed"),
        Arguments.of("Time [s],RPM\n", "has 0 rows of values; at least 2 are needed"),
        Arguments.of(
            "Time [s],RPM,IAT2 [degC]\n0,900\n1,900,20\n2,900,20\n",
            "row 2: has 2 cells, but the header has 3 (parted by comma)"),
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,24,5\n1,20\n2,20\n",
            "row 2: has 3 cells, but the header has 2 (parted by comma); a decimal comma or a comma"
                + " in a text without quotes makes such rows"),
        Arguments.of(
            "Time [s],IAT2 [degF]\n0,1040\n1,104\n",
            "row 2, column `IAT2 [degF]`: `1040` degF is 560.0 degC, outside -60 to 400 degC; is"
                + " the unit wrong?"),
        Arguments.of(
            "Time [s],IAT2 [K]\n0,25\n1,300\n",
            "row 2, column `IAT2 [K]`: `25` K is -248.1 degC, outside -60 to 400 degC; is the unit"
                + " wrong?"),
        Arguments.of(
            "Time [s],IAT2 [degC]\n0,1e999\n1,300\n",
            "row 2, column `IAT2 [degC]`: `1e999` degC is outside -60 to 400 degC; is the unit"
                + " wrong?"),
        Arguments.of(
            "Time [s],RPM,Boost [kPa]\n0,850,36\n1,3000,190\n",
            "row 2, column `Boost [kPa]`: `36` kPa at idle looks like an absolute pressure; boost"
                + " is gauge: name a gauge column"),
        Arguments.of(
            "0,900\n1,900\n2,900\n",
            "row 1 holds numbers where the names of the columns must stand; export the log with one"
                + " header row"),
        Arguments.of(
            "Invented car\nPulls, five\n\nTime [s],RPM\n0,900\n1,900\n",
            "row 4 looks like the header, but must come first; delete the rows above it, or begin"
                + " them with #"),
        Arguments.of(
            "# note\nTime,RPM,IAT2\ns,rpm,°C\n0,900,20\n1,900,20\n",
            "row 3 holds units; export the log with the units in the header row, as `Time [s]`, and"
                + " without this row"),
        Arguments.of(
            "Time [s],RPM\n0,\"900\n1,900\n",
            "has a broken quoted cell in row 2 or after; allowed: a pair of quotes around a cell, a"
                + " quote within it doubled"),
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
            "row 4: has 4 cells, but the header has 3 (parted by semicolon)",
            "row 3, column `RPM`: `fast` is not a number; allowed: a number such as 41.5, and where"
                + " there is no value an empty cell, NaN or N/A"),
        problems("Time [s];RPM;IAT2\n0;900;20\n1;fast;20\n2;900;20;5\n", LogColumns.NONE));
  }

  @Test
  void countsProblemsBeyondTwenty() throws Exception {
    StringBuilder text = new StringBuilder("Time [s],RPM\n");
    for (int i = 0; i < 33; i++) {
      text.append(i).append(",x\n");
    }
    List<String> problems = problems(text.toString(), LogColumns.NONE);
    assertEquals(21, problems.size());
    assertTrue(problems.get(19).startsWith("row 21, column `RPM`"), problems.get(19));
    assertEquals("and 13 more", problems.get(20));
  }

  @Test
  void refusesWhatIsNotAReadableTextFile() throws Exception {
    assertEquals(
        List.of("there is no such file"), problems(folder.resolve("absent.csv"), LogColumns.NONE));
    assertEquals(List.of("is a folder, not a file"), problems(folder, LogColumns.NONE));
    assertEquals(
        List.of("is not text (byte 4 is NUL); export the log as CSV"),
        problems("PK\u0003\u0000\u0000".getBytes(StandardCharsets.ISO_8859_1), LogColumns.NONE));
    assertEquals(
        List.of("is UTF-16 text; export the log as CSV in UTF-8"),
        problems("Time [s],RPM\n".getBytes(StandardCharsets.UTF_16), LogColumns.NONE));
    assertEquals(
        List.of(
            "row 2 holds the byte 0xB0, which is not UTF-8 text; export the log as CSV in UTF-8"),
        problems(
            "# a\nTime [s],IAT2 [\u00b0C]\n".getBytes(StandardCharsets.ISO_8859_1),
            LogColumns.NONE));
  }
}
