package soakloop.report;

import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.PullResult;

/**
 * What made a later pull end warmer or cooler than an earlier one.
 *
 * @param creep change of the sensor at the counted end, K
 * @param coolant change of the coolant entering the core at the counted end, K
 * @param plenum change of the plenum metal there, K
 */
record Cause(double creep, double coolant, double plenum) {
  /** Change that is not worth a cause, K. */
  private static final double SMALL = 1;

  /** Share of the change above which something is most of it. */
  private static final double MOST = 0.65;

  static Cause of(Trace trace, PullResult first, PullResult last) {
    return new Cause(
        last.sensor().end() - first.sensor().end(),
        change(trace, Channel.CORE_COOLANT_IN, first, last),
        change(trace, Channel.PLENUM_METAL, first, last));
  }

  /** Returns the change of the sensor over the coolant, K. */
  double aboveCoolant() {
    return creep - coolant;
  }

  /** Says it. */
  String sentence(Display display) {
    String in = display.signedDifference(coolant);
    String metal = display.signedDifference(plenum);
    if (!(Math.abs(creep) >= SMALL)) {
      return Math.abs(coolant) >= SMALL
          ? "The sensor hardly changes although the coolant entering the core does ("
              + in
              + "): "
              + distance(display)
              + "."
          : "By then the coolant enters the core as warm as it did before (" + in + ").";
    }
    String way = creep > 0 ? "warmer" : "cooler";
    double share = coolant / creep;
    if (share >= MOST) {
      return "Mostly because the coolant entering the core is "
          + way
          + " by then ("
          + in
          + "); "
          + distance(display)
          + ".";
    }
    if (share <= 1 - MOST) {
      return "Mostly not the coolant (at the core "
          + in
          + "): "
          + distance(display)
          + ", with plenum metal at "
          + metal
          + ".";
    }
    return "Part of it is "
        + way
        + " coolant entering the core ("
        + in
        + "), and "
        + distance(display)
        + ", with plenum metal at "
        + metal
        + ".";
  }

  /** Says how the charge's distance to the coolant has changed. */
  private String distance(Display display) {
    if (display.isNone(aboveCoolant())) {
      return "the charge stands as far above it as before";
    }
    return "the charge stands "
        + display.difference(aboveCoolant())
        + (aboveCoolant() > 0 ? " further above it" : " closer to it");
  }

  private static double change(Trace trace, Channel channel, PullResult first, PullResult last) {
    return trace.at(channel, last.countedAt()) - trace.at(channel, first.countedAt());
  }
}
