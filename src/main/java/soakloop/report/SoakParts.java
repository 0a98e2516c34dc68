package soakloop.report;

import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * What the charge sensor's reading at a pull's counted end is made of: the air around the car, how
 * far coolant enters the core above it, how far the core leaves the charge above the coolant, and
 * what comes between the core and the reading.
 *
 * @param air around the car, K
 * @param coolant entering the core, above that, K
 * @param core charge leaving the core, above the coolant entering it, K
 * @param rest plenum metal, the sensor's lag and what it reads high by, K
 * @param taken what the core takes of what there is to take [-]
 */
record SoakParts(double air, double coolant, double core, double rest, double taken) {
  /**
   * Reads a pull.
   *
   * @param outcome of the run
   * @param pull one of its pulls
   * @param bias by how much the charge sensor reads high, K
   */
  static SoakParts of(Outcome outcome, PullResult pull, double bias) {
    Trace trace = outcome.trace();
    double at = pull.countedAt();
    double air = outcome.scenario().day().temperatureAt(at);
    double in = trace.at(Channel.CORE_COOLANT_IN, at);
    double out = trace.at(Channel.CORE_AIR_OUT, at);
    double hot = trace.at(Channel.CORE_AIR_IN, at);
    double shown = trace.at(Channel.SENSOR, at) + bias;
    return new SoakParts(air, in - air, out - in, shown - out, (hot - out) / (hot - in));
  }

  /** Returns what the sensor shows, K. */
  double reading() {
    return air + coolant + core + rest;
  }

  /** Returns by how much the charge would leave the core colder if coolant entered like the air. */
  double coldestLoop() {
    return taken * coolant;
  }

  /** Returns by how much more each part is than in an earlier pull. */
  SoakParts since(SoakParts first) {
    return new SoakParts(
        air - first.air,
        coolant - first.coolant,
        core - first.core,
        rest - first.rest,
        taken - first.taken);
  }
}
