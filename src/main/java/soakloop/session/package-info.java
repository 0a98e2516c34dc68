/**
 * What the car does: settle, idle, pull, pass, wait, cruise, replay; inputs as functions of time.
 */
@NullMarked
package soakloop.session;

import org.jspecify.annotations.NullMarked;
