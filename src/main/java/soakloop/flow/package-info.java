/** Friction, pumps, fans and where they meet a resistance: pure functions with sources. */
@NullMarked
package soakloop.flow;

import org.jspecify.annotations.NullMarked;
