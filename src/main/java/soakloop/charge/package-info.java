/** Blower work, boost from pulleys, ambient correction and spark: pure functions with sources. */
@NullMarked
package soakloop.charge;

import org.jspecify.annotations.NullMarked;
