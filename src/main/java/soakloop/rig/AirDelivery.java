package soakloop.rig;

import soakloop.charge.BlowerSize;
import soakloop.quantity.Curve;

/** How much air a closed-bypass compressor moves at an engine speed. */
public sealed interface AirDelivery {
  /**
   * Returns the air mass flow.
   *
   * @param engineSpeed rev/s
   * @param inletDensity density at the inlet, kg/m3
   * @param pressureRatio outlet over inlet, 1 or more
   * @return kg/s
   */
  double massFlow(double engineSpeed, double inletDensity, double pressureRatio);

  /**
   * Returns how fast the compressor turns; the engine's speed where that is not known.
   *
   * @param engineSpeed rev/s
   * @return rev/s
   */
  double speed(double engineSpeed);

  /**
   * A blower that moves its displacement with each turn, less what leaks back.
   *
   * @param size the blower and its drive
   */
  record PositiveDisplacement(BlowerSize size) implements AirDelivery {
    /** Pressure ratio at which a volumetric efficiency is stated. */
    public static final double STATED_AT = 2;

    /**
     * Returns a blower whose volumetric efficiency is known at a pressure ratio of {@link
     * #STATED_AT}.
     *
     * @param displacement m3 per revolution of the blower
     * @param driveRatio turns of the blower per turn of the engine
     * @param volumetricEfficiency share of the displacement that is delivered
     * @param leakage fall of that share for each 1 that the pressure ratio rises, 0 to 1
     */
    public static PositiveDisplacement of(
        double displacement, double driveRatio, double volumetricEfficiency, double leakage) {
      double fill = volumetricEfficiency + leakage * (STATED_AT - 1);
      return new PositiveDisplacement(new BlowerSize(displacement, driveRatio, fill, leakage));
    }

    @Override
    public double massFlow(double engineSpeed, double inletDensity, double pressureRatio) {
      return size.volumeFlow(engineSpeed, pressureRatio) * inletDensity;
    }

    @Override
    public double speed(double engineSpeed) {
      return size.driveRatio() * engineSpeed;
    }
  }

  /**
   * Any compressor whose air mass is known over engine speed.
   *
   * @param overEngineSpeed kg/s over rev/s
   */
  record Stated(Curve overEngineSpeed) implements AirDelivery {
    @Override
    public double massFlow(double engineSpeed, double inletDensity, double pressureRatio) {
      return overEngineSpeed.at(engineSpeed);
    }

    @Override
    public double speed(double engineSpeed) {
      return engineSpeed;
    }
  }
}
