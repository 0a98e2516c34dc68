package soakloop.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soakloop.log.Signal;
import soakloop.quantity.Dimension;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;
import soakloop.simulate.Trace;
import soakloop.study.Misfit;
import soakloop.study.Outcome;
import soakloop.study.PullResult;

/**
 * The single sentences of an answer.
 *
 * @param outcome what they are about
 * @param display how numbers are shown
 */
record Sentences(Outcome outcome, Display display) {
  /** RMS up to which a model follows a log closely, K: about what sensor and rounding leave. */
  private static final double CLOSE = 1.5;

  /** RMS up to which it follows fairly, K; our own yardstick. */
  private static final double FAIR = 5;

  /** Returns the engine speed a pull is counted at, in brackets after a space. */
  String speed(PullResult pull) {
    return pull.countedTo() > 0 ? " (" + display.speed(pull.countedTo()) + ")" : "";
  }

  String onePull(PullResult pull) {
    double above =
        pull.sensor().end() - outcome.trace().at(Channel.CORE_COOLANT_IN, pull.countedAt());
    String beside = display.difference(above) + (above >= 0 ? " above" : " below");
    return Display.sentenceStart(pull.name())
        + " starts at "
        + display.temperature(pull.sensor().start())
        + " on the sensor and ends at "
        + display.temperature(pull.sensor().end())
        + speed(pull)
        + ", "
        + beside
        + " the coolant entering the core.";
  }

  String lastAgainstFirst(PullResult first, PullResult last) {
    double creep = last.sensor().end() - first.sensor().end();
    String against =
        display.isNone(creep)
            ? "the same as " + first.name()
            : display.difference(creep) + (creep > 0 ? " above " : " below ") + first.name();
    return Display.sentenceStart(last.name())
        + " ends at "
        + display.temperature(last.sensor().end())
        + " on the sensor"
        + speed(last)
        + ", "
        + against
        + ".";
  }

  String withoutPulls() {
    Trace trace = outcome.trace();
    TimeScale time = TimeScale.of(trace);
    return "In "
        + Display.duration(time.to() - time.from())
        + " the charge sensor goes from "
        + fromTo(Channel.SENSOR, time)
        + ", the coolant entering the core from "
        + fromTo(Channel.CORE_COOLANT_IN, time)
        + ".";
  }

  /** Says how the sensor stands to the limit, if there is one and the engine runs at all. */
  Optional<String> limit() {
    OptionalDouble limit = outcome.scenario().limits().chargeTemperature();
    if (limit.isEmpty()) {
      return Optional.empty();
    }
    OverLimit over = OverLimit.of(outcome.trace(), limit.getAsDouble());
    if (Double.isNaN(over.peak())) {
      return Optional.empty();
    }
    String name = "The limit of " + display.temperature(limit.getAsDouble());
    return Optional.of(
        outcome.pulls().isEmpty()
            ? limitOfSession(name, over)
            : limitOfPulls(name, limit.getAsDouble(), over));
  }

  private String limitOfSession(String name, OverLimit over) {
    if (!over.happens()) {
      return name
          + " is never passed: the sensor peaks at "
          + display.temperature(over.peak())
          + ".";
    }
    double since = over.first() - TimeScale.of(outcome.trace()).from();
    return name
        + " is first passed "
        + (since < 1 ? "at the start" : Display.duration(since) + " in")
        + aboveIt(over.seconds(), over.peak());
  }

  private String limitOfPulls(String name, double limit, OverLimit over) {
    List<PullResult> pulls = outcome.pulls();
    double seconds = pulls.stream().mapToDouble(p -> p.sensor().overLimit()).sum();
    double peak =
        pulls.stream().mapToDouble(p -> p.sensor().peakToNextPull()).max().orElse(over.peak());
    Optional<PullResult> first = pulls.stream().filter(p -> p.sensor().overLimit() > 0).findFirst();
    double outside = over.seconds() - seconds;
    String rest =
        outside >= 1
            ? " Outside the "
                + Counted.of(outcome).many()
                + " it is above it for "
                + (first.isPresent() ? "another " : "")
                + Display.duration(outside)
                + "."
            : "";
    if (first.isEmpty()) {
      return name
          + " is not passed in any "
          + Counted.of(outcome).one()
          + ": the sensor peaks at "
          + display.temperature(peak)
          + chargeOverLimit(limit)
          + logOverLimit().map(pull -> ". The log does pass it, first in " + pull).orElse("")
          + "."
          + rest;
    }
    boolean inside = first.get().sensor().peakInPull() > limit;
    boolean logBelow =
        pulls.stream().anyMatch(p -> p.logged().isPresent()) && logOverLimit().isEmpty();
    return name
        + " is first passed "
        + (inside ? "in " : "after ")
        + first.get().name()
        + aboveIt(seconds, peak)
        + (logBelow ? " The log stays below it in every " + Counted.of(outcome).one() + "." : "")
        + rest;
  }

  private String aboveIt(double seconds, double peak) {
    return "; the sensor is above it for "
        + Display.duration(seconds)
        + " in all and peaks at "
        + display.temperature(peak)
        + ".";
  }

  /** Says that the charge itself passes a limit that the lagging sensor does not, if so. */
  private String chargeOverLimit(double limit) {
    return outcome.pulls().stream()
        .filter(p -> p.charge().peakInPull() > limit)
        .findFirst()
        .map(
            p ->
                ". The charge itself, which the sensor lags behind, passes it in "
                    + p.name()
                    + " ("
                    + display.temperature(p.charge().peakInPull())
                    + ")")
        .orElse("");
  }

  /** Returns the first pull in which the log is over the limit. */
  private Optional<String> logOverLimit() {
    return outcome.pulls().stream()
        .filter(p -> p.logged().filter(l -> l.sensor().overLimit() > 0).isPresent())
        .map(PullResult::name)
        .findFirst();
  }

  String heat() {
    EnergyLedger energy = outcome.trace().energy();
    HeatBalance balance = HeatBalance.of(energy);
    double held = energy.stored();
    String core =
        energy.fromChargeToCore() > 0
            ? " (" + display.heat(energy.fromChargeToCore()) + " of it from charge air in the core)"
            : "";
    String outside =
        energy.toAmbient() > 0
            ? " (" + display.heat(energy.toAmbient()) + " of it to the outside air)"
            : "";
    return (energy.storedIce() == 0 ? "Loop and metal" : "Loop, metal and ice")
        + " take in "
        + display.heat(balance.cameIn())
        + core
        + ", give off "
        + display.heat(balance.wentOut())
        + outside
        + " and end up holding "
        + display.heat(Math.abs(held))
        + (held >= 0 ? " more" : " less")
        + " than at the start.";
  }

  /** Says how well the model follows the logged charge temperature, if there is any. */
  Optional<String> agreement() {
    Optional<Misfit> misfit =
        outcome.comparison().flatMap(c -> c.misfit(Signal.CHARGE_TEMPERATURE));
    return misfit.map(m -> agreement(m) + loggedCreep().orElse("") + ".");
  }

  private String agreement(Misfit misfit) {
    String how =
        misfit.rms() <= CLOSE
            ? "The model follows the logged sensor closely"
            : misfit.rms() <= FAIR
                ? "The model follows the logged sensor fairly"
                : "The model does not follow the logged sensor well, so lean on its differences more"
                    + " than on its temperatures";
    boolean unbiased =
        display.number(Math.abs(misfit.bias()), Dimension.TEMPERATURE_DIFFERENCE, 1).equals("0.0");
    String bias = display.fineSize(misfit.bias());
    return how
        + ": typically "
        + display.fineSize(misfit.rms())
        + " off"
        + (unbiased
            ? ", neither high nor low on average"
            : ", " + bias + (misfit.bias() > 0 ? " high" : " low") + " on average");
  }

  private Optional<String> loggedCreep() {
    List<PullResult> logged = outcome.pulls().stream().filter(p -> p.logged().isPresent()).toList();
    if (logged.size() < 2) {
      return Optional.empty();
    }
    PullResult first = logged.get(0);
    PullResult last = logged.get(logged.size() - 1);
    double seen =
        last.logged().orElseThrow().sensor().end() - first.logged().orElseThrow().sensor().end();
    double said = last.sensor().end() - first.sensor().end();
    return Optional.of(
        "; from "
            + first.name()
            + " to "
            + last.name()
            + " the log moves "
            + display.signedDifference(seen)
            + ", the model "
            + display.signedDifference(said));
  }

  /** Says what flow the log's heat balance gives, if it does. */
  Optional<String> flow() {
    return outcome
        .flowFromHeat()
        .map(
            found ->
                "The log's heat balance gives a loop flow of "
                    + display.spread(found.flow(), Dimension.VOLUME_FLOW)
                    + " (nine in ten"
                    + (found.modelledAir().isEmpty()
                        ? ""
                        : "; the log lacks "
                            + LogWords.listed(
                                found.modelledAir().stream().map(Sentences::lacking).toList())
                            + ", taken from the model")
                    + "); the model has "
                    + display.show(
                        found.modelled(),
                        Dimension.VOLUME_FLOW,
                        display.decimals(found.flow(), Dimension.VOLUME_FLOW))
                    + (found.agrees() ? "." : ", outside it."));
  }

  private static String lacking(Channel channel) {
    return channel == Channel.CORE_AIR_IN ? Signal.CORE_AIR_IN.label() : channel.label();
  }

  private String fromTo(Channel channel, TimeScale time) {
    Trace trace = outcome.trace();
    return display.temperature(trace.at(channel, time.from()))
        + " to "
        + display.temperature(trace.value(channel, trace.size() - 1));
  }
}
