/**
 * Units, at the border only; inside everything is SI {@code double}. Also the smallest shared
 * values.
 */
@NullMarked
package soakloop.quantity;

import org.jspecify.annotations.NullMarked;
