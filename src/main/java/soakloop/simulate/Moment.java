package soakloop.simulate;

import soakloop.session.Inputs;

/**
 * Everything known at one evaluation: boundary values first, then what each part found. A mutable
 * buffer, one per run, so that an evaluation allocates nothing.
 */
final class Moment {
  final Inputs inputs = new Inputs();

  // Boundaries, K and SI.
  double day;
  double underhood;
  double engineCoolant;
  double coolantFlow;
  double coolantMassFlow;
  double faceSpeed;
  double pumpPower;
  boolean engineRuns;
  boolean chillerOn;

  // Coolant on its way from one loop element to the next.
  /** Its enthalpy as a temperature, K; see {@link EnthalpyScale}. */
  double coolantTheta;

  // Charge air.
  double airMassFlow;
  double airCapacityRate;
  double boost;
  double inletAir;
  double blowerOutlet;
  double coreAirIn;
  double coreAirOut;
  double charge;

  /** Outlet over inlet pressure of the blower; 1 with the bypass open. */
  double pressureRatio;

  /** Shaft power of the blower, W. */
  double blowerPower;

  /** Pressure that charge air loses in the core, Pa; 0 if it is not known. */
  double coreLoss;

  /** Absolute pressure behind the core, Pa. */
  double corePressure;

  /** Water that condenses in the core, kg/s. */
  double condensate;

  // Heat flows, W.
  double heatCore;
  double heatDucts;
  double heatEngine;
  double heatUnderhood;
  double heatAmbient;
  double heatIce;
  double heatChiller;

  /** What drives the chillers, W. */
  double chillerPower;

  /** Ice in the tank, kg; NaN where none ever goes in. */
  double iceLeft = Double.NaN;

  void clearHeat() {
    heatCore = 0;
    heatDucts = 0;
    heatEngine = 0;
    heatUnderhood = 0;
    heatAmbient = 0;
    heatIce = 0;
    heatChiller = 0;
    chillerPower = 0;
  }
}
