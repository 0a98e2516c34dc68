/**
 * The hardware: blower, core, plenum, sensor, pump, hose, heat exchanger, reservoir, fan, engine.
 */
@NullMarked
package soakloop.rig;

import org.jspecify.annotations.NullMarked;
