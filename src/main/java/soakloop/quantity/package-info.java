/** Units, at the border only; inside everything is SI {@code double}. */
@NullMarked
package soakloop.quantity;

import org.jspecify.annotations.NullMarked;
