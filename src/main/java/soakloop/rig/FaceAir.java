package soakloop.rig;

import java.util.Optional;
import soakloop.flow.Mover;
import soakloop.flow.RamAir;
import soakloop.quantity.Curve;
import soakloop.quantity.Require;

/** What moves air through the face of the heat exchangers. */
public sealed interface FaceAir {
  /**
   * Returns the speed of the air at the face, without natural draught.
   *
   * @param road road speed, m/s
   * @param shop whether the shop fan runs
   * @param car whether the car fan runs
   * @return m/s
   */
  double speed(double road, boolean shop, boolean car);

  /** Returns whether there is a shop fan. */
  boolean hasShopFan();

  /** Returns whether there is a car fan. */
  boolean hasCarFan();

  /**
   * Each source as the face speed it would make alone. Pressures in series add, and pressure goes
   * with speed squared, so the speeds add as squares.
   *
   * @param shopFan face speed from a shop fan, m/s
   * @param carFan face speed from the car's own fan, m/s
   * @param roadShare face speed over road speed, 0 to 1
   */
  record Speeds(double shopFan, double carFan, double roadShare) implements FaceAir {
    /** Checks the parts. */
    public Speeds {
      Require.notNegative("shop fan face speed", shopFan);
      Require.notNegative("car fan face speed", carFan);
      Require.within("road share", roadShare, 0, 1);
    }

    @Override
    public double speed(double road, boolean shop, boolean car) {
      double ram = roadShare * road;
      double squares = ram * ram;
      if (shop) {
        squares += shopFan * shopFan;
      }
      if (car) {
        squares += carFan * carFan;
      }
      return Math.sqrt(squares);
    }

    @Override
    public boolean hasShopFan() {
      return shopFan > 0;
    }

    @Override
    public boolean hasCarFan() {
      return carFan > 0;
    }
  }

  /**
   * Road speed, shop fan and the car fan's curve against the resistance of exchanger and duct, as
   * {@link RamAir} says. Past its last point a fan turns with the air and neither helps nor brakes.
   *
   * @param ram face, resistance and pressure coefficient
   * @param shopFan air speed of the shop fan at the grille, m/s
   * @param capture share of the shop fan's dynamic head that the grille catches, 0 to 1
   * @param carFan pressure in Pa over volume flow in m3/s, from no flow, falling; if there is a fan
   * @param density of the air, kg/m3
   */
  record Duct(RamAir ram, double shopFan, double capture, Optional<Curve> carFan, double density)
      implements FaceAir {
    /** Checks the parts. */
    public Duct {
      Require.notNegative("shop fan air speed", shopFan);
      Require.within("capture", capture, 0, 1);
      Require.positive("air density", density);
      if (carFan.isPresent() && !new Mover.Table(carFan.get()).falls()) {
        throw new IllegalArgumentException("a fan's pressure must fall with flow");
      }
    }

    @Override
    public double speed(double road, boolean shop, boolean car) {
      double squares = ram.pressureCoefficient() * road * road;
      if (shop) {
        squares += capture * shopFan * shopFan;
      }
      double head = density / 2 * squares;
      double perSquare = density / 2 * ram.resistance();
      return car && carFan.isPresent()
          ? withFan(head, perSquare, carFan.get())
          : Math.sqrt(head / perSquare);
    }

    /**
     * Solves perSquare v^2 = head + fan(v A). The fan is straight between its points, so that each
     * stretch is a quadratic; the balance lies on the first whose end brakes.
     */
    private double withFan(double head, double perSquare, Curve fan) {
      double area = ram.faceArea();
      for (int i = 1; i < fan.size(); i++) {
        double end = fan.place(i) / area;
        if (perSquare * end * end >= head + fan.value(i)) {
          double start = fan.place(i - 1) / area;
          double slope = (fan.value(i) - fan.value(i - 1)) / (end - start);
          double still = head + fan.value(i - 1) - slope * start;
          double half = slope / (2 * perSquare);
          return half + Math.sqrt(half * half + still / perSquare);
        }
      }
      return Math.max(fan.place(fan.size() - 1) / area, Math.sqrt(head / perSquare));
    }

    @Override
    public boolean hasShopFan() {
      return shopFan > 0 && capture > 0;
    }

    @Override
    public boolean hasCarFan() {
      return carFan.isPresent();
    }
  }
}
