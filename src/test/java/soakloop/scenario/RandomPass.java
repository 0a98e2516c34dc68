package soakloop.scenario;

import java.util.ArrayList;
import java.util.List;

/**
 * The car and the passes of a random scenario. Each key comes from its whole range, its ends
 * included, but few of them at a time and the others near the usual, so that the car moves off and
 * comes to the traps.
 */
final class RandomPass {
  /** How far the usual draws go from the default towards the ends of the range. */
  private static final double NEAR = 0.15;

  private final Draw draw;
  private final RandomValue near;
  private final RandomValue whole;
  private final RandomSection root;

  private double shiftAt;

  RandomPass(Draw draw, RandomSection root) {
    this.draw = draw;
    this.near = RandomValue.usual(draw, NEAR);
    this.whole = new RandomValue(draw, 1).oftenAtEnds();
    this.root = root;
  }

  /** Writes the car. */
  void vehicle() {
    RandomSection in = new RandomSection(draw, near, 0.4, "vehicle");
    List<String> needed = List.of("mass", "tyre-diameter", "final-drive");
    double[] usual = {1700, 0.66, 3.6};
    String odd = draw.any(KeyTable.get().below("vehicle"));
    for (int i = 0; i < usual.length; i++) {
      KeySpec spec = in.spec(needed.get(i));
      in.put(needed.get(i), near.written(spec, usual[i] * draw.between(0.8, 1.2)));
    }
    shiftAt = draw.between(95, 130);
    if (odd.equals("shift-at")) {
      KeySpec spec = in.spec(odd);
      shiftAt = whole.number(spec, RandomValue.low(spec), RandomValue.high(spec));
    }
    in.put("shift-at", near.written(in.spec("shift-at"), shiftAt));
    in.put("gears", draw.any(List.of("[3, 2.1, 1.4, 1]", "[2.5, 1.5, 1]", "[1.8, 1]", "[1]")));
    boolean both = odd.equals("driven") && draw.chance(0.5);
    if (both || draw.chance(0.5)) {
      in.put("driven", both ? "both" : draw.any(List.of("rear", "front")));
    }
    boolean atCrank = odd.equals("drivetrain-loss") || draw.chance(0.4);
    power(in, atCrank ? "crank-power" : "wheel-power", odd);
    boolean single = in.spec(odd).takes() == KeySpec.Takes.QUANTITY && !odd.equals("shift-at");
    if (single && !(both && (odd.equals("driven-weight") || odd.equals("weight-transfer")))) {
      KeySpec spec = in.spec(odd);
      in.put(odd, whole.in(spec, RandomValue.low(spec), RandomValue.high(spec)));
    }
    List<String> out = new ArrayList<>(List.of("driven"));
    if (both) {
      out.addAll(List.of("driven-weight", "weight-transfer"));
    }
    if (!atCrank) {
      out.add("drivetrain-loss");
    }
    in.others(out.toArray(String[]::new));
    root.put("vehicle", in);
  }

  private void power(RandomSection in, String key, String odd) {
    KeySpec spec = in.spec(key);
    double peak =
        odd.equals(key)
            ? whole.number(spec, 60e3, RandomValue.high(spec))
            : draw.between(150e3, 700e3);
    if (draw.chance(0.3)) {
      in.put(key, near.written(spec, peak));
    } else {
      double[] places = {shiftAt / 4, shiftAt / 2, shiftAt};
      in.put(key, near.points(spec, places, new double[] {0.4 * peak, 0.7 * peak, peak}));
    }
  }

  /** Returns a pass; the car must have been written. */
  RandomSection pass() {
    RandomSection in = new RandomSection(draw, near, 0.4, "session.pass");
    RandomSection ends = new RandomSection(draw, whole, 0.5, "session.pass");
    if (draw.chance(0.15)) {
      measured(in);
    } else {
      KeySpec launch = in.spec("launch-rpm");
      double most = Math.min(0.98 * shiftAt, RandomValue.high(launch));
      if (draw.chance(0.5) || shiftAt < 70) {
        double low = draw.chance(0.3) ? RandomValue.low(launch) : Math.min(most, 0.4 * shiftAt);
        in.put("launch-rpm", near.written(launch, draw.chance(0.3) ? most : low));
      }
      for (String key : List.of("distance", "rollout")) {
        if (draw.chance(0.5)) {
          in.put(key, ends.any(key).get(key));
        }
      }
    }
    for (String around : List.of("burnout", "staging", "shutdown", "return-road")) {
      if (draw.chance(0.5)) {
        RandomSection section =
            draw.chance(0.5) ? ends.below(around).others() : in.below(around).others();
        in.put(around, section.orEmpty());
      }
    }
    return in.others("distance", "rollout", "launch-rpm");
  }

  private void measured(RandomSection in) {
    double length = draw.between(6, 20);
    double[] places = {0, length / 3, length};
    double[] speeds = {0, draw.between(15, 40), draw.between(30, 90)};
    in.put("road-speed", near.points(in.spec("road-speed"), places, speeds));
    if (draw.chance(0.5)) {
      double[] turns = {50, 100, draw.between(80, 120)};
      in.put("engine-speed", near.points(in.spec("engine-speed"), places, turns));
    }
  }
}
