package soakloop.rig;

/**
 * How often the coolant crosses the air.
 *
 * @param count number of passes, 1 to 8
 * @param arranged how they lie
 */
public record Passes(int count, Arranged arranged) {
  /** One pass. */
  public static final Passes ONE = new Passes(1, Arranged.DEPTH);

  /** How passes lie to the air. */
  public enum Arranged {
    /** One behind the other through the depth, last first: counterflow overall. */
    DEPTH,
    /** Side by side on the face, each through the whole depth. */
    FACE
  }

  /** Checks the parts. */
  public Passes {
    if (count < 1 || count > 8) {
      throw new IllegalArgumentException("passes must be 1 to 8, not " + count);
    }
  }
}
