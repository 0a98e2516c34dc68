/** Scenario text to a checked {@code Scenario}, with errors that name file, line and column. */
@NullMarked
package soakloop.scenario;

import org.jspecify.annotations.NullMarked;
