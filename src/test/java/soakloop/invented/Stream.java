package soakloop.invented;

/**
 * Moving air.
 *
 * @param flow [kg/s], above 0
 * @param heatCapacity [J/(kg K)]
 * @param temperature [degC]
 */
record Stream(double flow, double heatCapacity, double temperature) {
  /** Heat capacity rate [W/K]. */
  double capacityRate() {
    return flow * heatCapacity;
  }

  /** The same stream at another temperature [degC]. */
  Stream at(double other) {
    return new Stream(flow, heatCapacity, other);
  }
}
