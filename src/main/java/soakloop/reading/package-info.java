/**
 * What a log shows: the true updates of its channels, what can be trusted, pulls and waits, two
 * files joined, effectiveness.
 *
 * <p>Thresholds are common practice, no source, unless one is named beside them; each stands with
 * its reason where it is used.
 */
@NullMarked
package soakloop.reading;

import org.jspecify.annotations.NullMarked;
