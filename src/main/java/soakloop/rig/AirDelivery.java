package soakloop.rig;

import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/** How much air a closed-bypass compressor moves at an engine speed. */
public sealed interface AirDelivery {
  /**
   * Returns the air mass flow.
   *
   * @param engineSpeed rev/s
   * @param inletDensity density at the inlet, kg/m3
   * @return kg/s
   */
  double massFlow(double engineSpeed, double inletDensity);

  /**
   * A blower that moves its displacement with each turn.
   *
   * @param displacement m3 per revolution of the blower
   * @param driveRatio turns of the blower per turn of the engine
   * @param volumetricEfficiency share of the displacement that is delivered, 0 to 1.2
   */
  record PositiveDisplacement(double displacement, double driveRatio, double volumetricEfficiency)
      implements AirDelivery {
    /** Checks the parts. */
    public PositiveDisplacement {
      Require.positive("blower displacement", displacement);
      Require.positive("drive ratio", driveRatio);
      Require.within("blower volumetric efficiency", volumetricEfficiency, 0.1, 1.2);
    }

    @Override
    public double massFlow(double engineSpeed, double inletDensity) {
      return displacement * driveRatio * engineSpeed * volumetricEfficiency * inletDensity;
    }
  }

  /**
   * Any compressor whose air mass is known over engine speed.
   *
   * @param overEngineSpeed kg/s over rev/s
   */
  record Stated(Curve overEngineSpeed) implements AirDelivery {
    @Override
    public double massFlow(double engineSpeed, double inletDensity) {
      return overEngineSpeed.at(engineSpeed);
    }
  }
}
