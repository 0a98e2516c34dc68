package soakloop.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.rig.Rig;
import soakloop.session.IceAdded;
import soakloop.session.Phase;
import soakloop.simulate.CarState;
import soakloop.simulate.Channel;
import soakloop.simulate.Simulation;
import soakloop.simulate.SimulationException;
import soakloop.simulate.Stretch;
import soakloop.simulate.Trace;

/** A car that waited once in one way, so that it can be found as it stood at any time of it. */
final class KeptWait {
  /** Times closer than this are the same, s. */
  private static final double SAME = 1e-6;

  private final Simulation car;
  private final Rig rig;
  private final Way way;
  private final boolean drains;
  private final double start;
  private final List<Place> places = new ArrayList<>();

  /** A state, and whether ice goes in as the wait goes on from it. */
  private record Place(CarState state, boolean ices) {}

  /**
   * Waits.
   *
   * @param from where the car stands
   * @param drains whether the water of earlier ice is drained off before ice goes in
   * @param times at which its state is kept, s from there, rising from 0
   * @param iceBelow reservoir temperature at which ice goes in, if the way has any, K
   * @throws SimulationException if the car cannot
   */
  KeptWait(
      Simulation car,
      Rig rig,
      Way way,
      boolean drains,
      CarState from,
      double[] times,
      double iceBelow)
      throws SimulationException {
    this.car = car;
    this.rig = rig;
    this.way = way;
    this.drains = drains;
    this.start = from.time();
    places.add(new Place(from, false));
    Stretch plain = waited(places.get(0), times);
    plain.kept().forEach(state -> places.add(new Place(state, false)));
    if (way.ice() > 0) {
      OptionalDouble cold = coldAt(plain.trace(), start + Way.HANDLING, iceBelow);
      if (cold.isPresent()) {
        ice(cold.getAsDouble() - start, times);
      }
    }
  }

  /** Goes on from when the ice goes in, and forgets what would have been without it. */
  private void ice(double at, double[] times) throws SimulationException {
    Place iced = new Place(at(at), true);
    places.removeIf(p -> p.state().time() > start + at - SAME);
    places.add(iced);
    double[] later = Arrays.stream(times).filter(t -> t > at + SAME).toArray();
    if (later.length > 0) {
      waited(iced, later).kept().forEach(state -> places.add(new Place(state, false)));
    }
  }

  /** Returns when the reservoir is first cold enough from a time on, s; empty if it never is. */
  private static OptionalDouble coldAt(Trace trace, double from, double below) {
    double end = trace.time(trace.size() - 1);
    if (end < from || trace.at(Channel.RESERVOIR, from) <= below) {
      return end < from ? OptionalDouble.empty() : OptionalDouble.of(from);
    }
    for (int i = trace.firstFrom(from) + 1; i < trace.size(); i++) {
      double now = trace.value(Channel.RESERVOIR, i);
      if (now <= below) {
        double before = trace.value(Channel.RESERVOIR, i - 1);
        double share = (before - below) / (before - now);
        return OptionalDouble.of(trace.time(i - 1) + share * (trace.time(i) - trace.time(i - 1)));
      }
    }
    return OptionalDouble.empty();
  }

  private Stretch waited(Place from, double[] times) throws SimulationException {
    double[] at = Arrays.stream(times).map(t -> start + t).toArray();
    double seconds = Math.max(at[at.length - 1] - from.state().time(), SAME);
    Optional<IceAdded> ice =
        from.ices() ? Optional.of(new IceAdded(way.ice(), drains)) : Optional.empty();
    Phase wait =
        new Phase(
            "wait",
            Phase.Kind.WAIT,
            seconds,
            way.drive(rig),
            way.cooling(),
            OptionalDouble.empty(),
            ice);
    return car.runOn(from.state(), List.of(wait), Running.WAIT, at);
  }

  /**
   * Returns the car as it stands after some time.
   *
   * @param time s from the start, up to the last that was kept
   * @throws SimulationException if it cannot be run there
   */
  CarState at(double time) throws SimulationException {
    Place before = places.get(0);
    for (Place place : places) {
      if (place.state().time() <= start + time + SAME) {
        before = place;
      }
    }
    boolean there = start + time - before.state().time() <= SAME && !before.ices();
    return there ? before.state() : waited(before, new double[] {time}).kept().get(0);
  }

  /** Returns when ice went in, s from the start; empty if none did. */
  OptionalDouble icedAt() {
    return places.stream()
        .filter(Place::ices)
        .mapToDouble(p -> p.state().time() - start)
        .findFirst();
  }
}
