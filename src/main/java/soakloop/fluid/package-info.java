/** Air and coolant properties. */
@NullMarked
package soakloop.fluid;

import org.jspecify.annotations.NullMarked;
