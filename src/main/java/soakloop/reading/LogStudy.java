package soakloop.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
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
    Channels channels = Channels.of(log);
    List<Pull> pulls = PullFinder.find(channels);
    List<Finding> findings = new ArrayList<>(channels.findings());
    findings.addAll(SwapCheck.check(channels, pulls));
    findings.addAll(SaturationCheck.check(channels));
    findings.addAll(StuckCheck.check(channels, pulls));
    findings.addAll(AirCheck.check(channels, pulls));
    findings.addAll(TimeCheck.check(log));
    findings.sort(Comparator.comparing(Finding::kind));
    OptionalDouble counted =
        options.countedSpeed().isPresent() ? options.countedSpeed() : CountedSpeed.common(pulls);
    return new LogReading(
        log,
        channels.all(),
        findings,
        pulls,
        WaitFinder.between(pulls, channels),
        counted,
        new PullTable(channels, pulls, findings, counted, options.limit()).read(),
        Effectiveness.of(channels, pulls, counted, options));
  }
}
