package soakloop.log;

/**
 * Some consecutive values of a column, kept as small as they allow. Numbers of a text file are
 * whole multiples of a power of ten; a quotient of two such numbers below 2^53 and 10^22 is the
 * double nearest to the text, so nothing is lost.
 */
sealed interface Chunk {
  /** Returns the value at a place in it. */
  double at(int i);

  /** Nothing but missing values. */
  record Missing() implements Chunk {
    @Override
    public double at(int i) {
      return Double.NaN;
    }
  }

  /** Values in even steps: times, row numbers, and what does not change. */
  record Even(long base, long step, double divisor) implements Chunk {
    @Override
    public double at(int i) {
      return (base + i * step) / divisor;
    }
  }

  /** Values within 254 steps of each other; 0 stands for a missing one, as in the wider ones. */
  @SuppressWarnings("ArrayRecordComponent") // compared by nobody
  record Bytes(long base, byte[] above, double divisor) implements Chunk {
    @Override
    public double at(int i) {
      int a = above[i] & 0xff;
      return a == 0 ? Double.NaN : (base + a) / divisor;
    }
  }

  /** Values within 65,534 steps of each other. */
  @SuppressWarnings("ArrayRecordComponent")
  record Shorts(long base, short[] above, double divisor) implements Chunk {
    @Override
    public double at(int i) {
      int a = above[i] & 0xffff;
      return a == 0 ? Double.NaN : (base + a) / divisor;
    }
  }

  /** Values within some four thousand million steps of each other. */
  @SuppressWarnings("ArrayRecordComponent")
  record Ints(long base, int[] above, double divisor) implements Chunk {
    @Override
    public double at(int i) {
      long a = above[i] & 0xffffffffL;
      return a == 0 ? Double.NaN : (base + a) / divisor;
    }
  }

  /** Anything else. */
  @SuppressWarnings("ArrayRecordComponent")
  record Doubles(double[] values) implements Chunk {
    @Override
    public double at(int i) {
      return values[i];
    }
  }
}
