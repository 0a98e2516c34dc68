package soakloop.rig;

import soakloop.flow.Resistance;

/** One piece of the coolant loop, in the order that the coolant meets it. */
public sealed interface LoopElement
    permits Reservoir, Pump, Hose, Core, HeatExchanger, Chiller, Branches {
  /** Returns the name that the scenario calls it by. */
  String name();

  /** Returns the coolant it holds, m3. */
  double coolantVolume();

  /** Returns what it costs the coolant in pressure. */
  Resistance resistance();
}
