package soakloop.simulate;

import java.util.List;
import java.util.Optional;
import org.hipparchus.ode.ODEIntegrator;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Thermostat;
import soakloop.simulate.Trace.Event;

/** The car fan's thermostat: it feels the coolant entering the heat exchanger. */
final class FanSwitch {
  private final LoopModel model;
  private final Optional<Thermostat> thermostat;

  FanSwitch(LoopModel model) {
    this.model = model;
    this.thermostat = model.rig().airflow().thermostat();
  }

  /** Sets it as a car that stood at this temperature has it. */
  void set(double[] y) {
    thermostat.ifPresent(t -> model.switchFan(felt(y) > t.on()));
  }

  /** Switches for what the coolant did while the thermostat had no say. */
  void resume(double start, double[] y, List<Event> events) {
    if (!model.thermostatRules()) {
      return;
    }
    double felt = felt(y);
    if (felt > thermostat.orElseThrow().on() && !model.isFanSwitchedOn()) {
      switched(start, true, events);
    } else if (felt < thermostat.orElseThrow().off() && model.isFanSwitchedOn()) {
      switched(start, false, events);
    }
  }

  /** Lets an integrator find when it switches. */
  void watch(ODEIntegrator integrator, List<Event> events) {
    if (!model.thermostatRules()) {
      return;
    }
    Thermostat t = thermostat.orElseThrow();
    integrator.addEventDetector(
        new Crossing(
            y -> felt(y) - t.on(), (time, rising) -> rising && switched(time, true, events)));
    integrator.addEventDetector(
        new Crossing(
            y -> felt(y) - t.off(), (time, rising) -> !rising && switched(time, false, events)));
  }

  private boolean switched(double time, boolean on, List<Event> events) {
    model.switchFan(on);
    events.add(new Event(time, on ? Event.Kind.FAN_ON : Event.Kind.FAN_OFF));
    return true;
  }

  /** What it feels: coolant entering the heat exchanger, or the pump without one. */
  private double felt(double[] y) {
    int exchanger = model.first(HeatExchanger.class);
    return model.entering(exchanger < 0 ? model.pumpAt() : exchanger, y);
  }
}
