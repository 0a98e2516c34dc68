package soakloop.rig;

import java.util.Optional;
import soakloop.flow.Resistance;
import soakloop.quantity.Require;

/**
 * The exchanger that gives the loop's heat to the outside air.
 *
 * @param name as the scenario calls it
 * @param exchanger its cells' make-up
 * @param faceArea area that the air meets, m2
 * @param behind name of the heat exchanger that the air leaves before it comes here, if any
 */
public record HeatExchanger(
    String name, Exchanger exchanger, double faceArea, Optional<String> behind)
    implements LoopElement {
  /** Makes one that meets fresh air. */
  public HeatExchanger(String name, Exchanger exchanger, double faceArea) {
    this(name, exchanger, faceArea, Optional.empty());
  }

  /** Checks the parts. */
  public HeatExchanger {
    Require.positive("heat exchanger face area", faceArea);
  }

  @Override
  public Resistance resistance() {
    return exchanger.coolantResistance().orElse(Resistance.NONE);
  }

  @Override
  public double coolantVolume() {
    return exchanger.coolantVolume();
  }
}
