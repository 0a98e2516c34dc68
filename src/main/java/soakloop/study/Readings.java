package soakloop.study;

/**
 * A temperature over one pull, K and s. "To the next pull" ends where the engine is switched off
 * before it: a sensor without air past it shows soaked metal, not charge.
 *
 * @param start at the pull's start
 * @param end where the pull is counted
 * @param peakInPull highest from start to the pull's end
 * @param peakToNextPull highest from the start to the next pull's start, or the session's end
 * @param rise end less start
 * @param overLimit time above the limit from the start to the next pull's start, s; 0 without a
 *     limit
 */
public record Readings(
    double start,
    double end,
    double peakInPull,
    double peakToNextPull,
    double rise,
    double overLimit) {}
