package soakloop.invented;

import java.util.List;

/**
 * A finished run of the true car.
 *
 * @param truths what was true, at even intervals
 * @param residual heat not accounted for over all heat that crossed the loop's border [-]
 * @param heatFromAir heat the charge air gave [J]
 * @param heatToAmbient heat the heat exchanger gave up [J]
 */
record TruthRun(
    List<TruthLoop.Truth> truths, double residual, double heatFromAir, double heatToAmbient) {

  /** The truth kept nearest to a time [s]. */
  TruthLoop.Truth at(double time) {
    double every = truths.get(1).time();
    return truths.get((int) Math.round(time / every));
  }

  /** Highest charge sensor bead between two times [s], in degC. */
  double sensorPeak(double from, double to) {
    return truths.stream()
        .filter(t -> t.time() >= from && t.time() < to)
        .mapToDouble(TruthLoop.Truth::sensor)
        .max()
        .orElseThrow();
  }
}
