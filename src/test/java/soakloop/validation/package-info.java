/**
 * Checks against things outside the project, kept as data: the build runs each of them and writes
 * the table in {@code validation/README.md} from the same list.
 */
@NullMarked
package soakloop.validation;

import org.jspecify.annotations.NullMarked;
