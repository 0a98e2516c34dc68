package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import soakloop.quantity.Dimension;
import soakloop.rig.Reservoir;
import soakloop.session.IceAdded;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Trace;
import soakloop.simulate.Trace.Event;
import soakloop.study.Outcome;

/**
 * What ice and chillers did, in sentences.
 *
 * @param outcome what they are about
 * @param display how numbers are shown
 */
record ColdSentences(Outcome outcome, Display display) {
  /** Returns all there is to say; nothing without ice and chillers. */
  List<String> all() {
    List<String> sentences = new ArrayList<>();
    EnergyLedger energy = outcome.trace().energy();
    if (IceLeft.hasSomething(outcome.trace())) {
      sentences.add(melting());
      sentences.add(
          "Ice and the water it has become take "
              + display.heat(energy.storedIce())
              + " out of the rest.");
    }
    if (energy.toChiller() > 0) {
      sentences.add(chiller(energy));
    }
    return sentences;
  }

  private String melting() {
    Trace trace = outcome.trace();
    List<String> gone =
        trace.events().stream()
            .filter(e -> e.kind() == Event.Kind.ICE_GONE)
            .map(this::moment)
            .toList();
    double left = trace.value(Channel.ICE_LEFT, trace.size() - 1);
    String rest = mass(left) + " of what went in later are left";
    if (gone.isEmpty()) {
      return mass(left) + " of the " + mass(putIn()) + " of ice are left at the end.";
    }
    String all = "The ice is gone " + String.join(", ", gone.subList(0, gone.size() - 1));
    all += (gone.size() > 1 ? " and " : "") + gone.get(gone.size() - 1);
    return left > 0 ? all + "; " + rest + " at the end." : all + ".";
  }

  private String moment(Event event) {
    Trace.Span span =
        outcome.trace().spans().stream()
            .filter(s -> event.time() <= s.end())
            .findFirst()
            .orElseThrow();
    String name = span.phase().name();
    boolean clear =
        outcome.trace().spans().stream().filter(s -> s.phase().name().equals(name)).count() == 1;
    return Display.duration(event.time() - span.start())
        + " into "
        + name
        + (clear ? "" : " (at " + Display.clock(event.time()) + ")");
  }

  private double putIn() {
    double atStart =
        outcome.scenario().rig().loop().pieces().stream()
            .filter(Reservoir.class::isInstance)
            .map(Reservoir.class::cast)
            .flatMap(tank -> tank.ice().stream())
            .mapToDouble(ice -> ice.mass())
            .sum();
    return atStart
        + outcome.scenario().session().phases().stream()
            .flatMap(phase -> phase.ice().stream())
            .collect(Collectors.summingDouble(IceAdded::mass));
  }

  private String chiller(EnergyLedger energy) {
    Trace trace = outcome.trace();
    double drawn = 0;
    for (int i = 1; i < trace.size(); i++) {
      drawn = Math.max(drawn, trace.value(Channel.CHILLER_POWER, i));
    }
    return "The chiller takes "
        + display.heat(energy.toChiller())
        + " out of the coolant and draws up to "
        + display.show(drawn, Dimension.POWER, 1)
        + " for it.";
  }

  private String mass(double kilograms) {
    return display.show(kilograms, Dimension.MASS, 1);
  }
}
