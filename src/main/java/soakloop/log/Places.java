package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Tells by its course where in the car a temperature is taken, if its name leaves that open. In a
 * pull the air before the core jumps by tens of degrees, the charge after it rises by some, and the
 * inlet air hardly moves; coolant leaving the core is warmer than coolant entering it; a warm
 * engine's coolant is hotter than the loop's ever is. Bounds are common practice, no source.
 */
final class Places {
  private static final double JUMPS = 60;
  private static final double RISES = 5;
  private static final double STAYS = 2.5;
  private static final double WARM_ENGINE = 273.15 + 72;

  /** No loop's coolant is as hot, K. */
  static final double HOT_LOOP = 273.15 + 66;

  private static final double TOO_HOT = 273.15 + 125;
  private static final double APART = 0.3;

  private final TimeAxis axis;
  private final Sweeps sweeps;
  private final Taker taker;

  /** Takes what was found of a column. */
  interface Taker {
    /** A signal, or nothing, the reason and how sure it is. */
    void take(int column, @Nullable Signal signal, String reason, Confidence confidence);
  }

  Places(TimeAxis axis, Sweeps sweeps, Taker taker) {
    this.axis = axis;
    this.sweeps = sweeps;
    this.taker = taker;
  }

  /**
   * Settles what can be settled.
   *
   * @param open the columns in question, K
   * @param meanings what their names leave open
   * @param taken signals that other columns have
   */
  void settle(
      Map<Integer, Series> open,
      Map<Integer, ColumnNames.Unsettled> meanings,
      List<Header> headers,
      Set<Signal> taken) {
    List<Integer> ins = new ArrayList<>();
    List<Integer> outs = new ArrayList<>();
    for (var entry : open.entrySet()) {
      int i = entry.getKey();
      ColumnNames.Unsettled meaning = meanings.get(i);
      if (meaning == null || meaning.signals().contains(Signal.RESERVOIR)) {
        continue;
      }
      if (meaning.signals().contains(Signal.CHARGE_TEMPERATURE)) {
        air(i, entry.getValue(), meaning, taken);
      } else if (meaning.signals().contains(Signal.ENGINE_COOLANT)) {
        coolant(i, entry.getValue(), taken);
      } else if (meaning.signals().contains(Signal.CORE_COOLANT_IN)) {
        boolean out = headers.get(i).name().toLowerCase(Locale.ROOT).contains("out");
        (out ? outs : ins).add(i);
      }
    }
    if (ins.size() == 1 && outs.size() == 1) {
      pair(ins.get(0), outs.get(0), open, taken);
    }
  }

  private void air(int i, Series values, ColumnNames.Unsettled meaning, Set<Signal> taken) {
    double rise = sweeps.rise(axis.time(), values);
    if (Double.isNaN(rise)) {
      return;
    }
    String said = String.format(Locale.ROOT, "it rises by %.0f K as the engine speeds up, ", rise);
    if (rise >= JUMPS) {
      take(i, Signal.CORE_AIR_IN, said + "as air before the core does", taken, bySweeps());
    } else if (rise >= RISES && rise < JUMPS / 2) {
      take(
          i,
          Signal.CHARGE_TEMPERATURE,
          said + "as the charge after the core does",
          taken,
          bySweeps());
    } else if (rise <= STAYS && meaning.signals().contains(Signal.INLET_AIR)) {
      take(i, Signal.INLET_AIR, said + "as only inlet air does", taken, bySweeps());
    } else {
      taker.take(
          i, null, meaning.why() + ": " + said + "which settles nothing", Confidence.GUESSED);
    }
  }

  private void coolant(int i, Series values, Set<Signal> taken) {
    Stats stats = Stats.of(values);
    String said = String.format(Locale.ROOT, "it stands at %.0f degC, ", stats.middle() - 273.15);
    if (stats.middle() > WARM_ENGINE && stats.middle() < TOO_HOT) {
      take(i, Signal.ENGINE_COOLANT, said + "as a warm engine's does", taken, Confidence.LIKELY);
    } else if (stats.count() > 0 && stats.high() < HOT_LOOP) {
      taker.take(
          i,
          null,
          said + "so it may be the loop's, but does not say where in it",
          Confidence.GUESSED);
    }
  }

  /**
   * Coolant in and out of something: of the core if it leaves warmer, else of the heat exchanger.
   */
  private void pair(int in, int out, Map<Integer, Series> open, Set<Signal> taken) {
    Series entering = open.get(in);
    Series leaving = open.get(out);
    if (entering == null
        || leaving == null
        || Stats.of(entering).high() > HOT_LOOP
        || Stats.of(leaving).high() > HOT_LOOP) {
      return;
    }
    double warmer = sweeps.difference(leaving, entering);
    if (warmer > APART) {
      String reason = "it is where coolant leaves warmer than it enters in a pull: the core";
      take(in, Signal.CORE_COOLANT_IN, reason, taken, bySweeps());
      take(out, Signal.CORE_COOLANT_OUT, reason, taken, bySweeps());
    } else if (warmer < -APART) {
      String reason =
          "coolant leaves colder than it enters in a pull: in and out are the heat exchanger's";
      take(in, Signal.CORE_COOLANT_OUT, reason, taken, bySweeps());
      take(out, Signal.CORE_COOLANT_IN, reason, taken, bySweeps());
    }
  }

  /** What one sweep tells could be chance. */
  private Confidence bySweeps() {
    return sweeps.spans().size() > 1 ? Confidence.LIKELY : Confidence.GUESSED;
  }

  private void take(int i, Signal signal, String reason, Set<Signal> taken, Confidence confidence) {
    if (taken.contains(signal)) {
      taker.take(i, null, reason + ", but another column is taken for " + signal.key(), confidence);
    } else {
      taken.add(signal);
      taker.take(i, signal, reason, confidence);
    }
  }
}
