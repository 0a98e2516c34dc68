package soakloop.log;

import soakloop.quantity.Unit;

/**
 * What a column was taken for.
 *
 * @param index of the column, from 0
 * @param signal what it is
 * @param unit of its cells
 * @param confidence how sure
 * @param reason why, where that is worth a word
 */
record Reading(int index, Signal signal, Unit unit, Confidence confidence, String reason) {
  /** The same with a weaker confidence and its reason. */
  Reading weaker(Confidence other, String why) {
    Confidence least = other.compareTo(confidence) > 0 ? other : confidence;
    return new Reading(index, signal, unit, least, reason.isEmpty() ? why : reason + "; " + why);
  }

  /** The same as another signal of the same unit. */
  Reading as(Signal other, Unit otherUnit) {
    return new Reading(index, other, otherUnit, confidence, reason);
  }
}
