package soakloop.reading;

/** How sure a finding is. */
public enum Sureness {
  /** Nothing else explains it. */
  SURE,
  /** Other explanations are far-fetched. */
  LIKELY,
  /** Worth a look. */
  POSSIBLE
}
