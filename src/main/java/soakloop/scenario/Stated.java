package soakloop.scenario;

import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;

/**
 * A physical value that the scenario uses, stated or assumed, with its spread.
 *
 * @param key such as {@code reservoir.volume}
 * @param dimension what it measures
 * @param estimate value and spread, SI
 * @param assumed whether it comes from the default table
 */
public record Stated(String key, Dimension dimension, Estimate estimate, boolean assumed) {}
