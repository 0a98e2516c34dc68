package soakloop.exchange;

import soakloop.quantity.Require;

/**
 * Cross-section of a small straight duct, with what laminar flow does in it once developed.
 *
 * <p>Source of the rectangular values: R. K. Shah, A. L. London, Laminar Flow Forced Convection in
 * Ducts, Academic Press, 1978, polynomials in the aspect ratio (short over long side); as quoted in
 * textbooks. Accuracy of the polynomials: about 0.1 %. Circular: exact.
 */
public sealed interface DuctShape {
  /** Extent along the row of ducts, m. */
  double width();

  /** Extent across the row of ducts, m. */
  double height();

  /** Free cross-section, m2. */
  double area();

  /** Wetted perimeter, m. */
  double perimeter();

  /** Laminar Nusselt number on the hydraulic diameter, walls at one temperature. */
  double nusseltAtWallTemperature();

  /** Laminar Nusselt number, even heat along the duct and one temperature around it (H1). */
  double nusseltAtWallFlux();

  /** Laminar friction factor (Fanning) times Reynolds number. */
  double frictionTimesReynolds();

  /** Hydraulic diameter, 4 area / perimeter, m. */
  default double hydraulicDiameter() {
    return 4 * area() / perimeter();
  }

  /**
   * A round duct.
   *
   * @param diameter m
   */
  record Circular(double diameter) implements DuctShape {
    /** Checks the diameter. */
    public Circular {
      Require.positive("duct diameter", diameter);
    }

    @Override
    public double width() {
      return diameter;
    }

    @Override
    public double height() {
      return diameter;
    }

    @Override
    public double area() {
      return Math.PI * diameter * diameter / 4;
    }

    @Override
    public double perimeter() {
      return Math.PI * diameter;
    }

    @Override
    public double nusseltAtWallTemperature() {
      return 3.66;
    }

    @Override
    public double nusseltAtWallFlux() {
      return 4.364;
    }

    @Override
    public double frictionTimesReynolds() {
      return 16;
    }
  }

  /**
   * A rectangular duct.
   *
   * @param width m
   * @param height m
   */
  record Rectangular(double width, double height) implements DuctShape {
    /** Checks the sides. */
    public Rectangular {
      Require.positive("duct width", width);
      Require.positive("duct height", height);
    }

    @Override
    public double area() {
      return width * height;
    }

    @Override
    public double perimeter() {
      return 2 * (width + height);
    }

    @Override
    public double nusseltAtWallTemperature() {
      double a = aspect();
      return 7.541 * (1 + a * (-2.610 + a * (4.970 + a * (-5.119 + a * (2.702 - a * 0.548)))));
    }

    @Override
    public double nusseltAtWallFlux() {
      double a = aspect();
      return 8.235 * (1 + a * (-2.0421 + a * (3.0853 + a * (-2.4765 + a * (1.0578 - a * 0.1861)))));
    }

    @Override
    public double frictionTimesReynolds() {
      double a = aspect();
      return 24 * (1 + a * (-1.3553 + a * (1.9467 + a * (-1.7012 + a * (0.9564 - a * 0.2537)))));
    }

    private double aspect() {
      return Math.min(width, height) / Math.max(width, height);
    }
  }
}
