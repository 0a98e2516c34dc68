package soakloop.invented;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soakloop.invented.MeshExchanger.Film;
import soakloop.invented.TruthCar.Mesh;

/** The generator's parts against exact solutions, and its mesh and step against finer ones. */
class TruthModelTest {

  /**
   * Steady effectiveness of the mesh against the exact series for crossflow with both streams
   * unmixed (Mason, 1955), values summed to 30 digits; even air. Upwind coolant costs the mesh up
   * to 0.6 % at a capacity ratio of 1, less below.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.25, 0.58801133",
    "1, 0.5, 0.54748983",
    "2, 0.5, 0.73240925",
    "1, 1, 0.47622239"
  })
  @Tag("analytic")
  void meshSettlesAtTheExactCrossflowEffectiveness(double ntu, double ratio, double exact) {
    double capacity = 400;
    double cp = 1000;
    double coolantPerVolume = 4e6;
    double flow = capacity / ratio / coolantPerVolume;
    double film = ntu * capacity;
    MeshExchanger.Shape shape =
        new MeshExchanger.Shape(
            48,
            48,
            1,
            new Film(film / 0.6, capacity / cp, 0.6),
            new Film(film / 0.4, flow, 0.6),
            2000,
            0.4e-3,
            0);
    MeshExchanger mesh = new MeshExchanger(shape, coolantPerVolume, 0);
    double taken = 0;
    for (int n = 0; n < 20_000; n++) {
      taken = mesh.step(0.002, capacity / cp, cp, 100, flow, 0, 1);
    }
    assertEquals(exact, taken / (capacity * 100), 0.01 * exact);
  }

  /** Coolant that enters hotter leaves after the hose's volume has passed, and not before. */
  @Test
  @Tag("analytic")
  void hoseDeliversTheFrontAfterItsVolumeHasPassed() {
    PlugHose.Shape shape = new PlugHose.Shape(1.8, 0.019, 0.004, 12, 10);
    PlugHose hose = new PlugHose(shape, 3.82e6, 20);
    double flow = 24.0 / 60000;
    double dt = 0.005;
    double arrival = 0;
    while (hose.out() < 20.5) {
      hose.step(dt, flow, 60, 20);
      arrival += dt;
    }
    assertEquals(shape.volume() / flow, arrival, 2 * dt);
  }

  /** A finer mesh with half the step moves the first pull's peak by less than the logger shows. */
  @ParameterizedTest
  @CsvSource({"COOL_MORNING, 45", "DENSER_CORE, 45", "TRAFFIC_RECOVERY, 255"})
  @Tag("regression")
  void finerMeshAndHalfTheStepChangeLittle(InventedLog log, double until) {
    TruthRun shipped = run(log, Mesh.SHIPPED, until);
    TruthRun finer = run(log, new Mesh(36, 12, 24, 20, 0.0025), until);
    assertEquals(finer.sensorPeak(20, until), shipped.sensorPeak(20, until), 0.3);
    double pull = until - 12;
    assertEquals(finer.at(pull).coreOut(), shipped.at(pull).coreOut(), 0.3);
  }

  private static TruthRun run(InventedLog log, Mesh mesh, double until) {
    return TruthLoop.run(
        log.car().withMesh(mesh), log.duty(), log.start(), mesh.step(), until, 0.1);
  }
}
