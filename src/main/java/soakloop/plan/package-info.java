/** Plans: when the car can go again, an evening of rounds, pulls that start alike. */
@NullMarked
package soakloop.plan;

import org.jspecify.annotations.NullMarked;
