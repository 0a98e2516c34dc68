package soakloop.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import soakloop.log.Log;

/** Looks at a log: what can be trusted, pulls, waits, values at the same engine speed. */
public final class LogStudy {
  private LogStudy() {}

  /**
   * Looks at a log.
   *
   * @param log with at least two rows
   * @param options what is asked
   */
  public static LogReading of(Log log, LogOptions options) {
    return together(List.of(log), options).get(0);
  }

  /**
   * Looks at several logs and reads all their pulls at the same engine speed.
   *
   * @param logs each with at least two rows
   * @param options what is asked
   * @return one reading for each, in their order
   */
  public static List<LogReading> together(List<Log> logs, LogOptions options) {
    List<Channels> channels = logs.stream().map(Channels::of).toList();
    List<List<Pull>> pulls = channels.stream().map(PullFinder::find).toList();
    OptionalDouble counted =
        options.countedSpeed().isPresent()
            ? options.countedSpeed()
            : CountedSpeed.common(pulls.stream().flatMap(List::stream).toList());
    return IntStream.range(0, logs.size())
        .mapToObj(i -> read(channels.get(i), pulls.get(i), counted, options))
        .toList();
  }

  private static LogReading read(
      Channels channels, List<Pull> pulls, OptionalDouble counted, LogOptions options) {
    Log log = channels.log();
    List<Finding> findings = new ArrayList<>(channels.findings());
    findings.addAll(SwapCheck.check(channels, pulls));
    findings.addAll(SaturationCheck.check(channels));
    findings.addAll(StuckCheck.check(channels, pulls));
    findings.addAll(AirCheck.check(channels, pulls));
    findings.addAll(TimeCheck.check(log));
    findings.sort(Comparator.comparing(Finding::kind));
    return new LogReading(
        log,
        channels.all(),
        findings,
        pulls,
        WaitFinder.between(pulls, channels),
        counted,
        new PullTable(channels, pulls, findings, counted, options.limit()).read(),
        Effectiveness.of(channels, pulls, counted, options),
        CoolantFlow.of(channels, pulls, options));
  }
}
