package soakloop.invented;

import soakloop.invented.MeshExchanger.Film;
import soakloop.invented.TruthCar.Mesh;

/** The invented cars: what their owners would write down, and the true cars near it. */
final class Garage {
  private static final double PER_LITRE_PER_MINUTE = 1 / 60000.0;

  /** Heat capacity of aluminium [J/(kg K)]. */
  private static final double ALUMINIUM = 900;

  /** Share of the resistance on the air side, core and heat exchanger [-]. */
  private static final double AIR_SHARE = 0.70;

  private static final double FRONT_AIR_SHARE = 0.78;

  /**
   * Heat exchanger conductance per volume at 2 m/s and 20 L/min, nominal [W/(m3 K)]: a plain unit
   * half hidden behind bumper and condenser, invented.
   */
  private static final double FRONT_PER_VOLUME = 32e3;

  private static final double FRONT_VELOCITY = 2.0;
  private static final double FRONT_DENSITY = 1.18;
  private static final double FRONT_DEPTH = 0.026;

  /** Air over every face varies by this much about its mean [-]. */
  private static final double UNEVENNESS = 0.10;

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
    return new TruthCar(
        4.1e-3,
        0.80,
        new TrueBlower.Shape(1.7e-3, 2.35, 0.62 + off.efficiency(), 254.6, 0.92, 8100),
        core(core, 2, 0.5, 25, 0.9e-3, off),
        core.pressureLoss,
        front(0.660, 0.300, 3.6, 1.5e-3, off),
        0.660 * 0.300,
        hose(1.8, 0.019),
        hose(1.5, 0.019),
        5e-3,
        TruePump.through(60, 30, 42, 55, 26, off.pumpSpeed()),
        Coolant.thirtyPercent(),
        30,
        new Plenum.Shape(3800, 5600, 26, 45, 2.6, 1.6, 0.8, 22),
        new ChargeSensor.Shape(1.5, 0.035));
  }

  /** The 3.6 L car on the road. */
  static TruthCar streetCar(Deviations off) {
    return new TruthCar(
        3.6e-3,
        0.82,
        new TrueBlower.Shape(1.32e-3, 2.5, 0.62 + off.efficiency(), 250, 0.92, 6800),
        core(Core.STREET, 1, 0.4, 20, 0.55e-3, off),
        Core.STREET.pressureLoss,
        front(0.560, 0.260, 2.6, 1.1e-3, off),
        0.560 * 0.260,
        hose(2.4, 0.017),
        hose(2.0, 0.017),
        2.2e-3,
        TruePump.through(32, 14, 26, 38, 16, off.pumpSpeed()),
        Coolant.fiftyPercent(),
        50,
        new Plenum.Shape(3100, 4700, 22, 38, 2.4, 1.5, 0.8, 18),
        new ChargeSensor.Shape(1.7, 0.04));
  }

  private static MeshExchanger.Shape core(
      Core core,
      int passes,
      double airFlow,
      double litresPerMinute,
      double volume,
      Deviations off) {
    double conductance = core.conductance * off.coreConductance();
    Film air = new Film(conductance / AIR_SHARE, airFlow, 0.58);
    Film coolant =
        new Film(conductance / (1 - AIR_SHARE), litresPerMinute * PER_LITRE_PER_MINUTE, 0.55);
    double metal = core.mass * off.coreMass() * ALUMINIUM;
    int cells = Mesh.SHIPPED.core();
    return new MeshExchanger.Shape(cells, cells, passes, air, coolant, metal, volume, UNEVENNESS);
  }

  private static MeshExchanger.Shape front(
      double width, double height, double mass, double volume, Deviations off) {
    double face = width * height;
    double conductance = FRONT_PER_VOLUME * face * FRONT_DEPTH * off.frontConductance();
    Film air = new Film(conductance / FRONT_AIR_SHARE, FRONT_VELOCITY * face * FRONT_DENSITY, 0.50);
    Film coolant = new Film(conductance / (1 - FRONT_AIR_SHARE), 20 * PER_LITRE_PER_MINUTE, 0.55);
    return new MeshExchanger.Shape(
        Mesh.SHIPPED.core(),
        Mesh.SHIPPED.frontDepth(),
        1,
        air,
        coolant,
        mass * ALUMINIUM,
        volume,
        UNEVENNESS);
  }

  private static PlugHose.Shape hose(double length, double bore) {
    return new PlugHose.Shape(length, bore, 0.004, Mesh.SHIPPED.hose(), Mesh.SHIPPED.layers());
  }
}
