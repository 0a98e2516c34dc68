package soakloop.flow;

import java.util.List;
import soakloop.quantity.Require;

/**
 * Air through a heat exchanger behind a grille: road speed, a shop fan and the car's fan work
 * together against the resistance of core and duct.
 *
 * <p>Equation: rho/2 V^2 dCp + capture rho/2 Vs^2 + dp_fan(Q) = zeta rho/2 (Q / A)^2. One flow
 * balances all of them ({@link FlowSolver}). Source: momentum balance along the cooling duct as
 * usual in vehicle cooling; adding the shop fan's dynamic head to the road's is an assumption of
 * this project (on a dyno the car stands, on the road there is no shop fan).
 *
 * @param faceArea A, m2
 * @param resistance zeta, loss factor of core and duct on the face velocity [-]
 * @param pressureCoefficient dCp, difference of the pressure coefficients before and behind [-],
 *     0.5 to 1 is common practice
 */
public record RamAir(double faceArea, double resistance, double pressureCoefficient) {
  /** Not used by the loss, which goes with the square. */
  private static final double VISCOSITY = 1.8e-5;

  /** Checks the parts. */
  public RamAir {
    Require.positive("face area", faceArea);
    Require.positive("loss factor of core and duct", resistance);
    Require.within("pressure coefficient difference", pressureCoefficient, 0, 2);
  }

  /**
   * Face over road velocity from road speed alone: sqrt(dCp / zeta).
   *
   * @return share [-]; from memory, cars lie between 0.1 and 0.25
   */
  public double roadShare() {
    return Math.sqrt(pressureCoefficient / resistance);
  }

  /**
   * What moves the air.
   *
   * @param roadSpeed m/s, 0 or more
   * @param shopFanSpeed air speed of the shop fan at the grille, m/s, 0 or more
   * @param capture share of the shop fan's dynamic head that the grille catches [-], 0 to 1
   * @param carFan the car's fan; {@link Mover.Off} if it stands
   */
  public record Wind(double roadSpeed, double shopFanSpeed, double capture, Mover carFan) {
    /** Checks the parts. */
    public Wind {
      Require.notNegative("road speed", roadSpeed);
      Require.notNegative("shop fan air speed", shopFanSpeed);
      Require.within("capture", capture, 0, 1);
    }
  }

  /**
   * The operating point.
   *
   * @param wind what moves the air
   * @param density of the air, kg/m3, above 0
   * @return volume flow through the face in m3/s, or why there is none
   */
  public OperatingPoint solve(Wind wind, double density) {
    Require.positive("air density", density);
    double head = density / 2 * wind.roadSpeed() * wind.roadSpeed() * pressureCoefficient;
    double shop = density / 2 * wind.shopFanSpeed() * wind.shopFanSpeed() * wind.capture();
    Mover mover = new Mover.InSeries(List.of(new Mover.Constant(head + shop), wind.carFan()));
    return FlowSolver.solve(mover, this::loss, new Liquid(density, VISCOSITY));
  }

  private double loss(double flow, Liquid air) {
    double velocity = flow / faceArea;
    return resistance * air.density() / 2 * velocity * velocity;
  }
}
