package soakloop.scenario;

import java.util.List;
import java.util.Optional;
import soakloop.flow.Mover;
import soakloop.flow.RamAir;
import soakloop.fluid.MoistAir;
import soakloop.quantity.Curve;
import soakloop.rig.Airflow;
import soakloop.rig.Day;
import soakloop.rig.FaceAir;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Loop;
import soakloop.rig.Thermostat;

/** Reads the air through the heat exchangers: as face speeds, or from pressures. */
final class AirflowReader {
  private final In root;
  private final Day day;

  AirflowReader(In root, Day day) {
    this.root = root;
    this.day = day;
  }

  Airflow read(Loop loop) {
    List<HeatExchanger> exchangers =
        loop.pieces().stream()
            .filter(HeatExchanger.class::isInstance)
            .map(HeatExchanger.class::cast)
            .toList();
    if (exchangers.isEmpty() && !root.context().hasProblems()) {
      root.refuse("airflow", "has no use: there is no heat exchanger in the loop to blow on");
      return new Airflow(new FaceAir.Speeds(0, 0, 0), 1, 0, 0, Optional.empty());
    }
    In in = root.section("airflow");
    FaceAir face;
    String fanKey;
    if (in.has("duct")) {
      for (String speed : new String[] {"shop-fan", "weak", "strong", "car-fan", "road-share"}) {
        in.refuse(speed, "has no use beside duct; give one or the other");
      }
      // Exchangers behind another share its air.
      double area =
          exchangers.stream()
              .filter(x -> x.behind().isEmpty())
              .mapToDouble(HeatExchanger::faceArea)
              .sum();
      face = duct(in.section("duct"), area > 0 ? area : 1);
      fanKey = "the fan's curve under duct";
    } else {
      face = speeds(in);
      fanKey = "the face speed that car-fan makes";
    }
    Airflow airflow =
        new Airflow(
            face,
            in.number("still-air"),
            in.number("inlet-rise"),
            in.optional("recirculation").orElse(0),
            thermostat(in, face.hasCarFan(), fanKey));
    in.done();
    return airflow;
  }

  private static FaceAir speeds(In in) {
    double shopFan = shopFan(in);
    double carFan = in.word("car-fan").isPresent() ? 0 : in.number("car-fan");
    return new FaceAir.Speeds(shopFan, carFan, in.number("road-share"));
  }

  private static double shopFan(In in) {
    Optional<String> word = in.word("shop-fan");
    double speed = 0;
    if (word.isEmpty()) {
      speed = in.number("shop-fan");
    } else if (!word.get().equals("none")) {
      speed = in.number(word.get());
    }
    // What the words mean may be said whether they are used or not.
    in.idle("weak");
    in.idle("strong");
    return speed;
  }

  private FaceAir duct(In in, double area) {
    RamAir ram = new RamAir(area, in.number("loss-factor"), in.number("pressure-coefficient"));
    double shopFan = in.optional("shop-fan").orElse(0);
    double capture = 0;
    if (shopFan > 0) {
      capture = in.number("capture");
    } else {
      in.idle("capture");
    }
    Optional<Curve> fan = in.curve("fan").filter(curve -> isFan(in, curve));
    double density =
        MoistAir.of(day.temperature(), day.pressure(), day.humidity())
            .density(day.temperature(), day.pressure());
    in.done();
    return new FaceAir.Duct(ram, shopFan, capture, fan, density);
  }

  private static boolean isFan(In in, Curve curve) {
    if (in.context().hasProblems(in.path("fan"))) {
      return false;
    }
    boolean begins = curve.size() > 1 && curve.place(0) == 0;
    if (begins && new Mover.Table(curve).falls()) {
      return true;
    }
    in.problem(
        "fan",
        "is not a fan's: it takes two points or more, from no flow, whose pressure never rises");
    return false;
  }

  private static Optional<Thermostat> thermostat(In airflow, boolean hasFan, String fanKey) {
    In in = airflow.section("thermostat");
    if (!in.present()) {
      return Optional.empty();
    }
    double on = in.number("on");
    double off = in.number("off");
    in.done();
    if (!hasFan) {
      airflow.problem("thermostat", "switches the car fan; give " + fanKey);
    }
    if (!(off < on)) {
      if (in.has("on") && in.has("off")) {
        in.problem("off", "must be below on");
      }
      return Optional.empty();
    }
    return Optional.of(new Thermostat(on, off));
  }
}
