/** State layout, derivatives, integration, events, energy ledger and the {@code Trace}. */
@NullMarked
package soakloop.simulate;

import org.jspecify.annotations.NullMarked;
