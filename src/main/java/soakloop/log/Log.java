package soakloop.log;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soakloop.quantity.Curve;

/** A logged run: signals in SI units over time. */
public final class Log {
  private final String name;
  private final double[] time;
  private final Map<Signal, double[]> values;
  private final List<Column> columns;
  private final List<String> notes;

  /**
   * How a column was understood.
   *
   * @param header as the file has it
   * @param signal what it was taken as, if anything
   * @param unit symbol of the unit it was read in, empty if not read
   * @param remark why it was not read, or what a reader should know of how it was; may be empty
   */
  public record Column(String header, Optional<Signal> signal, String unit, String remark) {}

  /**
   * Makes a log.
   *
   * @param name the file's name
   * @param time s, strictly rising
   * @param values for each signal but time as many values, SI, NaN where a cell was empty
   * @param columns how each column was understood
   * @param notes comment lines of the file, in order
   */
  public Log(
      String name,
      double[] time,
      Map<Signal, double[]> values,
      List<Column> columns,
      List<String> notes) {
    this.name = name;
    this.time = time.clone();
    this.values = new EnumMap<>(Signal.class);
    values.forEach(
        (signal, column) -> {
          if (column.length != time.length) {
            throw new IllegalArgumentException("column of another length: " + signal);
          }
          this.values.put(signal, column.clone());
        });
    for (int i = 1; i < time.length; i++) {
      if (!(time[i] > time[i - 1])) {
        throw new IllegalArgumentException("time must rise: " + time[i - 1] + ", " + time[i]);
      }
    }
    this.columns = List.copyOf(columns);
    this.notes = List.copyOf(notes);
  }

  /** Returns the file's name. */
  public String name() {
    return name;
  }

  /** Returns the number of rows. */
  public int size() {
    return time.length;
  }

  /**
   * Returns the time of a row, s.
   *
   * @param row index from 0
   */
  public double time(int row) {
    return time[row];
  }

  /** Returns the time of the last row, s. */
  public double endTime() {
    return time[time.length - 1];
  }

  /** Returns the signals it has besides time, in the order of {@link Signal}. */
  public Set<Signal> signals() {
    return Collections.unmodifiableSet(values.keySet());
  }

  /**
   * Returns whether it has a signal.
   *
   * @param signal which
   */
  public boolean has(Signal signal) {
    return values.containsKey(signal);
  }

  /**
   * Returns a signal's value in a row, SI; NaN where the cell was empty or the signal is not there.
   *
   * @param signal which
   * @param row index from 0
   */
  public double value(Signal signal, int row) {
    double[] column = values.get(signal);
    return column == null ? Double.NaN : column[row];
  }

  /**
   * Returns a signal over time, straight between the rows that have it.
   *
   * @param signal which
   * @return empty if the log lacks it or has no value of it
   */
  public Optional<Curve> curve(Signal signal) {
    double[] column = values.get(signal);
    if (column == null) {
      return Optional.empty();
    }
    double[] x = new double[column.length];
    double[] y = new double[column.length];
    int n = 0;
    for (int i = 0; i < column.length; i++) {
      if (!Double.isNaN(column[i])) {
        x[n] = time[i];
        y[n++] = column[i];
      }
    }
    return n == 0
        ? Optional.empty()
        : Optional.of(Curve.of(java.util.Arrays.copyOf(x, n), java.util.Arrays.copyOf(y, n)));
  }

  /** Returns how each column of the file was understood. */
  public List<Column> columns() {
    return columns;
  }

  /** Returns the comment lines of the file. */
  public List<String> notes() {
    return notes;
  }
}
