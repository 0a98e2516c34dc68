package soakloop.log;

/** Powers of ten that are exact. */
final class PowersOfTen {
  private static final long[] WHOLE = new long[19];
  private static final double[] DOUBLE = new double[19];

  static {
    long power = 1;
    for (int i = 0; i < WHOLE.length; i++) {
      WHOLE[i] = power;
      DOUBLE[i] = power;
      power *= 10;
    }
  }

  private PowersOfTen() {}

  /** Returns ten to a power from 0 to 18. */
  static long whole(int power) {
    return WHOLE[power];
  }

  /** Returns ten to a power from 0 to 18. */
  static double of(int power) {
    return DOUBLE[power];
  }
}
