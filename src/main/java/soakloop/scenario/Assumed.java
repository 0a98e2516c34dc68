package soakloop.scenario;

/**
 * A value that the scenario did not say and the default table filled in.
 *
 * @param key such as {@code sensor.time-constant}
 * @param value as the table writes it, with unit
 * @param spread as the table writes it, empty if none
 * @param reason why this value
 */
public record Assumed(String key, String value, String spread, String reason) {}
