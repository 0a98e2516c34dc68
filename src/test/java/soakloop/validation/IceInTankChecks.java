package soakloop.validation;

import java.util.List;
import java.util.Optional;
import soakloop.flow.Resistance;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.IceBath;
import soakloop.fluid.Water;
import soakloop.rig.Reservoir;
import soakloop.rig.Reservoir.Layers;
import soakloop.rig.TankIce;
import soakloop.simulate.CellChain;

/** Ice in a tank of the loop, over time, and tanks in layers. */
final class IceInTankChecks implements CheckSuite {
  private static final double ZERO_CELSIUS = 273.15;
  private static final double FILLED_AT = 293.15;

  /** As near to balance at once as can be computed, W/K. */
  private static final double QUICK = 1e6;

  private static final double HEAT_OF_FUSION = 333_430;
  private static final double WARM = 35;

  private final CheckList list = new CheckList("Ice and layers in the tank, over time");

  @Override
  public List<Check> checks() {
    heated();
    fed();
    mixed(2, 6.323150, 0);
    mixed(4, 0, 4 - 2.573254);
    glycol();
    shrinking();
    layers();
    return list.checks();
  }

  private static Reservoir tank(double litres, Layers layers, TankIce ice) {
    return new Reservoir("tank", litres * 1e-3, 0, Resistance.NONE, layers, Optional.of(ice));
  }

  private static TankIce ice(double mass, double celsius, double conductance) {
    return new TankIce(mass, celsius + ZERO_CELSIUS, conductance / mass, 1);
  }

  /** Ice is left when the heat is half spent; so told, its last surface does not come into it. */
  private void heated() {
    CellChain chain =
        new CellChain(Water.INSTANCE, FILLED_AT)
            .pump(0.1e-3)
            .tank(tank(1, Layers.MIXED, ice(5, 0, QUICK)))
            .around(ZERO_CELSIUS, 40e3)
            .closed(5)
            .from(ZERO_CELSIUS)
            .iced();
    double[][] states = chain.at(10, 30);
    double rate = (chain.iceLeft(states[0]) - chain.iceLeft(states[1])) / 20;
    list.from(
            Kind.ANALYTIC,
            "heat of fusion 333430 J/kg over the heat flow; computed from what melts between 10 and 30"
                + " s at 1000 kW/K to the ice")
        .add("time for 5 kg of 0 degC, 40 kW", 41.678, 5 / rate, Tolerance.percent(0.3), "s");
  }

  private void fed() {
    double flow = 1800 / Water.INSTANCE.heatCapacity(ZERO_CELSIUS + WARM / 2);
    CellChain chain =
        new CellChain(Water.INSTANCE, FILLED_AT)
            .tank(tank(1, Layers.MIXED, ice(5, 0, QUICK)))
            .fed(t -> ZERO_CELSIUS + WARM, t -> flow)
            .from(ZERO_CELSIUS)
            .iced();
    double[][] states = chain.at(6, 20);
    double rate = (chain.iceLeft(states[0]) - chain.iceLeft(states[1])) / 14;
    list.add(
        "time for 5 kg in a bath fed 1800 W/K of 35 degC",
        26.463,
        5 / rate,
        Tolerance.percent(0.5),
        "s");
  }

  private void mixed(double mass, double celsius, double left) {
    CellChain chain =
        new CellChain(Water.INSTANCE, FILLED_AT)
            .tank(
                tank(
                    8 / Water.INSTANCE.density(FILLED_AT) * 1e3,
                    Layers.MIXED,
                    ice(mass, -18, 20e3)))
            .closed(0)
            .from(ZERO_CELSIUS + 30)
            .iced();
    double[] state = chain.at(300)[0];
    String name = "8 kg water of 30 degC and " + Digits.of(mass, 1) + " kg ice of -18 degC";
    list.from(
            Kind.ANALYTIC,
            "energy balance, heat of fusion 333430 J/kg, water 4190, ice 2050; after 300 s")
        .add(name, celsius, chain.leaving(state) - ZERO_CELSIUS, Tolerance.absolute(0.03), "degC")
        .add(name + ", ice left", left, chain.iceLeft(state), Tolerance.absolute(0.004), "kg");
  }

  private void glycol() {
    Coolant coolant = GlycolMix.ofMass(Glycol.ETHYLENE, 0.3);
    double mean = (coolant.enthalpy(ZERO_CELSIUS + 30) - coolant.enthalpy(ZERO_CELSIUS - 10)) / 40;
    IceBath.Settled settled =
        new IceBath(8, ZERO_CELSIUS + 30, mean, Glycol.ETHYLENE, 0.3, 6, ZERO_CELSIUS - 18)
            .settle();
    CellChain chain =
        new CellChain(coolant, FILLED_AT)
            .tank(tank(8 / coolant.density(FILLED_AT) * 1e3, Layers.MIXED, ice(6, -18, 20e3)))
            .closed(0)
            .from(ZERO_CELSIUS + 30)
            .iced();
    double[] state = chain.at(400)[0];
    list.from(
            Kind.ANALYTIC,
            "balance at the freezing point of the thinned coolant, solved at once; after 400 s")
        .add(
            "8 kg of 30 % glycol of 30 degC and 6 kg ice of -18 degC",
            settled.temperature() - ZERO_CELSIUS,
            chain.leaving(state) - ZERO_CELSIUS,
            Tolerance.absolute(0.05),
            "degC")
        .add(
            "the same, ice left",
            settled.iceLeft(),
            chain.iceLeft(state),
            Tolerance.absolute(0.02),
            "kg");
  }

  /** A bath held at 5 degC by a great stream: the pieces' size falls evenly, mass with its cube. */
  private void shrinking() {
    double conductance = 500;
    CellChain chain =
        new CellChain(Water.INSTANCE, FILLED_AT)
            .tank(tank(5, Layers.MIXED, ice(3, 0, conductance)))
            .fed(t -> ZERO_CELSIUS + 5, t -> 500)
            .from(ZERO_CELSIUS + 5)
            .iced();
    double[] times = {400, 800, 1100};
    double[][] states = chain.at(times);
    list.from(
        Kind.ANALYTIC,
        "pieces of one shape and number melt as mass^(2/3): m = m0 (1 - U0 dT t / (3 m0 L))^3, 3 kg,"
            + " 500 W/K, bath held at 5 degC");
    for (int i = 0; i < times.length; i++) {
      double size = 1 - conductance * 5 * times[i] / (3 * 3 * HEAT_OF_FUSION);
      list.add(
          "ice left after " + Digits.of(times[i], 4) + " s",
          3 * size * size * size,
          chain.iceLeft(states[i]),
          Tolerance.absolute(0.01),
          "kg");
    }
  }

  private void layers() {
    list.from(
        Kind.ANALYTIC, "tanks in series, 1 - exp(-N t) sum of (N t)^i / i! (Levenspiel), N = 4");
    for (Layers.Entry entry : Layers.Entry.values()) {
      // What lies stably: warmer in at the top, colder in at the bottom.
      double step = entry == Layers.Entry.TOP ? 20 : -20;
      Reservoir tank =
          new Reservoir("tank", 4e-3, 0, Resistance.NONE, new Layers(4, entry), Optional.empty());
      CellChain chain = stepped(tank, step);
      double[] state = chain.at(10)[0];
      list.add(
          "a tank of 4 layers after V/q, entering "
              + (step > 0 ? "warmer at the top" : "colder at the bottom"),
          0.5665299,
          (chain.leaving(state) - FILLED_AT) / step,
          Tolerance.absolute(0.002),
          "-");
    }
    list.from(Kind.ANALYTIC, "a mixed tank, 1 - exp(-t): where what enters is not stable");
    Reservoir upset =
        new Reservoir(
            "tank", 4e-3, 0, Resistance.NONE, new Layers(4, Layers.Entry.BOTTOM), Optional.empty());
    list.add(
        "the same after 3 V/q, entering warmer at the bottom",
        1 - Math.exp(-3),
        (leaving(stepped(upset, 20), 30) - FILLED_AT) / 20,
        Tolerance.absolute(0.03),
        "-");
  }

  private static CellChain stepped(Reservoir tank, double step) {
    double flow = 0.4e-3 * Water.INSTANCE.density(FILLED_AT);
    return new CellChain(Water.INSTANCE, FILLED_AT)
        .tank(tank)
        .fed(t -> FILLED_AT + step, t -> flow)
        .from(FILLED_AT)
        .within(1e-6);
  }

  private static double leaving(CellChain chain, double time) {
    return chain.leaving(chain.at(time)[0]);
  }
}
