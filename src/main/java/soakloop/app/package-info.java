/** Command line: the only room that prints, reads the clock or exits. */
@NullMarked
package soakloop.app;

import org.jspecify.annotations.NullMarked;
