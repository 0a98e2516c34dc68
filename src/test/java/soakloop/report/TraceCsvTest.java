package soakloop.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;

/** The trace must come back from its file as it went in. */
@Tag("analytic")
class TraceCsvTest {
  @Test
  void everyValueComesBack() {
    Trace trace = SampleOutcome.standard().pulls(1).make().trace();
    List<String> lines = TraceCsv.of(trace).lines().toList();
    List<String> head = List.of(lines.get(0).split(","));
    assertEquals("time [s]", head.get(0));
    assertEquals(trace.size() + 1, lines.size());
    int sensor = head.indexOf("charge sensor [degC]");
    int speed = head.indexOf("engine speed [rpm]");
    int heat = head.indexOf("heat into the core [W]");
    for (int i = 0; i < trace.size(); i++) {
      String[] cells = lines.get(i + 1).split(",", -1);
      assertEquals(Channel.values().length + 1, cells.length);
      assertEquals(trace.time(i), Double.parseDouble(cells[0]), 0);
      assertEquals(
          trace.value(Channel.SENSOR, i), Double.parseDouble(cells[sensor]) + 273.15, 1e-12);
      assertEquals(
          trace.value(Channel.ENGINE_SPEED, i), Double.parseDouble(cells[speed]) / 60, 1e-12);
      assertEquals(trace.value(Channel.HEAT_CORE, i), Double.parseDouble(cells[heat]), 0);
    }
  }

  @Test
  void missingValuesAreEmptyCells() {
    var columns = SampleOutcome.columns(1);
    columns.put(Channel.RESERVOIR, new double[] {Double.NaN});
    columns.put(Channel.BOOST, new double[] {0.1});
    Trace full = SampleOutcome.standard().pulls(1).make().trace();
    Trace one =
        new Trace(new double[] {2.5}, columns, List.of(), List.of(), full.energy(), full.effort());
    List<String> lines = TraceCsv.of(one).lines().toList();
    List<String> head = List.of(lines.get(0).split(","));
    String[] cells = lines.get(1).split(",", -1);
    assertEquals("2.5", cells[0]);
    assertEquals("", cells[head.indexOf("reservoir [degC]")]);
    assertEquals("0.1", cells[head.indexOf("boost [Pa]")]);
    assertEquals("0", cells[head.indexOf("engine speed [rpm]")]);
  }
}
