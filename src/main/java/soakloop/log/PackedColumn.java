package soakloop.log;

import java.util.ArrayList;
import java.util.List;

/**
 * A column of numbers in little memory: mostly one or two bytes a value, and none where values go
 * in even steps. Built row by row; exact.
 */
final class PackedColumn implements Series {
  private static final int SHIFT = 10;

  /** Rows in a chunk. */
  static final int CHUNK = 1 << SHIFT;

  private final Chunk[] chunks;
  private final int size;
  private final double lowest;
  private final double highest;

  private PackedColumn(List<Chunk> chunks, int size, double lowest, double highest) {
    this.chunks = chunks.toArray(Chunk[]::new);
    this.size = size;
    this.lowest = lowest;
    this.highest = highest;
  }

  @Override
  public double lowest() {
    return lowest;
  }

  /** Returns a bound that no value is above. */
  double highest() {
    return highest;
  }

  @Override
  public int size() {
    return size;
  }

  @Override
  public double at(int row) {
    return chunks[row >>> SHIFT].at(row & CHUNK - 1);
  }

  /** Collects a column. */
  static final class Builder {
    /** Largest whole number whose neighbours are whole numbers too. */
    private static final long EXACT = 1L << 53;

    private static final int MOST_DECIMALS = 18;
    private static final int FEW_DECIMALS = 9;
    private static final byte MISSING = -1;
    private static final byte RAW = -2;

    private final List<Chunk> done = new ArrayList<>();
    private final long[] mantissas = new long[CHUNK];
    private final byte[] decimals = new byte[CHUNK];
    private int n;
    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = Double.NEGATIVE_INFINITY;

    /** Returns the number of rows so far. */
    int size() {
      return done.size() * CHUNK + n;
    }

    /** Adds {@code mantissa / 10^places}. */
    void add(long mantissa, int places) {
      if (places < 0 || places > MOST_DECIMALS || mantissa > EXACT || mantissa < -EXACT) {
        add(Double.parseDouble(mantissa + "e" + -places));
        return;
      }
      put(mantissa, (byte) places);
    }

    /** Adds any number; NaN is a missing one. */
    void add(double value) {
      if (Double.isNaN(value)) {
        put(0, MISSING);
        return;
      }
      for (int places = 0; places <= FEW_DECIMALS; places++) {
        double mantissa = Math.rint(value * PowersOfTen.of(places));
        if (Math.abs(mantissa) < EXACT && mantissa / PowersOfTen.of(places) == value) {
          put((long) mantissa, (byte) places);
          return;
        }
      }
      put(Double.doubleToRawLongBits(value), RAW);
    }

    /** Adds a row without a value. */
    void addMissing() {
      put(0, MISSING);
    }

    /** Takes the last row back, once. */
    void dropLast() {
      n--;
    }

    private void put(long mantissa, byte places) {
      if (n == CHUNK) {
        seal();
      }
      mantissas[n] = mantissa;
      decimals[n++] = places;
    }

    /** Ends the column. */
    PackedColumn build() {
      int size = size();
      if (n > 0) {
        seal();
      }
      return new PackedColumn(done, size, lowest, highest);
    }

    private void seal() {
      int most = decimals[0];
      int least = decimals[0];
      for (int i = 1; i < n; i++) {
        most = Math.max(most, decimals[i]);
        least = Math.min(least, decimals[i]);
      }
      boolean whole = least != RAW && (least == most || align(most));
      done.add(whole ? packed(most, least == MISSING) : raw());
      n = 0;
    }

    /** Brings all values to one number of decimals; false if one gets too long. */
    private boolean align(int places) {
      for (int i = 0; i < n; i++) {
        if (decimals[i] != MISSING && decimals[i] != places) {
          long scale = PowersOfTen.whole(places - decimals[i]);
          if (Math.abs(mantissas[i]) > EXACT / scale) {
            return false;
          }
          mantissas[i] *= scale;
          decimals[i] = (byte) places;
        }
      }
      return true;
    }

    private Chunk packed(int places, boolean gaps) {
      if (places == MISSING) {
        return new Chunk.Missing();
      }
      long low = Long.MAX_VALUE;
      long high = Long.MIN_VALUE;
      for (int i = 0; i < n; i++) {
        if (!gaps || decimals[i] != MISSING) {
          low = Math.min(low, mantissas[i]);
          high = Math.max(high, mantissas[i]);
        }
      }
      double divisor = PowersOfTen.of(places);
      widen(low / divisor);
      widen(high / divisor);
      if (!gaps && isEven()) {
        return new Chunk.Even(mantissas[0], n > 1 ? mantissas[1] - mantissas[0] : 0, divisor);
      }
      return offsets(low - 1, high - low + 1, divisor);
    }

    private Chunk offsets(long base, long most, double divisor) {
      if (most <= 0xff) {
        byte[] above = new byte[n];
        for (int i = 0; i < n; i++) {
          above[i] = decimals[i] == MISSING ? 0 : (byte) (mantissas[i] - base);
        }
        return new Chunk.Bytes(base, above, divisor);
      }
      if (most <= 0xffff) {
        short[] above = new short[n];
        for (int i = 0; i < n; i++) {
          above[i] = decimals[i] == MISSING ? 0 : (short) (mantissas[i] - base);
        }
        return new Chunk.Shorts(base, above, divisor);
      }
      if (most <= 0xffffffffL) {
        int[] above = new int[n];
        for (int i = 0; i < n; i++) {
          above[i] = decimals[i] == MISSING ? 0 : (int) (mantissas[i] - base);
        }
        return new Chunk.Ints(base, above, divisor);
      }
      return raw();
    }

    private boolean isEven() {
      for (int i = 2; i < n; i++) {
        if (mantissas[i] - mantissas[i - 1] != mantissas[1] - mantissas[0]) {
          return false;
        }
      }
      return true;
    }

    private Chunk raw() {
      double[] values = new double[n];
      for (int i = 0; i < n; i++) {
        values[i] =
            switch (decimals[i]) {
              case MISSING -> Double.NaN;
              case RAW -> Double.longBitsToDouble(mantissas[i]);
              default -> mantissas[i] / PowersOfTen.of(decimals[i]);
            };
        if (decimals[i] != MISSING) {
          widen(values[i]);
        }
      }
      return new Chunk.Doubles(values);
    }

    private void widen(double value) {
      lowest = Math.min(lowest, value);
      highest = Math.max(highest, value);
    }
  }
}
