package soakloop.study;

/**
 * How far the model is from a logged signal: modelled less logged, K.
 *
 * @param count readings compared
 * @param bias mean difference
 * @param rms root mean square difference
 * @param largest difference of the largest magnitude, with its sign
 */
public record Misfit(int count, double bias, double rms, double largest) {}
