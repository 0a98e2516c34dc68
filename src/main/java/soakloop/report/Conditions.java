package soakloop.report;

import java.util.ArrayList;
import java.util.List;
import soakloop.quantity.Dimension;
import soakloop.rig.Airflow;
import soakloop.rig.Chiller;
import soakloop.session.Cooling;
import soakloop.session.Drive;
import soakloop.session.Phase;
import soakloop.session.Start;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;

/**
 * What a run was made under: the day, the start, the session.
 *
 * @param outcome what it is about
 * @param display how numbers are shown
 */
record Conditions(Outcome outcome, Display display) {
  /** Most comment lines of a log that are repeated. */
  private static final int NOTES = 6;

  /** Returns day, start and limit, one line each. */
  List<String> lines() {
    var scenario = outcome.scenario();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Day: "
            + display.temperature(scenario.day().temperature())
            + ", barometer "
            + display.show(scenario.day().pressure(), Dimension.ABSOLUTE_PRESSURE, 1)
            + ", humidity "
            + display.show(scenario.day().humidity(), Dimension.FRACTION, 0));
    if (scenario.rig().boost().isEmpty()) {
      lines.add("Boost: from pulleys, as displacements, drive and charge temperature make it");
    }
    Start start = scenario.start();
    StringBuilder line = new StringBuilder("Start: ");
    start
        .charge()
        .ifPresent(t -> line.append("charge ").append(display.temperature(t)).append(", "));
    start
        .loopCoolant()
        .ifPresent(t -> line.append("loop coolant ").append(display.temperature(t)).append(", "));
    lines.add(line + "engine coolant " + display.temperature(start.engineCoolant()));
    scenario
        .limits()
        .chargeTemperature()
        .ifPresent(t -> lines.add("Limit: charge temperature " + display.temperature(t)));
    scenario
        .logged()
        .ifPresent(
            l -> {
              lines.add("Log: " + l.log().name());
              lines.addAll(
                  l.log().notes().stream().limit(NOTES).map(n -> "Log says: " + n).toList());
            });
    return lines;
  }

  /** Returns the phases as they ran. */
  Table session() {
    List<List<String>> rows = new ArrayList<>();
    for (Trace.Span span : outcome.trace().spans()) {
      Phase phase = span.phase();
      rows.add(
          List.of(
              phase.name(),
              Display.clock(span.start()),
              Display.duration(span.end() - span.start()),
              engine(phase),
              cooling(phase)));
    }
    return new Table(List.of("Phase", "From [min:s]", "Lasts", "Engine", "Cooling"), rows, 1, 2);
  }

  private String engine(Phase phase) {
    Drive drive = phase.drive();
    if (drive instanceof Drive.Idle idle) {
      return "idles at " + display.speed(idle.engineSpeed());
    }
    if (drive instanceof Drive.FullLoad full) {
      return "full load, "
          + display.number(full.engineSpeed().at(0), Dimension.ROTATION, 0)
          + " to "
          + display.speed(full.engineSpeed().at(phase.duration()));
    }
    if (drive instanceof Drive.Pass pass) {
      return "full load, to "
          + display.show(pass.course().endSpeed(), Dimension.SPEED, 0)
          + (pass.course().measured() ? " as measured" : "");
    }
    if (drive instanceof Drive.Coast coast) {
      return "throttle closed, "
          + display.number(coast.roadSpeed().at(0), Dimension.SPEED, 0)
          + " to "
          + display.show(coast.roadSpeed().at(phase.duration()), Dimension.SPEED, 0);
    }
    if (drive instanceof Drive.Cruise cruise) {
      return "cruises at "
          + display.show(cruise.roadSpeed(), Dimension.SPEED, 0)
          + ", "
          + display.speed(cruise.engineSpeed());
    }
    return drive instanceof Drive.Replay ? "as logged" : "off";
  }

  /** Returns what cools, leaving out fans that the car or the shop does not have. */
  private String cooling(Phase phase) {
    Cooling cooling = phase.cooling();
    Airflow airflow = outcome.scenario().rig().airflow();
    StringBuilder text = new StringBuilder(cooling.pump() ? "pump on" : "pump off");
    if (airflow.face().hasShopFan()) {
      text.append(cooling.shopFan() ? ", shop fan on" : ", shop fan off");
    }
    if (airflow.face().hasCarFan()) {
      text.append(
          switch (cooling.carFan()) {
            case ON -> ", car fan on";
            case OFF -> ", car fan off";
            case AUTO -> ", car fan automatic";
          });
    }
    if (outcome.scenario().rig().loop().pieces().stream().anyMatch(Chiller.class::isInstance)) {
      text.append(cooling.chiller() ? ", chiller on" : ", chiller off");
    }
    if (cooling.openHood()) {
      text.append(", hood open");
    }
    phase
        .ice()
        .ifPresent(
            ice ->
                text.append(", ")
                    .append(display.show(ice.mass(), Dimension.MASS, 1))
                    .append(ice.drains() ? " of ice in place of melted water" : " of ice added"));
    return text.toString();
  }
}
