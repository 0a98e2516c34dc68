package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Looks for a file's faults of time, puts right what can be and says what it did. */
final class TimeAxisMaker {
  /** Share of rows with their predecessor's time above which stamps are rounded ones. */
  private static final double ROUNDED = 0.2;

  /** Pause put between two runs of one file, s; the true one is not known. */
  static final double PAUSE = 60;

  /** A gap is so many usual steps, and at least as long as the next. */
  private static final double GAP_STEPS = 5;

  private static final int MOST_REMARKS = 20;

  private final Series raw;
  private final Series lines;
  private final int n;
  private final List<Remark> remarks = new ArrayList<>();
  private final TimeSurvey survey;
  private final boolean reversed;
  private final PackedColumn.Builder time = new PackedColumn.Builder();
  private final PackedColumn.Builder kept = new PackedColumn.Builder();
  private double offset;
  private double lastRaw = Double.NaN;
  private double lastOut = Double.NEGATIVE_INFINITY;
  private final RowCount repeats = new RowCount();
  private final RowCount backs = new RowCount();

  TimeAxisMaker(Series raw, Series lines) {
    this.raw = raw;
    this.lines = lines;
    this.n = raw.size();
    this.survey = TimeSurvey.of(raw);
    this.reversed = !survey.isRising() && survey.isReversed();
  }

  TimeAxis make() {
    TimeAxis axis;
    if (survey.isRising()) {
      axis = new TimeAxis(raw, Optional.empty(), remarks);
    } else {
      noteMissing();
      if (reversed) {
        remarks.add(
            new Remark(
                Remark.Kind.TIME_FALLS,
                line(0),
                line(n - 1),
                "time falls from row to row: the file is read from its end"));
      }
      if (survey.equalShare() > ROUNDED) {
        spread();
      } else {
        keepRising();
      }
      axis = new TimeAxis(time.build(), Optional.of(kept.build()), remarks);
    }
    remarks.addAll(TimeGaps.of(axis, lines, survey.step()));
    return new TimeAxis(axis.time(), axis.rows(), List.copyOf(remarks));
  }

  private void noteMissing() {
    if (survey.missing() == 0) {
      return;
    }
    long first = line(survey.firstMissing());
    String text =
        survey.missing() == 1
            ? "row " + first + " has no time; left out"
            : survey.missing() + " rows, the first row " + first + ", have no time; left out";
    remarks.add(new Remark(Remark.Kind.ROWS, first, line(survey.lastMissing()), text));
  }

  private double at(int i) {
    return raw.at(reversed ? n - 1 - i : i);
  }

  private int row(int i) {
    return reversed ? n - 1 - i : i;
  }

  private long line(int row) {
    return (long) lines.at(row);
  }

  private void keepRising() {
    for (int i = 0; i < n; i++) {
      double t = at(i);
      if (Double.isNaN(t)) {
        continue;
      }
      if (t < lastRaw && restarts(i)) {
        restart(i, t);
      }
      if (t > lastRaw || Double.isNaN(lastRaw)) {
        put(i, t + offset);
        lastRaw = t;
      } else if (t == lastRaw) {
        repeats.add(line(row(i)));
      } else {
        backs.add(line(row(i)));
      }
    }
    repeats
        .remark(
            Remark.Kind.TIME_REPEATS,
            "has the time of the row before",
            "have the time of the row before")
        .ifPresent(remarks::add);
    backs
        .remark(Remark.Kind.TIME_FALLS, "goes back in time", "go back in time")
        .ifPresent(remarks::add);
  }

  /** Whether the rows that follow stay below the last time too. */
  private boolean restarts(int i) {
    int below = 0;
    int seen = 0;
    for (int k = i + 1; k < n && seen < 3; k++) {
      double t = at(k);
      if (!Double.isNaN(t)) {
        seen++;
        below += t < lastRaw && t >= at(i) ? 1 : 0;
      }
    }
    return seen > 0 && below == seen;
  }

  private void restart(int i, double t) {
    offset = lastOut + PAUSE - t;
    lastRaw = Double.NaN;
    if (remarks.size() < MOST_REMARKS) {
      remarks.add(
          new Remark(
              Remark.Kind.TIME_RESTARTS,
              line(row(i)),
              line(row(i)),
              String.format(
                  Locale.ROOT,
                  "row %d: time begins again; what follows is put %.0f s behind what was, the"
                      + " true pause is not known",
                  line(row(i)),
                  PAUSE)));
    }
  }

  private void put(int i, double t) {
    if (t > lastOut) {
      time.add(t);
      kept.add(row(i), 0);
      lastOut = t;
    }
  }

  /** Spreads rows of one rounded stamp evenly up to the next stamp. */
  private void spread() {
    double step = survey.step();
    double usual = survey.spreadStep();
    long spread = 0;
    int i = 0;
    boolean first = true;
    while (i < n) {
      if (Double.isNaN(at(i))) {
        i++;
        continue;
      }
      double t = at(i);
      int end = i + 1;
      int rows = 1;
      while (end < n && !(at(end) != t && !Double.isNaN(at(end)))) {
        rows += Double.isNaN(at(end)) ? 0 : 1;
        end++;
      }
      if (t < lastRaw && end < n && at(end) < lastRaw) {
        restart(i, t);
        first = true;
      }
      double width = end < n ? at(end) - t : Double.NaN;
      boolean whole = width > 0 && width < GAP_STEPS * step;
      double each = whole ? width / rows : usual;
      if ((first || !whole) && rows < 0.75 * step / usual) {
        each = Math.min(each, usual);
      }
      double start = first && whole ? t + width - rows * each : t;
      int k = 0;
      for (int j = i; j < end; j++) {
        if (!Double.isNaN(at(j))) {
          put(j, start + offset + k++ * each);
        }
      }
      spread += rows > 1 ? rows : 0;
      lastRaw = t;
      first = false;
      i = end;
    }
    remarks.add(
        new Remark(
            Remark.Kind.TIME_REPEATS,
            line(0),
            line(n - 1),
            String.format(
                Locale.ROOT,
                "times are rounded to %s s: %d rows share theirs with a neighbour and are spread"
                    + " evenly, %s s apart",
                shortest(step),
                spread,
                shortest(usual))));
  }

  private static String shortest(double seconds) {
    return String.format(Locale.ROOT, "%.3g", seconds)
        .replaceFirst("(\\.\\d*?)0+$", "$1")
        .replaceFirst("\\.$", "");
  }
}
