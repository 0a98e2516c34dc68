package soakloop.fit;

import java.util.List;
import java.util.Optional;
import soakloop.log.Signal;
import soakloop.simulate.Channel;

/**
 * Something that could be measured.
 *
 * @param name in words
 * @param channel what it would show
 * @param signal the log's signal of the same, if there is one
 * @param noise standard deviation of one reading, SI, or a share of what is read
 * @param ofReading whether noise and bias are shares of what is read
 * @param bias standard deviation of what it reads wrong throughout, likewise
 */
record Probe(
    String name,
    Channel channel,
    Optional<Signal> signal,
    double noise,
    boolean ofReading,
    double bias) {
  /**
   * What a shop could add. A thermometer in a car is good for half a degree and 2 K throughout,
   * nine times in ten; a flow meter for 1 % and 3 % (common practice, no source).
   */
  static final List<Probe> ALL =
      List.of(
          thermometer("a coolant probe at the core's inlet", Signal.CORE_COOLANT_IN),
          thermometer("a coolant probe at the core's outlet", Signal.CORE_COOLANT_OUT),
          thermometer("a coolant probe in the reservoir", Signal.RESERVOIR),
          thermometer("an air probe before the core", Signal.CORE_AIR_IN),
          new Probe(
              "a flow meter in the loop",
              Channel.COOLANT_FLOW,
              Optional.empty(),
              0.01,
              true,
              0.03 / FitKey.NINETY));

  private static Probe thermometer(String name, Signal signal) {
    return new Probe(
        name, signal.channel().orElseThrow(), Optional.of(signal), 0.5, false, 2 / FitKey.NINETY);
  }
}
