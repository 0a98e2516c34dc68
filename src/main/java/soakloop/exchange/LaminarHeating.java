package soakloop.exchange;

import java.util.function.ToDoubleFunction;

/** What is taken for laminar heat transfer in a duct. */
public enum LaminarHeating {
  /** Developed, walls at one temperature. */
  WALL_TEMPERATURE(DuctShape::nusseltAtWallTemperature, 0),
  /** Developed, even heat along the duct (H1): the usual choice between two flowing streams. */
  WALL_FLUX(DuctShape::nusseltAtWallFlux, 0),
  /** Walls at one temperature, mean over a length that begins with an even temperature. */
  ENTRY(DuctShape::nusseltAtWallTemperature, 0.0668);

  /** Hausen's second constant. */
  private static final double ENTRY_DECAY = 0.04;

  private final ToDoubleFunction<DuctShape> developed;
  private final double entry;

  LaminarHeating(ToDoubleFunction<DuctShape> developed, double entry) {
    this.developed = developed;
    this.entry = entry;
  }

  /**
   * Mean laminar Nusselt number.
   *
   * <p>Equation: Nu = Nu_developed, and for {@link #ENTRY} additionally 0.0668 Gz / (1 + 0.04
   * Gz^(2/3)) with Gz = Re Pr D / L (Hausen). Hausen's equation is for round tubes, with 3.66 for
   * the developed part; carrying its entry term over to other shapes is an approximation of this
   * project, of unknown accuracy (10 % is a guess).
   *
   * <p>Source: H. Hausen, 1943, as given in textbooks; the ducts' own values: {@link DuctShape}.
   *
   * @param shape cross-section
   * @param graetz Graetz number Re Pr D / L [-], 0 or more
   * @return Nusselt number on the hydraulic diameter [-]
   */
  double nusselt(DuctShape shape, double graetz) {
    double base = developed.applyAsDouble(shape);
    if (entry == 0) {
      return base;
    }
    double root = Math.cbrt(graetz);
    return base + entry * graetz / (1 + ENTRY_DECAY * root * root);
  }
}
