package soakloop.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import soakloop.flow.Resistance;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Water;
import soakloop.quantity.Curve;
import soakloop.rig.AdiabaticEfficiency;
import soakloop.rig.AirDelivery;
import soakloop.rig.Airflow;
import soakloop.rig.Blower;
import soakloop.rig.Branches;
import soakloop.rig.Core;
import soakloop.rig.Day;
import soakloop.rig.DuctMetal;
import soakloop.rig.Engine;
import soakloop.rig.Exchanger;
import soakloop.rig.FaceAir;
import soakloop.rig.HeatExchanger;
import soakloop.rig.Hose;
import soakloop.rig.Loop;
import soakloop.rig.LoopElement;
import soakloop.rig.Materials;
import soakloop.rig.Passes;
import soakloop.rig.PowerLawConductance;
import soakloop.rig.Pump;
import soakloop.rig.PumpDelivery;
import soakloop.rig.PumpPower;
import soakloop.rig.Reservoir;
import soakloop.rig.Rig;
import soakloop.rig.Sensor;
import soakloop.rig.Thermostat;
import soakloop.rig.Underhood;

/**
 * Invented rigs over wide but valid ranges of every part, each from a seed of its own: any coolant,
 * any order of the loop, with and without hoses, reservoirs and heat exchangers.
 */
final class RandomRigs {
  private static final double PER_MINUTE = 1 / 60.0;
  private static final double LITRES_PER_MINUTE = 1e-3 / 60;

  /** A loop with less coolant than this gets a tank, or it boils dry in one pull. */
  private static final double SMALLEST_LOOP = 3e-3;

  private final SplittableRandom random;

  RandomRigs(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** Returns a number between two, evenly spread. */
  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Returns a number between two above zero, evenly spread over their logarithm. */
  double across(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  /** Returns a whole number from one to another, both possible. */
  int count(int low, int high) {
    return random.nextInt(low, high + 1);
  }

  /** Returns true so often, 0 to 1. */
  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** Returns a start of the loop between two temperatures, K, at which its coolant is liquid. */
  double liquid(Rig rig, double low, double high) {
    return Math.max(between(low, high), rig.coolant().freezingTemperature());
  }

  Day day() {
    return new Day(between(255, 318), between(70e3, 105e3), between(0, 1));
  }

  Rig rig(Day day) {
    Engine engine =
        new Engine(
            across(0.9e-3, 8e-3),
            between(0.7, 1.1),
            between(550, 1300) * PER_MINUTE,
            between(25e3, 60e3));
    return new Rig(
        coolant(),
        engine,
        blower(engine, day),
        Optional.of(boost()),
        duct(2e3, 15e3, 15),
        new Sensor(across(0.3, 20), between(0.1, 0.8), between(0.3, 0.7), between(0, 0.3)),
        loop(),
        airflow(day),
        new Underhood(between(0, 0.7), between(3, 30), 0.4));
  }

  private Coolant coolant() {
    return switch (count(0, 4)) {
      case 0 -> Water.INSTANCE;
      case 1, 2 -> GlycolMix.ofMass(Glycol.ETHYLENE, between(0, 0.6));
      default -> GlycolMix.ofMass(Glycol.PROPYLENE, between(0, 0.6));
    };
  }

  private Blower blower(Engine engine, Day day) {
    double ratio = between(1.2, 4);
    double perEngineTurn = engine.displacement() * between(0.5, 1.6);
    AirDelivery delivery =
        chance(0.7)
            ? AirDelivery.PositiveDisplacement.of(
                perEngineTurn / ratio, ratio, between(0.7, 1.05), 0)
            : stated(perEngineTurn * day.pressure() / (287 * day.temperature()));
    return new Blower(
        delivery,
        new AdiabaticEfficiency.Constant(between(0.4, 0.9)),
        0.95,
        between(0, 25),
        between(0, 6e3),
        duct(2e3, 15e3, 12));
  }

  private AirDelivery stated(double massPerTurn) {
    double slow = between(15, 40);
    double fast = slow + between(40, 120);
    return new AirDelivery.Stated(
        Curve.of(
            new double[] {slow, fast},
            new double[] {massPerTurn * slow * between(0.6, 1), massPerTurn * fast}));
  }

  private Curve boost() {
    double most = between(15e3, 200e3);
    if (chance(0.3)) {
      return Curve.constant(most);
    }
    return Curve.of(
        new double[] {between(20, 40), between(50, 80), between(90, 140)},
        new double[] {most * between(0.3, 1), most, most * between(0.8, 1.1)});
  }

  private DuctMetal duct(double least, double most, double conductance) {
    return new DuctMetal(
        across(least, most),
        chance(0.1) ? 0 : between(0, 2 * conductance),
        between(0.1, 0.8),
        chance(0.1) ? 0 : between(0, conductance));
  }

  private Loop loop() {
    List<LoopElement> elements = new ArrayList<>();
    elements.add(new Core("core", exchanger(3)));
    elements.add(
        new Pump(
            "pump", delivery(), new PumpPower.Stated(between(0, 250)), across(0.05e-3, 0.6e-3)));
    for (int i = count(0, 2); i > 0; i--) {
      double surroundings = chance(0.2) ? 0 : between(0, 8);
      elements.add(new Reservoir("reservoir " + i, across(0.5e-3, 40e-3), surroundings));
    }
    for (int i = count(0, 2); i > 0; i--) {
      elements.add(new HeatExchanger("heat exchanger " + i, exchanger(2), across(0.03, 0.5)));
    }
    for (int i = count(0, 3); i > 0; i--) {
      elements.add(hose("hose " + i));
    }
    if (elements.stream().mapToDouble(LoopElement::coolantVolume).sum() < SMALLEST_LOOP) {
      elements.add(new Reservoir("tank", SMALLEST_LOOP, between(0, 8)));
    }
    for (int i = elements.size() - 1; i > 0; i--) {
      java.util.Collections.swap(elements, i, count(0, i));
    }
    Resistance.KnownPoint loss =
        new Resistance.KnownPoint(
            across(3e3, 150e3), across(8, 60) * LITRES_PER_MINUTE, between(1, 2));
    return new Loop(elements, Optional.of(loss));
  }

  /** Returns a rig of which some pieces, if there are enough, stand side by side. */
  Rig withWays(Rig rig) {
    List<LoopElement> around = new ArrayList<>();
    List<List<LoopElement>> ways = List.of(new ArrayList<>(), new ArrayList<>());
    for (LoopElement e : rig.loop().elements()) {
      boolean single = e instanceof Core || e instanceof Pump;
      (single ? around : ways.get(count(0, 1))).add(e);
    }
    if (ways.stream().anyMatch(List::isEmpty)) {
      return rig;
    }
    around.add(count(0, 2), new Branches("ways", ways));
    return new Rig(
        rig.coolant(),
        rig.engine(),
        rig.blower(),
        rig.boost(),
        rig.plenum(),
        rig.sensor(),
        new Loop(around, rig.loop().plumbing()),
        rig.airflow(),
        rig.underhood());
  }

  private PumpDelivery delivery() {
    double most = across(5, 90) * LITRES_PER_MINUTE;
    if (chance(0.5)) {
      return new PumpDelivery.StatedFlow(most);
    }
    double head = across(10e3, 120e3);
    return new PumpDelivery.Pushing(
        PumpDelivery.curve(
            Curve.of(
                new double[] {0, most * between(0.3, 0.7), most},
                new double[] {head, head * between(0.4, 0.9), 0})),
        OptionalDouble.empty());
  }

  /** An exchanger of 0.3 to 6 transfer units at its reference air flow. */
  private Exchanger exchanger(int depthAtMost) {
    double air = across(0.1, 1);
    double airShare = between(0.15, 0.9);
    PowerLawConductance conductance =
        new PowerLawConductance(
            1006 * air * across(0.3, 6),
            air,
            across(8, 60) * LITRES_PER_MINUTE,
            airShare,
            between(0, 0.08),
            between(0.3, 0.8),
            between(0, 0.8),
            chance(0.15) ? 0 : between(0, 0.5));
    int count = count(1, 4);
    Passes.Arranged arranged = chance(0.5) ? Passes.Arranged.DEPTH : Passes.Arranged.FACE;
    return new Exchanger(
        conductance,
        900 * across(0.6, 12),
        across(0.3e-3, 4e-3),
        new Passes(count, arranged),
        new Exchanger.Grid(count(1, 4), count(1, depthAtMost)));
  }

  private Hose hose(String name) {
    Materials.HoseWall material =
        switch (count(0, 3)) {
          case 0 -> Materials.HoseWall.RUBBER;
          case 1 -> Materials.HoseWall.SILICONE;
          case 2 -> Materials.HoseWall.STEEL;
          default -> Materials.HoseWall.ALUMINIUM;
        };
    boolean metal =
        material == Materials.HoseWall.STEEL || material == Materials.HoseWall.ALUMINIUM;
    double thickness = metal ? between(0.8e-3, 2e-3) : between(2e-3, 6e-3);
    // Fine layers of metal are stiff and say nothing new: such a wall is at one temperature.
    int layers = count(0, metal ? 1 : 4);
    return new Hose(
        name,
        between(0.2, 3),
        between(12e-3, 40e-3),
        material.thick(thickness),
        chance(0.2) ? 0 : between(0, 40),
        count(1, 8),
        layers);
  }

  private Airflow airflow(Day day) {
    double on = day.temperature() + between(2, 30);
    return new Airflow(
        new FaceAir.Speeds(
            chance(0.5) ? 0 : between(0, 8), chance(0.5) ? 0 : between(0, 6), between(0, 0.4)),
        across(0.05, 0.6),
        chance(0.5) ? 0 : between(-5, 25),
        0,
        chance(0.5) ? Optional.empty() : Optional.of(new Thermostat(on, on - between(1, 8))));
  }
}
