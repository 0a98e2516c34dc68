package soakloop.rig;

import java.util.Optional;
import soakloop.exchange.FluidState;
import soakloop.exchange.GeometricCore;
import soakloop.fluid.Coolant;
import soakloop.quantity.Require;

/**
 * A conductance worked out from fins, tubes and plates, with both fluids' properties at their
 * running temperatures.
 *
 * @param core what it is worked out from
 * @param unevenAir standard deviation of the air speed over the face, over its mean [-], 0 to 1
 * @param open share of the passages that takes part, above 0 to 1
 */
public record GeometricConductance(GeometricCore core, double unevenAir, double open)
    implements Conductance {
  /** Mass velocity at which the air side's exponent is taken, kg/(m2 s): a core at half load. */
  private static final double USUAL = 10;

  private static final double NUDGE = 1.05;
  private static final double USUAL_AIR = 350; // K
  private static final double USUAL_COOLANT = 318.15; // K

  /** Checks the spread. */
  public GeometricConductance {
    Require.within("spread of the air over the face", unevenAir, 0, 1);
    Require.positive("open share of the passages", Require.within("open share", open, 0, 1));
  }

  /**
   * Makes one of which all takes part.
   *
   * @param core what it is worked out from
   * @param unevenAir standard deviation of the air speed over the face, over its mean [-], 0 to 1
   */
  public GeometricConductance(GeometricCore core, double unevenAir) {
    this(core, unevenAir, 1);
  }

  @Override
  public GeometricConductance narrowed(double share) {
    return new GeometricConductance(core, unevenAir, share * open);
  }

  @Override
  public double airSide(double flow, double temperature) {
    return withHalfWall(flow == 0 ? 0 : open * core.airSide(flow, FluidState.ofAir(temperature)));
  }

  /**
   * {@inheritDoc}
   *
   * <p>Beyond the coolant's own range of temperatures its properties stay as they are at the end.
   */
  @Override
  public double coolantSide(double flow, double temperature, Coolant coolant) {
    double held =
        Math.max(coolant.minTemperature(), Math.min(coolant.maxTemperature(), temperature));
    return withHalfWall(
        open * core.coolantSide(flow / open * coolant.density(held), FluidState.of(coolant, held)));
  }

  @Override
  public double airExponent() {
    double flow = usualAirFlow();
    FluidState air = FluidState.ofAir(USUAL_AIR);
    double rise = core.airSide(NUDGE * flow, air) / core.airSide(flow, air);
    return Math.max(0, Math.min(1, Math.log(rise) / Math.log(NUDGE)));
  }

  @Override
  public boolean followsTemperature() {
    return true;
  }

  @Override
  public Optional<GeometricCore> geometry() {
    return Optional.of(core);
  }

  /** Returns an air flow that is usual for its face, kg/s: 10 kg/s for each m2 of free area. */
  public double usualAirFlow() {
    return USUAL * core.geometry().air().freeArea();
  }

  /**
   * Returns the overall conductance, evenly spread air, at 350 K of air and 45 degC of coolant.
   *
   * @param air air flow, kg/s
   * @param coolantFlow coolant flow, m3/s
   * @param coolant which coolant
   * @return W/K
   */
  public double overall(double air, double coolantFlow, Coolant coolant) {
    double a = airSide(air, USUAL_AIR);
    double c = coolantSide(coolantFlow, USUAL_COOLANT, coolant);
    return a == 0 || c == 0 ? 0 : a * c / (a + c);
  }

  private double withHalfWall(double film) {
    return film == 0 ? 0 : 1 / (1 / film + core.wallResistance() / (2 * open));
  }
}
