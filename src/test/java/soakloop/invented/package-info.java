/**
 * A second, differently built model of a charge-cooler loop, used only to make the invented logs.
 *
 * <p>It shares no class with the program. It steps at a fixed few milliseconds with explicit
 * differences, carries hose coolant as plugs in a queue, marches air and coolant through fine
 * meshes with separate films instead of using effectiveness, and contains a little the program does
 * not: uneven air over a face, entrance films, blower leakage, a two-zone reservoir, a warming test
 * cell. Temperatures here are in degC; everything else is SI. Exponentials and powers use {@link
 * StrictMath} and random numbers {@link java.util.Random}, so that every Java makes the same bytes.
 */
@NullMarked
package soakloop.invented;

import org.jspecify.annotations.NullMarked;
