package soakloop.invented;

import soakloop.invented.TruthCar.Mesh;

/** The invented cars: what their owners would write down, and the true cars near it. */
final class Garage {
  private static final double PER_LITRE_PER_MINUTE = 1 / 60000.0;
  private static final double ALUMINIUM = 900;
  private static final double AIR_SHARE = 0.70;
  private static final double FRONT_AIR_SHARE = 0.78;

  /**
   * Heat exchanger conductance per volume at 2 m/s and 20 L/min, nominal [W/(m3 K)]: a plain unit
   * half hidden behind bumper and condenser, invented.
   */
  private static final double FRONT_PER_VOLUME = 32e3;

  private static final double FRONT_VELOCITY = 2.0;

  private Garage() {}

  /**
   * What an owner would write down about a core.
   *
   * @param conductance overall conductance at the reference [W/K]
   * @param mass [kg]
   * @param pressureLoss air pressure loss at 0.45 kg/s [Pa]
   */
  record Core(double conductance, double mass, double pressureLoss) {
    static final Core STANDARD = new Core(700, 3.4, 5500);
    static final Core DENSER = new Core(890, 4.1, 7800);
    static final Core STREET = new Core(450, 2.4, 5000);
  }

  /** The 4.1 L car of the dyno days. */
  static TruthCar dynoCar(Core core, Deviations off) {
    MeshExchanger.Shape shape =
        new MeshExchanger.Shape(
                24,
                24,
                2,
                1,
                0.5,
                0.58,
                1,
                25 * PER_LITRE_PER_MINUTE,
                0.55,
                core.mass * off.coreMass() * ALUMINIUM,
                0.9e-3,
                0.10)
            .withConductance(core.conductance * off.coreConductance(), AIR_SHARE);
    return new TruthCar(
            4.1e-3,
            0.80,
            new TrueBlower.Shape(1.7e-3, 2.35, 0.62 + off.efficiency(), 254.6, 0.92, 8100),
            shape,
            core.pressureLoss,
            front(0.660, 0.300, 3.6, 1.5e-3, off),
            0.660 * 0.300,
            new PlugHose.Shape(1.8, 0.019, 0.004, 12, 10),
            new PlugHose.Shape(1.5, 0.019, 0.004, 12, 10),
            5e-3,
            TruePump.through(60, 30, 42, 55, 26, off.pumpSpeed()),
            Coolant.thirtyPercent(),
            30,
            new Plenum.Shape(3800, 5600, 26, 45, 2.6, 1.6, 0.8, 22),
            new ChargeSensor.Shape(1.5, 0.035))
        .withMesh(Mesh.SHIPPED);
  }

  /** The 3.6 L car on the road. */
  static TruthCar streetCar(Deviations off) {
    Core core = Core.STREET;
    MeshExchanger.Shape shape =
        new MeshExchanger.Shape(
                24,
                24,
                1,
                1,
                0.4,
                0.58,
                1,
                20 * PER_LITRE_PER_MINUTE,
                0.55,
                core.mass * off.coreMass() * ALUMINIUM,
                0.55e-3,
                0.10)
            .withConductance(core.conductance * off.coreConductance(), AIR_SHARE);
    return new TruthCar(
            3.6e-3,
            0.82,
            new TrueBlower.Shape(1.32e-3, 2.5, 0.62 + off.efficiency(), 250, 0.92, 6800),
            shape,
            core.pressureLoss,
            front(0.560, 0.260, 2.6, 1.1e-3, off),
            0.560 * 0.260,
            new PlugHose.Shape(2.4, 0.017, 0.004, 12, 10),
            new PlugHose.Shape(2.0, 0.017, 0.004, 12, 10),
            2.2e-3,
            TruePump.through(32, 14, 26, 38, 16, off.pumpSpeed()),
            Coolant.fiftyPercent(),
            50,
            new Plenum.Shape(3100, 4700, 22, 38, 2.4, 1.5, 0.8, 18),
            new ChargeSensor.Shape(1.7, 0.04))
        .withMesh(Mesh.SHIPPED);
  }

  private static MeshExchanger.Shape front(
      double width, double height, double mass, double coolant, Deviations off) {
    double face = width * height;
    double conductance = FRONT_PER_VOLUME * face * 0.026 * off.frontConductance();
    return new MeshExchanger.Shape(
            24,
            6,
            1,
            1,
            FRONT_VELOCITY * face * 1.18,
            0.50,
            1,
            20 * PER_LITRE_PER_MINUTE,
            0.55,
            mass * ALUMINIUM,
            coolant,
            0.10)
        .withConductance(conductance, FRONT_AIR_SHARE);
  }
}
