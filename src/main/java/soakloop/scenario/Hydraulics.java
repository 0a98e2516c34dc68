package soakloop.scenario;

/** Where a loop's pressure losses come from, and so which keys of its pieces count. */
enum Hydraulics {
  /** Piece by piece: a pump by its curve or label meets them, or a flow divides by them. */
  PIECES,
  /** One known point of the whole loop. */
  PLUMBING,
  /** Nowhere: the flow is stated and does not divide. */
  NONE;

  /**
   * Returns whether a piece's keys of pressure count; notes those that must not be there.
   *
   * @param in the piece's section
   * @param keys its keys of pressure, none of them sections
   */
  boolean counts(In in, String... keys) {
    for (String key : keys) {
      if (this == PLUMBING) {
        in.refuse(key, "has no use beside plumbing; give one or the other");
      } else if (this == NONE) {
        in.idle(key);
      }
    }
    return this == PIECES;
  }
}
