/**
 * Which of several cores is better: all fitted together, run under the same conditions, and their
 * difference with its interval; where a difference of logs comes from; what would settle it.
 */
@org.jspecify.annotations.NullMarked
package soakloop.versus;
