package soakloop.simulate;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.ode.ODEIntegrator;
import soakloop.quantity.Dimension;
import soakloop.quantity.UnitSystem;
import soakloop.rig.LoopElement;
import soakloop.rig.Reservoir;
import soakloop.session.IceAdded;
import soakloop.session.Phase;
import soakloop.simulate.Trace.Event;

/** Puts ice into the tank as the session says, and notes when it is gone. */
final class Icing {
  /** Cold water, kg/m3. */
  private static final double WATER = 1000;

  private final Optional<TankCells> tank;
  private final Optional<Reservoir> reservoir;
  private boolean begun;

  Icing(LoopModel model) {
    this.tank = model.iced();
    this.reservoir = model.rig().loop().pieces().stream().flatMap(Icing::iced).findFirst();
  }

  private static java.util.stream.Stream<Reservoir> iced(LoopElement piece) {
    return piece instanceof Reservoir r && r.ice().isPresent()
        ? java.util.stream.Stream.of(r)
        : java.util.stream.Stream.empty();
  }

  /**
   * Puts in what goes in as a phase begins: the ice of the start at time zero, then what waits add.
   *
   * @param y the state, which takes it up
   * @throws SimulationException if the tank runs over
   */
  void begin(Phase phase, double[] y) throws SimulationException {
    if (tank.isEmpty() || phase.kind() == Phase.Kind.SETTLE) {
      return;
    }
    IceInTank ice = tank.get().ice().orElseThrow();
    if (!begun) {
      begun = true;
      put(new IceAdded(ice.kind().mass(), false), "at the start", ice, y);
    }
    if (phase.ice().isPresent()) {
      put(phase.ice().get(), phase.name(), ice, y);
    }
  }

  private void put(IceAdded more, String when, IceInTank ice, double[] y)
      throws SimulationException {
    ice.add(more, tank.orElseThrow().top(y), y);
    Reservoir into = reservoir.orElseThrow();
    // Ice that floats takes up as much room as the water it becomes.
    double level = into.coolantVolume() + ice.added() / WATER;
    if (level > ice.kind().room()) {
      throw SimulationException.input(
          String.format(
              Locale.ROOT,
              "%s.ice (%s): the tank would run over: %s of coolant and %s of ice and water of"
                  + " earlier ice need %s, it holds %s; fill it less, add less or drain it first",
              into.name(),
              when,
              volume(into.coolantVolume()),
              both(ice.added(), Dimension.MASS),
              volume(level),
              volume(ice.kind().room())));
    }
  }

  /**
   * What is to be known of the ice so far.
   *
   * @param begun whether the ice of the start is in
   * @param ice of the tank, if it ever has any
   */
  record Memory(boolean begun, Optional<IceInTank.Memory> ice) {}

  Memory memory() {
    return new Memory(begun, tank.map(t -> t.ice().orElseThrow().memory()));
  }

  void recall(Memory memory) {
    begun = memory.begun();
    memory.ice().ifPresent(m -> tank.orElseThrow().ice().orElseThrow().recall(m));
  }

  private static String volume(double cubicMetres) {
    return both(cubicMetres, Dimension.VOLUME);
  }

  private static String both(double value, Dimension dimension) {
    return UnitSystem.METRIC.show(value, dimension, 1)
        + " ("
        + UnitSystem.US.show(value, dimension, 1)
        + ")";
  }

  /** Lets an integrator find when the ice is gone. */
  void watch(ODEIntegrator integrator, List<Event> events) {
    if (tank.isEmpty() || !tank.get().ice().orElseThrow().isThere()) {
      return;
    }
    IceInTank ice = tank.get().ice().orElseThrow();
    integrator.addEventDetector(
        new Crossing(
            // Once gone it stays so: rounding about zero must not bring it back.
            y -> ice.isThere() ? y[ice.size()] : -1,
            (time, rising) -> {
              if (!rising) {
                ice.setGone();
                events.add(new Event(time, Event.Kind.ICE_GONE));
              }
              return !rising;
            }));
  }
}
