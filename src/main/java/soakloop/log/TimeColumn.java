package soakloop.log;

/**
 * The column that holds time, and how it does.
 *
 * @param index from 0
 * @param kind how its cells are written
 * @param confidence how sure
 * @param reason why, where that is worth a word
 */
record TimeColumn(int index, TimeKind kind, Confidence confidence, String reason) {}
