/** CSV logs: channels, units and what each column means. */
@NullMarked
package soakloop.log;

import org.jspecify.annotations.NullMarked;
