package soakloop.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Settles the one temperature of the loop's coolant that a log has, where its name says no place.
 * Core and reservoir are far apart in a pull, so it is read only as its course tells, and a remark
 * says how to settle it.
 */
final class LonePlace {
  private static final List<Signal> PLACES =
      List.of(Signal.CORE_COOLANT_IN, Signal.CORE_COOLANT_OUT, Signal.RESERVOIR);

  private final Matching work;
  private final Places.Taker taker;

  LonePlace(Matching work, Places.Taker taker) {
    this.work = work;
    this.taker = taker;
  }

  /**
   * Settles it, if there is one only.
   *
   * @param open columns in question, K
   */
  void settle(Map<Integer, Series> open, Sweeps sweeps) {
    List<Integer> loop = new ArrayList<>();
    open.forEach(
        (i, values) -> {
          if (work.reading(i) == null && isLoop(i, values)) {
            loop.add(i);
          }
        });
    boolean another = PLACES.stream().anyMatch(work.taken()::contains);
    if (loop.size() != 1 || another) {
      return;
    }
    int i = loop.get(0);
    Optional<LoopCoolant> found =
        Optional.ofNullable(open.get(i))
            .flatMap(values -> LoopCoolant.of(work.axis().time(), values, sweeps));
    if (found.isPresent()) {
      Signal signal = found.get().signal();
      boolean sure = signal == Signal.CORE_COOLANT_OUT && sweeps.spans().size() > 1;
      Confidence confidence = sure ? Confidence.LIKELY : Confidence.GUESSED;
      taker.take(i, signal, found.get().reason(), confidence);
      say(i, "is taken for " + signal.key() + ": " + found.get().reason() + "; if it is not");
    } else {
      String why = "it does not say where in the loop, and no pull tells";
      taker.take(i, null, why, Confidence.GUESSED);
      say(i, "is not read: " + why + "; to read it");
    }
  }

  private boolean isLoop(int i, Series values) {
    ColumnNames.Unsettled meaning = work.unsettled().get(i);
    if (meaning == null) {
      return false;
    }
    boolean otherThanEngine =
        meaning.signals().contains(Signal.ENGINE_COOLANT)
            && work.taken().contains(Signal.ENGINE_COOLANT)
            && Stats.of(values).high() < Places.HOT_LOOP;
    return otherThanEngine || meaning.signals().contains(Signal.RESERVOIR);
  }

  private void say(int i, String what) {
    String header = work.header(i).text();
    String keys =
        PLACES.stream()
            .map(s -> "`" + s.key() + ": \"" + header + "\"`")
            .collect(Collectors.joining(" or "));
    work.say(
        new Remark(
            Remark.Kind.COLUMNS,
            0,
            0,
            "column `" + header + "` " + what + ", write " + keys + " under log, columns"));
  }
}
