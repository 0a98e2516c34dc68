package soakloop.session;

import soakloop.charge.Compression;
import soakloop.charge.EnginePower;
import soakloop.fluid.MoistAir;
import soakloop.quantity.Bracket;
import soakloop.quantity.Curve;
import soakloop.rig.Blower;
import soakloop.rig.Day;
import soakloop.rig.Rig;

/**
 * Power at the wheels from the air that the blower moves, before any run.
 *
 * <p>The same balance as in a run, at a charge {@value #CHARGE_ABOVE_DAY} K above the day (our own
 * judgement): with a stated boost the charge does not count, with boost from pulleys it moves the
 * pressure ratio, and with it leakage and the blower's work, by a few per cent. What the core takes
 * of the boost is left out.
 *
 * @param rig blower and engine
 * @param day the air
 * @param power what is made of the air
 */
public record AirPower(Rig rig, Day day, EnginePower power) {
  private static final double CHARGE_ABOVE_DAY = 25;
  private static final double GREATEST = 20;
  private static final int POINTS = 17;

  /**
   * Returns power at the wheels.
   *
   * @param from lowest engine speed, rev/s
   * @param to highest engine speed, rev/s, above it
   * @return W over rev/s; not above zero where the blower takes more than its air gives
   */
  public Curve atWheels(double from, double to) {
    double[] speeds = new double[POINTS];
    double[] watts = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      speeds[i] = from + (to - from) * i / (POINTS - 1);
      watts[i] = power.wheels(crank(speeds[i]));
    }
    return Curve.of(speeds, watts);
  }

  private double crank(double engineSpeed) {
    Blower blower = rig.blower();
    double gas = MoistAir.of(day.temperature(), day.pressure(), day.humidity()).gasConstant();
    double inlet = day.pressure() - blower.inletLoss();
    double temperature = day.temperature() + blower.inletPickUp();
    double density = inlet / (gas * temperature);
    double ratio =
        rig.boost().isPresent()
            ? (day.pressure() + rig.boost().get().at(engineSpeed)) / inlet
            : ratio(engineSpeed, density, inlet, gas);
    double held = Math.max(1, Math.min(GREATEST, ratio));
    double air = Math.max(0, blower.delivery().massFlow(engineSpeed, density, held));
    double work = Compression.specificWork(temperature, held, blower.efficiency(held, engineSpeed));
    return power.gross(air) - air * work / blower.mechanicalEfficiency();
  }

  /** Returns the pressure ratio at which the engine swallows the blower's air. */
  private double ratio(double engineSpeed, double density, double inlet, double gas) {
    double swallowed = rig.engine().swallowedVolume(engineSpeed);
    double charge = day.temperature() + CHARGE_ABOVE_DAY;
    java.util.function.DoubleUnaryOperator wanting =
        r ->
            rig.blower().delivery().massFlow(engineSpeed, density, r) * gas * charge / swallowed
                - r * inlet;
    if (wanting.applyAsDouble(1) <= 0) {
      return 1;
    }
    return wanting.applyAsDouble(GREATEST) >= 0 ? GREATEST : Bracket.root(1, GREATEST, wanting);
  }
}
