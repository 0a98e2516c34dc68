package soakloop.log;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Leaves one column to each signal, or none where it cannot be told which. */
final class Settlement {
  private final Matching work;

  Settlement(Matching work) {
    this.work = work;
  }

  /** Returns the columns left, by signal. */
  Map<Signal, Reading> settle() {
    Map<Signal, List<Reading>> bySignal = new EnumMap<>(Signal.class);
    work.readings()
        .forEach(r -> bySignal.computeIfAbsent(r.signal(), s -> new ArrayList<>()).add(r));
    Map<Signal, Reading> settled = new EnumMap<>(Signal.class);
    bySignal.forEach(
        (signal, list) -> {
          Optional<Reading> one = one(list);
          if (one.isPresent()) {
            settled.put(signal, one.get());
            work.remark(one.get().index(), one.get().reason());
            String name = work.header(one.get().index()).text();
            for (Reading other : list) {
              if (other.index() != one.get().index()) {
                work.remark(other.index(), "`" + name + "` is taken for " + signal.key());
              }
            }
          } else {
            several(signal, list);
          }
        });
    return settled;
  }

  private Optional<Reading> one(List<Reading> list) {
    if (list.size() == 1) {
      return Optional.of(list.get(0));
    }
    List<Reading> sure = list.stream().filter(r -> r.confidence() == Confidence.SURE).toList();
    if (sure.size() == 1) {
      return Optional.of(sure.get(0));
    }
    return sameValues(list) ? Optional.of(list.get(0)) : Optional.empty();
  }

  private boolean sameValues(List<Reading> list) {
    Optional<Series> first = work.si(list.get(0));
    for (Reading other : list.subList(1, list.size())) {
      Optional<Series> second = work.si(other);
      if (first.isEmpty() || second.isEmpty()) {
        return false;
      }
      for (int i = 0; i < first.get().size(); i++) {
        double a = first.get().at(i);
        double b = second.get().at(i);
        if (Double.compare(a, b) != 0 && !(Math.abs(a - b) <= 1e-9 * Math.abs(a))) {
          return false;
        }
      }
    }
    return true;
  }

  private void several(Signal signal, Collection<Reading> list) {
    String what =
        "has "
            + list.size()
            + " columns for "
            + signal.key()
            + ": "
            + list.stream()
                .map(r -> "`" + work.header(r.index()).text() + "`")
                .collect(Collectors.joining(", "))
            + "; write `"
            + signal.key()
            + ": \"...\"` in the scenario under log, columns, to choose one";
    work.complaints().add(what);
    list.forEach(r -> work.remark(r.index(), "the file " + what));
  }
}
