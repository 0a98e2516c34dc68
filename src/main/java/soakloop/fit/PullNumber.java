package soakloop.fit;

import java.util.function.ToDoubleFunction;
import soakloop.study.PullResult;

/** A number that a run tells of each pull; SI. */
public enum PullNumber {
  /** Charge at the pull's start; K. */
  CHARGE_START("chargeTemperature.start", Wrong.AT_START, p -> p.charge().start()),
  /** Charge where the pull is counted; K. */
  CHARGE_END("chargeTemperature.end", Wrong.AT_END, p -> p.charge().end()),
  /** Highest charge in the pull; K. */
  CHARGE_PEAK_IN_PULL("chargeTemperature.peakInPull", Wrong.AT_END, p -> p.charge().peakInPull()),
  /** Highest charge until the next pull; K. */
  CHARGE_PEAK_TO_NEXT(
      "chargeTemperature.peakToNextPull", Wrong.AT_END, p -> p.charge().peakToNextPull()),
  /** Charge at the end less that at the start; K. */
  CHARGE_RISE("chargeTemperature.rise", Wrong.OF_RISE, p -> p.charge().rise()),
  /** Time of the charge over the limit; s. */
  CHARGE_OVER_LIMIT("chargeTemperature.overLimit", Wrong.NOT, p -> p.charge().overLimit()),
  /** Sensor at the pull's start; K. */
  SENSOR_START("sensorTemperature.start", Wrong.AT_START, p -> p.sensor().start()),
  /** Sensor where the pull is counted; K. */
  SENSOR_END("sensorTemperature.end", Wrong.AT_END, p -> p.sensor().end()),
  /** Highest reading in the pull; K. */
  SENSOR_PEAK_IN_PULL("sensorTemperature.peakInPull", Wrong.AT_END, p -> p.sensor().peakInPull()),
  /** Highest reading until the next pull; K. */
  SENSOR_PEAK_TO_NEXT(
      "sensorTemperature.peakToNextPull", Wrong.AT_END, p -> p.sensor().peakToNextPull()),
  /** Reading at the end less that at the start; K. */
  SENSOR_RISE("sensorTemperature.rise", Wrong.OF_RISE, p -> p.sensor().rise()),
  /** Time of the reading over the limit; s. */
  SENSOR_OVER_LIMIT("sensorTemperature.overLimit", Wrong.NOT, p -> p.sensor().overLimit()),
  /** Coolant entering the core at the pull's start; K. */
  CORE_INLET_START("coolant.coreInletStart", Wrong.OF_COOLANT, p -> p.coolant().coreInletStart()),
  /** Highest coolant entering the core until the next pull; K. */
  CORE_INLET_PEAK("coolant.coreInletPeak", Wrong.OF_COOLANT, p -> p.coolant().coreInletPeak()),
  /** Highest coolant leaving the core until the next pull; K. */
  CORE_OUTLET_PEAK("coolant.coreOutletPeak", Wrong.OF_COOLANT, p -> p.coolant().coreOutletPeak()),
  /** Highest air mass flow; kg/s. */
  AIR_MASS_FLOW_PEAK("airMassFlowPeak", Wrong.NOT, PullResult::airMassFlowPeak),
  /** Heat from the charge to the core; J. */
  HEAT_TO_COOLANT("heatToCoolant", Wrong.NOT, PullResult::heatToCoolant),
  /** Highest boost after the core; Pa. */
  BOOST_AFTER_CORE("boostAfterCore", Wrong.NOT, PullResult::boostPeak),
  /** Highest pressure loss of the core, where its geometry is known; Pa. */
  CORE_LOSS(
      "coreLoss",
      Wrong.NOT,
      p -> p.chargeLoss().map(PullResult.ChargeLoss::peak).orElse(Double.NaN)),
  /** Highest boost before the core, where the core's geometry is known; Pa. */
  BOOST_BEFORE_CORE(
      "boostBeforeCore",
      Wrong.NOT,
      p -> p.chargeLoss().map(PullResult.ChargeLoss::boostBefore).orElse(Double.NaN));

  /** Which error of the model a number carries. */
  enum Wrong {
    /** None that is known. */
    NOT,
    /** That of the charge at the pull's start. */
    AT_START,
    /** That of the charge at the pull's counted end. */
    AT_END,
    /** How far that of the charge changes in between. */
    OF_RISE,
    /** That of the coolant entering the core. */
    OF_COOLANT
  }

  private final String key;
  private final Wrong wrong;
  private final ToDoubleFunction<PullResult> reader;

  PullNumber(String key, Wrong wrong, ToDoubleFunction<PullResult> reader) {
    this.key = key;
    this.wrong = wrong;
    this.reader = reader;
  }

  /** Returns where it stands in a summary, a dot between a group and its member. */
  public String key() {
    return key;
  }

  /** Returns whether it is something that the charge sensor reads. */
  boolean isOfSensor() {
    return key.startsWith("sensor");
  }

  /** Returns whether it is a temperature, not a difference or anything else. */
  public boolean isTemperature() {
    return wrong == Wrong.AT_START || wrong == Wrong.AT_END || wrong == Wrong.OF_COOLANT;
  }

  Wrong wrong() {
    return wrong;
  }

  double of(PullResult pull) {
    return reader.applyAsDouble(pull);
  }
}
