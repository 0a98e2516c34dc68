package soakloop.study;

import java.util.Locale;
import java.util.Optional;
import soakloop.fluid.Air;
import soakloop.quantity.Dimension;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.simulate.Warning;

/**
 * Holds the air that the blower moves against what the engine swallows at the stated boost and the
 * modelled charge temperature. Boost is stated, not computed, so the two can disagree; overlap of
 * the valves and leakage explain some of it, a wrong pulley or displacement the rest.
 */
final class AirBalance {
  private static final double FEW = 0.6;
  private static final double MANY = 1.5;

  /** More than this nobody drives with a blower alone, Pa (common practice, no source). */
  private static final double MOST_BOOST = 250e3;

  private AirBalance() {}

  /** Returns a warning for the pull whose balance is worst, if it is far off. */
  static Optional<Warning> of(Scenario scenario, Trace trace) {
    if (scenario.rig().boost().isEmpty()) {
      return ofPulleys(scenario, trace);
    }
    double worst = 1;
    Optional<Trace.Span> at = Optional.empty();
    for (Trace.Span pull : trace.pulls()) {
      if (pull.phase().drive().isFullLoad()) {
        double ratio = ratio(scenario, trace, pull.countedAt() - 1e-6);
        if (Math.abs(Math.log(ratio)) > Math.abs(Math.log(worst))) {
          worst = ratio;
          at = Optional.of(pull);
        }
      }
    }
    double ratio = worst;
    return at.filter(pull -> ratio < FEW || ratio > MANY)
        .map(pull -> warning(scenario, trace, pull, ratio));
  }

  /** Boost that blower and engine make is looked at for whether anyone would drive it. */
  private static Optional<Warning> ofPulleys(Scenario scenario, Trace trace) {
    for (Trace.Span pull : trace.pulls()) {
      double time = pull.countedAt() - 1e-6;
      double boost = trace.at(Channel.BOOST, time);
      if (pull.phase().drive().isFullLoad() && !(boost > 0 && boost < MOST_BOOST)) {
        return Optional.of(
            new Warning(
                Warning.Kind.AIR_AGAINST_BOOST,
                String.format(
                    Locale.ROOT,
                    "%s: displacements and drive make a boost of %s at %s; check them, or state the"
                        + " boost",
                    pull.phase().name(),
                    scenario.units().show(boost, Dimension.GAUGE_PRESSURE, 0),
                    scenario
                        .units()
                        .show(trace.at(Channel.ENGINE_SPEED, time), Dimension.ROTATION, 0))));
      }
    }
    return Optional.empty();
  }

  private static double ratio(Scenario scenario, Trace trace, double time) {
    double density =
        (scenario.day().pressure() + trace.at(Channel.BOOST, time))
            / (Air.GAS_CONSTANT * trace.at(Channel.CHARGE, time));
    double swallowed =
        scenario.rig().engine().swallowedVolume(trace.at(Channel.ENGINE_SPEED, time)) * density;
    return trace.at(Channel.AIR_MASS_FLOW, time) / swallowed;
  }

  private static Warning warning(Scenario scenario, Trace trace, Trace.Span pull, double ratio) {
    double time = pull.countedAt() - 1e-6;
    return new Warning(
        Warning.Kind.AIR_AGAINST_BOOST,
        String.format(
            Locale.ROOT,
            "%s: the blower moves %s at %s, %.1f times what the engine would swallow at the stated"
                + " boost; check displacements, drive ratio and boost",
            pull.phase().name(),
            scenario.units().show(trace.at(Channel.AIR_MASS_FLOW, time), Dimension.MASS_FLOW, 0),
            scenario.units().show(trace.at(Channel.ENGINE_SPEED, time), Dimension.ROTATION, 0),
            ratio));
  }
}
