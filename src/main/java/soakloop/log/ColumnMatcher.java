package soakloop.log;

import java.util.List;
import java.util.Map;

/**
 * Settles which column is which signal and in what unit: first what the scenario says, then what
 * the headers say plainly, then what the values tell. What none of them settles is left unread,
 * with the reason.
 */
final class ColumnMatcher {
  private final Matching work;

  ColumnMatcher(Matching work) {
    this.work = work;
  }

  /** Returns what columns were taken for, by signal. */
  Map<Signal, Reading> match(int timeColumn) {
    ChosenReadings chosen = new ChosenReadings(work);
    work.chosen().indices().forEach(chosen::choose);
    NamedReadings named = new NamedReadings(work);
    for (int i = 0; i < work.size(); i++) {
      if (i != timeColumn && work.chosen().signal(i).isEmpty()) {
        named.name(i);
      }
    }
    TemperatureReadings temperatures = new TemperatureReadings(work);
    temperatures.units();
    new PressureReadings(work).tell();
    new PowerUnits(work).tell();
    new FlowUnits(work).tell();
    temperatures.places();
    for (int i : work.unsettled().keySet()) {
      if (work.reading(i) == null) {
        work.complain(i, work.remark(i));
      }
    }
    work.withoutUnit()
        .forEach(
            (i, signal) -> work.complain(i, UnitWords.noUnit(work.header(i), signal) + doubt(i)));
    implausible();
    return new Settlement(work).settle();
  }

  private String doubt(int i) {
    return work.doubt(i).isEmpty() ? "" : "; " + work.doubt(i);
  }

  /** Returns what a reader should know of what was settled and what was not. */
  List<Remark> said() {
    return work.said();
  }

  /** Returns why a column was not read. */
  String remark(int index) {
    return work.remark(index);
  }

  /** Returns what a reader must settle if nothing else can be read. */
  List<String> complaints() {
    return work.complaints();
  }

  /** Leaves out columns most of whose values cannot be. */
  private void implausible() {
    for (Reading r : work.readings()) {
      PlausibleRange range = PlausibleRange.of(r.signal());
      Stats s = work.stats(r.index()).in(r.unit());
      double middle = s.middle();
      if (s.count() > 0 && !range.contains(middle)) {
        work.drop(r.index());
        work.complain(
            r.index(),
            r.unit().format(middle, 1)
                + " "
                + r.unit().symbol()
                + ", as half of its values, is "
                + range.outside(middle, r.unit()));
      }
    }
  }
}
