package soakloop.simulate;

import java.util.Optional;
import soakloop.quantity.OutsideRange;

/**
 * Something that a reader of the result should know: it was computed, but outside what is well
 * known.
 *
 * @param kind what
 * @param message in plain words, with the numbers
 * @param outside which published range was left and by what value, if that is what it is about
 */
public record Warning(Kind kind, String message, Optional<OutsideRange> outside) {
  /** A warning that is not about a published range. */
  public Warning(Kind kind, String message) {
    this(kind, message, Optional.empty());
  }

  /** What a warning is about. */
  public enum Kind {
    /** Coolant outside the temperatures its property data hold for. */
    COOLANT_RANGE,
    /** Coolant colder than its freezing point. */
    COOLANT_FREEZING,
    /** Coolant hotter than water boils at the day's pressure. */
    COOLANT_BOILING,
    /** Ice put in while the engine runs. */
    ICE_ENGINE_RUNNING,
    /** An engine that is against its highest speed in top gear before the traps. */
    PASS_LIMITED,
    /** Flows or sizes outside the range that an equation was made for. */
    CORRELATION_RANGE,
    /** A core that takes more pressure than is acceptable. */
    CORE_LOSS,
    /** Water that condenses in the core. */
    CONDENSATION,
    /** A blower whose air is far from what the engine swallows at the stated boost. */
    AIR_AGAINST_BOOST,
    /** A pump whose curve ends before it meets the loop. */
    PUMP_PAST_CURVE,
    /** A pump that moves hardly anything against a loop that is all but shut. */
    PUMP_DEAD_HEADED,
    /** A flow far below what the pump's label says. */
    FLOW_BELOW_LABEL,
    /** A log that does not reach as far as the session. */
    LOG_SHORT,
    /** A log without a signal that the comparison or replay would use. */
    LOG_INCOMPLETE,
    /** A log whose pulls do not lie where the session's do. */
    PULLS_APART,
    /** Keys that were edited since a fit, so that what it says of them no longer holds. */
    FIT_EDITED
  }
}
