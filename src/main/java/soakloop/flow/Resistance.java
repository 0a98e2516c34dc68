package soakloop.flow;

import java.util.List;
import soakloop.quantity.Require;

/**
 * Something that a flow loses pressure in.
 *
 * <p>The loss is 0 without flow and never falls with flow. Flow is never negative here: a loop
 * flows the way its pump pushes.
 */
@FunctionalInterface
public interface Resistance {
  /**
   * Pressure lost.
   *
   * @param flow m3/s, 0 or more
   * @param liquid the fluid at its temperature
   * @return Pa; infinite for any flow through something that is shut
   */
  double loss(double flow, Liquid liquid);

  /** Costs nothing. */
  Resistance NONE = (flow, liquid) -> 0;

  /** Lets nothing through. */
  Resistance BLOCKED = (flow, liquid) -> flow == 0 ? 0 : Double.POSITIVE_INFINITY;

  /**
   * A pipe or hose with its fittings: dp = (f L / D + K) rho v^2 / 2, f by {@link PipeFriction}.
   *
   * @param length m
   * @param diameter bore, m
   * @param roughness m
   * @param fittings sum of loss factors [-] ({@link Fittings})
   */
  record Pipe(double length, double diameter, double roughness, double fittings)
      implements Resistance {
    /** Checks the parts. */
    public Pipe {
      Require.notNegative("pipe length", length);
      Require.positive("pipe diameter", diameter);
      Require.within("pipe roughness", roughness, 0, 0.1 * diameter);
      Require.notNegative("sum of loss factors", fittings);
    }

    @Override
    public double loss(double flow, Liquid liquid) {
      if (Require.notNegative("flow", flow) == 0) {
        return 0;
      }
      double velocity = flow / (Math.PI / 4 * diameter * diameter);
      double reynolds = liquid.density() * velocity * diameter / liquid.viscosity();
      double drag = PipeFriction.churchill(reynolds, roughness / diameter) * length / diameter;
      return (drag + fittings) * liquid.density() * velocity * velocity / 2;
    }
  }

  /**
   * A loss known at one flow, going with a power of it; the liquid does not matter.
   *
   * @param loss Pa at {@code flow}
   * @param flow m3/s
   * @param exponent 1 (laminar) to 2 (fittings)
   */
  record KnownPoint(double loss, double flow, double exponent) implements Resistance {
    /** Checks the parts. */
    public KnownPoint {
      Require.notNegative("pressure loss", loss);
      Require.positive("flow of the pressure loss", flow);
      Require.within("exponent of the pressure loss", exponent, 1, 2);
    }

    @Override
    public double loss(double at, Liquid liquid) {
      return loss * Math.pow(Require.notNegative("flow", at) / flow, exponent);
    }
  }

  /**
   * A loss known at one flow of one liquid, going with powers of flow, viscosity and density: dp =
   * dp0 (Q/Q0)^n (mu/mu0)^(2-n) (rho/rho0)^(n-1).
   *
   * <p>Follows from a friction factor that goes with Re^(n-2) (dimensional analysis): n = 1 is
   * laminar flow, 1.75 the law of Blasius for smooth pipes, 2 fittings.
   *
   * @param point the known loss
   * @param reference the liquid it was known with
   */
  record KnownLiquid(KnownPoint point, Liquid reference) implements Resistance {
    @Override
    public double loss(double flow, Liquid liquid) {
      double n = point.exponent();
      return point.loss(flow, liquid)
          * Math.pow(liquid.viscosity() / reference.viscosity(), 2 - n)
          * Math.pow(liquid.density() / reference.density(), n - 1);
    }
  }

  /**
   * Passages side by side of which a share is shut, so that the rest carries all of the flow.
   *
   * @param whole with all passages open
   * @param open share of the passages that is open, above 0 to 1
   */
  record PartlyOpen(Resistance whole, double open) implements Resistance {
    /** Checks the share. */
    public PartlyOpen {
      Require.positive("open share", Require.within("open share", open, 0, 1));
    }

    @Override
    public double loss(double flow, Liquid liquid) {
      return whole.loss(flow / open, liquid);
    }
  }

  /**
   * One after the other: losses add.
   *
   * @param parts in any order
   */
  record Series(List<Resistance> parts) implements Resistance {
    /** Copies the list. */
    public Series {
      parts = List.copyOf(parts);
    }

    @Override
    public double loss(double flow, Liquid liquid) {
      double sum = 0;
      for (Resistance part : parts) {
        sum += part.loss(flow, liquid);
      }
      return sum;
    }
  }
}
