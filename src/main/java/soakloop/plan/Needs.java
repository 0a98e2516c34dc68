package soakloop.plan;

import java.util.OptionalDouble;

/**
 * What would let the car keep the limit, each by itself and about: found with the scenario as it
 * is, in the way and after the wait that come nearest.
 *
 * @param way the way that comes nearest
 * @param boost share of the boost; empty if there is none to scale, or less would not do
 * @param ambient the day's temperature, K; empty if no day that it is asked for would do
 * @param ice put in with the engine off, kg; empty if there is no tank for it or none would do
 */
public record Needs(Way way, OptionalDouble boost, OptionalDouble ambient, OptionalDouble ice) {}
