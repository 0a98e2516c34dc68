package soakloop.reading;

import java.util.OptionalDouble;

/**
 * What a log shows of one pull; each value is empty where the log lacks the channel or shows
 * something else than what is asked for.
 *
 * @param pull which
 * @param countedAt when it passes the counted engine speed, s
 * @param start charge temperature at its start, K
 * @param counted charge temperature at the counted engine speed, K
 * @param peak highest charge temperature from its start to the next pull's, with air flowing, K
 * @param rise counted less start, K
 * @param coolantStart coolant entering the core at its start, K
 * @param coolantCounted coolant entering the core at the counted engine speed, K
 * @param boost highest gauge pressure in it, Pa
 * @param boostIsLeast whether the pressure is cut off, so that the true one may be higher
 * @param power highest power at the wheels in it, W
 * @param overLimit how long the charge is over the limit from its start to the next pull's, with
 *     air flowing, s
 */
public record PullReading(
    Pull pull,
    OptionalDouble countedAt,
    OptionalDouble start,
    OptionalDouble counted,
    OptionalDouble peak,
    OptionalDouble rise,
    OptionalDouble coolantStart,
    OptionalDouble coolantCounted,
    OptionalDouble boost,
    boolean boostIsLeast,
    OptionalDouble power,
    OptionalDouble overLimit) {}
