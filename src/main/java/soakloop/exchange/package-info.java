/** Effectiveness, conductance and friction: pure functions with sources. */
@NullMarked
package soakloop.exchange;

import org.jspecify.annotations.NullMarked;
