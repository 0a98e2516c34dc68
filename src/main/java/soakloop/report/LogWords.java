package soakloop.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.reading.Channel;
import soakloop.reading.Pull;
import soakloop.reading.Wait;

/**
 * How a log's things are said.
 *
 * @param display how numbers are shown
 */
record LogWords(Display display) {
  /** Returns words one after the other, the last after "and". */
  static String listed(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** Returns a pull's number, marked if it was lifted early. */
  static String number(Pull pull) {
    return pull.number() + (pull.aborted() ? "*" : "");
  }

  /** Returns the digits after the point that a temperature is known to in a log. */
  int decimals(LogSheet sheet, Signal signal) {
    double step =
        Optional.ofNullable(sheet.reading().channels().get(signal))
            .map(Channel::quantum)
            .orElse(0.0);
    double shown = display.units().unit(Dimension.TEMPERATURE_DIFFERENCE).fromSi(step);
    return shown >= 0.5 ? 0 : 1;
  }

  /** Returns how a pull sweeps, such as 2600 to 6700 rpm in 10.0 s. */
  String sweep(Pull pull) {
    String duration = String.format(Locale.ROOT, "%.1f s", pull.duration());
    return pull.sweep()
        .map(s -> round(s.from()) + " to " + display.speed(10 / 60.0 * round6(s.to())))
        .map(s -> s + " in " + duration)
        .orElse(duration);
  }

  private String round(double speed) {
    return display.number(10 / 60.0 * round6(speed), Dimension.ROTATION, 0);
  }

  /** Tens of rpm: an end is not known better. */
  private static double round6(double speed) {
    return Math.rint(speed * 6);
  }

  /** Returns what the engine does in a wait. */
  static String engine(Wait wait) {
    return switch (wait.engine()) {
      case RUNNING -> "running";
      case OFF -> "off";
      case OFF_FOR_A_PART -> "off for " + Display.duration(wait.engineOff());
      case UNKNOWN -> "not logged";
    };
  }
}
