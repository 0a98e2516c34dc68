package soakloop.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soakloop.flow.Resistance;
import soakloop.quantity.Curve;
import soakloop.rig.Chiller;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
import soakloop.rig.Reservoir;
import soakloop.rig.Reservoir.Layers;
import soakloop.rig.Rig;
import soakloop.rig.TankIce;

/** Random rigs with an iced tank, mixed or in layers, and a chiller besides. All invented. */
final class Iced {
  private Iced() {}

  static Rig rig(RandomRigs random, Rig plain) {
    List<LoopElement> elements = new ArrayList<>(plain.loop().elements());
    elements.add(random.count(0, elements.size()), tank(random));
    elements.add(random.count(0, elements.size()), chiller(random));
    return new Rig(
        plain.coolant(),
        plain.engine(),
        plain.blower(),
        plain.boost(),
        plain.plenum(),
        plain.sensor(),
        new Loop(elements, plain.loop().plumbing()),
        plain.airflow(),
        plain.underhood());
  }

  private static Reservoir tank(RandomRigs random) {
    double mass = random.across(0.2, 12);
    double volume = random.across(2e-3, 25e-3);
    return new Reservoir(
        "iced tank",
        volume,
        random.between(0, 6),
        Resistance.NONE,
        new Layers(random.count(1, 4), random.chance(0.5) ? Layers.Entry.TOP : Layers.Entry.BOTTOM),
        Optional.of(
            new TankIce(
                mass,
                random.between(250, 273.15),
                TankIce.ofPieces(random.across(5e-3, 0.2), random.across(100, 2000)),
                volume + 2e-3 * mass)));
  }

  private static Chiller chiller(RandomRigs random) {
    Curve capacity =
        Curve.of(
            new double[] {273, 293, 323},
            new double[] {0, random.between(0, 4e3), random.between(2e3, 9e3)});
    return new Chiller(
        "chiller",
        random.across(0.1e-3, 1e-3),
        capacity,
        random.across(0.5, 10) * 1e-3 / 60,
        random.between(265, 280),
        random.between(1, 4),
        random.chance(0.5) ? Chiller.Drive.ENGINE : Chiller.Drive.ELECTRIC,
        Resistance.NONE);
  }
}
