package soakloop.versus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soakloop.scenario.Scenario;
import soakloop.simulate.Channel;
import soakloop.simulate.Trace;
import soakloop.study.Outcome;
import soakloop.study.PullPower;
import soakloop.study.PullResult;
import soakloop.study.PullResults;

/**
 * What one run says of its pulls.
 *
 * @param names of the pulls
 * @param pulls figures by pull; those that the scenario does not model are NaN
 * @param sensorRise what the charge sensor rises by to the counted end, by pull, K
 * @param speeds engine speed at even steps of the last pull, rev/s
 * @param course charge there, K
 */
record Figures(
    List<String> names,
    List<Map<PullFigure, Double>> pulls,
    List<Double> sensorRise,
    List<Double> speeds,
    List<Double> course) {
  /** Steps of the last pull's course. */
  static final int STEPS = 40;

  /** What two times may differ by that are meant to be one, s. */
  private static final double INSTANT = 1e-6;

  static Figures of(Scenario scenario, Trace trace) {
    List<PullResult> results =
        PullResults.of(trace, scenario.limits().chargeTemperature(), Optional.empty());
    List<PullPower> power =
        PullPower.of(
            new Outcome(
                scenario,
                trace,
                results,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of()));
    List<Map<PullFigure, Double>> pulls = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<Double> rises = new ArrayList<>();
    for (int i = 0; i < results.size(); i++) {
      Optional<PullPower> own = i < power.size() ? Optional.of(power.get(i)) : Optional.empty();
      pulls.add(figures(results.get(i), own, scenario.limits().chargeTemperature().isPresent()));
      names.add(results.get(i).name());
      rises.add(results.get(i).sensor().rise());
    }
    List<Double> speeds = new ArrayList<>();
    List<Double> course = new ArrayList<>();
    if (!results.isEmpty()) {
      PullResult last = results.get(results.size() - 1);
      for (int i = 0; i <= STEPS; i++) {
        // Just inside the pull: at its very ends the phases beside it may speak.
        double from = last.startTime() + INSTANT;
        double time = from + (last.endTime() - INSTANT - from) * i / STEPS;
        speeds.add(trace.at(Channel.ENGINE_SPEED, time));
        course.add(trace.at(Channel.CHARGE, time));
      }
    }
    return new Figures(names, pulls, rises, speeds, course);
  }

  private static Map<PullFigure, Double> figures(
      PullResult pull, Optional<PullPower> power, boolean limited) {
    Map<PullFigure, Double> told = new EnumMap<>(PullFigure.class);
    told.put(PullFigure.START, pull.charge().start());
    told.put(PullFigure.END, pull.charge().end());
    told.put(PullFigure.PEAK, pull.charge().peakToNextPull());
    told.put(PullFigure.RISE, pull.charge().rise());
    told.put(PullFigure.OVER_LIMIT, limited ? pull.charge().overLimit() : Double.NaN);
    told.put(PullFigure.COOLANT, pull.coolant().coreInletStart());
    told.put(PullFigure.BOOST, pull.boostPeak());
    told.put(
        PullFigure.LOSS, pull.chargeLoss().map(PullResult.ChargeLoss::peak).orElse(Double.NaN));
    told.put(
        PullFigure.SPARK,
        power.flatMap(PullPower::spark).map(PullPower.Spark::out).orElse(Double.NaN));
    told.put(
        PullFigure.POWER,
        power.flatMap(PullPower::crank).map(PullPower.Crank::crank).orElse(Double.NaN));
    return Collections.unmodifiableMap(told);
  }

  double of(int pull, PullFigure figure) {
    return pulls.get(pull).getOrDefault(figure, Double.NaN);
  }
}
