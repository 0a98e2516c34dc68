package soakloop.rig;

/**
 * Properties of the metals and rubbers that loops are made of, near room temperature.
 *
 * <p>Aluminium 903 J/(kg K), 237 W/(m K) and plain carbon steel 7854 kg/m3, 434 J/(kg K), 60 W/(m
 * K): F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, Table A.1, from
 * memory. Rubber and silicone: typical compounds, from memory, good to about 20 %.
 */
public final class Materials {
  /** Heat capacity of aluminium, J/(kg K). */
  public static final double ALUMINIUM_HEAT_CAPACITY = 903;

  private Materials() {}

  /** What a hose's wall can be made of. */
  public enum HoseWall {
    /** Reinforced rubber. */
    RUBBER(0.25, 1150 * 1700),
    /** Reinforced silicone rubber. */
    SILICONE(0.25, 1200 * 1300),
    /** Steel. */
    STEEL(60, 7854 * 434),
    /** Aluminium. */
    ALUMINIUM(200, 2700 * ALUMINIUM_HEAT_CAPACITY);

    private final double conductivity;
    private final double heatCapacity;

    HoseWall(double conductivity, double heatCapacity) {
      this.conductivity = conductivity;
      this.heatCapacity = heatCapacity;
    }

    /**
     * Returns a wall of this material.
     *
     * @param thickness m
     */
    public Hose.Wall thick(double thickness) {
      return new Hose.Wall(thickness, conductivity, heatCapacity);
    }
  }
}
