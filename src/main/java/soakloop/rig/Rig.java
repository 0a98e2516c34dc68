package soakloop.rig;

import java.util.Optional;
import soakloop.fluid.Coolant;
import soakloop.quantity.Curve;

/**
 * All hardware of one car.
 *
 * @param coolant what fills the loop
 * @param engine the engine
 * @param blower the compressor
 * @param boost gauge pressure after the core that is held at full load, Pa over engine speed in
 *     rev/s; empty if it is what the engine makes of the blower's air
 * @param plenum plenum and runner metal, tied to the engine coolant
 * @param sensor the charge temperature sensor
 * @param loop the coolant loop
 * @param airflow air through the heat exchangers
 * @param underhood air around the loop
 */
public record Rig(
    Coolant coolant,
    Engine engine,
    Blower blower,
    Optional<Curve> boost,
    DuctMetal plenum,
    Sensor sensor,
    Loop loop,
    Airflow airflow,
    Underhood underhood) {}
