package soakloop.versus;

/** Says which of two is better, once it is known how likely. */
final class Verdicts {
  private Verdicts() {}

  /**
   * Decides.
   *
   * @param better probability that the other is better by at least what was asked
   * @param worse probability that it is worse by as much
   * @param confidence from which on something is said to be so
   */
  static VersusResult.Verdict of(double better, double worse, double confidence) {
    if (better >= confidence) {
      return VersusResult.Verdict.BETTER;
    }
    return worse >= confidence ? VersusResult.Verdict.WORSE : VersusResult.Verdict.OPEN;
  }
}
