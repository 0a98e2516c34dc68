package soakloop.study;

import java.util.Locale;
import java.util.Optional;
import soakloop.fluid.MoistAir;
import soakloop.quantity.Dimension;
import soakloop.rig.Day;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/** What happens to the charge air in the core beside being cooled: pressure lost, water left. */
final class CoreAirWarnings {
  /** Loss that the trade calls poor, 3 psi, Pa (common practice, no source). */
  private static final double POOR = 20.7e3;

  /** Less water than this is not worth telling, kg. */
  private static final double DROPS = 0.5e-3;

  private CoreAirWarnings() {}

  /** Returns a warning if the core takes more pressure than anyone would accept. */
  static Optional<Warning> loss(Scenario scenario, Trace trace) {
    double most = 0;
    for (int i = 0; i < trace.size(); i++) {
      double loss = trace.value(Channel.CORE_LOSS, i);
      most = Double.isFinite(loss) ? Math.max(most, loss) : most;
    }
    return most > POOR
        ? Optional.of(
            new Warning(
                Warning.Kind.CORE_LOSS,
                String.format(
                    Locale.ROOT,
                    "the core takes up to %s of the boost; under %s is good and %s or more is poor,"
                        + " so check its fins and its face",
                    scenario.units().show(most, Dimension.PRESSURE_DIFFERENCE, 1),
                    scenario.units().show(POOR / 3, Dimension.PRESSURE_DIFFERENCE, 0),
                    scenario.units().show(POOR, Dimension.PRESSURE_DIFFERENCE, 0))))
        : Optional.empty();
  }

  /** Returns a warning if water condenses in the core. */
  static Optional<Warning> water(Scenario scenario, Trace trace) {
    double water = 0;
    int wettest = 0;
    for (int i = 1; i < trace.size(); i++) {
      double now = trace.value(Channel.CONDENSATE, i);
      water +=
          0.5
              * (now + trace.value(Channel.CONDENSATE, i - 1))
              * (trace.time(i) - trace.time(i - 1));
      wettest = now > trace.value(Channel.CONDENSATE, wettest) ? i : wettest;
    }
    if (water < DROPS) {
      return Optional.empty();
    }
    Day day = scenario.day();
    double pressure = day.pressure() + trace.value(Channel.BOOST, wettest);
    double dewPoint =
        MoistAir.of(day.temperature(), day.pressure(), day.humidity()).dewPoint(pressure);
    return Optional.of(
        new Warning(
            Warning.Kind.CONDENSATION,
            String.format(
                Locale.ROOT,
                "%s of water condenses in the core: its metal is at %s where the compressed air's"
                    + " dew point is %s; its heat is counted, but the water is not followed into the"
                    + " engine, and it does not freeze",
                scenario.units().show(water, Dimension.MASS, 3),
                scenario
                    .units()
                    .show(trace.value(Channel.CORE_METAL, wettest), Dimension.TEMPERATURE, 0),
                scenario.units().show(dewPoint, Dimension.TEMPERATURE, 0))));
  }
}
