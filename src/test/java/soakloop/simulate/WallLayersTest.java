package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.fluid.Water;
import soakloop.rig.Hose;
import soakloop.rig.Materials;

/** How a hose's wall is cut into layers. */
@Tag("analytic")
class WallLayersTest {
  private static final int CELLS = 4;
  private static final double COLD = 293.15;
  private static final double HOT = 333.15;

  private static CellChain chain(Materials.HoseWall material, double wall, int layers) {
    Hose hose = new Hose("hose", 1.5, 19e-3, material.thick(wall), 12, CELLS, layers);
    return new CellChain(Water.INSTANCE, COLD).hose(hose);
  }

  private static int states(Materials.HoseWall material, double wall, int layers) {
    return chain(material, wall, layers).getDimension();
  }

  @Test
  void wallHasTheLayersAskedForUnlessTheyWouldBeTooQuick() {
    assertEquals(CELLS * (1 + 3), states(Materials.HoseWall.RUBBER, 4e-3, 3));
    assertEquals(CELLS * (1 + 20), states(Materials.HoseWall.RUBBER, 4e-3, 20));
    assertEquals(CELLS * (1 + 1), states(Materials.HoseWall.STEEL, 1e-3, 3));
    assertEquals(CELLS * (1 + 1), states(Materials.HoseWall.ALUMINIUM, 1.5e-3, 3));
    assertTrue(states(Materials.HoseWall.RUBBER, 0.5e-3, 50) < CELLS * (1 + 12));
    assertTrue(states(Materials.HoseWall.ALUMINIUM, 20e-3, 50) < CELLS * (1 + 25));
    assertEquals(CELLS, states(Materials.HoseWall.ALUMINIUM, 1.5e-3, 0));
  }

  /** Hot water into a cold hose: what leaves settles on one answer as the layers get finer. */
  @Test
  void moreLayersCloseInOnOneAnswer() {
    double finest = leaving(24);
    double coarse = Math.abs(leaving(3) - finest);
    double middle = Math.abs(leaving(6) - finest);
    double fine = Math.abs(leaving(12) - finest);
    assertTrue(middle < coarse / 2 && fine < middle / 2, coarse + " " + middle + " " + fine);
    assertTrue(coarse < 0.05 * (HOT - finest), coarse + " of " + (HOT - finest));
  }

  private static double leaving(int layers) {
    CellChain chain =
        chain(Materials.HoseWall.RUBBER, 4e-3, layers)
            .around(COLD, 0)
            .fed(t -> HOT, t -> 0.1)
            .within(1e-7)
            .from(COLD);
    return chain.leaving(chain.at(20)[0]);
  }
}
