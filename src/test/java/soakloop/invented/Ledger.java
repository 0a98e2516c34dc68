package soakloop.invented;

/** Heat that crossed the border of the loop since the start [J], each sum signed into the loop. */
final class Ledger {
  private final double storedAtStart;
  private double air;
  private double engineAndHood;
  private double pump;
  private double ambient;
  private double turnover;

  Ledger(double storedAtStart) {
    this.storedAtStart = storedAtStart;
  }

  void add(double dt, double fromAir, double fromEngineAndHood, double fromPump, double fromFront) {
    air += dt * fromAir;
    engineAndHood += dt * fromEngineAndHood;
    pump += dt * fromPump;
    ambient += dt * fromFront;
    turnover +=
        dt
            * (Math.abs(fromAir)
                + Math.abs(fromEngineAndHood)
                + Math.abs(fromPump)
                + Math.abs(fromFront));
  }

  /** What is missing, over all heat that crossed the border [-]. */
  double residual(double stored) {
    return (air + engineAndHood + pump + ambient - (stored - storedAtStart)) / turnover;
  }

  /** Heat given by the charge air [J]. */
  double fromAir() {
    return air;
  }

  /** Heat given up at the heat exchanger [J], negative when given. */
  double fromFront() {
    return ambient;
  }
}
