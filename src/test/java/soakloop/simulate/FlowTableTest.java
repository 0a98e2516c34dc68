package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.exchange.CoreGeometry;
import soakloop.exchange.DuctShape;
import soakloop.exchange.GeometricCore;
import soakloop.exchange.LaminarHeating;
import soakloop.exchange.LouvredFin;
import soakloop.exchange.Metal;
import soakloop.exchange.OffsetStripFin;
import soakloop.exchange.PlainFin;
import soakloop.exchange.PlateFinGeometry;
import soakloop.exchange.TubeFinGeometry;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.rig.GeometricConductance;

/** What lies between the table's places against the correlations themselves. */
@Tag("analytic")
class FlowTableTest {
  private static final Coolant COOLANT = GlycolMix.ofVolume(Glycol.ETHYLENE, 0.3);

  private static final List<CoreGeometry> CORES =
      List.of(
          new PlateFinGeometry(
              0.36,
              0.055,
              17,
              new OffsetStripFin(1.4e-3, 6.9e-3, 0.1e-3, 3.2e-3),
              new PlainFin(1.9e-3, 2.4e-3, 0.12e-3),
              0.5e-3,
              5e-3,
              2,
              Metal.ALUMINIUM),
          new TubeFinGeometry(
              0.66,
              0.026,
              29,
              new LouvredFin(
                  1.6e-3, 7.9e-3, 0.08e-3, new LouvredFin.Louvres(1.2e-3, 6.7e-3, 0.45, 2.1e-3)),
              new DuctShape.Rectangular(6e-3, 1.5e-3),
              6.4e-3,
              0.3e-3,
              1,
              LaminarHeating.WALL_FLUX,
              Metal.ALUMINIUM));

  /** Flows from creeping to far past the passage to turbulent, every 1.3 %. */
  private static double worst(FlowTable.Law law, double from, double to, double... temperatures) {
    FlowTable table = new FlowTable(law);
    double worst = 0;
    for (double t : temperatures) {
      for (double flow = from; flow < to; flow *= 1.013) {
        worst = Math.max(worst, Math.abs(table.at(flow, t) / law.at(flow, t) - 1));
      }
    }
    return worst;
  }

  /** Two per cent is where coolant turns turbulent and gains tenfold; elsewhere it is far less. */
  @Test
  void sidesOfCoresAreClose() {
    for (CoreGeometry geometry : CORES) {
      GeometricConductance conductance = new GeometricConductance(new GeometricCore(geometry), 0);
      double air = worst(conductance::airSide, 1e-3, 3, 251, 301, 333, 377, 414);
      assertTrue(air < 1e-3, "air " + air);
      ExchangerSides sides = new ExchangerSides(conductance, COOLANT);
      double coolant = 0;
      for (double t : new double[] {268, 283, 317, 352}) {
        for (double flow = 1e-5; flow < 5e-3; flow *= 1.013) {
          double law = conductance.coolantSide(flow, t, COOLANT);
          coolant = Math.max(coolant, Math.abs(sides.coolant(flow, t) / law - 1));
        }
      }
      assertTrue(coolant < 0.02, "coolant " + coolant);
    }
  }

  @Test
  void frictionIsWithinATenthOfAPercentButAtTheJointsOfLouvreFriction() {
    double offset =
        worst(
            (g, t) -> CORES.get(0).air().friction(g, soakloop.fluid.Air.viscosity(t)),
            0.5,
            60,
            301,
            361);
    assertTrue(offset < 1e-3, "offset strip " + offset);
    double louvre =
        worst(
            (g, t) -> CORES.get(1).air().friction(g, soakloop.fluid.Air.viscosity(t)),
            0.5,
            60,
            301,
            361);
    assertTrue(louvre < 0.02, "louvred " + louvre);
  }

  @Test
  void offTheGridTheLawItselfIsTaken() {
    FlowTable table = new FlowTable((flow, t) -> flow * t);
    assertEquals(1e-9 * 300, table.at(1e-9, 300), 0);
    assertEquals(1e9 * 300, table.at(1e9, 300), 0);
    assertEquals(0.3 * 90, table.at(0.3, 90), 0);
    assertEquals(0.3 * 900, table.at(0.3, 900), 0);
  }
}
