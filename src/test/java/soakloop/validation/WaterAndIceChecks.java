package soakloop.validation;

import java.util.List;
import soakloop.exchange.Condensation;
import soakloop.fluid.Glycol;
import soakloop.fluid.Ice;
import soakloop.fluid.IceBath;
import soakloop.fluid.IceBath.Settled;
import soakloop.fluid.MoistAir;

/** Ice in the tank and water from the air. */
final class WaterAndIceChecks implements CheckSuite {
  private static final double ZERO_CELSIUS = 273.15;

  private final CheckList list = new CheckList("Ice and condensation");

  @Override
  public List<Check> checks() {
    properties();
    melting();
    condensation();
    return list.checks();
  }

  private void properties() {
    list.from(Kind.LIBRARY, "IAPWS R10-06 and IAPWS-95 by iapws 1.5.2, at the melting point")
        .add("heat of fusion", 333_426.5, Ice.HEAT_OF_FUSION, Tolerance.relative(2e-5), "J/kg")
        .add("density of ice", 916.7215, Ice.DENSITY, Tolerance.percent(0.05), "kg/m3");
    list.from(Kind.LIBRARY, "IAPWS R10-06 by iapws 1.5.2, mean of 0 and -10 degC")
        .add(
            "heat capacity of ice",
            (2096.7139 + 2023.10) / 2,
            Ice.HEAT_CAPACITY,
            Tolerance.percent(1),
            "J/(kg K)");
  }

  private void melting() {
    Settled some = new IceBath(8, 303.15, 4190, Glycol.ETHYLENE, 0, 2, 255.15).settle();
    Settled more = new IceBath(8, 303.15, 4190, Glycol.ETHYLENE, 0, 4, 255.15).settle();
    list.from(Kind.ANALYTIC, "energy balance, heat of fusion 333430 J/kg, water 4190, ice 2050")
        .add(
            "8 kg water of 30 degC and 2 kg ice of -18 degC",
            6.323150,
            some.temperature() - ZERO_CELSIUS,
            Tolerance.absolute(6e-7),
            "degC")
        .add("the same, ice left", 0, some.iceLeft(), Tolerance.absolute(1e-12), "kg")
        .add(
            "8 kg water of 30 degC and 4 kg ice of -18 degC",
            0,
            more.temperature() - ZERO_CELSIUS,
            Tolerance.absolute(1e-12),
            "degC")
        .add("the same, ice melted", 2.573254, more.melted(), Tolerance.absolute(6e-7), "kg")
        .add(
            "time to melt 5 kg by 40 kW",
            41.678,
            Ice.meltingTime(5, 40e3),
            Tolerance.absolute(1e-3),
            "s")
        .add(
            "time to melt 5 kg by 1800 W/K from 35 degC",
            26.463,
            Ice.meltingTime(5, 1800 * 35),
            Tolerance.absolute(1e-3),
            "s");
    IceBath glycol = new IceBath(8, 303.15, 3600, Glycol.ETHYLENE, 0.3, 6, 255.15);
    Settled cold = glycol.settle();
    double strength = 0.3 * 8 / (8 + cold.melted());
    list.from(
            Kind.ANALYTIC,
            "ice and coolant are in balance at the freezing point of the coolant as thinned")
        .add(
            "8 kg of 30 % glycol and 6 kg ice: temperature",
            soakloop.fluid.GlycolMix.ofMass(Glycol.ETHYLENE, strength).freezingTemperature()
                - ZERO_CELSIUS,
            cold.temperature() - ZERO_CELSIUS,
            Tolerance.absolute(1e-9),
            "degC");
  }

  private void condensation() {
    MoistAir day = MoistAir.of(298.15, 101_325, 0.6);
    list.from(Kind.COMPUTED_ELSEWHERE, "25 degC, 60 % humidity, computed in Python")
        .add(
            "dew point at pressure ratio 2.4",
            31.26,
            day.dewPoint(2.4 * 101_325) - ZERO_CELSIUS,
            Tolerance.absolute(6e-3),
            "degC");
    list.from(Kind.TRADE, "saturated steam tables, from memory")
        .add("heat of vaporisation, 0 degC", 2500.9, heat(0), Tolerance.percent(0.2), "kJ/kg")
        .add("heat of vaporisation, 25 degC", 2441.7, heat(25), Tolerance.percent(0.2), "kJ/kg")
        .add("heat of vaporisation, 60 degC", 2357.7, heat(60), Tolerance.percent(0.2), "kJ/kg");
    list.from(
        Kind.TRADE,
        "an iced core: 15 to 70 % of the local sensible heat, an estimate without source; here 25"
            + " degC, 60 %, pressure ratio 2.4, wall 2 degC");
    share(day, 45);
    share(day, 150);
  }

  private void share(MoistAir day, double celsius) {
    list.add(
        "latent over sensible heat, air at " + Digits.of(celsius, 3) + " degC",
        0.425,
        Condensation.latentToSensible(day, 2.4 * 101_325, celsius + ZERO_CELSIUS, 2 + ZERO_CELSIUS),
        Tolerance.absolute(0.275),
        "-");
  }

  private static double heat(double celsius) {
    return Condensation.heatOfVaporisation(celsius + ZERO_CELSIUS) / 1e3;
  }
}
