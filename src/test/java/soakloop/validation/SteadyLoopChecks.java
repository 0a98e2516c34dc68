package soakloop.validation;

import java.util.List;
import soakloop.exchange.FlowArrangement;
import soakloop.exchange.LiquidCoupledPair;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;
import soakloop.fluid.Water;
import soakloop.rig.Passes;
import soakloop.simulate.Channel;
import soakloop.simulate.LongHaul;
import soakloop.simulate.SteadyExchanger;

/** The whole model run until it rests, against the closed solution of two coupled exchangers. */
final class SteadyLoopChecks implements CheckSuite {
  private static final double ZERO_CELSIUS = 273.15;
  private static final String PAIR =
      "energy balances of a liquid-coupled pair (theory: Kays and London), ";

  private final CheckList list = new CheckList("Whole loop at rest");

  @Override
  public List<Check> checks() {
    rig("water", Water.INSTANCE);
    rig("50 % ethylene glycol", GlycolMix.ofMass(Glycol.ETHYLENE, 0.5));
    return list.checks();
  }

  private void rig(String name, Coolant coolant) {
    LongHaul run = LongHaul.of(coolant);
    list.from(Kind.ANALYTIC, "a rig at rest stays as it is; invented rig, one hour at full load")
        .add(
            "change of coolant into the core in the last minute, " + name,
            0,
            Rounded.to(3, run.drift()),
            Tolerance.absolute(1e-3),
            "K");
    LiquidCoupledPair own =
        run.steady(
            (grid, units, ratio, airIsLess) ->
                SteadyExchanger.effectiveness(Passes.ONE, grid, units, ratio, airIsLess));
    list.from(
        Kind.ANALYTIC, PAIR + "effectivenesses of the same cells solved at rest on their own");
    compare(name, run, own, 0.1);
    LiquidCoupledPair exact =
        run.steady(
            (grid, units, ratio, airIsLess) ->
                FlowArrangement.CROSS_UNMIXED.effectiveness(units, ratio));
    list.from(Kind.ANALYTIC, PAIR + "exact effectivenesses");
    compare(name, run, exact, 1);
  }

  private void compare(String name, LongHaul run, LiquidCoupledPair pair, double kelvin) {
    temperature(
        "coolant into the core, " + name, pair.coldLiquid(), run, Channel.CORE_COOLANT_IN, kelvin);
    temperature(
        "coolant out of the core, " + name,
        pair.hotLiquid(),
        run,
        Channel.CORE_COOLANT_OUT,
        kelvin);
    temperature("charge air, " + name, pair.hotOutlet(), run, Channel.CHARGE, kelvin);
    list.add(
        "heat into the core, " + name,
        pair.heat(),
        Rounded.to(0, run.last(Channel.HEAT_CORE)),
        Tolerance.percent(kelvin),
        "W");
    list.add(
        "heat to the outside air, " + name,
        pair.heat(),
        Rounded.to(0, run.last(Channel.HEAT_AMBIENT)),
        Tolerance.percent(kelvin),
        "W");
  }

  private void temperature(
      String what, double expected, LongHaul run, Channel channel, double kelvin) {
    list.add(
        what,
        expected - ZERO_CELSIUS,
        Rounded.to(3, run.last(channel) - ZERO_CELSIUS),
        Tolerance.absolute(kelvin),
        "degC");
  }
}
