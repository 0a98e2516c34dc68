package soakloop.log;

import java.util.ArrayList;
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
  private final Series time;
  private final Series rows;
  private final Map<Signal, Series> values;
  private final List<Column> columns;
  private final List<String> notes;
  private final List<Remark> remarks;
  private final Optional<Barometer> barometer;

  /**
   * How a column was understood.
   *
   * @param header as the file has it
   * @param signal what it was taken as, if anything
   * @param unit symbol of the unit it was read in, empty if not read
   * @param remark why it was not read, or what a reader should know of how it was; may be empty
   * @param confidence how sure the meaning is; of one not read, that it is not read
   */
  public record Column(
      String header, Optional<Signal> signal, String unit, String remark, Confidence confidence) {
    /** Makes a column of which all is sure. */
    public Column(String header, Optional<Signal> signal, String unit, String remark) {
      this(header, signal, unit, remark, Confidence.SURE);
    }
  }

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
    this(name, new PlainSeries(time), new Lines(time.length), plain(time, values), columns, notes);
    for (int i = 1; i < time.length; i++) {
      if (!(time[i] > time[i - 1])) {
        throw new IllegalArgumentException("time must rise: " + time[i - 1] + ", " + time[i]);
      }
    }
  }

  private Log(
      String name,
      Series time,
      Series rows,
      Map<Signal, Series> values,
      List<Column> columns,
      List<String> notes) {
    this(name, time, rows, values, columns, notes, List.of(), Barometer.of(values));
  }

  /**
   * Makes a log of what was read.
   *
   * @param time s, strictly rising
   * @param rows the file's row of each, counted from 1
   * @param barometer that the log itself tells
   */
  Log(
      String name,
      Series time,
      Series rows,
      Map<Signal, Series> values,
      List<Column> columns,
      List<String> notes,
      List<Remark> remarks,
      Optional<Barometer> barometer) {
    this.name = name;
    this.time = time;
    this.rows = rows;
    this.values = new EnumMap<>(Signal.class);
    this.values.putAll(values);
    this.columns = List.copyOf(columns);
    this.notes = List.copyOf(notes);
    this.remarks = List.copyOf(remarks);
    this.barometer = barometer;
  }

  private static Map<Signal, Series> plain(double[] time, Map<Signal, double[]> values) {
    Map<Signal, Series> series = new EnumMap<>(Signal.class);
    values.forEach(
        (signal, column) -> {
          if (column.length != time.length) {
            throw new IllegalArgumentException("column of another length: " + signal);
          }
          series.put(signal, new PlainSeries(column));
        });
    return series;
  }

  /** Rows of a log that was no file: counted from 1. */
  private record Lines(int size) implements Series {
    @Override
    public double at(int row) {
      return row + 1;
    }
  }

  /**
   * Returns the same with gauge pressures made from absolute ones, and the other way round, by a
   * barometer that is known from elsewhere. Where the log tells its own, that goes before, and a
   * remark says so if the two cannot both be right.
   *
   * @param pascal absolute pressure of the air outside, not reduced to sea level, Pa, 40 to 115 kPa
   * @throws IllegalArgumentException if it is outside that range
   */
  public Log withBarometer(double pascal) {
    if (!Barometer.isPlausible(pascal)) {
      throw new IllegalArgumentException("barometer must be 40 to 115 kPa: " + pascal + " Pa");
    }
    Map<Signal, Series> all = new EnumMap<>(values);
    List<Column> told = new ArrayList<>(columns);
    List<Remark> said = new ArrayList<>(remarks);
    barometer.flatMap(own -> own.against(pascal)).ifPresent(said::add);
    for (DerivedPressure d :
        DerivedPressure.of(values, barometer.orElseGet(() -> Barometer.stated(pascal)))) {
      all.put(d.signal(), d.values());
      told.add(d.column());
      said.add(d.remark());
    }
    return new Log(name, time, rows, all, told, notes, said, barometer);
  }

  /**
   * Returns the same with more remarks behind its own.
   *
   * @param more of the files that it was made from
   */
  public Log withRemarks(List<Remark> more) {
    List<Remark> all = new ArrayList<>(remarks);
    all.addAll(more);
    return new Log(name, time, rows, values, columns, notes, all, barometer);
  }

  /** Returns the file's name. */
  public String name() {
    return name;
  }

  /** Returns the number of rows. */
  public int size() {
    return time.size();
  }

  /**
   * Returns the time of a row, s.
   *
   * @param row index from 0
   */
  public double time(int row) {
    return time.at(row);
  }

  /** Returns the time of the last row, s. */
  public double endTime() {
    return time.at(time.size() - 1);
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
    Series column = values.get(signal);
    return column == null ? Double.NaN : column.at(row);
  }

  /**
   * Returns a signal over time, straight between the rows that have it.
   *
   * @param signal which
   * @return empty if the log lacks it or has no value of it
   */
  public Optional<Curve> curve(Signal signal) {
    Series column = values.get(signal);
    if (column == null) {
      return Optional.empty();
    }
    double[] x = new double[column.size()];
    double[] y = new double[column.size()];
    int n = 0;
    for (int i = 0; i < x.length; i++) {
      double value = column.at(i);
      if (!Double.isNaN(value)) {
        x[n] = time.at(i);
        y[n++] = value;
      }
    }
    return n == 0
        ? Optional.empty()
        : Optional.of(Curve.of(java.util.Arrays.copyOf(x, n), java.util.Arrays.copyOf(y, n)));
  }

  /**
   * Returns the row of the file that a row was read from, counted from 1 as an editor shows it.
   *
   * @param row index from 0
   */
  public long fileRow(int row) {
    return (long) rows.at(row);
  }

  /** Returns what a reader should know of the file's rows, and what was done about it. */
  public List<Remark> remarks() {
    return remarks;
  }

  /** Returns how each column of the file was understood, then those that were made from others. */
  public List<Column> columns() {
    return columns;
  }

  /** Returns the comment lines of the file and the rows before its header. */
  public List<String> notes() {
    return notes;
  }
}
