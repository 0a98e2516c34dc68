package soakloop.invented;

/**
 * The true car, as the generator has it.
 *
 * @param displacement engine displacement [m3]
 * @param filling volumetric efficiency of the engine at part load [-]
 * @param blower the blower
 * @param core the charge-cooler core
 * @param coreLoss air pressure loss of the core at 0.45 kg/s and 1.9 kg/m3 [Pa]
 * @param front the heat exchanger
 * @param frontFace its face [m2]
 * @param supply hose from pump to core
 * @param back hose from core to heat exchanger
 * @param reservoirVolume [m3]
 * @param pump the pump in its loop
 * @param coolant what is in it
 * @param referenceTemperature coolant temperature the films and the pump flow are stated at [degC]
 * @param plenum intake metal
 * @param sensor the charge sensor
 */
record TruthCar(
    double displacement,
    double filling,
    TrueBlower.Shape blower,
    MeshExchanger.Shape core,
    double coreLoss,
    MeshExchanger.Shape front,
    double frontFace,
    PlugHose.Shape supply,
    PlugHose.Shape back,
    double reservoirVolume,
    TruePump pump,
    Coolant coolant,
    double referenceTemperature,
    Plenum.Shape plenum,
    ChargeSensor.Shape sensor) {

  /** The same car on other meshes. */
  TruthCar withMesh(Mesh mesh) {
    return new TruthCar(
        displacement,
        filling,
        blower,
        core.withMesh(mesh.core(), mesh.core()),
        coreLoss,
        front.withMesh(mesh.core(), mesh.frontDepth()),
        frontFace,
        supply.withMesh(mesh.hose(), mesh.layers()),
        back.withMesh(mesh.hose(), mesh.layers()),
        reservoirVolume,
        pump,
        coolant,
        referenceTemperature,
        plenum,
        sensor);
  }

  /**
   * How finely the car is cut.
   *
   * @param core cells each way in the core, and along the heat exchanger [-]
   * @param frontDepth cells through the heat exchanger [-]
   * @param hose segments along each hose [-]
   * @param layers layers through a hose wall [-]
   * @param step time step [s]
   */
  record Mesh(int core, int frontDepth, int hose, int layers, double step) {
    /** The mesh the logs are made with. */
    static final Mesh SHIPPED = new Mesh(24, 6, 12, 10, 0.005);
  }
}
