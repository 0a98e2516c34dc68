package soakloop.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import soakloop.rig.Rig;
import soakloop.session.Phase;
import soakloop.session.Session;

/**
 * The model's Jacobian against differences of its derivatives, and the balance that keeps the
 * ledger exact.
 */
@Tag("analytic")
class ModelJacobianTest {
  private static final int RIGS = 60;

  /** Rigs from this seed on have ice, layers and a chiller. */
  private static final int ICED = 1000;

  private static final double STEP = 1e-5; // K

  /**
   * What the Jacobian leaves out: the flow's density at the pump (that column is not compared), and
   * by how much a temperature changes otherwise than its theta, as a share of a row's largest
   * entry.
   */
  private static final double LEFT_OUT = 0.04;

  @Test
  void entriesAreTheDerivativesSlopes() throws SimulationException {
    for (int seed : seeds()) {
      Case drawn = new Case(seed);
      double[][] given = drawn.given();
      double[] before = drawn.model.computeDerivatives(1, drawn.y);
      int ledger = drawn.model.dynamicStates();
      for (int j = 0; j < ledger; j++) {
        if (drawn.isPump(j)) {
          continue;
        }
        double[] moved = drawn.y.clone();
        moved[j] += STEP;
        double[] after = drawn.model.computeDerivatives(1, moved);
        for (int i = 0; i < ledger; i++) {
          double slope = (after[i] - before[i]) / STEP;
          double scale = Arrays.stream(given[i]).map(Math::abs).max().orElseThrow();
          assertEquals(slope, given[i][j], LEFT_OUT * scale, "seed " + seed + " " + i + "," + j);
        }
      }
    }
  }

  /** Heat that leaves one state arrives in another or in the ledger, column by column. */
  @Test
  void everyColumnBalances() throws SimulationException {
    for (int seed : seeds()) {
      Case drawn = new Case(seed);
      double[][] given = drawn.given();
      double[] capacity = drawn.capacities();
      Ledger ledger = drawn.model.ledger();
      for (int j = 0; j < drawn.model.dynamicStates(); j++) {
        double gained = 0;
        double moved = 0;
        for (int i = 0; i < drawn.model.dynamicStates(); i++) {
          gained += capacity[i] * given[i][j];
          moved += Math.abs(capacity[i] * given[i][j]);
        }
        double booked =
            given[ledger.core()][j]
                + given[ledger.ducts()][j]
                + given[ledger.engine()][j]
                + given[ledger.underhood()][j]
                - given[ledger.ambient()][j]
                - given[ledger.chiller()][j];
        assertEquals(booked, gained, 1e-12 * (moved + 1), "seed " + seed + " column " + j);
      }
    }
  }

  private static int[] seeds() {
    return java.util.stream.IntStream.concat(
            java.util.stream.IntStream.rangeClosed(1, RIGS),
            java.util.stream.IntStream.rangeClosed(ICED, ICED + RIGS))
        .toArray();
  }

  /** A random rig in a random phase with its temperatures stirred. */
  private static final class Case {
    final LoopModel model;
    final double[] y;
    final Random random;

    Case(int seed) throws SimulationException {
      RandomRigs rigs = new RandomRigs(seed);
      random = new Random(seed);
      soakloop.rig.Day day = rigs.day();
      Rig plain = seed % 2 == 0 ? rigs.rig(day) : rigs.withWays(rigs.rig(day));
      Rig rig = seed >= ICED ? Iced.rig(rigs, plain) : plain;
      Phase phase = seed % 3 == 0 ? Phases.engineOff(30) : Phases.pull(rigs, 8);
      Session session = new Session(java.util.List.of(phase));
      soakloop.session.Start start =
          new soakloop.session.Start(
              java.util.OptionalDouble.empty(), java.util.OptionalDouble.of(300), 360);
      model = new LoopModel(rig, day, 360);
      y =
          InitialState.of(
              model, new Setup(day, rig, start, session, java.util.OptionalDouble.empty()));
      for (int i = 0; i < model.dynamicStates(); i++) {
        y[i] += 10 * random.nextDouble();
      }
      model.startPhase(phase, 0, y);
      if (model.iced().isPresent()) {
        new Icing(model).begin(phase, y);
      }
    }

    double[][] given() {
      double[][] given = new double[y.length][y.length];
      model.computeDerivatives(1, y);
      model.jacobian(y, (i, j, value) -> given[i][j] += value);
      return given;
    }

    boolean isPump(int state) {
      double before = model.leaving(model.pumpAt(), y);
      double[] moved = y.clone();
      moved[state] += 1;
      return model.leaving(model.pumpAt(), moved) != before;
    }

    /** Heat stored per kelvin of each state, J/K, from the model's own account of it. */
    double[] capacities() {
      double[] capacity = new double[model.dynamicStates()];
      for (int i = 0; i < capacity.length; i++) {
        double[] moved = y.clone();
        moved[i] += 100;
        Ledger.Stored more = model.stored(moved);
        Ledger.Stored now = model.stored(y);
        capacity[i] =
            (more.coolant()
                    - now.coolant()
                    + more.exchangers()
                    - now.exchangers()
                    + more.walls()
                    - now.walls()
                    + more.ducts()
                    - now.ducts()
                    + more.ice()
                    - now.ice())
                / 100;
      }
      return capacity;
    }
  }
}
