package soakloop.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.io.TempDir;
import soakloop.quantity.Unit;

/** A random log, written in random units with a random separator, reads back equal to rounding. */
class LogRoundTripTest {
  private static final String[] SEPARATORS = {",", ";", "\t"};
  private static final String[] LINE_ENDS = {"\n", "\r\n"};

  @TempDir Path folder;

  @RepeatedTest(60)
  void readsBackWhatWasWritten(RepetitionInfo repetition) throws Exception {
    Random random = new Random(repetition.getCurrentRepetition());
    List<Signal> signals = new ArrayList<>(EnumSet.range(Signal.TIME, Signal.ENGINE_COOLANT));
    signals.remove(Signal.TIME);
    Collections.shuffle(signals, random);
    signals = new ArrayList<>(signals.subList(0, 1 + random.nextInt(signals.size())));
    signals.add(random.nextInt(signals.size() + 1), Signal.TIME);
    int rows = 2 + random.nextInt(40);

    Map<Signal, double[]> si = new EnumMap<>(Signal.class);
    Map<Signal, Unit> units = new EnumMap<>(Signal.class);
    Map<Signal, LogColumns.Choice> chosen = new EnumMap<>(Signal.class);
    List<String> headers = new ArrayList<>();
    for (Signal signal : signals) {
      Unit unit = any(signal.dimension().units(), random);
      units.put(signal, unit);
      double[] column = new double[rows];
      double time = -5;
      for (int i = 0; i < rows; i++) {
        time += 0.05 + random.nextDouble();
        boolean missing = i > 0 && signal != Signal.TIME && random.nextInt(6) == 0;
        column[i] = signal == Signal.TIME ? time : missing ? Double.NaN : value(signal, random);
      }
      si.put(signal, column);
      headers.add(header(signal, unit, chosen, random));
    }

    String separator = SEPARATORS[random.nextInt(3)];
    String end = LINE_ENDS[random.nextInt(2)];
    StringBuilder text = new StringBuilder(random.nextBoolean() ? "\ufeff" : "");
    text.append("# invented").append(end).append(String.join(separator, headers)).append(end);
    for (int i = 0; i < rows; i++) {
      List<String> cells = new ArrayList<>();
      for (Signal signal : signals) {
        double value = si.getOrDefault(signal, new double[0])[i];
        Unit unit = Optional.ofNullable(units.get(signal)).orElseThrow();
        cells.add(cell(unit.fromSi(value), random));
      }
      text.append(String.join(separator, cells)).append(end);
    }
    Path file = folder.resolve("random.csv");
    Files.writeString(file, text);

    Log log = LogReader.read(file, new LogColumns(chosen));

    assertEquals(rows, log.size());
    signals.remove(Signal.TIME);
    assertEquals(Set.copyOf(signals), Set.copyOf(log.signals()));
    for (int i = 0; i < rows; i++) {
      assertEquals(si.getOrDefault(Signal.TIME, new double[0])[i], log.time(i), 1e-9);
      for (Signal signal : signals) {
        double wanted = si.getOrDefault(signal, new double[0])[i];
        double rounding = Double.isNaN(wanted) ? 1 : 1e-11 * Math.max(1, Math.abs(wanted));
        assertEquals(wanted, log.value(signal, i), rounding);
      }
    }
    for (int c = 0; c < headers.size(); c++) {
      assertEquals(headers.get(c).replace("\"", ""), log.columns().get(c).header());
    }
  }

  /** A header by the signal's own name, or any other name that the scenario then chooses. */
  private static String header(
      Signal signal, Unit unit, Map<Signal, LogColumns.Choice> chosen, Random random) {
    String name = signal.key().replace('-', ' ');
    return switch (random.nextInt(4)) {
      case 0 -> name + " [" + unit.symbol() + "]";
      case 1 -> name + " (" + unit.symbol() + ")";
      case 2 -> "\"" + name + ", " + unit.symbol() + "\"";
      default -> {
        chosen.put(signal, new LogColumns.Choice("PROBE OF " + name, Optional.of(unit)));
        yield "Probe of " + name;
      }
    };
  }

  private static String cell(double value, Random random) {
    if (Double.isNaN(value)) {
      return any(List.of("", "NaN", "N/A"), random);
    }
    return random.nextInt(5) == 0 ? "\"" + value + "\"" : Double.toString(value);
  }

  private static double value(Signal signal, Random random) {
    double share = random.nextDouble();
    return switch (signal.dimension()) {
      case TEMPERATURE -> 250 + 200 * share;
      case ROTATION -> 20 + 130 * share;
      case SPEED -> 90 * share;
      case GAUGE_PRESSURE -> -60e3 + 300e3 * share;
      default -> throw new AssertionError(signal.dimension());
    };
  }

  private static <T> T any(List<T> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }
}
