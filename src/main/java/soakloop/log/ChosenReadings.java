package soakloop.log;

import java.util.Optional;
import soakloop.quantity.Unit;

/** Takes columns as the scenario says. */
final class ChosenReadings {
  private final Matching work;

  ChosenReadings(Matching work) {
    this.work = work;
  }

  /** Takes the column that the scenario names for a signal. */
  void choose(Signal signal, int i) {
    if (signal == Signal.TIME) {
      return;
    }
    Header header = work.header(i);
    work.remark(i, "named in the scenario");
    if (signal == Signal.BOOST && header.isAbsolutePressure()) {
      work.problems()
          .addColumn(header.text(), "is an absolute pressure; boost is gauge: name a gauge column");
      return;
    }
    Optional<Unit> unit =
        Optional.ofNullable(work.columns().chosen().get(signal)).flatMap(c -> c.unit());
    if (unit.isEmpty()) {
      chooseUnit(signal, i);
      return;
    }
    if (!signal.dimension().units().contains(unit.get())) {
      work.problems().addColumn(header.text(), UnitWords.wrongUnit(unit.get().symbol(), signal));
      return;
    }
    Optional<Unit> said = header.unit().flatMap(u -> LogUnits.find(signal.dimension(), u));
    if (said.isPresent() && !said.get().equals(unit.get())) {
      work.remark(
          i,
          "read in " + unit.get().symbol() + " as the scenario says, not " + said.get().symbol());
    }
    work.put(new Reading(i, signal, unit.get(), Confidence.SURE, work.remark(i)));
  }

  private void chooseUnit(Signal signal, int i) {
    Header header = work.header(i);
    Optional<Unit> unit = NamedReadings.saidUnit(header, signal);
    if (unit.isPresent()) {
      work.put(new Reading(i, signal, unit.get(), Confidence.SURE, work.remark(i)));
    } else if (header.unit().isPresent()) {
      work.problems().addColumn(header.text(), UnitWords.wrongUnit(header.unit().get(), signal));
    } else {
      Optional<Reading> guess = UnitGuess.of(i, signal, work.stats(i));
      if (guess.isPresent()) {
        work.put(guess.get().weaker(Confidence.SURE, work.remark(i)));
      } else {
        work.problems().addColumn(header.text(), UnitWords.noUnit(header, signal));
      }
    }
  }
}
