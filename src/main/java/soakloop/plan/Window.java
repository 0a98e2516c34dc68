package soakloop.plan;

/**
 * Waits from which the next pull keeps the limit at the confidence.
 *
 * @param from shortest, s
 * @param to longest, s
 * @param open whether it goes on past the horizon
 */
public record Window(double from, double to, boolean open) {}
