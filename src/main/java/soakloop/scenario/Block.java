package soakloop.scenario;

/**
 * The block of an exchanger without its tanks.
 *
 * @param along extent of the face along the coolant's way, m
 * @param across extent of the face across it, m
 * @param depth thickness that the air passes through, m
 */
record Block(double along, double across, double depth) {
  /** What stands for a block where none is given or its size is wrong. */
  static final Block NONE = new Block(0, 0, 0);

  double face() {
    return along * across;
  }

  double volume() {
    return face() * depth;
  }

  /** Returns whether there is one. */
  boolean known() {
    return volume() > 0;
  }
}
