package soakloop.invented;

import java.util.List;
import java.util.Map;
import soakloop.log.Signal;

/**
 * A session of the true car, written down in some dress, with what a reader must find in it.
 *
 * @param bytes the file
 * @param times s, as a reader should have them
 * @param values SI before rounding, by signal; NaN where the file says nothing
 * @param grain half of the last digit written, SI, by signal
 * @param timeGrain s
 * @param pulls start and end of each pull, s on the reader's time
 * @param barometer absolute pressure of the day, Pa
 */
@SuppressWarnings("ArrayRecordComponent")
public record DressedLog(
    byte[] bytes,
    double[] times,
    Map<Signal, double[]> values,
    Map<Signal, Double> grain,
    double timeGrain,
    List<double[]> pulls,
    double barometer) {
  /** Writes the session down. */
  public static DressedLog of(LogDress dress) {
    return new DressWriter(dress).write();
  }
}
